/**
 * The invented example: a body that nobody has, what two muslins of it were said to do, and the
 * verdicts. Only this is written down; drafts, corrections and printed words are made from it by
 * the program itself, so they never go stale.
 */
import type { GarmentId } from '../../draft/draft.ts'
import type { Reported } from '../../fitting/rules/judged.ts'
import type { MeasurementId } from '../../measurements/catalogue.ts'
import type { Freedom, Movement, Verdict } from '../../rounds/worn.ts'
import { mm } from '../../units/length.ts'
import { EXAMPLE_WORDS } from './example.words.ts'

export interface SewnMuslin {
  readonly onPaper: string
  readonly worn: string
  readonly cloth: string
  readonly movements: readonly (readonly [Movement, Freedom])[]
  readonly complaints: readonly Reported[]
  readonly notes: string
  readonly verdict: Verdict
}
export interface Seed {
  readonly name: string
  readonly garment: GarmentId
  readonly taped: string
  /** Two readings of the tape, mm, as two tapings differ. */
  readonly numbers: Partial<Readonly<Record<MeasurementId, readonly [number, number]>>>
  readonly muslins: readonly SewnMuslin[]
}

export const SEED: Seed = {
  name: EXAMPLE_WORDS.name,
  garment: 'sleeveless',
  taped: '2026-09-05',
  numbers: {
    bustGirth: [898, 896],
    highBustGirth: [868, 870],
    waistGirth: [742, 740],
    hipGirth: [956, 954],
    waistToHip: [194, 195],
    napeToWaist: [402, 404],
    waistToBustLevel: [168, 167],
    apexSpacing: [178, 178],
    napeToArmpitLevel: [186, 185],
    acrossBack: [352, 354],
    acrossChest: [320, 320],
    neckBaseGirth: [364, 365],
    frontNeckToWaist: [346, 345],
    sideNeckOverBladeToWaist: [428, 427],
    sideNeckOverApexToWaist: [428, 430],
    highHipGirth: [868, 870],
    waistToHighHip: [96, 97],
    shoulderLengthLeft: [121, 122],
    shoulderLengthRight: [122, 121],
    shoulderSlopeLeft: [38, 38],
    shoulderSlopeRight: [38, 39],
    slipThroughGirth: [985, 988],
    headGirth: [560, 560],
    upperArmGirth: [282, 284],
  },
  muslins: [
    {
      onPaper: '2026-09-06',
      worn: '2026-09-12',
      cloth: EXAMPLE_WORDS.cloth,
      movements: [
        ['armsForward', 'free'],
        ['sit', 'free'],
      ],
      complaints: [
        {
          id: 'B8',
          answers: { 'test 1': true },
          pin: { how: 'pinch', where: 'armhole', side: 'both', value: mm(14) },
        },
        {
          id: 'W1',
          answers: { 'test 1': true },
          pin: { how: 'level', where: 'waist', side: 'both', value: mm(9) },
        },
      ],
      notes: EXAMPLE_WORDS.notes[0],
      verdict: 'anotherMuslin',
    },
    {
      onPaper: '2026-09-13',
      worn: '2026-09-19',
      cloth: EXAMPLE_WORDS.cloth,
      movements: [
        ['armsForward', 'free'],
        ['armsUp', 'free'],
        ['sit', 'free'],
      ],
      complaints: [
        {
          id: 'N1',
          answers: { 'test 1': true },
          pin: { how: 'pinch', where: 'neck', side: 'both', value: mm(7) },
        },
      ],
      notes: EXAMPLE_WORDS.notes[1],
      verdict: 'wearable',
    },
  ],
}
