/**
 * Paper sizes, portrait, millimetres. A0, A3, A4: ISO 216:2007. Letter and Tabloid: ANSI/ASME
 * Y14.1, sizes A (8.5 × 11 in) and B (11 × 17 in). A roll has only a width. A new size is one
 * more row here.
 */
import { PAPER_WORDS } from './sheet.words.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { inches, mm, MM_PER_INCH, type Mm } from '../units/length.ts'

export interface PaperSize {
  readonly name: string
  readonly width: Mm
  readonly height: Mm
  /** Printed by a shop on a wide printer: page one stands on the first sheet itself. */
  readonly big?: boolean
  /** Cut off the roll where the drawing ends; the height is the longest page there is. */
  readonly roll?: boolean
}

export const PAPERS = {
  a4: { name: 'A4', width: mm(210), height: mm(297) },
  letter: { name: 'Letter', width: inches(8.5), height: inches(11) },
  a3: { name: 'A3', width: mm(297), height: mm(420) },
  tabloid: { name: 'Tabloid', width: inches(11), height: inches(17) },
  a0: { name: 'A0', width: mm(841), height: mm(1189), big: true },
} as const satisfies Record<string, PaperSize>

export type PaperId = keyof typeof PAPERS
export const isPaperId = (name: string): name is PaperId => Object.hasOwn(PAPERS, name)
export const PAPER_IDS = Object.keys(PAPERS) as readonly PaperId[]

/** A roll as wide as she says, the page as long as it must be. */
export interface RollPaper {
  readonly roll: Mm
}
export type PaperChoice = PaperId | RollPaper
/** What a wide printer holds where she names no other: the 36 in roll. Common practice, no source. */
export const USUAL_ROLL = mm(914)
/** Rolls run from 297 mm (11.7 in) to 1,626 mm (64 in); from memory. */
export const ROLL_WIDTHS = { min: mm(297), max: mm(1626) } as const

/** Home printers leave 3 to 8 mm white round a sheet; 10 is sure. Common practice, no source. */
export const PRINT_MARGIN = mm(10)

/** A page may be 14,400 units of 1/72 in long: 200 in, 5,080 mm (ISO 32000-1, annex C.2). */
export const LONGEST_PAGE = mm((14_400 / 72) * MM_PER_INCH)

export type RollRead =
  { readonly ok: true; readonly paper: RollPaper } | { readonly ok: false; readonly reason: string }

/** A typed width of a roll; refuses what no roll has. */
export function readRoll(width: number, units: UnitChoice): RollRead {
  const { min, max } = ROLL_WIDTHS
  if (Number.isFinite(width) && width >= min && width <= max)
    return { ok: true, paper: { roll: mm(width) } }
  const said = Number.isFinite(width) ? formatLength(mm(width), units) : PAPER_WORDS.noNumber
  return {
    ok: false,
    reason: PAPER_WORDS.noRoll(said, formatLength(min, units), formatLength(max, units)),
  }
}

/** The sheet upright: portrait, or the roll as it runs. */
export function paperOf(choice: PaperChoice): PaperSize {
  if (typeof choice === 'string') return PAPERS[choice]
  return { name: 'roll', width: choice.roll, height: LONGEST_PAGE, big: true, roll: true }
}

/** The same sheet lying across. */
export const acrossPaper = (paper: PaperSize): PaperSize => ({
  ...paper,
  width: paper.height,
  height: paper.width,
})
export const liesAcross = (paper: PaperSize): boolean => !paper.roll && paper.width > paper.height

/** Every way the sheet may lie: upright first. A roll has one. */
export const waysToLie = (paper: PaperSize): readonly PaperSize[] =>
  paper.roll ? [paper] : [paper, acrossPaper(paper)]

/** "A4", "A4 lying across", "a roll of 914 mm". */
export function paperWords(paper: PaperSize, units: UnitChoice): string {
  if (paper.roll) return PAPER_WORDS.roll(formatLength(paper.width, units))
  return liesAcross(paper) ? PAPER_WORDS.across(paper.name) : paper.name
}

/** The sheet the steps are set on: what fits twice on A3 and Tabloid, else what she has at home. */
export function readingPaper(choice: PaperChoice, units: UnitChoice): PaperSize {
  if (choice === 'a4' || choice === 'a3') return PAPERS.a4
  if (choice === 'letter' || choice === 'tabloid') return PAPERS.letter
  return units.unit === 'inch' ? PAPERS.letter : PAPERS.a4
}
