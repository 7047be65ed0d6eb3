/**
 * A sheet hung at the side is as wide as a slim waist is deep, and stands out behind her like a part of
 * her. Its upper rim hangs just below the cord; the body's own line is seen above it. px.
 */
import { straightThrough } from './arms.ts'
import type { OutlineRow } from './reading.ts'

/** Rows this far above the waist show the body alone: the mask's cells blur 8 mm. mm. */
const CLEAR = { from: 50, to: 15 } as const
/** A waist curves by less than this from the line of those rows (2 mm at a radius of 150); paper stands out more. */
const JUTS_MM = 5

/**
 * The edge at a height, or where the rows above lead when it juts out from them.
 * @param edge outermost x of a row on one side
 * @param outward 1 when that side lies to the right
 */
export function clearOfSheet(
  outline: readonly OutlineRow[],
  y: number,
  seen: number,
  edge: (row: OutlineRow) => number,
  outward: 1 | -1,
  mmPerPx: number,
): number {
  const above = outline.filter((row) => {
    const up = (y - 0.5 - row.y) * mmPerPx
    return up > CLEAR.to && up < CLEAR.from
  })
  if (above.length < 4) return seen
  const leads = straightThrough(above.map((row) => [row.y, edge(row)]))(y - 0.5)
  return (seen - leads) * outward * mmPerPx > JUTS_MM ? leads : seen
}
