/**
 * Places on a drawn half piece that corrections turn about and measure from, where the draft has
 * no letter for them. Bust tip: as drafted. Blade point: tip of the shoulder dart, else half way
 * out and three tenths of nape to waist down. Hinge of a fuller bust: a third up the armhole.
 * Common practice, no source, but for the third (lower third of the armhole, public lessons).
 */
import { boxOf } from '../geometry/box.ts'
import { crossings } from '../geometry/intersect.ts'
import { pathLength } from '../geometry/length.ts'
import { pointAtLength, type Path } from '../geometry/path.ts'
import { between, point, type Point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import { edge, outline, type EdgeName, type Piece } from '../draft/piece.ts'

const BLADE = { out: 0.5, down: 0.3 } as const
const HINGE_UP = 1 / 3
/** Where a gape is pinned unless she says otherwise, as a share of the edge from its lower end. */
export const PINNED_AT = { neck: 0.5, armhole: 0.4, sleeveEdge: 0.6 } as const
/** On the back armhole higher, where a line from the blade meets it squarely. */
export const PINNED_ON_BACK = { armhole: 0.75, sleeveEdge: 0.4 } as const

export const usualAlong = (
  piece: 'front' | 'back',
  name: 'neck' | 'armhole' | 'sleeveEdge',
): number => (piece === 'back' && name !== 'neck' ? PINNED_ON_BACK[name] : PINNED_AT[name])

export const has = (piece: Piece, name: EdgeName): boolean =>
  piece.edges.some((e) => e.name === name)

/** The edge round the arm, whichever the piece has. */
export const armEdge = (piece: Piece): 'armhole' | 'sleeveEdge' =>
  has(piece, 'armhole') ? 'armhole' : 'sleeveEdge'
export const overEdge = (piece: Piece): 'shoulder' | 'overarm' =>
  has(piece, 'shoulder') ? 'shoulder' : 'overarm'

export function pivotOf(piece: Piece): Point {
  const apex = piece.points['apex']
  if (apex) return apex
  const tip = piece.edgeDarts.find((d) => d.name === 'shoulderDart')?.tip
  if (tip) return tip
  const [u, c] = [piece.points['U'], piece.points['C']]
  if (!u || !c) throw new Error(`${piece.id}: no underarm or waist to find the blade by`)
  return point(u.x * BLADE.out, c.y * BLADE.down)
}

/** A place on the arm edge, counted from the underarm. */
export function onArmEdge(piece: Piece, along: number): Point {
  const path = edge(piece, armEdge(piece)).path
  return pointAtLength(path, pathLength(path) * (1 - along))
}
export const hingeOf = (piece: Piece): Point => onArmEdge(piece, HINGE_UP)

export function onNeck(piece: Piece, along: number): Point {
  const path = edge(piece, 'neck').path
  return pointAtLength(path, pathLength(path) * along)
}

/** How far the outline reaches from the centre on a level, on the right, mm. */
export function reachAt(piece: Piece, y: number): number | undefined {
  const whole: Path = outline(piece)
  const { right } = boxOf([whole])
  const hits = crossings(whole, line(point(-right - 50, y), point(right + 50, y)))
  return hits.length === 0 ? undefined : Math.max(...hits.map(({ at }) => at.x))
}

/** Where the side is met on a level; undefined above the underarm and under the hem. */
export function sideAt(piece: Piece, y: number): Point | undefined {
  const side = edge(piece, 'side').path
  const { right } = boxOf([side])
  const hits = crossings(side, line(point(-50, y), point(right + 50, y)))
  const [first] = hits.map(({ at }) => at).sort((a, b) => b.x - a.x)
  return first
}

/** Middle of the mouth of the dart on the side, or the side on the level of the bust tip. */
export function sideMouth(piece: Piece): Point | undefined {
  const dart = piece.edgeDarts.find((d) => d.name === 'bustDart')
  return dart ? between(dart.upper, dart.lower, 0.5) : sideAt(piece, pivotOf(piece).y)
}
