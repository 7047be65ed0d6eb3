/**
 * What the two printed squares say once she has measured them: whether the print is true, how
 * far a long line would be off, which pages go into the bin, and by how much a corrected file
 * must be stretched so that the same printer prints it true, across and down apart.
 */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { inches, mm, type Mm } from '../units/length.ts'
import { decimals } from '../units/number.ts'
import { PRINT_WORDS } from './print-scale.words.ts'
import { SQUARE_INCH, SQUARE_MM } from './squares.ts'
import type { Stretch } from './page.ts'

/** Half a millimetre on 100 mm: a pencil line. Common practice, no source. */
export const TRUE_WITHIN = 0.005
/** Two squares on one sheet read half a millimetre apart either way may differ by this. */
const AGREE_WITHIN = 0.01
/** Outside this a sheet was fitted to the page or the ruler misread. Common practice, no source. */
export const BELIEVED = { least: 0.9, most: 1.1 } as const
/** Readings are typed to a tenth of a millimetre; past that everything is noise. */
const NOISE = 1e-9
/** The long line it is told for: about from shoulder to waist. */
export const LONG_LINE = mm(500)
const LONG_LINE_INCH = inches(20)
export const longLine = ({ unit }: UnitChoice): Mm => (unit === 'inch' ? LONG_LINE_INCH : LONG_LINE)

export interface SquareRead {
  /** From left to right on the sheet held upright. */
  readonly across?: Mm
  readonly down?: Mm
}
export interface PrintRead {
  readonly mm100?: SquareRead
  readonly inch4?: SquareRead
}
export type Way = 'across' | 'down'
const WAYS: readonly Way[] = ['across', 'down']

export type PrintScale =
  | {
      readonly ok: true
      /** Both ways within `TRUE_WITHIN`. */
      readonly isTrue: boolean
      /** Printed over true: 0.985 prints 98.5 mm for 100. */
      readonly share: Readonly<Record<Way, number>>
      /** How much longer a line of 500 mm is printed; shorter is negative. */
      readonly off500: Readonly<Record<Way, Mm>>
      /** A way she did not measure, taken to be like the other. */
      readonly assumed?: Way
      /** For `scale` of a new file; absent where the print is true. */
      readonly correction?: Stretch
      /** What it means, in order, for reading. */
      readonly words: readonly string[]
    }
  | { readonly ok: false; readonly reason: string }

/** `printed` is the stretch of the file she measured, where that was a corrected one already. */
export function readPrint(
  read: PrintRead,
  units: UnitChoice,
  printed: Stretch = { x: 1, y: 1 },
): PrintScale {
  const squares = [
    { name: '100 mm', side: SQUARE_MM, sides: read.mm100 ?? {} },
    { name: '4 in', side: SQUARE_INCH, sides: read.inch4 ?? {} },
  ]
  const sides = squares.flatMap(({ name, side, sides }) =>
    WAYS.flatMap((way) => {
      const value = sides[way]
      return value === undefined ? [] : [{ name, side, way, value }]
    }),
  )
  const absurd = sides.find(({ side, value }) => !believed(value / side))
  if (absurd) return { ok: false, reason: absurdWords(absurd) }
  const found: Partial<Record<Way, number>> = {}
  for (const way of WAYS) {
    const own = sides.filter((s) => s.way === way)
    const [a, b] = own
    if (a && b && Math.abs(a.value / a.side - b.value / b.side) > AGREE_WITHIN + NOISE)
      return { ok: false, reason: disagreeWords(way, a, b) }
    const sum = (of: 'value' | 'side'): number => own.reduce((total, s) => total + s[of], 0)
    if (own.length > 0) found[way] = sum('value') / sum('side')
  }
  const some = found.across ?? found.down
  if (some === undefined) return { ok: false, reason: PRINT_WORDS.measureASide }
  const share = { across: found.across ?? some, down: found.down ?? some }
  const isTrue = WAYS.every((way) => Math.abs(share[way] - 1) <= TRUE_WITHIN + NOISE)
  const assumed = WAYS.find((way) => found[way] === undefined)
  const off = (way: Way): Mm => mm((share[way] - 1) * LONG_LINE)
  return {
    ok: true,
    isTrue,
    share,
    off500: { across: off('across'), down: off('down') },
    ...(assumed ? { assumed } : {}),
    ...(isTrue ? {} : { correction: { x: printed.x / share.across, y: printed.y / share.down } }),
    words: wordsOf(share, isTrue, assumed, units),
  }
}

