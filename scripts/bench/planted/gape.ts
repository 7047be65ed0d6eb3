/**
 * Cloth that stands away at the front armhole because dart angle is missing. A bust wants a
 * certain angle of darts about its tip; what the piece lacks of it has to come out at an edge.
 * Where the front is too short over the bust, its level lines rise and use the angle up there;
 * only the rest stands as slack at the armhole. Own reasoning from the geometry of a cone; that
 * the angles of all darts about one tip add up is the textbook rule of moving darts.
 *
 * θ = 2·asin(mouth / 2·leg); slack at the armhole = r·θ missing, r from the tip to the curve.
 */
import { edge, namedPoint } from '../../../src/draft/piece.ts'
import { distance } from '../../../src/geometry/point.ts'
import { at } from '../../../src/geometry/segment.ts'
import type { Halves } from './sewn.ts'
import { lengthOf, type Lengths } from './lengths.ts'

/** Place on the armhole where a gape stands most, as a share from the shoulder: the lower half. */
const LOWER = 0.3

export const angleOf = (mouth: number, leg: number): number => 2 * Math.asin(mouth / (2 * leg))

export function gape({ front }: Halves, sewn: Lengths, needed: Lengths): number {
  const armhole = front.edges.find((e) => e.name === 'armhole')
  const side = edge(front, 'side').path[0]
  if (!armhole || !side) return 0
  const apex = namedPoint(front, 'apex')
  const leg = namedPoint(front, 'U').x - apex.x
  const last = armhole.path[armhole.path.length - 1]
  if (!last) return 0
  const radius = distance(apex, at(last, LOWER))
  const missing =
    angleOf(lengthOf(needed, 'bustDart'), leg) - angleOf(lengthOf(sewn, 'bustDart'), leg)
  const short = Math.max(0, lengthOf(needed, 'frontLength') - lengthOf(sewn, 'frontLength'))
  return Math.max(0, missing - angleOf(short, leg)) * radius
}
