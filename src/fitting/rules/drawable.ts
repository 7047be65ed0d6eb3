/**
 * What was decided, drawn on the draft before it is offered: the corrections it comes to, what of
 * it no drawing of this garment carries, and which of two darts takes a turn up.
 */
import type { Draft } from '../../draft/draft.ts'
import type { EaseLevel } from '../../draft/ease.ts'
import { record } from '../../draft/record.ts'
import { mm, type Mm } from '../../units/length.ts'
import type { AmountRules } from '../half-amount.ts'
import type { NewCorrection } from '../preview.ts'
import type { Why } from '../refusal.ts'
import { attempted } from './attempted.ts'
import { receiverOf, widened } from './besides.ts'
import type { Decision } from './decide.ts'
import { DRAWN_WORDS } from './drawn.words.ts'
import type { Facts, Reported } from './judged.ts'
import type { NotDrawn } from './to-corrections.ts'
import { tenth } from './told.ts'

/** The dart of the front that takes a turn up. */
export type Receiver = 'front.bustDart' | 'front.waistDart'

export interface OnDraft {
  /** The one the muslin was cut from. */
  readonly draft: Draft
  readonly facts: Facts
  readonly round: number
  /** What these make of the draft they would go into; with none of them, that draft. */
  readonly tries: (list: readonly NewCorrection[]) => Tried
  /** Which of two darts she chose, where both can take a turn up. */
  readonly into?: Receiver
}
export interface Tried {
  readonly draft: Draft
  /** The first that is refused, by its place in the list. */
  readonly refused: { readonly at: number; readonly why: Why } | undefined
  /** Darts that had to be drawn; words in `ops/said.words.ts`. */
  readonly notes: readonly string[]
}

export interface Drawable {
  readonly decision: Decision
  readonly corrections: readonly NewCorrection[]
  /** Edits that no drawing of this garment can carry, each with what to do instead. */
  readonly notDrawn: readonly NotDrawn[]
  /** What the change does besides, in sentences. */
  readonly besides: readonly string[]
  /** Two darts that can take the turn up, where it is hers to choose; the first is the one taken. */
  readonly ways?: readonly [TakenUp, TakenUp]
}
export interface TakenUp {
  readonly into: Receiver
  /** What its mouth grows by, and what the body gains round it below the waist, mm. */
  readonly opens: Mm
  readonly wider: Mm
  readonly level: EaseLevel
}

/** Round a level of the body less than this is not seen: the least of a level line, mm. Judgement. */
const SPOILS = 6

/**
 * A turn goes into the dart the garment has. Where that is a waist dart that swings the front out
 * below the waist, a side dart serves better and is drawn; both are told with their numbers, and
 * she may choose the other. Source: the receivers named in our table of complaints.
 */
export function decideOn(reported: readonly Reported[], on: OnDraft, rules: AmountRules): Drawable {
  const first = attempted(reported, on, rules)
  const waist = takenUp(on, first)
  if (waist?.into !== 'front.waistDart' || waist.wider <= SPOILS) return first
  const facts = { ...on.facts, full: [...(on.facts.full ?? []), 'front.waistDart'] }
  const second = attempted(reported, { ...on, facts }, rules)
  const side = takenUp(on, second)
  if (side?.into !== 'front.bustDart' || second.notDrawn.length > first.notDrawn.length)
    return first
  const kept = on.into === 'front.waistDart'
  const [made, ways] = kept ? [first, [waist, side] as const] : [second, [side, waist] as const]
  const { decision } = made
  return {
    ...made,
    ways,
    decision: { ...decision, reasons: [...decision.reasons, ...ways.map(takenUpSaid)] },
  }
}

const takenUpSaid = ({ into, opens, wider, level }: TakenUp, at: number): string =>
  DRAWN_WORDS.takenUp(
    into,
    tenth(opens),
    wider > SPOILS ? tenth(wider) : undefined,
    level,
    at === 0,
  )

function takenUp(on: OnDraft, { corrections }: Drawable): TakenUp | undefined {
  const into = corrections
    .map(receiverOf)
    .find((r) => r === 'front.bustDart' || r === 'front.waistDart')
  if (into !== 'front.bustDart' && into !== 'front.waistDart') return undefined
  const [was, tried] = [on.tries([]).draft, on.tries(corrections)]
  const grown = widened(was, tried)
  const mouth = (d: Draft): number => record(d).lengths[into] ?? 0
  return {
    into,
    opens: mm(mouth(tried.draft) - mouth(was)),
    wider: mm(grown?.by ?? 0),
    level: grown?.level ?? 'hip',
  }
}
