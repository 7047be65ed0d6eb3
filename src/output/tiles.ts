/**
 * How a drawing larger than the paper is parted into sheets. The board is the whole drawing laid
 * out flat, millimetres; a tile is the part of it inside the trim lines of one sheet. Tiles meet
 * edge to edge: rows are lettered, columns numbered, so every sheet has its own name (A1, B2).
 * A few ways of laying the pieces are tried (side by side, one under the other, turned by
 * quarters, shifted against the trim lines) and the one with the fewest sheets is taken.
 */
import { boxOfPoints, boxHeight, boxWidth, grown, type Box } from '../geometry/box.ts'
import { add, point, subtract, type Point } from '../geometry/point.ts'
import { placedPoint, type Placing, type Quarter } from './mark.ts'
import { PRINT_MARGIN, type PaperSize } from './paper.ts'
import { meetsBox, type Ring } from './ring.ts'

/** A strip under the trim lines for the name of the sheet and its 50 mm bar. */
export const LABEL_STRIP = 9
/** White kept between a piece and the border of the board, and between two pieces. */
export const CLEAR = 4

export interface TileInput {
  readonly name: string
  /** The closed line the scissors follow, in the piece's own millimetres. */
  readonly ring: Ring
}
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
  readonly paper: PaperSize
  /** Inside the trim lines, measured on the sheet from its top-left corner. */
  readonly trim: Box
  readonly placed: readonly Placed[]
  /** Only sheets that carry a part of a piece, by rows. */
  readonly tiles: readonly Tile[]
  readonly rows: number
  readonly columns: number
  readonly joints: readonly Joint[]
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

export function planTiles(
  inputs: readonly TileInput[],
  paper: PaperSize,
  margin: number = PRINT_MARGIN,
): TilePlan {
  if (inputs.length === 0) throw new Error('tiles: no piece to lay out')
  const trim = trimOf(paper, margin)
  const cell = { width: boxWidth(trim), height: boxHeight(trim) }
  let best: { placed: readonly Placed[]; tiles: readonly Tile[]; size: number } | undefined
  for (const laid of layings(inputs)) {
    for (const by of shifts(laid, cell)) {
      const placed = laid.map((p) => shifted(p, by))
      const tiles = tilesOf(placed, cell)
      const size = extent(placed)
      const fewer = !best || tiles.length < best.tiles.length
      // Of equal counts the smaller board: fewer joints to glue.
      if (fewer || (tiles.length === best?.tiles.length && size < best.size - 1e-6))
        best = { placed, tiles, size }
    }
  }
  if (!best) throw new Error(`tiles: ${inputs.length} pieces have no laying`)
  const rows = 1 + Math.max(...best.tiles.map((t) => t.row))
  const columns = 1 + Math.max(...best.tiles.map((t) => t.column))
  return {
    paper,
    trim,
    placed: best.placed,
    tiles: best.tiles,
    rows,
    columns,
    joints: jointsOf(best.tiles),
  }
}

const TURNS: readonly Quarter[] = [0, 1, 2, 3]

/** Every turn of every piece, in one row and in one column. */
function layings(inputs: readonly TileInput[]): Placed[][] {
  return turnings(inputs.length).flatMap((turns) =>
    inputs.length === 1
      ? [laidOut(inputs, turns, 'row')]
      : [laidOut(inputs, turns, 'row'), laidOut(inputs, turns, 'column')],
  )
}
/** A half turn of the first piece only mirrors the board, so the first is turned by 0 and 90°. */
function turnings(count: number): Quarter[][] {
  let all: Quarter[][] = [[0], [1]]
  for (let i = 1; i < count; i++) all = all.flatMap((t) => TURNS.map((turn) => [...t, turn]))
  return all
}

function laidOut(
  inputs: readonly TileInput[],
  turns: readonly Quarter[],
  way: 'row' | 'column',
): Placed[] {
  let [x, y] = [0, 0]
  return inputs.map(({ name, ring }, i) => {
    const turn = turns[i] ?? 0
    const turned = ring.map((p) => placedPoint(p, { turn, by: point(0, 0) }))
    const box = grown(boxOfPoints(turned), CLEAR)
    const by = point(x - box.left, y - box.top)
    if (way === 'row') x += boxWidth(box)
    else y += boxHeight(box)
    return { name, turn, by, ring: turned.map((p) => add(p, by)) }
  })
}

const shifted = (p: Placed, by: Point): Placed => ({
  ...p,
  by: add(p.by, by),
  ring: p.ring.map((q) => add(q, by)),
})

/** The board may begin anywhere inside its first sheet: so many places each way are tried. */
const TRIES = 6

function shifts(placed: readonly Placed[], cell: { width: number; height: number }): Point[] {
  const box = grown(boxOfPoints(placed.flatMap((p) => p.ring)), CLEAR)
  const origin = point(-box.left, -box.top)
  const slackOf = (long: number, side: number): number => Math.ceil(long / side) * side - long
  const slack = point(slackOf(boxWidth(box), cell.width), slackOf(boxHeight(box), cell.height))
  const steps = Array.from({ length: TRIES }, (_, i) => i / (TRIES - 1))
  return steps.flatMap((u) => steps.map((v) => add(origin, point(slack.x * u, slack.y * v))))
}

function tilesOf(placed: readonly Placed[], cell: { width: number; height: number }): Tile[] {
  const box = grown(boxOfPoints(placed.flatMap((p) => p.ring)), CLEAR)
  const rows = Math.ceil(box.bottom / cell.height - 1e-9)
  const columns = Math.ceil(box.right / cell.width - 1e-9)
  const tiles: Tile[] = []
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const [left, top] = [column * cell.width, row * cell.height]
      const own = { left, top, right: left + cell.width, bottom: top + cell.height }
      if (placed.some((p) => meetsBox(p.ring, grown(own, EDGE_OF_LINE))))
        tiles.push({ row, column, name: tileName(row, column), box: own })
    }
  return tiles
}
/** Half a drawn line may reach over a trim line: such a sheet is kept. */
const EDGE_OF_LINE = 1

const extent = (placed: readonly Placed[]): number => {
  const box = boxOfPoints(placed.flatMap((p) => p.ring))
  return boxWidth(box) + boxHeight(box)
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
