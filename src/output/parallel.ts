/**
 * An edge moved outward by its allowance, exact also where the edge bends in more tightly than
 * the allowance is wide: there the moved line would turn back on itself, so that part is left
 * out and the parts beside it are carried on until they meet. At an end of the edge the seam is
 * taken to run on straight, as at every other corner.
 */
import { offset } from '../geometry/offset.ts'
import { reversedPath, type Path } from '../geometry/path.ts'
import { add, distance, quarterTurn, scale, subtract, unit, type Point } from '../geometry/point.ts'
import {
  at,
  endOf,
  line,
  part,
  reversed,
  startOf,
  tangent,
  type Segment,
} from '../geometry/segment.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'
import { joined, MITRE_LIMIT } from './corner.ts'
import { curvature, neverHollow } from './tightest.ts'

/** A part that can be moved, and the seam point where it joins the part before. */
interface Run {
  readonly path: Path
  readonly corner: Point
  /** Something too tight was left out before it. */
  readonly gap: boolean
}

/** Empty where all of the edge bends in more tightly than `by`. */
export function parallel(path: Path, by: number): Path {
  if (by === 0) return path
  const { runs, missing } = movable(path, by)
  const [first, last] = [path[0], path.at(-1)]
  const final = runs.at(-1)
  if (!first || !last || !final) return []
  if (!missing && !runs.some((run) => run.gap)) return chained(runs, by)
  const before = reversed(straightOn(reversed(first), -by))
  const after = straightOn(last, by)
  const whole = chained(
    [
      { path: [before], corner: at(first, 0), gap: false },
      ...runs.slice(0, -1),
      ...(missing
        ? [final, { path: [after], corner: missing, gap: true }]
        : [{ ...final, path: [...final.path, after] }]),
    ],
    by,
  )
  const ended = trimmed(whole, startOf(after))
  return reversedPath(trimmed(reversedPath(ended), endOf(before)))
}

const chained = (runs: readonly Run[], by: number): Path =>
  runs.reduce<Path>(
    (done, run) =>
      done.length === 0 ? run.path : joined(done, run.path, run.corner, Math.abs(by)),
    [],
  )

function movable(path: Path, by: number): { runs: readonly Run[]; missing: Point | undefined } {
  const runs: Run[] = []
  let missing: Point | undefined
  for (const s of path) {
    let t = 0
    for (const [from, to] of wideParts(s, by)) {
      if (from > t) missing = at(s, (t + from) / 2)
      const own = from === 0 && to === 1 ? s : part(s, from, to)
      const gap = missing !== undefined
      runs.push({ path: offset(own, by), corner: missing ?? at(s, from), gap })
      missing = undefined
      t = to
    }
    if (t < 1) missing = at(s, (t + 1) / 2)
  }
  return { runs, missing }
}

/** The stretches of t on which the segment bends in less tightly than `by`. */
function wideParts(s: Segment, by: number): readonly (readonly [number, number])[] {
  if (by > 0 && neverHollow(s)) return WHOLE
  const wide = (t: number): boolean => 1 + by * curvature(s, t) > TURNS_BACK
  if (s.kind !== 'cubic') return wide(0) ? WHOLE : []
  const parts: [number, number][] = []
  let from: number | undefined = wide(0) ? 0 : undefined
  for (let i = 1; i <= STEPS; i++) {
    const [before, t] = [(i - 1) / STEPS, i / STEPS]
    if (wide(t) === (from !== undefined)) continue
    const turn = turningPoint(wide, before, t)
    if (from === undefined) from = turn
    else {
      parts.push([from, turn])
      from = undefined
    }
  }
  if (from !== undefined) parts.push([from, 1])
  return parts
}
const WHOLE = [[0, 1]] as const
/** Steps in which a curve is searched for tight places; a place between two of them is no place. */
const STEPS = 96
/** The moved line still runs forward at this share of the seam's speed. */
const TURNS_BACK = 1e-3

/** Where `wide` changes between two ts. */
function turningPoint(wide: (t: number) => boolean, low: number, high: number): number {
  const begins = wide(low)
  let [a, b] = [low, high]
  for (let i = 0; i < 40; i++) {
    const middle = (a + b) / 2
    if (wide(middle) === begins) a = middle
    else b = middle
  }
  return begins ? a : b
}

/** The moved line of a seam that runs on straight past its end. */
function straightOn(seam: Segment, by: number): Segment {
  const way = tangent(seam, 1)
  const beside = add(at(seam, 1), scale(quarterTurn(way), -by))
  return line(beside, add(beside, scale(way, Math.abs(by) * MITRE_LIMIT)))
}

/** Without what runs on past the end; where a corner lies there, its direction alone is kept. */
function trimmed(path: Path, end: Point): Path {
  const last = path.at(-1)
  if (!last) return path
  const [kept, turn] = [path.slice(0, -1), startOf(last)]
  if (distance(turn, end) < SAME_POINT * 100) return kept
  return [...kept, line(turn, add(turn, scale(unit(subtract(endOf(last), turn)), HINT)))]
}
/** Enough for a direction: the next edge cuts it off or carries it on. */
const HINT = 0.01
