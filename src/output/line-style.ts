/**
 * The lines of a drawing on paper: width and dash in millimetres, so that a printed line is as
 * wide as it was meant whatever the writer. Everything is drawn in black or grey: the sheets
 * must read on any printer, and a line is told from another by its stitch, never by colour.
 * Widths are pencil widths (0.3 to 0.7 mm); dashes are the house's own.
 */
export interface LineStyle {
  readonly width: number
  /** Alternating mark and gap, mm; empty for an unbroken line. */
  readonly dash: readonly number[]
  readonly ends: 'butt' | 'round'
  /** 0 is black, 1 is the paper. */
  readonly grey: number
}

const style = (
  width: number,
  dash: readonly number[] = [],
  grey = 0,
  ends: LineStyle['ends'] = 'butt',
): LineStyle => ({ width, dash, ends, grey })

export const LINES = {
  seam: style(0.6),
  cutting: style(0.35, [16, 3, 2, 3]),
  fold: style(0.45, [18, 4, 4, 4]),
  bracket: style(0.35),
  grain: style(0.35),
  dart: style(0.45),
  dartMiddle: style(0.25, [2, 4]),
  inner: style(0.45, [6, 2.5]),
  level: style(0.45, [0.1, 2.4], 0.35, 'round'),
  plumb: style(0.3, [10, 2, 1.5, 2], 0.35),
  notch: style(0.5),
  clip: style(0.35),
  stayStitch: style(0.25, [2.4, 1.4]),
  point: style(0.3),
  trim: style(0.2, [], 0.55),
  cross: style(0.25),
  square: style(0.25),
  map: style(0.35),
  hair: style(0.2, [], 0.5),
} as const satisfies Record<string, LineStyle>

export type LineName = keyof typeof LINES

/** How dark a text stands: settled words are ink, marks that only help joining are pale. */
export const TONES = { ink: 0, soft: 0.4, pale: 0.62, stamp: 0.82 } as const
export type Tone = keyof typeof TONES
