/**
 * What she said of her cloth: kept with the garment, so that the layout is the same tomorrow.
 * The cloth of a layout follows from it and a width.
 */
import type { ClothInHand } from '../output/cloth-kind.ts'
import type { DisplayUnit } from '../units/format.ts'
import { inches, mm, type Mm } from '../units/length.ts'
import { SPARE_SHARE, type SoldBy } from './amount.ts'
import { SELVEDGE, USUAL_WIDTHS, type Border, type Cloth } from './cloth.ts'
import type { Manner } from './lay.ts'

/** The level at the side that stripes and checks are matched at. */
export type MatchAt = 'waist' | 'underarm' | 'hem'
export const MATCH_ATS: readonly MatchAt[] = ['waist', 'underarm', 'hem']

export interface ClothWishes extends ClothInHand {
  /** In the order of their size, side by side; one of them is drawn. */
  readonly widths: readonly Mm[]
  readonly width: Mm
  readonly manner: Manner | 'shortest'
  readonly oneWay: boolean
  readonly selvedge: Mm
  readonly shrinkAlong: number
  readonly shrinkAcross: number
  /** Share of the length to spare. */
  readonly spare: number
  readonly repeatAlong?: Mm
  readonly repeatAcross?: Mm
  readonly matchAt: MatchAt
  readonly border?: Border
  readonly soldBy?: SoldBy
  /** Of one metre or one yard, in whatever money. */
  readonly price?: number
  /** Cloth she has already. */
  readonly have?: { readonly length: Mm; readonly width: Mm }
}

const WIDTH: Readonly<Record<DisplayUnit, Mm>> = { cm: mm(1400), inch: inches(54) }
/** While she has said nothing of her cloth. */
export const usualCloth = (unit: DisplayUnit): ClothWishes => ({
  kind: 'lightCotton',
  widths: USUAL_WIDTHS[unit],
  width: WIDTH[unit],
  manner: 'shortest',
  oneWay: false,
  selvedge: SELVEDGE,
  shrinkAlong: 0,
  shrinkAcross: 0,
  spare: SPARE_SHARE,
  matchAt: 'waist',
})
/** What stored rows fall back to, whichever unit they are read in. */
export const USUAL_CLOTH = usualCloth('cm')

/** Narrower is ribbon, wider is sheeting for theatres. Judgement. */
export const CLOTH_WIDTHS = { min: mm(300), max: mm(3000) } as const
/** More side by side are no help in a shop. Judgement. */
export const MOST_WIDTHS = 6
/** Beyond a quarter the square was measured wrong. Judgement. */
export const MOST_SHRINKAGE = 0.25
export const MOST_SPARE = 0.5
export const REPEATS = { min: mm(3), max: mm(1200) } as const
export const SELVEDGES = { min: mm(0), max: mm(60) } as const

/** The cloth of one width. */
export const clothOf = (w: ClothWishes, width: Mm = w.width): Cloth => ({
  width,
  selvedge: w.selvedge,
  shrinkAlong: w.shrinkAlong,
  shrinkAcross: w.shrinkAcross,
  oneWay: w.oneWay,
  ...(w.border ? { border: w.border } : {}),
  ...(w.repeatAlong === undefined && w.repeatAcross === undefined
    ? {}
    : {
        repeat: {
          ...(w.repeatAlong === undefined ? {} : { along: w.repeatAlong }),
          ...(w.repeatAcross === undefined ? {} : { across: w.repeatAcross }),
        },
      }),
})
