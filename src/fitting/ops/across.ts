/**
 * Length at the centre and nothing at the far edge (WEDGE), and length over the bust (DROP).
 * A wedge of l over the depth d turns the lower part by θ = 2·asin(l / 2d); the centre is then
 * ruled straight again and every level slides back to it, so that no width is lost or won: each
 * place moves down by l·(1 − x/d). Source: slash and hinge of published alterations.
 */
import { add, distance, point, type Point } from '../../geometry/point.ts'
import { movedPath, pathEnd, splitPath, type Path } from '../../geometry/path.ts'
import { boxOf } from '../../geometry/box.ts'
import { crossings } from '../../geometry/intersect.ts'
import { line } from '../../geometry/segment.ts'
import { edge, namedPoint, withEdge, type EdgeDart, type Piece } from '../../draft/piece.ts'
import { mm } from '../../units/length.ts'
import { onNeck, pivotOf, reachAt, sideAt, sideMouth } from '../landmarks.ts'
import { ramp, shiftedPiece, truedEdgeDart, within01, type Field } from './field.ts'
import type { Operation, WedgeLevel } from './operation.ts'
import { halfOf, made, refused, withHalf, type Halves, type Made } from './outcome.ts'

/** Levels fade in over so much, mm, or the paper would break there. */
const SOFT = 25

export function wedged(halves: Halves, op: Extract<Operation, { op: 'WEDGE' }>): Made {
  const piece = halfOf(halves, op.piece)
  const at = levelOf(piece, op.level)
  const hinge = at === undefined ? undefined : hingeAt(piece, at, op.level)
  // The side stays as it is, where it is drawn in nearer than the hinge too.
  const far = hinge && Math.min(hinge, boxOf([edge(piece, 'side').path]).left)
  if (at === undefined || far === undefined)
    return refused({ id: 'noPlace', piece: piece.id, edge: 'centre' })
  if (op.by < 0 && -op.by > roomBelow(piece, at))
    return refused({ id: 'wedgeTooWide', width: mm(-op.by), reach: mm(roomBelow(piece, at)) })
  const field: Field = (p) => {
    const depth = ramp(p.y, at - SOFT, at + SOFT)
    return add(p, point(0, op.by * within01(1 - p.x / far) * depth))
  }
  // The centre gains the whole of it however the paper fades, because its ends lie outside.
  return made(withHalf(halves, shiftedPiece(piece, field)))
}

export function levelOf(piece: Piece, level: WedgeLevel): number | undefined {
  const [neck, pivot] = [onNeck(piece, 0).y, pivotOf(piece).y]
  const waist = namedPoint(piece, 'C').y
  const hem = pathEnd(edge(piece, 'hem').path).y
  switch (level) {
    case 'chest':
      return (neck + pivot) / 2
    case 'blade':
      return pivot
    case 'nape':
      return neck + Math.min(50, (pivot - neck) / 2)
    case 'waist':
      return waist - Math.min(40, (waist - pivot) / 3)
    case 'belowWaist':
      return hem - waist > 80 ? waist + Math.min(60, (hem - waist) / 2) : undefined
  }
}
/** The hinge: on the armhole above the bust, on the side below it. */
export const hingeAt = (piece: Piece, y: number, level: WedgeLevel): number | undefined =>
  level === 'chest' || level === 'blade' || level === 'nape'
    ? reachAt(piece, y)
    : sideAt(piece, y)?.x

const roomBelow = (piece: Piece, at: number): number =>
  Math.min(at - onNeck(piece, 0).y, pathEnd(edge(piece, 'hem').path).y - at) * 0.8 + SOFT

