/** The end of the overarm and the arc of a sleeve cut in one with the body, square to the overarm. */
import { dot, norm, subtract, unit, type Point } from '../../geometry/point.ts'
import { found, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import type { Sheet } from '../sheet.ts'

/**
 * The overarm S–T of length L and the sleeve edge, an arc square to it that ends in U. Where L is
 * the distance S–U the centre is S. Otherwise the centre K slides along the overarm: with u the
 * unit vector S→T, |U − (S + t·u)| = L − t gives t = (L² − |SU|²) / (2(L − u·SU)).
 */
export function strikeSleeveEdge(s: Sheet, overarm: Amount): void {
  s.compass('T', 'S', overarm, s.has('G') ? 'G' : 'A', 'the end of the overarm')
  const [sn, u] = [s.at('S'), subtract(s.at('U'), s.at('S'))]
  if (Math.abs(norm(u) - overarm.mm) < 1e-9) return
  const along = unit(subtract(s.at('T'), sn))
  const slid = slideOf(overarm.mm, u, along)
  s.slide('K', 'S', 'T', found('', mm(slid), s.restsOf('U')), 'the centre of the sleeve edge')
}
function slideOf(overarm: number, toUnderarm: Point, along: Point): number {
  const room = overarm - dot(along, toUnderarm)
  if (room <= 0)
    throw new Error(`sleeve edge: an overarm of ${overarm} mm does not reach past the underarm`)
  return (overarm ** 2 - dot(toUnderarm, toUnderarm)) / (2 * room)
}
