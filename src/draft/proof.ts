/**
 * Parts of a proof that garments put together: seams that are sewn together are equal, darts
 * close, joins run on, corners on the fold are square, the arm gets through and so does she. Each
 * failing is a finding with its place and its numbers.
 */
import { knows, lengthOf } from '../measurements/confirmed.ts'
import { endTangent, startTangent } from '../geometry/path.ts'
import { cross, distance, dot, type Point } from '../geometry/point.ts'
import { selfIntersections } from '../geometry/self-intersection.ts'
import { tangent } from '../geometry/segment.ts'
import { mm } from '../units/length.ts'
import { DART_ANGLE_MOST, DART_MOST } from './blocks/waist-plan.ts'
import type { Draft } from './draft.ts'
import { say, type Finding } from './finding.ts'
import { passes, through } from './opening.ts'
import {
  edge,
  footEdge,
  isHalf,
  outline,
  overShoulder,
  sewnLength,
  topEdge,
  type Dart,
  type EdgeName,
  type Piece,
} from './piece.ts'

/** Sewn seams may differ by this, mm; 1.6 mm is where pattern teachers begin to warn. */
export const SEAM_EQUAL = mm(0.5)
/** Two ends laid together run on within this angle: 1°. Common practice, no source. */
const RUNS_ON = Math.PI / 180
/** No angle over this at a join of the side seam: 2°. Common practice, no source. */
const SMOOTH = Math.PI / 90

export function pair(
  back: Piece,
  front: Piece,
  name: EdgeName,
  id: 'overarmPair' | 'shoulderPair' | 'sidePair',
): Finding[] {
  const gap = Math.abs(sewnLength(back, name) - sewnLength(front, name))
  return gap > SEAM_EQUAL ? [say(id, 'stop', `${front.id}.${name}`, gap, SEAM_EQUAL)] : []
}

export function soundness(piece: Piece): Finding[] {
  return [
    ...(selfIntersections(outline(piece)).length > 0
      ? [say('outlineCrosses', 'stop', `${piece.id}.side`)]
      : []),
    ...piece.darts.flatMap((d) => dartFindings(piece, d)),
    ...edgeDartFindings(piece),
    ...squareAtFold(piece),
    ...smoothSide(piece),
  ]
}

function dartFindings(piece: Piece, d: Dart): Finding[] {
  const place = `${piece.id}.${d.name}`
  const upper = Math.abs(distance(d.upperTip, d.inner) - distance(d.upperTip, d.outer))
  const lower = Math.abs(distance(d.lowerTip, d.inner) - distance(d.lowerTip, d.outer))
  const legs = Math.max(upper, lower)
  const mouth = distance(d.inner, d.outer)
  const leg = distance(d.upperTip, d.inner)
  const most = Math.min(
    isHalf(piece.id) ? DART_MOST[piece.id] : Infinity,
    2 * leg * Math.sin(DART_ANGLE_MOST / 2),
  )
  return [
    ...(legs > SEAM_EQUAL ? [say('dartLegs', 'stop', place, legs, SEAM_EQUAL)] : []),
    ...(mouth > most + DART_SLACK ? [say('dartWide', 'note', place, mouth, most)] : []),
    ...(d.open ? [say('dartOpen', 'note', place, distance(d.open.inner, d.open.outer))] : []),
  ]
}
/** A tenth of a millimetre over is lost in the pencil line. */
const DART_SLACK = 0.1

const edgeDartFindings = (piece: Piece): Finding[] =>
  piece.edgeDarts.flatMap((d) => {
    const place = `${piece.id}.${d.name}`
    const [upper, lower] = [distance(d.tip, d.upper), distance(d.tip, d.lower)]
    const mouth = distance(d.upper, d.lower)
    const most = 2 * upper * Math.sin(DART_ANGLE_MOST / 2)
    return [
      ...(Math.abs(upper - lower) > SEAM_EQUAL
        ? [say('dartLegs', 'stop', place, Math.abs(upper - lower), SEAM_EQUAL)]
        : []),
      ...(mouth > most + DART_SLACK ? [say('dartWide', 'note', place, mouth, most)] : []),
    ]
  })

/** Neck and hem leave a fold square, or the unfolded edge has a peak or a notch; a V is meant to. */
function squareAtFold(piece: Piece): Finding[] {
  const centre = edge(piece, 'centre')
  if (centre.role !== 'fold') return []
  const neck = topEdge(piece).path
  const foot = footEdge(piece)
  const straightNeck = neck[0]?.kind === 'line'
  return [
    ...(!straightNeck && Math.abs(startTangent(neck).y) > Math.sin(RUNS_ON)
      ? [say('notSquare', 'stop', `${piece.id}.${topEdge(piece).name}`)]
      : []),
    ...(foot !== topEdge(piece) && Math.abs(endTangent(foot.path).y) > Math.sin(RUNS_ON)
      ? [say('notSquare', 'stop', `${piece.id}.${foot.name}`)]
      : []),
  ]
}

