/**
 * Whether a finish goes on an edge. Turning up h on a curve of radius R makes the raw edge longer
 * by h/R than the line it is turned to (worked out: the arc moved out by h is (R + h)/R as long),
 * and what is too long lies in pleats. A hollow curve no wider than what is turned leaves no raw
 * edge at all. A seam that is sewn twice will not turn a tight curve.
 */
import type { Edge, EdgeName, Piece } from '../draft/piece.ts'
import { EDGE_WORDS } from '../draft/piece.words.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import {
  FINISH_IDS,
  finishOf,
  HEM_DEPTH,
  NARROWEST_FOLD,
  type Finish,
  type FinishId,
  type Stuff,
} from './finish.ts'
import { atEdge } from './by-edge.ts'
import type { Finishes } from './finishes.ts'
import { tightest } from './tightest.ts'

/**
 * A raw edge this much longer can still be eased flat. Worked out for a sleeve edge of 200 mm:
 * 8 mm give 4 % and go, 13 mm give 6.5 % and do not. Common practice, no source.
 */
export const LONGER_MOST = 0.05

export interface FinishRefusal {
  readonly edge: EdgeName
  readonly reason: string
  /** The widest finish that goes instead. */
  readonly offer?: FinishId
  /** Of a hem folded twice: the most it may be deep to lie flat, in whole millimetres. */
  readonly depth?: Mm
}

type Misfit =
  | { readonly kind: 'longer'; readonly radius: Mm; readonly share: number }
  | { readonly kind: 'tight'; readonly radius: Mm; readonly least: Mm }
  | { readonly kind: 'shut'; readonly radius: Mm }

function misfit(edge: Edge, finish: Finish): Misfit | undefined {
  const { bulging, hollow } = tightest(edge.path)
  const share = finish.turned / bulging
  if (share > LONGER_MOST) return { kind: 'longer', radius: mm(bulging), share }
  if (finish.turned > 0 && finish.turned >= hollow) return { kind: 'shut', radius: mm(hollow) }
  const radius = Math.min(bulging, hollow)
  const least = finish.leastRadius
  return least !== undefined && radius <= least
    ? { kind: 'tight', radius: mm(radius), least }
    : undefined
}

/** Every finish for the edge's role that its curve can take. */
export const finishesThatSuit = (
  edge: Edge,
  stuff: Stuff = 'cloth',
  hemDepth: Mm = HEM_DEPTH,
): FinishId[] =>
  FINISH_IDS.filter((id) => {
    const finish = finishOf(id, hemDepth)
    return (
      finish.suits.includes(edge.role) &&
      (finish.only?.includes(edge.name) ?? true) &&
      finish.stuff.includes(stuff) &&
      misfit(edge, finish) === undefined
    )
  })

/** Undefined where the finish goes. */
export function finishRefusal(
  edge: Edge,
  id: FinishId,
  units: UnitChoice,
  hemDepth: Mm = HEM_DEPTH,
): FinishRefusal | undefined {
  const finish = finishOf(id, hemDepth)
  const why = misfit(edge, finish)
  if (!why) return undefined
  const going = finishesThatSuit(edge, finish.stuff[0], hemDepth)
  const offer = OFFERED.find((other) => going.includes(other))
  const instead = offer ? ` What goes there: ${finishOf(offer, hemDepth).words}.` : ''
  const said =
    why.kind === 'longer'
      ? tooLong(edge, finish, why, id === 'doubleFoldHem' ? deepest(why) : undefined, units)
      : why.kind === 'tight'
        ? tooTight(edge, finish, why, units)
        : tooHollow(edge, finish, why, units)
  const depth = id === 'doubleFoldHem' ? deepest(why) : undefined
  return {
    edge: edge.name,
    reason: `${said}${instead}`,
    ...(offer && { offer }),
    ...(depth !== undefined && { depth }),
  }
}
/** Rounded down, so that what is said still goes; undefined where no hand can fold it. */
function deepest(why: Misfit): Mm | undefined {
  if (why.kind !== 'longer') return undefined
  const depth = mm(Math.floor((LONGER_MOST * why.radius) / 2 + 1e-9))
  return depth >= NARROWEST_FOLD ? depth : undefined
}
/** Widest first. A zip is no substitute for a seam, nor a seam for a zip. */
const OFFERED: readonly FinishId[] = [
  'doubleFoldHem',
  'rolledEdge',
  'facing',
  'biasStrip',
  'plainSeam',
  'muslinHem',
  'muslinEdge',
  'cutOnLine',
]

/** The refusals of a whole piece; the fold has no finish. */
export const refusedFinishes = (
  piece: Piece,
  finishes: Finishes,
  units: UnitChoice,
  hemDepth: Mm = HEM_DEPTH,
): FinishRefusal[] =>
  piece.edges
    .filter((e) => e.role !== 'fold')
    .flatMap((e) => finishRefusal(e, atEdge(finishes, piece.id, e.name), units, hemDepth) ?? [])

function tooLong(
  edge: Edge,
  finish: Finish,
  { radius, share }: Extract<Misfit, { kind: 'longer' }>,
  depth: Mm | undefined,
  units: UnitChoice,
): string {
  const most = percent(LONGER_MOST)
  const narrower =
    depth !== undefined
      ? ` Folded twice, at most ${formatLength(depth, units)} deep would lie flat.`
      : ''
  return `The ${finish.words} turns up ${formatLength(finish.turned, units)} at the ${EDGE_WORDS[edge.name]}, whose tightest curve has a radius of ${formatLength(radius, units)}: its raw edge is ${percent(share)} longer than the line it is turned to, and more than ${most} does not lie flat.${narrower}`
}

const tooTight = (
  edge: Edge,
  finish: Finish,
  { radius, least }: Extract<Misfit, { kind: 'tight' }>,
  units: UnitChoice,
): string =>
  `The tightest curve of the ${EDGE_WORDS[edge.name]} has a radius of ${formatLength(radius, units)}; a ${finish.words} turns only curves of more than ${formatLength(least, units)}.`

const tooHollow = (
  edge: Edge,
  finish: Finish,
  { radius }: Extract<Misfit, { kind: 'shut' }>,
  units: UnitChoice,
): string =>
  `The ${finish.words} turns up ${formatLength(finish.turned, units)} at the ${EDGE_WORDS[edge.name]}, which is hollow with a radius of ${formatLength(radius, units)}: nothing is left of its raw edge to lay over.`

const percent = (share: number): string => `${Math.round(share * 1000) / 10} %`
