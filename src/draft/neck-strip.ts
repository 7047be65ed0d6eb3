/**
 * The bias strip of the neck. It lies on the wrong side of the neck edge; at the point of a V its
 * free edge is longer than the edge it is sewn to, so the strip is mitred there before it is sewn
 * on: folded across its middle and sewn on a slant. Common practice; the arithmetic worked out:
 * with the neck at an angle α off the centre line, the mitre leaves the sewn line at α and runs
 * (width) / tan α along the strip.
 */
import { startTangent } from '../geometry/path.ts'
import { point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import { fixed, found, plus, type Amount } from '../units/amount.ts'
import { radians, type Radians } from '../units/angle.ts'
import { mm, type Mm } from '../units/length.ts'
import { choice, type Choices } from './choices.ts'
import { rectangle, STRIP_SPARE, type Finishing } from './facing.ts'
import { edge, type Piece } from './piece.ts'

/** The strip is sewn on so far from its edge: an old school textbook on dressmaking. */
const SEWN_AT = mm(6)
/** A neck that leaves the fold flatter than this is drawn round at once, and its strip eased. Judgement. */
const POINTED = (75 * Math.PI) / 180

/**
 * @param neck length of the neck edge from centre to centre, all round
 * @param front the front as it is sewn at its centre; undefined where it is open there
 */
export function neckStrip(neck: Mm, front: Piece | undefined, choices: Choices): Finishing {
  const wide = choice(choices, 'stripWidth')
  const angle = front && pointAngle(front)
  const round = plus(found('the whole neck edge', neck), fixed(STRIP_SPARE))
  const cutting = 'Cut 1 on the true bias'
  const why = 'cut at 45° to the selvedge; join strips on the straight grain where one is too short'
  if (angle === undefined) return rectangle('neckStrip', round, wide, cutting, why)
  const taken = found('what the mitre takes', mm((2 * (wide.mm - SEWN_AT)) / Math.tan(angle)))
  return mitred(rectangle('neckStrip', plus(round, taken), wide, cutting, why), wide, angle, round)
}

/** Between the neck edge and the centre line where a V begins; undefined where the neck is round there. */
function pointAngle(front: Piece): Radians | undefined {
  const way = startTangent(edge(front, 'neck').path)
  const angle = Math.atan2(Math.abs(way.x), -way.y)
  return edge(front, 'centre').role === 'fold' && angle < POINTED ? radians(angle) : undefined
}

function mitred(
  { piece, steps }: Finishing,
  wide: Amount,
  angle: Radians,
  round: Amount,
): Finishing {
  const long = edge(piece, 'neck').path[0]
  if (long?.kind !== 'line') throw new Error('neck strip: no rectangle to mitre')
  const middle = (long.from.x + long.to.x) / 2
  const out = wide.mm / Math.tan(angle)
  const tip = point(middle, wide.mm)
  const path = [line(point(middle - out, 0), tip), line(tip, point(middle + out, 0))]
  return {
    piece: {
      ...piece,
      inner: [{ name: 'mitre', words: 'mitre', path }],
      grain: movedGrain(piece, middle / 2),
    },
    steps: [
      ...steps,
      {
        verb: 'mitre',
        piece: piece.id,
        out: found('', mm(out)),
        side: found('', mm(round.mm / 2)),
        sewnAt: fixed(SEWN_AT),
        angle,
        why: 'at the point of the V the strip then lies flat',
        lights: [path],
      },
    ],
  }
}

/** Half way to the end, clear of the mitre. */
const movedGrain = ({ grain: { from, to } }: Piece, by: number): Piece['grain'] => ({
  from: point(from.x + by, from.y),
  to: point(to.x + by, to.y),
})
