/**
 * How a drawing larger than the paper is parted into sheets. The board is the whole drawing laid
 * out flat, millimetres; a tile is the part of it inside the trim lines of one sheet. Tiles meet
 * edge to edge: rows are lettered, columns numbered, so every sheet has its own name (A1, B2).
 * All pieces lie on one board and share sheets; the paper lies upright or across, whichever takes
 * fewer, and a sheet on which nothing is drawn is left out.
 */
import { boxOfPoints, boxHeight, boxWidth, type Box } from '../geometry/box.ts'
import { mm, type Mm } from '../units/length.ts'
import { add, point, subtract, type Point } from '../geometry/point.ts'
import { placedPoint, type Placing, type Quarter } from './mark.ts'
import { PRINT_MARGIN, waysToLie, type PaperSize } from './paper.ts'
import type { Ring } from './ring.ts'
import type { Laying } from './tile-board.ts'
import type { Grid } from './tile-patterns.ts'
import { CLEAR, gridOf, shapeOf, type TileInput } from './tile-raster.ts'
import { fewestSheets } from './tile-search.ts'
import { cellBox, touchedTiles } from './tile-touched.ts'

/** A strip under the trim lines for the name of the sheet and its two bars. */
export const LABEL_STRIP = 12

export interface Placed extends Placing {
  readonly name: string
  /** The ring on the board. */
  readonly ring: Ring
}
export interface Tile {
  /** From 0, downwards and to the right. */
  readonly row: number
  readonly column: number
  /** 'A1': row letter, column number. */
  readonly name: string
  /** The part of the board inside the trim lines. */
  readonly box: Box
}
/** Two sheets that are glued together along one trim line; both carry the number. */
export interface Joint {
  readonly number: number
  readonly first: string
  readonly second: string
  /** Where the second sheet lies, seen from the first. */
  readonly side: 'right' | 'below'
}
export interface TilePlan {
  /** As it lies: wider than high where it lies across. */
  readonly paper: PaperSize
  /** Inside the trim lines, measured on the sheet from its top-left corner. */
  readonly trim: Box
  readonly placed: readonly Placed[]
  /** Where on the board the block is kept free. */
  readonly block?: Box
  /** Only sheets that carry a part of the drawing, by rows. */
  readonly tiles: readonly Tile[]
  readonly rows: number
  readonly columns: number
  readonly joints: readonly Joint[]
}

export interface TileOptions {
  /** White the printer leaves, mm. */
  readonly margin?: number
  /** A block of this size is kept free, whole on one sheet. */
  readonly block?: { readonly width: number; readonly height: number }
}

export function trimOf(paper: PaperSize, margin: number = PRINT_MARGIN): Box {
  const trim = {
    left: margin,
    top: margin,
    right: paper.width - margin,
    bottom: paper.height - margin - LABEL_STRIP,
  }
  if (!(trim.right - trim.left > 0 && trim.bottom - trim.top > 0))
    throw new Error(`tiles: a margin of ${margin} mm leaves nothing of ${paper.name}`)
  return trim
}

/** Lays pieces on the paper, upright or across; `ways` are the ways it may lie. */
export function planTiles(
  inputs: readonly TileInput[],
  paper: PaperSize,
  { margin = PRINT_MARGIN, block }: TileOptions = {},
  ways: readonly PaperSize[] = waysToLie(paper),
): TilePlan {
  if (inputs.length === 0) throw new Error('tiles: no piece to lay out')
  const all = block ? [...inputs, blockInput(block)] : inputs
  const plans = ways.map((lying) => laidOut(all, lying, margin))
  return plans.reduce((a, b) => (b.tiles.length < a.tiles.length ? b : a))
}

