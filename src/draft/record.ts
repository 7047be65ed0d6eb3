/**
 * Everything of a draft that reaches paper, as numbers: edge lengths, dart widths and where each
 * point lies. Lengths alone miss a rotation, which keeps them by design; points do not.
 */
import { pathLength } from '../geometry/length.ts'
import { distance } from '../geometry/point.ts'
import { mm, type Mm } from '../units/length.ts'
import { alike } from './as-worn.ts'
import { dartTips } from './dart-tips.ts'
import type { Draft } from './draft.ts'
import { pairedId, partName, sidedId, SIDES, type Piece } from './piece.ts'

export interface NumberRecord {
  /** `front.sleeveEdge`, `front.waistDart`: mm to a hundredth. */
  readonly lengths: Readonly<Record<string, Mm>>
  /** `front.U`: across and down from the top of the fold, mm to a hundredth. */
  readonly points: Readonly<Record<string, readonly [Mm, Mm]>>
  /** Tips of darts, `front.waistDart.upper`, likewise; records kept before they were told have none. */
  readonly tips?: Readonly<Record<string, readonly [Mm, Mm]>>
}

/** What a page is held to, mm. */
const HUNDREDTH = 0.01

/** @param step the numbers are rounded to, mm; finer than a hundredth to hold one program to another */
export function record(draft: Draft, step = HUNDREDTH): NumberRecord {
  // Divided by a whole number: 0.01 times a count is not the number one would write.
  const parts = Math.round(1 / step)
  const rounded = (value: number): Mm => mm(Math.round(value * parts) / parts + 0)
  const lengths: Record<string, Mm> = {}
  const points: Record<string, readonly [Mm, Mm]> = {}
  const tips: Record<string, readonly [Mm, Mm]> = {}
  for (const piece of recorded(draft)) {
    for (const e of piece.edges) lengths[`${piece.id}.${partName(e)}`] = rounded(pathLength(e.path))
    for (const d of piece.darts)
      lengths[`${piece.id}.${partName(d)}`] = rounded(distance(d.inner, d.outer))
    for (const d of piece.edgeDarts)
      lengths[`${piece.id}.${partName(d)}`] = rounded(distance(d.upper, d.lower))
    for (const [name, p] of Object.entries(piece.points))
      points[`${piece.id}.${name}`] = [rounded(p.x), rounded(p.y)]
    for (const { name, at } of dartTips(piece))
      tips[`${piece.id}.${name}`] = [rounded(at.x), rounded(at.y)]
  }
  return { lengths, points, tips }
}

/** The pieces of a draft; of one that differs left and right both halves, as they are drafted. */
function recorded({ pieces, sides }: Draft): readonly Piece[] {
  if (!sides) return pieces
  const ids = [...new Set(SIDES.flatMap((s) => sides[s].pieces.map((p) => p.id)))]
  return ids.flatMap((id) => {
    const both = SIDES.flatMap((side) => sides[side].pieces.filter((p) => p.id === id))
    const [a, b] = both
    if (a && b && alike(a, b)) return [a]
    return SIDES.flatMap((side) =>
      sides[side].pieces
        .filter((p) => p.id === id)
        .map((p) => ({ ...p, id: sidedId(pairedId(id), side) })),
    )
  })
}
