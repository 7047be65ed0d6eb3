/** The instructions laid out on sheets: the same lines as the plain text, wrapped and numbered. */
import { point } from '../geometry/point.ts'
import type { InstructionLine } from './instruction-page.ts'
import { placedMark, textMark, type Mark } from './mark.ts'
import type { Page } from './page.ts'
import { PRINT_MARGIN, type PaperSize } from './paper.ts'
import type { Figure } from './scaled-drawing.ts'
import { STEPS_WORDS } from './sheet.words.ts'
import { wrapped, type Face } from './wrap.ts'

/** Room for punched holes and a thumb. */
const MARGIN = PRINT_MARGIN + 6
const LEAD = 1.45
/** Column for the number of a step. */
const NUMBER_COLUMN = 9
const TYPE = { title: 7.5, head: 4.8, text: 3.7, foot: 3 } as const

interface Row {
  readonly height: number
  readonly marks: (y: number) => readonly Mark[]
  /** A head is not left alone at the foot of a page. */
  readonly keepWithNext: boolean
  /** The drawing of what follows. */
  readonly drawn?: true
}

/** Room for a small drawing under the head of its steps. */
export const figureRoom = (paper: PaperSize): { width: number; height: number } => ({
  width: paper.width - 2 * MARGIN,
  height: paper.height - 2 * MARGIN - 6 - 4 * TYPE.head,
})

/** `foot` stands under every page, before "1 of 3"; `key` under the title. */
export function stepsPages(
  lines: readonly InstructionLine[],
  paper: PaperSize,
  foot: string,
  face: Face,
  figures: Readonly<Partial<Record<string, Figure>>> = {},
  key?: Figure,
): Page[] {
  const rows = rowsOf(lines, paper, face, figures)
  if (key) rows.splice(1, 0, figureRow(key))
  const bottom = paper.height - MARGIN - 6
  const pages: Mark[][] = [[]]
  let y = MARGIN
  for (const [i, row] of rows.entries()) {
    if (y + together(rows, i, bottom - MARGIN) > bottom && y > MARGIN) {
      pages.push([])
      y = MARGIN
    }
    pages.at(-1)?.push(...row.marks(y))
    y += row.height
  }
  return pages.map((marks, i) => ({
    width: paper.width,
    height: paper.height,
    layers: [
      {
        marks: [
          ...marks,
          textMark(
            STEPS_WORDS.page(foot, i + 1, pages.length),
            point(MARGIN, paper.height - MARGIN),
            TYPE.foot,
            { tone: 'soft' },
          ),
        ],
      },
    ],
  }))
}

/** A step no longer than this share of a page is not parted. Judgement. */
const UNPARTED = 0.4

/**
 * Height that has to go on one page from row `i` on: a head with the row after it; a head with a
 * drawing with all of a short step, so that nobody turns the page with the work in hand, and with
 * the first row of a long one.
 */
function together(rows: readonly Row[], i: number, most: number): number {
  const [row, next] = [rows[i], rows[i + 1]]
  if (!row) return 0
  if (!row.keepWithNext) return row.height
  if (!next?.drawn) return row.height + (next?.height ?? 0)
  const end = rows.findIndex((r, k) => k > i && r.keepWithNext)
  const whole = rows.slice(i, end < 0 ? undefined : end).reduce((sum, r) => sum + r.height, 0)
  return whole <= UNPARTED * most ? whole : row.height + next.height + (rows[i + 2]?.height ?? 0)
}

function rowsOf(
  lines: readonly InstructionLine[],
  paper: PaperSize,
  face: Face,
  figures: Readonly<Partial<Record<string, Figure>>>,
): Row[] {
  const width = paper.width - 2 * MARGIN
  const rows: Row[] = []
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i]
    if (!line) continue
    const next = lines[i + 1]
    if (line.kind === 'number') {
      // Numbers are short: two to a row.
      const pair = next?.kind === 'number' ? [line, next] : [line]
      i += pair.length - 1
      rows.push(numberRow(pair, width, face))
    } else rows.push(textRow(line, width, face))
    const figure = line.figure && figures[line.figure]
    if (figure) rows.push(figureRow(figure))
  }
  return rows
}

function numberRow(pair: readonly InstructionLine[], width: number, face: Face): Row {
  const half = width / 2
  const cells = pair.map(({ text }) => wrapped(text, TYPE.text, half - 4, face))
  return {
    height: Math.max(...cells.map((c) => c.length)) * TYPE.text * LEAD,
    keepWithNext: false,
    marks: (y) =>
      cells.flatMap((cell, column) => textAt(cell, MARGIN + column * half, y, TYPE.text)),
  }
}

function textRow(line: InstructionLine, width: number, face: Face): Row {
  const size = line.kind === 'title' ? TYPE.title : line.kind === 'head' ? TYPE.head : TYPE.text
  const indent = line.kind === 'step' ? NUMBER_COLUMN : 0
  const cell = wrapped(line.text, size, width - indent, face)
  const above = line.kind === 'head' ? 4 : 0
  const below = line.kind === 'title' || line.kind === 'head' ? 1.5 : 1
  return {
    height: above + cell.length * size * LEAD + below,
    keepWithNext: line.kind === 'head',
    marks: (y) => [
      ...(line.mark ? [textMark(line.mark, point(MARGIN, y + above + size), size)] : []),
      ...textAt(cell, MARGIN + indent, y + above, size),
    ],
  }
}

const figureRow = ({ height, marks }: Figure): Row => ({
  height: height + 3,
  keepWithNext: false,
  drawn: true,
  marks: (y) => marks.map((m) => placedMark(m, { turn: 0, by: point(MARGIN, y + 2) })),
})

const textAt = (cell: readonly string[], x: number, y: number, size: number): Mark[] =>
  cell.map((text, i) => textMark(text, point(x, y + size + i * size * LEAD), size))