function laidOut(inputs: readonly TileInput[], paper: PaperSize, margin: number): TilePlan {
  const sheet = paper.roll ? { ...paper, height: rollLength(inputs, paper, margin) } : paper
  const trim = trimOf(sheet, margin)
  const cell = { width: boxWidth(trim), height: boxHeight(trim) }
  const grid = gridOf(cell)
  const shapes = inputs.map((input) =>
    (input.whole ? UNTURNED : TURNS).map((turn) => shapeOf(input, turn, grid)),
  )
  const laid = placedOn(fewestSheets(shapes, grid), inputs, grid)
  const touched = touchedTiles(laid, inputs, cell)
  // The board begins with the first row and column that are used.
  const [top, left] = [Math.min(...touched.map(([r]) => r)), Math.min(...touched.map(([, c]) => c))]
  const placed = laid.map((p) => shifted(p, point(-left * cell.width, -top * cell.height)))
  const rows = 1 + Math.max(...touched.map(([r]) => r - top))
  const block = placed.find((p) => p.name === BLOCK)
  const tiles = touched.map(([r, c]): Tile => {
    const [row, column] = [r - top, c - left]
    const box = cellBox(row, column, cell)
    const cutOff = paper.roll ? { ...box, bottom: endOfRow(placed, box) } : box
    return { row, column, name: tileName(row, column), box: cutOff }
  })
  return {
    paper,
    trim,
    placed: placed.filter((p) => p !== block),
    ...(block ? { block: boxOfPoints(block.ring) } : {}),
    tiles,
    rows,
    columns: 1 + Math.max(...tiles.map((t) => t.column)),
    joints: jointsOf(tiles),
  }
}

/** No more of the roll than all pieces one under the other would take, and no more than a page. */
function rollLength(inputs: readonly TileInput[], paper: PaperSize, margin: number): Mm {
  const longs = inputs.map(({ ring }) => {
    const box = boxOfPoints(ring)
    return Math.max(boxWidth(box), boxHeight(box))
  })
  const all = longs.reduce((sum, long) => sum + long + 4 * CLEAR, 0)
  return mm(Math.min(paper.height, all + 2 * margin + LABEL_STRIP))
}

/** Where the last piece of a row ends; the roll is cut a little below, or the page is full. */
function endOfRow(placed: readonly Placed[], row: Box): number {
  const boxes = placed.map((p) => boxOfPoints(p.ring)).filter((b) => b.top < row.bottom)
  const lowest = Math.max(...boxes.filter((b) => b.bottom > row.top).map((b) => b.bottom))
  return Math.min(row.bottom, lowest + CLEAR)
}

/** The sheet a tile is printed on and where its trim lines lie; off a roll it is cut to length. */
export function sheetOf({ paper, trim }: TilePlan, tile: Tile): { paper: PaperSize; trim: Box } {
  if (!paper.roll) return { paper, trim }
  const bottom = trim.top + boxHeight(tile.box)
  const height = mm(bottom + LABEL_STRIP + trim.top)
  return { paper: { ...paper, height }, trim: { ...trim, bottom } }
}

const shifted = (p: Placed, by: Point): Placed => ({
  ...p,
  by: add(p.by, by),
  ring: p.ring.map((q) => add(q, by)),
})

const TURNS: readonly Quarter[] = [0, 1, 2, 3]
const UNTURNED: readonly Quarter[] = [0]

const BLOCK = 'block'
const blockInput = ({ width, height }: { width: number; height: number }): TileInput => ({
  name: BLOCK,
  ring: [point(0, 0), point(width, 0), point(width, height), point(0, height)],
  whole: true,
})

function placedOn({ laid }: Laying, inputs: readonly TileInput[], grid: Grid): Placed[] {
  return inputs.map(({ name, ring }, index) => {
    const own = laid.find((l) => l.index === index)
    if (!own) throw new Error(`tiles: ${name} was not laid`)
    const { turn, corner } = own.shape
    const by = point(own.x * grid.width - corner.x, own.y * grid.height - corner.y)
    return { name, turn, by, ring: ring.map((p) => placedPoint(p, { turn, by })) }
  })
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'
export function tileName(row: number, column: number): string {
  const round = Math.floor(row / LETTERS.length)
  const letter = LETTERS[row % LETTERS.length] ?? ''
  return `${round > 0 ? (LETTERS[round - 1] ?? '') : ''}${letter}${column + 1}`
}

function jointsOf(tiles: readonly Tile[]): Joint[] {
  const named = new Map(tiles.map((t) => [t.name, t]))
  const pairs = tiles.flatMap((t) => {
    const right = named.get(tileName(t.row, t.column + 1))
    const below = named.get(tileName(t.row + 1, t.column))
    return [
      ...(right ? [{ first: t.name, second: right.name, side: 'right' as const }] : []),
      ...(below ? [{ first: t.name, second: below.name, side: 'below' as const }] : []),
    ]
  })
  return pairs.map((pair, i) => ({ number: i + 1, ...pair }))
}

/** A board point on the sheet of a tile, from the sheet's top-left corner. */
export const onSheet = (p: Point, tile: Tile, trim: Box): Point =>
  add(subtract(p, point(tile.box.left, tile.box.top)), point(trim.left, trim.top))
