/**
 * One tile on its sheet: the part of the drawing inside the trim lines at true scale, corner
 * crosses, joint numbers, the name of the sheet, and under it bars of 100 mm and 4 in with the
 * words that tell a lost sheet where it belongs.
 */
import { boxOfPoints, type Box } from '../geometry/box.ts'
import { between, point, subtract, type Point } from '../geometry/point.ts'
import { line, type Line } from '../geometry/segment.ts'
import type { Path } from '../geometry/path.ts'
import type { PieceDrawing, PieceMark } from './piece-drawing.ts'
import { pathMark, placedMark, reach, textMark, type Mark } from './mark.ts'
import type { Page } from './page.ts'
import { meetsBox } from './ring.ts'
import { TILE_WORDS } from './sheet.words.ts'
import { SQUARE_INCH, SQUARE_MM } from './squares.ts'
import { sheetOf, type Placed, type Tile, type TilePlan } from './tiles.ts'
import { fitted, type Face } from './wrap.ts'

/** Arm of a corner cross; half of it may fall into the white a printer cannot reach. */
const ARM = 5
const TYPE = { strip: 2.8, joint: 4.5, sheet: 9 } as const

export interface PlacedDrawing {
  readonly drawing: PieceDrawing
  readonly placed: Placed
  /** Its marks on the board, and a box round each. */
  readonly marks: readonly { readonly mark: PieceMark; readonly box: Box }[]
}

export function placedDrawing(drawing: PieceDrawing, placed: Placed): PlacedDrawing {
  const marks = drawing.marks.map((m) => {
    const mark = placedMark(m, placed)
    return { mark, box: boxOfPoints(reach(mark)) }
  })
  return { drawing, placed, marks }
}

export interface TileWords {
  readonly garmentName: string
  readonly round?: number
  /** '' for sheets that may be cut from. */
  readonly stamp: string
  /** Said on every sheet where the pieces are not in full size. */
  readonly size?: string
}

export function tilePage(
  tile: Tile,
  plan: TilePlan,
  pieces: readonly PlacedDrawing[],
  words: TileWords,
  face: Face,
): Page {
  const { paper, trim } = sheetOf(plan, tile)
  const by = subtract(point(trim.left, trim.top), point(tile.box.left, tile.box.top))
  const seen = pieces.flatMap((p) =>
    p.marks
      .filter(({ box }) => overlap(box, tile.box))
      .map(({ mark }) => placedMark(mark, { turn: 0, by })),
  )
  const help = [sheetName(tile, trim), ...jointMarks(tile, plan, trim), ...trimMarks(trim)]
  const strip = stripMarks(tile, plan, trim, pieces, words, face)
  return {
    width: paper.width,
    height: paper.height,
    layers: [
      { part: 'furniture', marks: help },
      { part: 'drawing', window: trim, marks: seen },
      { part: 'furniture', marks: strip },
    ],
  }
}

/** Boxes come from sampled lines, so a line's own width and sampling are allowed for. */
const NEAR = 1
const overlap = (a: Box, b: Box): boolean =>
  a.left <= b.right + NEAR &&
  b.left <= a.right + NEAR &&
  a.top <= b.bottom + NEAR &&
  b.top <= a.bottom + NEAR

const sheetName = (tile: Tile, trim: Box): Mark =>
  textMark(tile.name, point(trim.left + 4, trim.top + 4 + TYPE.sheet), TYPE.sheet, { tone: 'pale' })

function trimMarks(trim: Box): Mark[] {
  const corners = [
    point(trim.left, trim.top),
    point(trim.right, trim.top),
    point(trim.right, trim.bottom),
    point(trim.left, trim.bottom),
  ]
  const frame = corners.map((a, i) => line(a, corners[(i + 1) % 4] ?? a))
  return [pathMark('trim', frame), ...corners.map((c) => pathMark('cross', crossAt(c)))]
}
const crossAt = (c: Point): Path => [
  line(point(c.x - ARM, c.y), point(c.x + ARM, c.y)),
  line(point(c.x, c.y - ARM), point(c.x, c.y + ARM)),
]

