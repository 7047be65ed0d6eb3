/** The lengths that the rules read, measured on a draft. */
import { sewnEase } from '../draft/ease.ts'
import { pieceOf, type Draft } from '../draft/draft.ts'
import { edge, namedPoint, type Piece } from '../draft/piece.ts'
import { pathLength } from '../geometry/length.ts'
import { pathEnd, pathStart, type Path } from '../geometry/path.ts'
import { between, distance, type Point } from '../geometry/point.ts'
import { knows, lengthOf } from '../measurements/confirmed.ts'
import {
  armEdge,
  hingeOf,
  onArmEdge,
  onNeck,
  overEdge,
  PINNED_AT,
  PINNED_ON_BACK,
  pivotOf,
  reachAt,
  sideAt,
  sideMouth,
} from './landmarks.ts'
import type { Reaches } from './reaches.ts'

/** Darts of a draft by their targets: `front.bustDart`. */
export const dartsOf = (draft: Draft): readonly string[] =>
  draft.pieces.flatMap((p) => [...p.darts, ...p.edgeDarts].map((d) => `${p.id}.${d.name}`))

export function measuredReaches(draft: Draft): Reaches {
  const [front, back] = [pieceOf(draft, 'front'), pieceOf(draft, 'back')]
  return defined({
    ...frontReaches(front),
    ...backReaches(back),
    ...sleeveReaches(draft),
    ...easeReaches(draft),
    ...(knows(draft.body, 'apexSpacing')
      ? { apexSpacingDraft: 2 * namedPoint(front, 'apex').x }
      : {}),
  })
}
const defined = (all: Readonly<Record<string, number | undefined>>): Reaches =>
  Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined))

function frontReaches(front: Piece): Readonly<Record<string, number | undefined>> {
  const apex = pivotOf(front)
  const [hinge, mouth, dart] = [hingeOf(front), sideMouth(front), front.darts[0]]
  const shoulder = edge(front, overEdge(front)).path
  const bust = front.edgeDarts.find((d) => d.name === 'bustDart')
  const waist = namedPoint(front, 'C').y
  return {
    apexToNeck: distance(apex, onNeck(front, PINNED_AT.neck)),
    apexToArmhole: distance(apex, onArmEdge(front, PINNED_AT[armEdge(front)])),
    apexToShoulder: distance(apex, middleOf(shoulder)),
    apexToWaist: dart && distance(apex, dart.outer),
    apexToSide: mouth && distance(apex, mouth),
    hingeAcross: hinge.x - apex.x,
    hingeUp: apex.y - hinge.y,
    chestWidth: reachAt(front, middle(front)),
    frontWaistWidth: sideAt(front, waist)?.x,
    frontWaistDart: dart && distance(dart.inner, dart.outer),
    bustDart: bust && distance(bust.upper, bust.lower),
    dartTip: dart && dart.upperTip.y - apex.y,
    overarm: overEdge(front) === 'overarm' ? pathLength(shoulder) : undefined,
  }
}

function backReaches(back: Piece): Readonly<Record<string, number | undefined>> {
  const [blade, dart] = [pivotOf(back), back.darts[0]]
  const waist = namedPoint(back, 'C').y
  return {
    bladeToNeck: distance(blade, onNeck(back, PINNED_AT.neck)),
    bladeToArmhole: distance(blade, onArmEdge(back, PINNED_ON_BACK[armEdge(back)])),
    bladeToShoulder: distance(blade, middleOf(edge(back, overEdge(back)).path)),
    bladeToWaist: dart && distance(blade, dart.outer),
    backWidth: reachAt(back, blade.y),
    backWaistWidth: sideAt(back, waist)?.x,
    backWaistDart: dart && distance(dart.inner, dart.outer),
  }
}

/** Half way from the front neck edge to the bust tip: the upper chest. */
const middle = (front: Piece): number => (onNeck(front, 0).y + pivotOf(front).y) / 2

const middleOf = (path: Path): Point => between(pathStart(path), pathEnd(path), 0.5)

function sleeveReaches(draft: Draft): Readonly<Record<string, number | undefined>> {
  const sleeve = draft.pieces.find((p) => p.id === 'sleeve')
  if (!sleeve) return {}
  const long = (id: 'front' | 'back'): number =>
    pathLength(edge(pieceOf(draft, id), 'armhole').path)
  return {
    frontArmhole: long('front'),
    backArmhole: long('back'),
    cap: pathLength(edge(sleeve, 'cap').path),
    biceps: namedPoint(sleeve, 'F').x - namedPoint(sleeve, 'G').x,
  }
}

function easeReaches(draft: Draft): Readonly<Record<string, number | undefined>> {
  const list = sewnEase(draft)
  const at = (level: 'bust' | 'waist' | 'hip') => list.find((e) => e.level === level)
  return {
    bustEase: at('bust')?.ease,
    waistEase: at('waist')?.ease,
    hipEase: at('hip')?.ease,
    bustBody: knows(draft.body, 'bustGirth') ? lengthOf(draft.body, 'bustGirth') : undefined,
    upperArm: knows(draft.body, 'upperArmGirth')
      ? lengthOf(draft.body, 'upperArmGirth')
      : undefined,
  }
}
