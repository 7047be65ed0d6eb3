/**
 * A front parted along a style seam: from the bust dart in shoulder or armhole over the bust tip,
 * through the waist dart, down to waist or hem. Both edges of the seam are equally long by
 * construction, because both darts turn about the same pivot; where legs meet they are drawn
 * smooth. Method: common practice.
 */
import { crossings } from '../geometry/intersect.ts'
import {
  pathEnd,
  pathStart,
  reversedPath,
  splitPath,
  type Path,
  type Place,
} from '../geometry/path.ts'
import { project } from '../geometry/project.ts'
import { point, type Point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import { roundedPair } from './intake.ts'
import { footEdge, PAIR, type Edge, type EdgeDart, type Piece } from './piece.ts'
import { pieceTitle, WITHIN_STYLE_SEAM } from './piece.words.ts'
import type { Step } from './step.ts'
import { FINISHING_WORDS as W } from './finishing.words.ts'

/** The edges of the seam differ by no more than this where they are drawn smooth, mm. */
const KEPT = 0.4

export interface Parted {
  readonly front: Piece
  readonly sideFront: Piece
  readonly steps: readonly Step[]
}

export const seamDart = (front: Piece): EdgeDart | undefined =>
  front.edgeDarts.find((d) => d.seam === true)

/** Undefined where the front has no dart that is to become a seam. */
export function parted(front: Piece): Parted | undefined {
  const dart = seamDart(front)
  const pivot = front.points['Q']
  if (!dart || !pivot) return undefined
  const index = front.edges.findIndex((e) => e.name === dart.edge)
  const own = front.edges[index]
  if (!own) return undefined
  const foot = footEdge(front)
  const footIndex = front.edges.indexOf(foot)
  const { inner, outer } = below(front, pivot)
  const [innerSeam, outerSeam] = drawnSmooth(
    [dart.upper, pivot, ...inner],
    [dart.lower, pivot, ...outer],
  )
  const top = splitAt(own.path, dart.upper, dart.lower)
  const low = splitAt(foot.path, outer[outer.length - 1]!, inner[inner.length - 1]!)
  const style = (path: Path): Edge => ({ name: 'styleSeam', role: 'seam', path })
  const centreEdges: Edge[] = [
    ...front.edges.slice(0, index),
    ...(top.before.length > 0 ? [{ ...own, path: top.before }] : []),
    style(innerSeam),
    { ...foot, path: low.after },
    ...front.edges.slice(footIndex + 1),
  ]
  const sideEdges: Edge[] = [
    ...(top.after.length > 0 ? [{ ...own, path: top.after }] : []),
    ...front.edges.slice(index + 1, footIndex),
    { ...foot, path: low.before },
    style(reversedPath(outerSeam)),
  ]
  const beyond = (p: Point): boolean => p.x > pivot.x + 0.01
  const points = Object.entries(front.points)
  const kept = front.edgeDarts.filter((d) => d !== dart && d.name !== 'waistDart')
  const grainAt = (outer[outer.length - 1]?.x ?? pivot.x) + 40
  return {
    front: {
      ...front,
      within: 'styleSeam',
      words: WITHIN_STYLE_SEAM.half,
      edges: centreEdges,
      darts: [],
      edgeDarts: kept.filter((d) => !beyond(d.upper)),
      points: Object.fromEntries(points.filter(([n, p]) => n === 'Q' || !beyond(p))),
      levels: front.levels.map((l) => ({ ...l, to: point(Math.min(l.to.x, pivot.x), l.to.y) })),
    },
    sideFront: {
      ...front,
      id: 'sideFront',
      words: pieceTitle('sideFront'),
      cut: PAIR,
      edges: sideEdges,
      darts: front.darts.slice(1),
      edgeDarts: kept.filter((d) => beyond(d.upper)),
      inner: front.inner.filter((i) => beyond(pathStart(i.path))),
      points: Object.fromEntries(points.filter(([n, p]) => n === 'Q' || beyond(p))),
      levels: front.levels.flatMap((l) =>
        l.to.x > pivot.x ? [{ ...l, from: point(pivot.x, l.from.y) }] : [],
      ),
      grain: {
        from: point(grainAt, front.grain.from.y),
        to: point(grainAt, front.grain.to.y),
      },
    },
    steps: [
      {
        verb: 'part',
        piece: 'front',
        from: dart.edge,
        over: 'Q',
        to: foot.name,
        why: W.dartsBecomeOneSeam,
        lights: [innerSeam, outerSeam],
      },
    ],
  }
}

/** Points of the seam under the pivot on either side, the last one on the foot edge. */
function below(front: Piece, pivot: Point): { inner: Point[]; outer: Point[] } {
  const foot = footEdge(front)
  const atSeam = front.edgeDarts.find((d) => d.name === 'waistDart' && d.edge === foot.name)
  if (atSeam) return { inner: [atSeam.lower], outer: [atSeam.upper] }
  const dart = front.darts[0]
  const straight = (p: Point): Point => {
    const met = crossings(foot.path, line(p, point(p.x, p.y + 3000)))[0]
    return met?.at ?? point(p.x, pathEnd(foot.path).y)
  }
  if (!dart) return { inner: [straight(pivot)], outer: [straight(pivot)] }
  if (dart.open)
    return { inner: [dart.inner, dart.open.inner], outer: [dart.outer, dart.open.outer] }
  const end = straight(dart.lowerTip)
  return { inner: [dart.inner, dart.lowerTip, end], outer: [dart.outer, dart.lowerTip, end] }
}

/** Both edges through their points, rounded alike at every bend. */
function drawnSmooth(inner: readonly Point[], outer: readonly Point[]): readonly [Path, Path] {
  const chain = (through: readonly Point[]): Path =>
    through.slice(1).map((p, i) => line(through[i]!, p))
  const keep = KEPT / inner.length
  return inner
    .slice(1, -1)
    .reduce<readonly [Path, Path]>(
      ([a, b], p, i) => roundedPair(a, p, b, outer[i + 1] ?? p, keep),
      [chain(inner), chain(outer)],
    )
}

/** An edge without what lies between two of its places. */
function splitAt(path: Path, a: Point, b: Point): { before: Path; after: Path } {
  const at = (p: Point): Place => project(path, p).place
  const [first, second] = [at(a), at(b)].sort((x, y) => x.index + x.t - y.index - y.t)
  return { before: splitPath(path, first!)[0], after: splitPath(path, second!)[1] }
}