/** Both sheets of a joint carry its number, just inside the trim line. */
function jointMarks(tile: Tile, { joints }: TilePlan, trim: Box): Mark[] {
  const [midX, midY] = [(trim.left + trim.right) / 2, (trim.top + trim.bottom) / 2]
  const gap = 2
  return joints.flatMap((j) => {
    const first = j.first === tile.name
    if (!first && j.second !== tile.name) return []
    const across = j.side === 'right'
    const at = across
      ? point(first ? trim.right - gap : trim.left + gap, midY + TYPE.joint * 0.36)
      : point(midX, first ? trim.bottom - gap : trim.top + gap + TYPE.joint * 0.73)
    const anchor = across ? (first ? 'end' : 'start') : 'middle'
    return [textMark(`${j.number}`, at, TYPE.joint, { anchor, tone: 'soft' })]
  })
}

function stripMarks(
  tile: Tile,
  plan: TilePlan,
  trim: Box,
  pieces: readonly PlacedDrawing[],
  words: TileWords,
  face: Face,
): Mark[] {
  const here = pieces.filter((p) => meetsBox(p.placed.ring, tile.box))
  const parts = here.map((p) =>
    TILE_WORDS.lies(p.drawing.piece.words, {
      grainUp: p.placed.turn % 2 === 0,
      fold: isFolded(p, tile),
    }),
  )
  const row = tile.name.replace(/\d+$/, '')
  const place = TILE_WORDS.place(row, tile.column + 1, plan.columns)
  const notes = [words.size, words.stamp].filter((w) => w !== undefined && w !== '')
  // Clear of the corner cross at its left, and of the words before the bars.
  const x = trim.left + 2
  const beside = trim.right - x - SQUARE_INCH - 16
  const round = words.round === undefined ? '' : ` · ${TILE_WORDS.round(words.round)}`
  const left = beside - face.width(`${tile.name} · ${round}`, TYPE.strip)
  const name = fitted(words.garmentName, TYPE.strip, Math.max(left, TYPE.strip * 4), face)
  const foot = (i: number): number => trim.bottom + 3.7 + i * 3.8
  return [
    textMark(`${tile.name} · ${name}${round}`, point(x, foot(0)), TYPE.strip),
    textMark(
      fitted([...notes, place].join(' · '), TYPE.strip, beside, face),
      point(x, foot(1)),
      TYPE.strip,
    ),
    textMark(
      fitted(parts.join(' · '), TYPE.strip, trim.right - x, face),
      point(x, foot(2)),
      TYPE.strip,
    ),
    ...scaleBar(trim.right, foot(0) - 1, SQUARE_MM, '100 mm'),
    ...scaleBar(trim.right, foot(1) - 1, SQUARE_INCH, '4 in'),
  ]
}

/** A line with a tick at either end: the distance between the ticks is the bar. */
function scaleBar(right: number, y: number, long: number, words: string): Mark[] {
  const x = right - long
  const tick = (at: number): Line => line(point(at, y - 1.3), point(at, y + 1.3))
  return [
    pathMark('square', [line(point(x, y), point(right, y)), tick(x), tick(right)], 'scaleBar'),
    textMark(words, point(right - SQUARE_INCH - 2, y + 1.1), TYPE.strip, { anchor: 'end' }),
  ]
}

const isFolded = ({ marks }: PlacedDrawing, tile: Tile): boolean =>
  marks.some(
    ({ mark }) =>
      mark.kind === 'path' &&
      mark.line === 'fold' &&
      mark.path.some(
        (s) => s.kind === 'line' && meetsBox([s.from, between(s.from, s.to, 0.5), s.to], tile.box),
      ),
  )
