/**
 * The front (or back) line of the outline from the side: where it is the body's own, and where it lies
 * furthest out. Rows from the top down, px; lengths in torsos, shoulder to hip joints.
 */
import type { OutlineRow } from './reading.ts'

/** The front line of a chest moves by less than this from one row to the next, in torsos. */
const ARM_JUMP = 0.025
/** A chest that projects less than this beyond its neighbours, px, has no foremost place to trust. */
const LEAST_PROJECTION_PX = 1

/** The rows under an arm lifted forward: going up, its lower edge is a jump of the front line. */
export function belowArm(
  rows: readonly OutlineRow[],
  front: (row: OutlineRow) => number,
  torso: number,
): readonly OutlineRow[] {
  for (let k = rows.length - 1; k > 0; k--) {
    const [here, above] = [rows[k], rows[k - 1]]
    if (here && above && Math.abs(front(above) - front(here)) > ARM_JUMP * torso)
      return rows.slice(k)
  }
  return rows
}

/** The lowest height of the front line, going down, before a hand or a shadow juts out of it. */
export function aboveHand(
  rows: readonly OutlineRow[],
  reach: (row: OutlineRow) => number,
  torso: number,
): number {
  const gap = Math.max(1, Math.round(JUTS.within * torso))
  const last = rows.at(-1)
  for (let k = gap; k < rows.length; k++) {
    const [above, here] = [rows[k - gap], rows[k]]
    const least = JUTS.by * torso
    // What juts out must still do so at the end: a ragged mask comes back.
    if (
      above &&
      here &&
      last &&
      reach(here) - reach(above) > least &&
      reach(last) - reach(above) > least
    )
      return above.y + 0.5 - JUTS.within * torso
  }
  return (last?.y ?? 0) + 0.5
}
/** No belly goes forward by 3 parts in 2 of height; a hand before it does. In torsos. */
const JUTS = { by: 0.03, within: 0.02 } as const

/** The row where `reach` is greatest, between rows where it is less; undefined at the zone's end. */
export function extremeLevel(
  rows: readonly OutlineRow[],
  reach: (row: OutlineRow) => number,
): number | undefined {
  const values = rows.map(reach)
  const top = Math.max(...values)
  const at = values.indexOf(top)
  const fall = (part: readonly number[]): number => top - Math.min(...part)
  if (rows.length < 5) return undefined
  if (
    fall(values.slice(0, at + 1)) < LEAST_PROJECTION_PX ||
    fall(values.slice(at)) < LEAST_PROJECTION_PX
  )
    return undefined
  // The middle of the rows within half a pixel of the top: a flat front has no single foremost row.
  const flat = rows.filter((_, k) => (values[k] ?? 0) > top - 0.5)
  return flat.reduce((sum, row) => sum + row.y + 0.5, 0) / flat.length
}