export function dropped(halves: Halves, by: number): Made {
  const { front } = halves
  const apex = pivotOf(front)
  const opened = withSideDart(front, 0)
  if (!opened) return refused({ id: 'noPlace', piece: 'front', edge: 'side' })
  const { piece, dart, new: fresh } = opened
  const mouth = dart.upper.y
  const mouthNow = distance(dart.upper, dart.lower) + by
  if (mouthNow < 0) return refused({ id: 'dartTooSmall', piece: 'front', to: mm(mouthNow) })
  const down = point(0, by)
  const side = edge(piece, 'side').path
  const [above, below] = atMouth(side, dart)
  const lower = movedPath(below, down)
  const go = (p: Point): Point => (under(p, apex, mouth) ? add(p, down) : p)
  const moved: Piece = {
    ...withEdge(piece, 'side', [...above, line(dart.upper, add(dart.lower, down)), ...lower]),
    edgeDarts: piece.edgeDarts.map((d) =>
      d.name === dart.name ? truedEdgeDart({ ...d, lower: add(d.lower, down) }) : d,
    ),
    darts: piece.darts.map((d) => ({
      ...d,
      inner: add(d.inner, down),
      outer: add(d.outer, down),
      lowerTip: add(d.lowerTip, down),
      ...(d.open
        ? { open: { inner: add(d.open.inner, down), outer: add(d.open.outer, down) } }
        : {}),
    })),
    points: Object.fromEntries(
      Object.entries(piece.points).map(([n, p]) => [n, n === 'apex' ? p : go(p)]),
    ),
    levels: piece.levels.map((l) => ({
      ...l,
      from: go(l.from),
      to: go({ x: 0, y: l.to.y }).y === l.to.y ? l.to : add(l.to, down),
    })),
  }
  const whole: Piece = {
    ...moved,
    edges: moved.edges.map((e) =>
      e.name === 'hem'
        ? { ...e, path: movedPath(e.path, down) }
        : e.name === 'centre'
          ? {
              ...e,
              path: e.path.map((s) =>
                s.kind === 'line'
                  ? line(go(s.from), go(s.to))
                  : {
                      ...s,
                      ...(s.kind === 'cubic'
                        ? { from: go(s.from), c1: go(s.c1), c2: go(s.c2), to: go(s.to) }
                        : {}),
                    },
              ),
            }
          : e,
    ),
  }
  return made(withHalf(halves, whole), ...(fresh ? ['createdSideDart'] : []))
}

/** Under the cut: below the bust tip inside it, below the mouth outside. */
const under = (p: Point, apex: Point, mouth: number): boolean =>
  p.y > (p.x <= apex.x ? apex.y : mouth) + 0.01

export interface Opened {
  readonly piece: Piece
  readonly dart: EdgeDart
  /** The draft had none: it is made here, its mouth still shut. */
  readonly new: boolean
}

/** The front with a side dart: its own, or a shut one on the level of the bust tip. */
export function withSideDart(front: Piece, tipShort: number): Opened | undefined {
  const own = front.edgeDarts.find((d) => d.name === 'bustDart')
  if (own) return { piece: front, dart: own, new: false }
  const apex = pivotOf(front)
  const underarm = namedPoint(front, 'U')
  const level = Math.max(apex.y, underarm.y + MOUTH_BELOW)
  const at = sideAt(front, level) ?? sideMouth(front)
  if (!at || at.x - apex.x < MOUTH_BELOW || namedPoint(front, 'W').y - level < MOUTH_BELOW)
    return undefined
  const short = Math.min(tipShort > 0 ? tipShort : TIP_SHORT, (at.x - apex.x) / 2)
  const dart: EdgeDart = {
    name: 'bustDart',
    edge: 'side',
    tip: point(apex.x + short, at.y),
    upper: at,
    lower: at,
  }
  const side = edge(front, 'side').path
  const hit = crossings(side, line(point(at.x - 60, at.y), point(at.x + 60, at.y)))[0]
  if (!hit) return undefined
  const [above, below] = splitPath(side, hit.place)
  return {
    piece: {
      ...withEdge(front, 'side', [...above, line(at, at), ...below]),
      edgeDarts: [...front.edgeDarts, dart],
    },
    dart,
    new: true,
  }
}
/** A mouth keeps this far under the underarm and above the waist, mm. As in the construction. */
const MOUTH_BELOW = 25
/** Tip of a side dart short of the bust tip, mm: 25, public lessons. */
const TIP_SHORT = 25

/** The side above and below the mouth of a dart. */
export function atMouth(side: Path, dart: EdgeDart): readonly [Path, Path] {
  const i = side.findIndex(
    (s) =>
      s.kind === 'line' && distance(s.from, dart.upper) < 0.01 && distance(s.to, dart.lower) < 0.01,
  )
  if (i < 0) throw new Error(`${dart.name}: its mouth is not on its edge`)
  return [side.slice(0, i), side.slice(i + 1)]
}
