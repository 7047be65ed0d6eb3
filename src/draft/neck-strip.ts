/**
 * The bias strip of the neck. It lies on the wrong side of the neck edge; at the point of a V and
 * at the corners of a square its free edge is longer than the edge it is sewn to, so the strip is
 * mitred there before it is sewn on: folded across the place and sewn on a slant. Common practice;
 * the arithmetic worked out: where the neck edges stand 2α apart, the mitre leaves the sewn line
 * at α and runs (width) / tan α along the strip.
 */
import { endTangent, startTangent } from '../geometry/path.ts'
import { cross, dot, point, scale } from '../geometry/point.ts'
import { pathLength } from '../geometry/length.ts'
import { line } from '../geometry/segment.ts'
import { fixed, found, plus, type Amount } from '../units/amount.ts'
import { radians, type Radians } from '../units/angle.ts'
import { mm, type Mm } from '../units/length.ts'
import { choice, type Choices } from './choices.ts'
import { rectangle, STRIP_SPARE, type Finishing } from './facing.ts'
import { edge, type InnerLine, type Piece } from './piece.ts'
import { FINISHING_WORDS as W } from './finishing.words.ts'

/** The strip is sewn on so far from its edge: an old school textbook on dressmaking. */
const SEWN_AT = mm(6)
/** A neck that leaves the fold flatter than this is drawn round at once, and its strip eased. Judgement. */
const POINTED = (75 * Math.PI) / 180
/** An edge that turns by less than this is no corner. Judgement. */
const CORNER = Math.PI / 6

/** Where the strip is mitred: at its one place in the middle, or on both sides alike. */
interface Mitres {
  /** Half the angle between the neck edges there. */
  readonly angle: Radians
  /** Along the neck edge from the centre front; 0 at the point of a V. */
  readonly along: number
}

/**
 * @param neck length of the neck edge from centre to centre, all round
 * @param front the front whose neck it finishes, as it is sewn at its centre
 * @param open the front opens at its centre, and the strip begins and ends there
 */
export function neckStrip(neck: Mm, front: Piece, open: boolean, choices: Choices): Finishing {
  const wide = choice(choices, 'stripWidth')
  const mitres = mitresOf(front, open)
  const round = plus(found(W.wholeNeckEdge, neck), fixed(STRIP_SPARE))
  const cut = { count: 1, how: 'trueBias' } as const
  const why = W.stripOnTheBias
  if (!mitres) return rectangle('neckStrip', round, wide, cut, why)
  const one = (2 * (wide.mm - SEWN_AT)) / Math.tan(mitres.angle)
  const two = mitres.along > 0
  const taken = found(two ? W.whatTwoMitresTake : W.whatMitreTakes, mm(two ? 2 * one : one))
  const strip = rectangle('neckStrip', plus(round, taken), wide, cut, why)
  if (!two) return mitred(strip, wide, mitres.angle, round.mm / 2, 0)
  // On the seam line an end is left beyond each mitre, or beyond it from an open front.
  const toEnd = open ? STRIP_SPARE / 2 + mitres.along : round.mm / 2 - mitres.along
  const apart = (round.mm + 2 * one) / 2 - toEnd - one / 2
  return mitred(strip, wide, mitres.angle, toEnd, apart)
}

function mitresOf(front: Piece, open: boolean): Mitres | undefined {
  const neck = edge(front, 'neck').path
  const [first, ...rest] = neck
  if (first && rest.length > 0 && front.edgeDarts.every((d) => d.edge !== 'neck')) {
    const [before, after] = [scale(endTangent([first]), -1), startTangent(rest)]
    const between = Math.abs(Math.atan2(cross(before, after), dot(before, after)))
    if (Math.PI - between > CORNER)
      return { angle: radians(between / 2), along: pathLength([first]) }
  }
  const way = startTangent(neck)
  const angle = Math.atan2(Math.abs(way.x), -way.y)
  return !open && edge(front, 'centre').role === 'fold' && angle < POINTED
    ? { angle: radians(angle), along: 0 }
    : undefined
}

/** @param apart from the middle of the strip to either mitre, mm; 0 for the one in the middle */
function mitred(
  { piece, steps }: Finishing,
  wide: Amount,
  angle: Radians,
  toEnd: number,
  apart: number,
): Finishing {
  const long = edge(piece, 'neck').path[0]
  if (long?.kind !== 'line') throw new Error('neck strip: no rectangle to mitre')
  const middle = (long.from.x + long.to.x) / 2
  const out = wide.mm / Math.tan(angle)
  const at = (x: number, of: Pick<InnerLine, 'side'>): InnerLine => {
    const tip = point(x, wide.mm)
    const path = [line(point(x - out, 0), tip), line(tip, point(x + out, 0))]
    return { name: 'mitre', words: W.mitre, path, ...of }
  }
  const inner =
    apart === 0
      ? [at(middle, {})]
      : [at(middle - apart, { side: 'left' }), at(middle + apart, { side: 'right' })]
  return {
    piece: { ...piece, inner, grain: apart === 0 ? movedGrain(piece, middle / 2) : piece.grain },
    steps: [
      ...steps,
      {
        verb: 'mitre',
        piece: piece.id,
        out: found('', mm(out)),
        ...(apart === 0 ? {} : { apart: found('', mm(apart)) }),
        side: found('', mm(toEnd)),
        sewnAt: fixed(SEWN_AT),
        angle,
        why: apart === 0 ? W.flatAtPointOfV : W.flatAtCorners,
        lights: inner.map((i) => i.path),
      },
    ],
  }
}

/** Half way to the end, clear of the mitre. */
const movedGrain = ({ grain: { from, to } }: Piece, by: number): Piece['grain'] => ({
  from: point(from.x + by, from.y),
  to: point(to.x + by, to.y),
})
