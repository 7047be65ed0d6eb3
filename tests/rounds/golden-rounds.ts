/** Printed rounds that every later program must draw alike. Invented bodies, nobody's numbers. */
import type { GarmentId } from '../../src/draft/draft.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import type { Operation } from '../../src/fitting/ops/operation.ts'
import {
  branchFrom,
  firstRound,
  nextRound,
  withChoices,
  withCorrection,
  type Round,
} from '../../src/rounds/round.ts'
import { close } from '../../src/rounds/redraft.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

/** Ten times finer than what is asked of a replay. */
export const GOLDEN_STEP = 0.0001

const GARMENT_IDS: readonly GarmentId[] = ['blouse', 'block', 'sleeveless', 'sleeve']

const because = {
  complaint: 'B8',
  cause: 'bust shaping',
  pinned: { how: 'wholeFold', read: mm(12), share: 0.87 },
  watch: mm(0),
  round: 1,
} as const
const WEDGE: Correction = {
  v: 1,
  id: 'c1',
  kind: 'close-wedge',
  piece: 'front',
  edge: 'sleeveEdge',
  along: 0.5,
  width: mm(10.44),
  because,
}
const LONGER: Correction = {
  v: 1,
  id: 'c2',
  kind: 'turn-choice',
  choice: 'lengthAdded',
  by: mm(12.5),
  because: { ...because, complaint: 'W1', cause: 'short all round', round: 2 },
}

const first = (garment: GarmentId): Round =>
  close(
    firstRound({ id: `${garment}-1`, garmentId: garment }, garment, body(), '2026-11-20'),
    '2026-11-21',
  )
const second = (): Round =>
  close(withCorrection(nextRound(first('blouse'), 'blouse-2', '2026-11-22'), WEDGE), '2026-11-23')
const third = (): Round =>
  close(withCorrection(nextRound(second(), 'blouse-3', '2026-11-24'), LONGER), '2026-11-25')
/** From the second again, the wedge taken back and a choice turned. */
const branch = (): Round => {
  const open = withCorrection(branchFrom(second(), 4, 'blouse-4', '2026-11-25'), {
    v: 1,
    id: 'c3',
    kind: 'withdraw',
    correction: 'c1',
    round: 4,
  })
  const choices = { ...open.choices, lengthAdded: mm(open.choices.lengthAdded + 7) }
  return close(withChoices(open, choices), '2026-11-25')
}

/** Operations of every make, decided in another order than they are carried out in. */
const OPERATIONS: readonly Operation[] = [
  { op: 'ROT', piece: 'front', edge: 'armhole', along: 0.4, width: mm(8), into: 'bustDart' },
  { op: 'ROT', piece: 'back', edge: 'neck', along: 0.5, width: mm(5), into: 'shoulderDart' },
  { op: 'GROUP', piece: 'front', dart: 'bustDart', out: mm(0), down: mm(6) },
  { op: 'MOVE', piece: 'both', point: 'shoulderTip', out: mm(0), down: mm(7), carries: true },
  { op: 'WEDGE', piece: 'back', level: 'blade', by: mm(9) },
]
const operated = (garment: GarmentId, side?: 'left'): Round =>
  close(
    OPERATIONS.slice(side ? 3 : 0).reduce<Round>(
      (round, operation, i) =>
        withCorrection(round, {
          v: 1,
          id: `o${i}`,
          kind: 'operate',
          operation,
          ...(side ? { side } : {}),
          because,
        }),
      nextRound(first(garment), `${garment}-2`, '2026-11-22'),
    ),
    '2026-11-23',
  )

export const GOLDEN: Readonly<Record<string, () => Round>> = {
  ...Object.fromEntries(GARMENT_IDS.map((id) => [id, () => first(id)] as const)),
  'blouse-second': second,
  'blouse-third': third,
  'blouse-branch': branch,
  'block-second': () => operated('block'),
  'sleeveless-left': () => operated('sleeveless', 'left'),
}
