/**
 * Whether a finish goes on an edge. Turning up h on a curve of radius R makes the raw edge longer
 * by h/R than the line it is turned to (worked out: the arc moved out by h is (R + h)/R as long),
 * and what is too long lies in pleats. A hollow curve no wider than what is turned leaves no raw
 * edge at all. A seam that is sewn twice will not turn a tight curve.
 */
import type { Edge, EdgeName, Piece } from '../draft/piece.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import { plainNumber } from '../units/number.ts'
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
import { MISFIT_WORDS } from './edge.words.ts'
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
  const depth = id === 'doubleFoldHem' ? deepest(why) : undefined
  const said = misfitSaid(edge.name, id, why, finish.turned, units)
  return {
    edge: edge.name,
    reason: [
      said,
      ...(depth === undefined ? [] : [MISFIT_WORDS.deepest(formatLength(depth, units))]),
      ...(offer ? [MISFIT_WORDS.instead(offer)] : []),
    ].join(' '),
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

function misfitSaid(
  edge: EdgeName,
  id: FinishId,
  why: Misfit,
  turned: Mm,
  units: UnitChoice,
): string {
  const said = (length: Mm): string => formatLength(length, units)
  switch (why.kind) {
    case 'longer':
      return MISFIT_WORDS.tooLong(id, edge, {
        turned: said(turned),
        radius: said(why.radius),
        share: percent(why.share),
        most: percent(LONGER_MOST),
      })
    case 'tight':
      return MISFIT_WORDS.tooTight(id, edge, said(why.radius), said(why.least))
    case 'shut':
      return MISFIT_WORDS.tooHollow(id, edge, said(turned), said(why.radius))
  }
}

const percent = (share: number): string => `${plainNumber(share * 100, 1)} %`
