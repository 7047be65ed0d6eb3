/** What a ruler would find on the printed pages: the squares of page one, and a line over sheets. */
import { boxOfPoints } from '../../../src/geometry/box.ts'
import { point } from '../../../src/geometry/point.ts'
import { line } from '../../../src/geometry/segment.ts'
import { pathMark } from '../../../src/output/mark.ts'
import { PAPERS } from '../../../src/output/paper.ts'
import { pagesPdf } from '../../../src/output/pdf.ts'
import type { PieceDrawing } from '../../../src/output/piece-drawing.ts'
import { tilePages } from '../../../src/output/tiled-pages.ts'
import { planTiles, type TilePlan } from '../../../src/output/tiles.ts'
import type { Face } from '../../../src/output/wrap.ts'
import { darkRuns, rasters, type Raster } from './raster.ts'

export interface SquareFound {
  readonly across: number
  readonly down: number
}

/** Page one: 10 mm white, 24 mm of head, then the two squares one under the other. */
const LEFT = 10
const FIRST = 34

export function squaresOf(pdf: Uint8Array): { mm100: SquareFound; inch4: SquareFound } {
  const [page] = rasters(pdf, [1])
  if (!page) throw new Error('bench: no page one')
  const second = FIRST + 100 + 8
  return {
    mm100: square(page, FIRST, 100),
    inch4: square(page, second, 4 * 25.4),
  }
}

/** Both ways, along a row and a column in which nothing but the frame is drawn: 3 mm inside. */
function square(page: Raster, top: number, side: number): SquareFound {
  const across = darkRuns(page, 'row', top + 3).filter(({ at }) => at < LEFT + side + 2)
  const down = darkRuns(page, 'column', LEFT + 3).filter(
    ({ at }) => at > top - 2 && at < top + side + 2,
  )
  return { across: span(across, 'a square, across'), down: span(down, 'a square, down') }
}
function span(runs: readonly { readonly at: number }[], what: string): number {
  const [a, b] = runs
  if (!a || !b || runs.length !== 2) throw new Error(`bench: ${runs.length} lines at ${what}`)
  return b.at - a.at
}

export const LONG = 500
/** Half of a tick, mm. */
const TICK = 6
/** So far beside a line only its ticks and the trim lines are crossed, mm. */
const BESIDE = 3
/** Ticks are ink, trim lines are grey. */
const TICK_GREY = 60

/**
 * Two lines of 500 mm from one corner, printed over several sheets and measured as the sheets are
 * glued: on each from tick or trim line to trim line or tick.
 */
export function longLines(drawing: PieceDrawing, font: Uint8Array): Promise<SquareFound> {
  const [corner, right, below] = [point(0, 0), point(LONG, 0), point(0, LONG)]
  const lines = [
    line(corner, right),
    line(corner, below),
    line(point(LONG, -TICK), point(LONG, TICK)),
    line(point(-TICK, LONG), point(TICK, LONG)),
  ]
  const cut = [
    point(-TICK, -TICK),
    point(LONG + TICK, -TICK),
    point(LONG + TICK, LONG + TICK),
    point(-TICK, LONG + TICK),
  ]
  const drawn: PieceDrawing = {
    piece: drawing.piece,
    marks: [pathMark('seam', lines)],
    cut: cut.map((p, i) => line(p, cut[(i + 1) % cut.length] ?? p)),
  }
  const input = { name: drawing.piece.id, ring: cut, ink: lines.map((l) => [l.from, l.to]) }
  const plan = planTiles([input], PAPERS.a4)
  const words = { garmentName: 'bench', stamp: '' }
  const make = (face: Face) => tilePages({ plan, drawings: [drawn] }, words, face, undefined)
  return pagesPdf(make, font, 'bench').then((pdf) => {
    const pages = rasters(
      pdf,
      plan.tiles.map((_, i) => i + 1),
    )
    return { across: along('row', plan, pages), down: along('column', plan, pages) }
  })
}

/** The line along rows, or down columns, whichever way the piece was turned. */
function along(way: 'row' | 'column', plan: TilePlan, pages: readonly Raster[]): number {
  const [placed] = plan.placed
  if (!placed) throw new Error('bench: the lines are not laid')
  const row = way === 'row'
  const box = boxOfPoints(placed.ring)
  const inward = (low: number, high: number, at: number): number => (at - low < high - at ? 1 : -1)
  const beside = row
    ? placed.by.y + BESIDE * inward(box.top, box.bottom, placed.by.y)
    : placed.by.x + BESIDE * inward(box.left, box.right, placed.by.x)
  const own = plan.tiles.flatMap((tile, i) => {
    const page = pages[i]
    const [low, high] = row ? [tile.box.top, tile.box.bottom] : [tile.box.left, tile.box.right]
    return page && beside >= low && beside < high ? [{ tile, page, low }] : []
  })
  const { trim } = plan
  const [first, last] = row ? [trim.left, trim.right] : [trim.top, trim.bottom]
  return own.reduce((long, { tile, page, low }, i) => {
    const runs = darkRuns(page, way, (row ? trim.top : trim.left) + beside - low)
    const trims = [first, last].map((at) => runs.find((r) => Math.abs(r.at - at) < 1))
    const ticks = runs.filter((r) => r.darkest < TICK_GREY && r.at > first - 1 && r.at < last + 1)
    const start = i === 0 ? ticks[0] : trims[0]
    const end = i === own.length - 1 ? ticks.at(-1) : trims[1]
    if (!start || !end) throw new Error(`bench: no end of the line on ${tile.name}`)
    return long + end.at - start.at
  }, 0)
}
