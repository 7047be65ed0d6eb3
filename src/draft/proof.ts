/**
 * The proof of a draft: seams that are sewn together are equal, darts close, joins run on, the
 * arm and the head get through. Each failing is a finding with its place and its numbers.
 */
import { knows, lengthOf, type Body } from '../measurements/confirmed.ts'
import { pathLength } from '../geometry/length.ts'
import { endTangent, startTangent } from '../geometry/path.ts'
import { cross, distance, dot } from '../geometry/point.ts'
import { selfIntersections } from '../geometry/self-intersection.ts'
import { mm } from '../units/length.ts'
import { RAISE_MOST } from './blocks/draped-blouse.ts'
import { DART_MOST } from './blocks/waist-and-side.ts'
import type { Choices } from './choices.ts'
import type { Finding, FindingId, Severity } from './finding.ts'
import { edge, outline, type EdgeName, type Piece } from './piece.ts'

/** Sewn seams may differ by this; 1.6 mm is where pattern teachers begin to warn. */
export const SEAM_EQUAL = mm(0.5)
/** Two ends laid together run on within this angle: 1°. Common practice, no source. */
const RUNS_ON = Math.PI / 180
/** Room over the upper arm: 51 mm and more in published sleeve drafts. */
export const ARM_ROOM = mm(50)
/** Room over the head. Common practice, no source. */
export const HEAD_ROOM = mm(20)

const say = (id: FindingId, severity: Severity, place: string, value = 0, limit = 0): Finding => ({
  id,
  severity,
  place,
  value: mm(value),
  limit: mm(limit),
})

export function prove(back: Piece, front: Piece, body: Body, choices: Choices): Finding[] {
  return [
    ...[back, front].flatMap(soundness),
    ...pair(back, front, 'overarm', 'overarmPair'),
    ...pair(back, front, 'side', 'sidePair'),
    ...neckJoin(back, front),
    ...armOpening(back, front, body),
    ...gettingIn(back, front, body),
    ...lengths(body, choices),
  ]
}

const length = (piece: Piece, name: EdgeName): number => pathLength(edge(piece, name).path)

function pair(back: Piece, front: Piece, name: EdgeName, id: FindingId): Finding[] {
  const gap = Math.abs(length(back, name) - length(front, name))
  return gap > SEAM_EQUAL ? [say(id, 'stop', `front.${name}`, gap, SEAM_EQUAL)] : []
}

function soundness(piece: Piece): Finding[] {
  const crossed =
    selfIntersections(outline(piece)).length > 0
      ? [say('outlineCrosses', 'stop', `${piece.id}.side`)]
      : []
  const darts = piece.darts.flatMap((d) => {
    const upper = Math.abs(distance(d.upperTip, d.inner) - distance(d.upperTip, d.outer))
    const lower = Math.abs(distance(d.lowerTip, d.inner) - distance(d.lowerTip, d.outer))
    const legs = Math.max(upper, lower)
    const mouth = distance(d.inner, d.outer)
    return [
      ...(legs > SEAM_EQUAL
        ? [say('dartLegs', 'stop', `${piece.id}.waistDart`, legs, SEAM_EQUAL)]
        : []),
      ...(mouth > DART_MOST[piece.id] + 0.05
        ? [say('dartWide', 'note', `${piece.id}.waistDart`, mouth, DART_MOST[piece.id])]
        : []),
    ]
  })
  return [
    ...crossed,
    ...darts,
    ...(piece.darts.length === 0 ? [say('straightWaist', 'note', `${piece.id}.side`)] : []),
  ]
}

/** The angles of back and front neck against the overarm seam, added: 180° is one smooth line. */
export function neckAngle(piece: Piece): number {
  const [neck, overarm] = [
    endTangent(edge(piece, 'neck').path),
    startTangent(edge(piece, 'overarm').path),
  ]
  const back = { x: -neck.x, y: -neck.y }
  return Math.abs(Math.atan2(cross(back, overarm), dot(back, overarm)))
}
function neckJoin(back: Piece, front: Piece): Finding[] {
  const off = Math.abs(neckAngle(back) + neckAngle(front) - Math.PI)
  return off > RUNS_ON ? [say('neckJoin', 'stop', 'front.neck')] : []
}

function armOpening(back: Piece, front: Piece, body: Body): Finding[] {
  const opening = length(back, 'sleeveEdge') + length(front, 'sleeveEdge')
  if (!knows(body, 'upperArmGirth'))
    return [say('upperArmUnknown', 'muslin', 'front.sleeveEdge', opening)]
  const need = lengthOf(body, 'upperArmGirth') + ARM_ROOM
  return opening < need ? [say('armOpening', 'stop', 'front.sleeveEdge', opening, need)] : []
}

function gettingIn(back: Piece, front: Piece, body: Body): Finding[] {
  const neck = 2 * (length(back, 'neck') + length(front, 'neck'))
  const head = !knows(body, 'headGirth')
    ? [say('headUnknown', 'muslin', 'front.neck', neck)]
    : neck < lengthOf(body, 'headGirth') + HEAD_ROOM
      ? [say('headOpening', 'stop', 'front.neck', neck, lengthOf(body, 'headGirth') + HEAD_ROOM)]
      : []
  const waist = 2 * (sewnWaist(back) + sewnWaist(front))
  const through = !knows(body, 'slipThroughGirth')
    ? [say('gettingInUnknown', 'muslin', 'front.side', waist)]
    : waist < lengthOf(body, 'slipThroughGirth')
      ? [say('gettingIn', 'stop', 'front.side', waist, lengthOf(body, 'slipThroughGirth'))]
      : []
  return [...head, ...through]
}

/** Width of a half piece at the waist with its dart sewn. */
export function sewnWaist(piece: Piece): number {
  const [w, dart] = [piece.points['W'], piece.darts[0]]
  if (!w) throw new Error(`${piece.id}: no point W`)
  return w.x - (dart ? distance(dart.inner, dart.outer) : 0)
}

function lengths(body: Body, choices: Choices): Finding[] {
  const armpit = knows(body, 'napeToArmpitLevel')
    ? []
    : [say('armpitUnknown', 'muslin', 'back.sleeveEdge', 25)]
  if (!(knows(body, 'sideNeckOverApexToWaist') && knows(body, 'sideNeckOverBladeToWaist')))
    return [...armpit, say('balanceUnknown', 'note', 'front.overarm', choices.frontRaise)]
  const balance =
    lengthOf(body, 'sideNeckOverApexToWaist') - lengthOf(body, 'sideNeckOverBladeToWaist')
  return balance > RAISE_MOST
    ? [...armpit, say('frontLength', 'muslin', 'front.overarm', balance, RAISE_MOST)]
    : armpit
}