const believed = (share: number): boolean =>
  Number.isFinite(share) && share >= BELIEVED.least && share <= BELIEVED.most

interface Side {
  readonly name: string
  readonly side: number
  readonly value: number
}
/** To a tenth of a millimetre: centimetres to one place are too coarse for half a millimetre. */
const fineMm = (value: number): string => `${decimals(value, 1)} mm`
const sixteenths = (value: number): string =>
  formatLength(mm(value), { unit: 'inch', inchStep: 16 })
/** Finer than a line on paper needs to be: what a ruler may be misread by. */
export const fineLength = (value: number, { unit }: UnitChoice): string =>
  unit === 'inch' ? sixteenths(value) : fineMm(value)
/** In the unit the square is named by, whichever she works in: her ruler lay on it. */
const ofSquare = ({ side }: Side, value: number): string =>
  side === SQUARE_INCH ? sixteenths(value) : fineMm(value)

function absurdWords(square: Side): string {
  const { name, side, value } = square
  if (!Number.isFinite(value)) return PRINT_WORDS.measureAgain(name)
  const say = (length: number): string => ofSquare(square, length)
  return PRINT_WORDS.absurd(name, say(value), say(side * BELIEVED.least), say(side * BELIEVED.most))
}

const disagreeWords = (way: Way, a: Side, b: Side): string =>
  PRINT_WORDS.disagree(way, ofSquare(a, a.value), a.name, ofSquare(b, b.value), b.name)

function wordsOf(
  share: Readonly<Record<Way, number>>,
  isTrue: boolean,
  assumed: Way | undefined,
  units: UnitChoice,
): string[] {
  const offs = WAYS.map((way) => longWords(share[way], way, units))
  const same = Math.abs(share.across - share.down) < NOISE
  const said = same ? [longWords(share.across, 'both', units)] : offs
  const half = assumed ? [PRINT_WORDS.assumed(assumed)] : []
  return isTrue
    ? [PRINT_WORDS.isTrue(...trueWithin(units)), ...said, ...half]
    : [PRINT_WORDS.notTrue, ...said, ...half]
}

/** How far off it may be, and on what. */
const trueWithin = (units: UnitChoice): [within: string, on: string] =>
  units.unit === 'inch'
    ? [sixteenths(TRUE_WITHIN * LONG_LINE_INCH), formatLength(LONG_LINE_INCH, units)]
    : [fineMm(TRUE_WITHIN * SQUARE_MM), `${SQUARE_MM} mm`]

function longWords(share: number, way: Way | 'both', units: UnitChoice): string {
  const long = longLine(units)
  const off = (share - 1) * long
  const by = fineLength(Math.abs(off), units)
  const line = formatLength(long, units)
  return Math.abs(off) < 0.05 || by === '0 in'
    ? PRINT_WORDS.lineTrue(line, way)
    : PRINT_WORDS.lineOff(line, way, by, off > 0)
}

/** The pages of a file, counted from 1: page one and the sheets come first, the steps last. */
export interface PagesOf {
  readonly tiled: number
  readonly steps: number
}

/** Which pages go into the bin; every sheet, because all came from the same printer. */
export function binWords(print: PrintScale, { tiled, steps }: PagesOf): string {
  if (!print.ok || print.isTrue) return PRINT_WORDS.everyPageStays
  return PRINT_WORDS.bin(tiled, steps)
}

/** Printed on page one of a corrected file. */
export function correctedWords({ x, y }: Stretch): string {
  const drawn = (by: number, way: Way | 'both') => ({
    way,
    by: `${decimals(Math.abs((by - 1) * 100), 2)} %`,
    larger: by >= 1,
  })
  return PRINT_WORDS.corrected(
    x === y ? [drawn(x, 'both')] : [drawn(x, 'across'), drawn(y, 'down')],
  )
}
