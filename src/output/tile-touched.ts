/** Which sheets a laid-out drawing reaches, asked of the exact lines and not of squares. */
import { boxOfPoints, grown, type Box } from '../geometry/box.ts'
import type { Point } from '../geometry/point.ts'
import { placedPoint, type Placing } from './mark.ts'
import { meetsBox, type Ring } from './ring.ts'
import { EDGE_OF_LINE, type TileInput } from './tile-raster.ts'

interface Cell {
  readonly width: number
  readonly height: number
}
interface PlacedRing extends Placing {
  readonly ring: Ring
}

/** Every sheet a line or a word reaches, by rows; counted from where the board begins. */
export function touchedTiles(
  placed: readonly PlacedRing[],
  inputs: readonly TileInput[],
  cell: Cell,
): (readonly [row: number, column: number])[] {
  const touched = new Map<string, readonly [number, number]>()
  for (const [i, { ring, turn, by }] of placed.entries()) {
    const ink = inputs[i]?.ink?.map((run) => run.map((p) => placedPoint(p, { turn, by })))
    const all = boxOfPoints(ink?.flat() ?? ring)
    const reach = grown(all, EDGE_OF_LINE)
    for (let row = first(reach.top, cell.height); row * cell.height < reach.bottom; row++)
      for (
        let column = first(reach.left, cell.width);
        column * cell.width < reach.right;
        column++
      ) {
        const box = grown(cellBox(row, column, cell), EDGE_OF_LINE)
        const drawn = ink ? ink.some((run) => runMeets(run, box)) : meetsBox(ring, box)
        if (drawn) touched.set(`${row} ${column}`, [row, column])
      }
  }
  return [...touched.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1])
}
const first = (low: number, side: number): number => Math.floor(low / side + 1e-9)
export const cellBox = (row: number, column: number, { width, height }: Cell): Box => ({
  left: column * width,
  top: row * height,
  right: (column + 1) * width,
  bottom: (row + 1) * height,
})
/** One chord after the other: a run is open, so it has no inside. */
const runMeets = (run: readonly Point[], box: Box): boolean =>
  run.some((p, i) => meetsBox([p, run[i + 1] ?? p], box))
