/**
 * From the model's mask to the outline of the body, row by row. Only the run that holds the body's
 * axis is taken, so an arm or a card held away from the body is not part of it. Edges lie where
 * the mask crosses one half, between two pixel centres. All px, y down, row y means its centre.
 */
import type { Point } from '../geometry/point.ts'
import type { Joint, Mask } from './person.ts'
import type { OutlineRow } from './reading.ts'

/** Half of 0..255: as much person as background. */
const HALF = 127.5
/** Rows narrower than this at the crown are stray pixels of the mask, px. */
const LEAST_WIDTH = 3
/** The outline is kept to this far below the hip joints, in lengths shoulder to hip. */
const BELOW_HIPS = 0.45

export type Joints = Readonly<Record<string, Joint>>

/** The middle of a left and a right joint; of one of them when the model lacks the other. */
export function middle(joints: Joints, name: string): Point | undefined {
  const a = joints[`left_${name}`]?.at
  const b = joints[`right_${name}`]?.at
  return a && b ? { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 } : (a ?? b)
}

/** Runs further from the axis than this, in lengths shoulder to hip, belong to something else. */
const SIDE_REACH = 0.6

/**
 * Crown to thigh, top row first; empty when the joints that give the axis are missing.
 * `whole` takes all runs near the axis as one: from the side the near arm lies on the trunk and
 * the mask may cut along it.
 */
export function bodyOutline(mask: Mask, joints: Joints, whole = false): readonly OutlineRow[] {
  const axis = bodyAxis(joints)
  const hip = middle(joints, 'hip')
  const shoulder = middle(joints, 'shoulder')
  if (!axis || !hip || !shoulder) return []
  const last = Math.min(mask.height - 1, Math.round(hip.y + BELOW_HIPS * (hip.y - shoulder.y)))
  const rows: OutlineRow[] = []
  for (let y = last; y >= 0; y--) {
    const run = whole
      ? wholeAt(mask, y, axis(y), SIDE_REACH * (hip.y - shoulder.y))
      : runAt(mask, y, axis(y), rows.at(-1))
    if (run && run.right - run.left >= LEAST_WIDTH) rows.push(run)
    else if (y < shoulder.y) break
  }
  return rows.reverse()
}

/** x of the body's middle line at a height: ears, shoulders, hips, straight between them. */
function bodyAxis(joints: Joints): ((y: number) => number) | undefined {
  const stations = ['ear', 'shoulder', 'hip'].flatMap((name) => middle(joints, name) ?? [])
  const [first, ...rest] = stations
  if (!first || rest.length === 0) return undefined
  return (y) => {
    let above = first
    for (const below of rest) {
      if (y <= below.y || below === rest.at(-1)) {
        if (y < first.y) return first.x
        const t = (y - above.y) / Math.max(1, below.y - above.y)
        return above.x + (below.x - above.x) * Math.min(1.2, t)
      }
      above = below
    }
    return first.x
  }
}

/** The run that holds x; when x lies just beside one, the run that goes on from the row below. */
function runAt(mask: Mask, y: number, x: number, below: OutlineRow | undefined) {
  const runs = runsOf(mask, y)
  const holds = runs.find((run) => run.left <= x && x <= run.right)
  if (holds || !below) return holds
  const overlap = (run: OutlineRow): number =>
    Math.min(run.right, below.right) - Math.max(run.left, below.left)
  return runs.filter((run) => overlap(run) > 0).sort((a, b) => overlap(b) - overlap(a))[0]
}

function wholeAt(mask: Mask, y: number, x: number, reach: number): OutlineRow | undefined {
  const runs = runsOf(mask, y).filter((run) => run.right > x - reach && run.left < x + reach)
  const [first, last] = [runs[0], runs.at(-1)]
  return first && last ? { y, left: first.left, right: last.right } : undefined
}

/** Every run of one row of the mask, left to right. */
export function runsOf(mask: Mask, y: number): OutlineRow[] {
  const runs: OutlineRow[] = []
  const value = (x: number): number => mask.data[y * mask.width + x] ?? 0
  let left: number | undefined
  for (let x = 0; x <= mask.width; x++) {
    const [before, here] = [x > 0 ? value(x - 1) : 0, x < mask.width ? value(x) : 0]
    if (before <= HALF && here > HALF) left = x - 0.5 + (HALF - before) / (here - before)
    if (before > HALF && here <= HALF && left !== undefined)
      runs.push({ y, left, right: x - 0.5 + (before - HALF) / (before - here) })
  }
  return runs
}

/** The row of the outline at a height, edges straight between the two nearest rows. */
export function rowAt(outline: readonly OutlineRow[], y: number): OutlineRow | undefined {
  const first = outline[0]
  if (!first) return undefined
  const k = Math.floor(y - first.y)
  const [a, b] = [outline[k], outline[k + 1] ?? outline[k]]
  if (!a || !b) return undefined
  const t = y - first.y - k
  const mix = (p: number, q: number): number => p + (q - p) * t
  return { y, left: mix(a.left, b.left), right: mix(a.right, b.right) }
}