/**
 * Joins of the side, but for the mouth of a dart on it, which is folded away: over it the side
 * turns by as much as the dart was opened by a correction.
 */
function smoothSide(piece: Piece): Finding[] {
  const side = edge(piece, 'side').path
  const mouth = piece.edgeDarts.find((d) => d.edge === 'side')
  const joins = side.flatMap((s, i) => {
    const next = side[i + 1]
    const past = side[i + 2]
    if (mouth && s.kind !== 'line' && next?.kind === 'line' && past)
      // A dart that was moved elsewhere, wholly or in part, has turned the side there.
      return piece.points['Q'] ? [] : [{ before: s, after: past, turned: mouth.turned ?? 0 }]
    return next && s.kind !== 'line' && next.kind !== 'line'
      ? [{ before: s, after: next, turned: 0 }]
      : mouth || !next
        ? []
        : [{ before: s, after: next, turned: 0 }]
  })
  const broken = joins.some(({ before, after, turned }) => {
    const [a, b] = [tangent(before, 1), tangent(after, 0)]
    const off = Math.atan2(cross(a, b), dot(a, b)) - turned
    return Math.abs(off) > SMOOTH
  })
  return broken ? [say('sideJoin', 'stop', `${piece.id}.side`)] : []
}
const angleBetween = (a: Point, b: Point): number => Math.abs(Math.atan2(cross(a, b), dot(a, b)))

/** The angles of back and front neck against the overarm seam, added: 180° is one smooth line. */
export function neckAngle(piece: Piece): number {
  const [neck, overarm] = [
    endTangent(edge(piece, 'neck').path),
    startTangent(overShoulder(piece).path),
  ]
  return angleBetween({ x: -neck.x, y: -neck.y }, overarm)
}
export function neckJoin(back: Piece, front: Piece): Finding[] {
  const off = Math.abs(neckAngle(back) + neckAngle(front) - Math.PI)
  return off > RUNS_ON ? [say('neckJoin', 'stop', 'front.neck')] : []
}

/** The armhole runs on in one line over the shoulder and under the arm: the angles add to 180°. */
export function armholeJoin(back: Piece, front: Piece): Finding[] {
  const at = (piece: Piece): readonly [number, number] => {
    const [armhole, side] = [edge(piece, 'armhole').path, edge(piece, 'side').path]
    const shoulder = endTangent(edge(piece, 'shoulder').path)
    return [
      angleBetween({ x: -shoulder.x, y: -shoulder.y }, startTangent(armhole)),
      angleBetween({ x: -endTangent(armhole).x, y: -endTangent(armhole).y }, startTangent(side)),
    ]
  }
  const [b, f] = [at(back), at(front)]
  const off = (i: 0 | 1): number => Math.abs(b[i] + f[i] - Math.PI)
  return [
    ...(off(0) > RUNS_ON ? [say('armholeJoin', 'stop', 'front.armhole')] : []),
    ...(off(1) > RUNS_ON ? [say('armholeJoin', 'stop', 'front.side')] : []),
  ]
}

export function armOpening(back: Piece, front: Piece, { body, choices }: Draft): Finding[] {
  const opening = sewnLength(back, 'sleeveEdge') + sewnLength(front, 'sleeveEdge')
  if (!knows(body, 'upperArmGirth'))
    return [say('upperArmUnknown', 'muslin', 'front.sleeveEdge', opening)]
  const needed = lengthOf(body, 'upperArmGirth') + choices.armRoom
  return opening < needed ? [say('armOpening', 'stop', 'front.sleeveEdge', opening, needed)] : []
}

export function gettingIn(back: Piece, front: Piece, d: Draft): Finding[] {
  const t = through(back, front, d.body, d.together)
  const ok = passes(t, d.openings)
  const added = d.openings.filter((o) => o.added)
  const place = (o: (typeof added)[number]): string => `${o.piece}.${o.edge}`
  return [
    ...(t.head === undefined ? [say('headUnknown', 'muslin', 'front.neck', t.neck)] : []),
    ...(ok.neck ? [] : [say('headOpening', 'stop', 'front.neck', t.neck, t.head)]),
    ...(t.slip === undefined ? [say('gettingInUnknown', 'muslin', 'front.side', t.waist)] : []),
    ...(ok.waist ? [] : [say('gettingIn', 'stop', 'front.side', t.waist, t.slip)]),
    ...added.map((o) =>
      o.kind === 'neckSlit'
        ? say('openingAdded', 'note', place(o), t.head, t.neck)
        : say('openingAdded', 'note', place(o), t.slip, t.waist),
    ),
  ]
}
