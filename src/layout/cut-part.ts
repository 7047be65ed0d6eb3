/**
 * The pieces of a garment as parts to be cut from cloth: outline of the cutting line, laid with the
 * grain along the cloth, how it is cut, and the point where stripes and checks are matched.
 * Along (x) runs down the piece, across (y) from its centre outward; a piece on the fold has its
 * fold on across = 0.
 */
import { flatten } from '../geometry/path.ts'
import type { Point } from '../geometry/point.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'
import { outline as seamLine, type Piece, type PieceId } from '../draft/piece.ts'
import { cuttingLine, type Allowances } from '../output/allowance.ts'
import type { Mm } from '../units/length.ts'
import type { MatchAt } from './cloth-wishes.ts'
import { RUN_WORDS } from './cloth.words.ts'
import { matchPoints, matched, type Match, type MatchPoint } from './match.ts'
import { grownOutline, outlineArea, outlineOf, type Outline } from './outline.ts'
import { thinned } from './thinned.ts'

/**
 * onFold: cut once through both layers with its centre on the fold. pair: two, one turned over.
 * single: as it is, so many times. bias: a strip laid aslant.
 */
export type CutKind = 'onFold' | 'pair' | 'single' | 'bias'

export interface CutPart {
  readonly id: PieceId
  readonly words: string
  readonly kind: CutKind
  /** How many are needed in all; of a part on the fold, whole ones. */
  readonly count: number
  /** Encloses the cutting line, nowhere more than `THINNING` twice outside it. mm. */
  readonly outline: Outline
  /** The cutting line itself, in chords. */
  readonly exact: Outline
  /** The seam line in chords: what is sewn, to be drawn inside. */
  readonly seam: Outline
  /** Undefined where nothing is matched: strips and facings. */
  readonly match?: Match
  /** Levels of its side seam at which the partner is met, whichever of them is matched. */
  readonly levels?: readonly MatchPoint[]
  /** Depth of what is turned up at its hem; only where it has one. */
  readonly hem?: Mm
}

export type CutParts =
  | { readonly ok: true; readonly parts: readonly CutPart[] }
  | { readonly ok: false; readonly reason: string }

/** Chords of a cutting line, and how far the outline that is laid out may leave it, mm. */
const CHORDS = 0.05
const THINNING = 0.4

export function cutParts(
  pieces: readonly Piece[],
  allowances: Allowances,
  hemDepth?: Mm,
  matchAt: MatchAt = 'waist',
): CutParts {
  const parts: CutPart[] = []
  for (const piece of pieces) {
    const cut = cuttingLine(piece, allowances, hemDepth)
    if (!cut.ok) return { ok: false, reason: RUN_WORDS.notLaid(piece.words, cut.reason) }
    const kind = kindOf(piece)
    const lie = onGrain(piece)
    const ring = flatten(cut.path, CHORDS).map(lie)
    const exact = outlineOf(ring)
    const grown = grownOutline(thinned(exact, THINNING), THINNING)
    const seam = outlineOf(flatten(seamLine(piece), CHORDS).map(lie))
    // The fold is no line to stay clear of: the layers go on behind it. What was reckoned a hair off
    // it lies on it.
    const folded = (ring: Outline): Outline =>
      kind === 'onFold' ? ring.map((v, i) => (i % 2 === 1 && v < SAME_POINT ? 0 : v)) : ring
    const levels = matchPoints(piece, lie)
    const hem = piece.edges.some((e) => e.name === 'hem') ? allowances.hem : undefined
    parts.push({
      id: piece.id,
      words: piece.words,
      kind,
      count: piece.cut.count,
      outline: folded(grown),
      exact: folded(exact),
      seam: folded(seam),
      ...(levels.length > 0 ? { levels } : {}),
      ...(hem === undefined ? {} : { hem }),
    })
  }
  return { ok: true, parts: matched(parts, matchAt) }
}

/** What all of them take of the cloth at the least, mm²: each as often as it is cut, halves whole. */
export const areaCut = (parts: readonly CutPart[]): number =>
  parts.reduce((sum, p) => sum + p.count * (p.kind === 'onFold' ? 2 : 1) * outlineArea(p.exact), 0)

/** The piece says it, its fold edge where there is one. */
function kindOf(piece: Piece): CutKind {
  if (piece.edges.some((e) => e.role === 'fold')) return 'onFold'
  if (piece.cut.how === 'trueBias') return 'bias'
  return piece.cut.how === 'turnedOver' ? 'pair' : 'single'
}

/** Points of the paper with the grain laid along x; paper right of the centre is across. */
function onGrain(piece: Piece): (p: Point) => [number, number] {
  const { from, to } = piece.grain
  const long = Math.hypot(to.x - from.x, to.y - from.y)
  if (long === 0) throw new Error(`${piece.id}: its grain line has no direction`)
  const [gx, gy] = [(to.x - from.x) / long, (to.y - from.y) / long]
  return (p) => [p.x * gx + p.y * gy, p.x * gy - p.y * gx]
}
