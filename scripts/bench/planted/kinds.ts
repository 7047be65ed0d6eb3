/**
 * The planted errors: which numbers were wrong when the muslin was drafted, and in which length
 * the error is counted. One slip of the tape moves every number it touches: a cord tied 20 mm too
 * low lengthens all that is measured to it and shortens what is measured down from it.
 */
import { FITS, type Choices } from '../../../src/draft/choices.ts'
import type { GarmentId } from '../../../src/draft/draft.ts'
import { standardFor } from '../../../src/draft/garments.ts'
import type { MeasurementId } from '../../../src/measurements/catalogue.ts'
import { mm } from '../../../src/units/length.ts'
import { numberOf, type Numbers } from '../bodies/numbers.ts'
import type { LengthName } from './lengths.ts'
import { slopeOf } from './needed.ts'

export interface Kind {
  readonly id: string
  readonly words: string
  readonly garments: readonly GarmentId[]
  /** Close ease, where a missing girth would hide in an easy one. */
  readonly close?: true
  readonly plant: (body: Numbers) => Numbers
  /** A rule of the draft that does not suit this body, instead of a number. */
  readonly plantChoice?: (intent: Choices) => Choices
  readonly counted: LengthName
  /** How large the error is there, mm; a slope as it falls over the usual shoulder. */
  readonly size: number
  /** What the ± of one reading makes of the counted length, mm: a pin at one of two seams counts twice. */
  readonly plusMinus: number
  /** The complaint by which it shows. */
  readonly shows: string
}

const by =
  (...changes: readonly (readonly [MeasurementId, number])[]) =>
  (body: Numbers): Numbers => ({
    ...body,
    ...Object.fromEntries(changes.map(([id, d]) => [id, numberOf(body, id) + d])),
  })

/** The drop of each shoulder were its slope so many degrees flatter. */
const flatter =
  (degrees: number) =>
  (body: Numbers): Numbers => {
    const angle = slopeOf(body) - (degrees * Math.PI) / 180
    const drop = (side: 'Left' | 'Right'): number =>
      numberOf(body, `shoulderLength${side}`) * Math.sin(angle)
    return { ...body, shoulderSlopeLeft: drop('Left'), shoulderSlopeRight: drop('Right') }
  }

const BOTH: readonly GarmentId[] = ['blouse', 'block']
const FITTED: readonly GarmentId[] = ['block']

export const KINDS: readonly Kind[] = [
  {
    id: 'bustShort',
    words: 'bust 40 short',
    garments: BOTH,
    close: true,
    plant: by(['bustGirth', -40]),
    counted: 'bust',
    size: 40,
    plusMinus: 6,
    shows: 'B1',
  },
  {
    id: 'slopeFlat',
    words: 'shoulder slope 4° too flat',
    garments: FITTED,
    plant: flatter(4),
    counted: 'shoulderDrop',
    size: 9,
    plusMinus: 3,
    shows: 'SH1',
  },
  {
    id: 'frontShort',
    words: 'front 15 short: the cord sat so much too high in front',
    garments: BOTH,
    plant: by(['sideNeckOverApexToWaist', -15], ['frontNeckToWaist', -15]),
    counted: 'frontLength',
    size: 15,
    plusMinus: 5,
    shows: 'B2',
  },
  {
    id: 'apexHigh',
    words: 'apex 20 too high',
    garments: BOTH,
    plant: by(['waistToBustLevel', 20]),
    counted: 'apexDown',
    size: 20,
    plusMinus: 5,
    shows: 'B5',
  },
  {
    id: 'backNarrow',
    words: 'across back 12 narrow',
    garments: FITTED,
    plant: by(['acrossBack', -12]),
    counted: 'acrossBack',
    size: 12,
    plusMinus: 3,
    shows: 'K1',
  },
  {
    id: 'waistLow',
    words: 'waist 20 too low: the cord sat so all round',
    garments: BOTH,
    plant: by(
      ['napeToWaist', 20],
      ['sideNeckOverApexToWaist', 20],
      ['sideNeckOverBladeToWaist', 20],
      ['frontNeckToWaist', 20],
      ['waistToBustLevel', 20],
      ['waistToHip', -20],
      ['waistToHighHip', -20],
    ),
    counted: 'backLength',
    size: 20,
    plusMinus: 3,
    shows: 'W2',
  },
  {
    id: 'shoulderLong',
    words: 'shoulder 10 long',
    garments: FITTED,
    plant: longer(10),
    counted: 'shoulder',
    size: 10,
    plusMinus: 3,
    shows: 'SH3',
  },
  {
    id: 'hipShort',
    words: 'hip 30 short',
    garments: BOTH,
    close: true,
    plant: by(['hipGirth', -30], ['highHipGirth', -30]),
    counted: 'hip',
    size: 30,
    plusMinus: 6,
    shows: 'W9',
  },
  {
    id: 'armholeHigh',
    words: 'armhole 12 too high',
    garments: FITTED,
    plant: by(['napeToArmpitLevel', -12]),
    counted: 'underarm',
    size: 12,
    plusMinus: 3,
    shows: 'A1',
  },
  {
    id: 'dartSmall',
    words: 'bust dart 12 too small for this bust',
    garments: FITTED,
    plant: (body) => body,
    plantChoice: (intent) => ({ ...intent, frontShort: mm(intent.frontShort - 12) }),
    counted: 'armholeFront',
    size: 10,
    plusMinus: 4,
    shows: 'B8',
  },
  {
    id: 'bustLarge',
    words: 'bust 40 too much',
    garments: BOTH,
    close: true,
    plant: by(['bustGirth', 40]),
    counted: 'bust',
    size: 40,
    plusMinus: 6,
    shows: 'B3',
  },
]

/** The shoulder longer, its slope kept. */
function longer(more: number): (body: Numbers) => Numbers {
  return (body) => {
    const side = (which: 'Left' | 'Right'): Numbers => {
      const long = numberOf(body, `shoulderLength${which}`)
      const drop = numberOf(body, `shoulderSlope${which}`)
      return {
        [`shoulderLength${which}`]: long + more,
        [`shoulderSlope${which}`]: (drop * (long + more)) / long,
      }
    }
    return { ...body, ...side('Left'), ...side('Right') }
  }
}

/** Long enough to have a hip line on every body; all else is the garment's standard. */
const PAST_HIP = mm(330)

export const intentOf = (garment: GarmentId, kind: Pick<Kind, 'close'>): Choices => ({
  ...standardFor(garment),
  ...(kind.close ? FITS.close : {}),
  lengthBelowWaist: PAST_HIP,
})
