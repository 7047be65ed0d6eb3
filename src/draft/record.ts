/**
 * Everything of a draft that reaches paper, as numbers: edge lengths, dart widths and where each
 * point lies. Lengths alone miss a rotation, which keeps them by design; points do not.
 */
import { pathLength } from '../geometry/length.ts'
import { distance } from '../geometry/point.ts'
import { mm, type Mm } from '../units/length.ts'
import type { Draft } from './draft.ts'

export interface NumberRecord {
  /** `front.sleeveEdge`, `front.waistDart`: mm to a hundredth. */
  readonly lengths: Readonly<Record<string, Mm>>
  /** `front.U`: across and down from the top of the fold, mm to a hundredth. */
  readonly points: Readonly<Record<string, readonly [Mm, Mm]>>
}

const hundredth = (value: number): Mm => mm(Math.round(value * 100) / 100 + 0)

export function record(draft: Draft): NumberRecord {
  const lengths: Record<string, Mm> = {}
  const points: Record<string, readonly [Mm, Mm]> = {}
  for (const piece of draft.pieces) {
    for (const e of piece.edges) lengths[`${piece.id}.${e.name}`] = hundredth(pathLength(e.path))
    for (const d of piece.darts)
      lengths[`${piece.id}.${d.name}`] = hundredth(distance(d.inner, d.outer))
    for (const d of piece.edgeDarts)
      lengths[`${piece.id}.${d.name}`] = hundredth(distance(d.upper, d.lower))
    for (const [name, p] of Object.entries(piece.points))
      points[`${piece.id}.${name}`] = [hundredth(p.x), hundredth(p.y)]
  }
  return { lengths, points }
}
