/** The cloth she has or means to buy. Lengths in mm, as it lies in the shop. */
import type { DisplayUnit } from '../units/format.ts'
import { inches, mm, type Mm } from '../units/length.ts'

export interface Border {
  /** From its selvedge to where it ends. */
  readonly depth: Mm
  /** From that selvedge to where the finished hem shall lie. */
  readonly hemAt: Mm
}

export interface Cloth {
  /** From selvedge to selvedge. */
  readonly width: Mm
  /** Not used along either selvedge. */
  readonly selvedge: Mm
  /** Share lost in the wash, along and across; 0.03 is 3 %. */
  readonly shrinkAlong: number
  readonly shrinkAcross: number
  /** Nap, shading or a print with an upper end: all pieces one way. */
  readonly oneWay: boolean
  /** A border along one selvedge: hems lie on it, so every piece lies across the cloth. */
  readonly border?: Border
  /** Stripes or checks to be matched: one repeat along the cloth, one across it. */
  readonly repeat?: { readonly along?: Mm; readonly across?: Mm }
}

/** 10 to 15 mm are usual; the mean. Common practice, no source. */
export const SELVEDGE = mm(12)
/**
 * Widths a shop has, by the unit its labels speak: nobody sells 35 3/8 in. Cloth labelled 44/45 in
 * counts as 45. Common practice, no source.
 */
export const USUAL_WIDTHS: Readonly<Record<DisplayUnit, readonly Mm[]>> = {
  cm: [900, 1150, 1400, 1500].map(mm),
  inch: [36, 45, 54, 60].map(inches),
}

export const plainCloth = (width: Mm): Cloth => ({
  width,
  selvedge: SELVEDGE,
  shrinkAlong: 0,
  shrinkAcross: 0,
  oneWay: false,
})

/** Between the selvedges, after the wash: what there is to lay pieces on. */
export const usableWidth = (c: Cloth): Mm =>
  mm(Math.max(0, c.width * (1 - c.shrinkAcross) - 2 * c.selvedge))
