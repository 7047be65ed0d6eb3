/**
 * What was decided, drawn on the draft before it is offered: a dart that is full hands the turn on
 * to the other, which is drawn where there is none; an amount that cannot be drawn whole is made as
 * large as it can be and the rest watched; and what cannot be drawn at all is said with numbers.
 */
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { EDGE_WORDS } from '../../draft/piece.ts'
import { mm } from '../../units/length.ts'
import type { ComplaintId } from '../complaints/complaint.ts'
import type { NewCorrection } from '../propose.ts'
import type { AmountRules } from '../half-amount.ts'
import { sewnEase, type EaseLevel } from '../../draft/ease.ts'
import { wedgeAcross } from '../ops/closing.ts'
import type { Operation } from '../ops/operation.ts'
import { NOTE_WORDS } from '../ops/said.ts'
import { refusalSentence, type Why } from '../refusal.ts'
import { openingAt, turnOf } from '../rotation.ts'
import { decide, type Decision } from './decide.ts'
import type { EditAmount } from './edit-amounts.ts'
import type { Facts, Reported } from './judged.ts'
import { correctionsFor, type NotDrawn } from './to-corrections.ts'
import { tenth } from './told.ts'

export interface OnDraft {
  /** The one the muslin was cut from. */
  readonly draft: Draft
  readonly facts: Facts
  readonly round: number
  /** What these make of the draft they would go into; with none of them, that draft. */
  readonly tries: (list: readonly NewCorrection[]) => Tried
}
export interface Tried {
  readonly draft: Draft
  /** The first that is refused, by its place in the list. */
  readonly refused: { readonly at: number; readonly why: Why } | undefined
  /** Darts that had to be drawn; words in `ops/said.ts`. */
  readonly notes: readonly string[]
}

export interface Drawable {
  readonly decision: Decision
  readonly corrections: readonly NewCorrection[]
  /** Edits that no drawing of this garment can carry, each with what to do instead. */
  readonly notDrawn: readonly NotDrawn[]
}

/** More attempts than there are darts and complaints of one round. */
const ATTEMPTS = 8

export function decideOn(reported: readonly Reported[], on: OnDraft, rules: AmountRules): Drawable {
  let [facts, own] = [on.facts, rules]
  const said: string[] = []
  const gaveUp: NotDrawn[] = []
  for (let attempt = 0; ; attempt++) {
    const decision = decide(reported, facts, own)
    const plan = correctionsFor(decision, on.draft, on.round, own)
    const left = plan.corrections.filter((c) => !gaveUp.some(({ complaint }) => isOf(c, complaint)))
    const tried = on.tries(left)
    const { refused } = tried
    const bad = refused && left[refused.at]
    // A turn handed on to the waist dart may not spoil the hip for it.
    const wider = refused ? undefined : widened(on, left, tried)
    if (wider && facts.full?.includes('front.bustDart') && !facts.full.includes(wider.into)) {
      facts = { ...facts, full: [...facts.full, wider.into] }
      said.push(`In the waist dart it would add ${tenth(wider.by)} mm round the ${wider.level}.`)
      continue
    }
    if (!refused || !bad || bad.kind === 'withdraw')
      return {
        decision: {
          ...decision,
          reasons: [...decision.reasons, ...said, ...besides(on, left, tried)],
        },
        corrections: left,
        notDrawn: [...plan.notDrawn, ...gaveUp],
      }
    const { complaint } = bad.because
    const into = receiverOf(bad)
    const why = refusalSentence(refused.why, IN_CM)
    if (attempt < ATTEMPTS && into !== undefined && !facts.full?.includes(into)) {
      facts = { ...facts, full: [...(facts.full ?? []), into] }
      said.push(`${complaint}: ${why} The other dart is tried.`)
      continue
    }
    const part = partOf(left, complaint, on)
    const cap = attempt < ATTEMPTS ? capAt(decision, complaint, part) : 0
    if (cap >= rules.smallest || (part > 0 && isDegrees(decision, complaint))) {
      own = { ...own, caps: { ...own.caps, [complaint]: cap } }
      said.push(`${complaint}: ${why} So much as can be drawn is drawn now, the rest is watched.`)
      continue
    }
    gaveUp.push(...lost(decision, complaint, why))
  }
}
const IN_CM = { unit: 'cm', inchStep: 8 } as const

const isOf = (c: NewCorrection, complaint: ComplaintId): boolean =>
  c.kind !== 'withdraw' && c.because.complaint === complaint

const receiverOf = (c: NewCorrection): string | undefined =>
  c.kind === 'operate' && c.operation.op === 'ROT'
    ? `${c.operation.piece}.${c.operation.into}`
    : undefined

/** Halving so often finds the part to a hundredth. */
const HALVINGS = 7

/** The largest part of a complaint's corrections that the draft still carries, 0 to 1. */
function partOf(list: readonly NewCorrection[], complaint: ComplaintId, on: OnDraft): number {
  const carries = (part: number): boolean => {
    const scaled = list.map((c) => (isOf(c, complaint) ? scaledBy(c, part) : c))
    const { refused } = on.tries(scaled)
    const bad = refused && scaled[refused.at]
    return bad === undefined || !isOf(bad, complaint)
  }
  let [low, high] = [0, 1]
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2
    if (carries(middle)) low = middle
    else high = middle
  }
  return low
}

function scaledBy(c: NewCorrection, part: number): NewCorrection {
  if (c.kind === 'turn-choice') return { ...c, by: mm(c.by * part) }
  if (c.kind !== 'operate') return c
  const operation = Object.fromEntries(
    Object.entries(c.operation).map(([key, x]) => [
      key,
      typeof x === 'number' && key !== 'along' ? x * part : x,
    ]),
  ) as typeof c.operation
  return { ...c, operation }
}

const firstOf = (decision: Decision, complaint: ComplaintId): EditAmount | undefined =>
  decision.changes
    .find(({ id }) => id === complaint)
    ?.edits.find(({ follows }) => follows === undefined)
const isDegrees = (decision: Decision, complaint: ComplaintId): boolean =>
  decision.changes.find(({ id }) => id === complaint)?.work?.capUnit === 'deg'

/** The cap that leaves so much of a change, in its own unit. */
function capAt(decision: Decision, complaint: ComplaintId, part: number): number {
  const first = firstOf(decision, complaint)
  if (!first) return 0
  if (isDegrees(decision, complaint)) return (first.theta ?? 0) * part
  const share = decision.changes.find(({ id }) => id === complaint)?.work?.edits[0]?.part ?? 1
  return (first.applied / share) * part
}

const LEVEL_WORDS: Readonly<Record<EaseLevel, string>> = {
  bust: 'bust',
  waist: 'waist',
  highHip: 'high hip',
  hip: 'hip',
}
/** Ease at a level that is changed by less than this is not told, mm round the body. Judgement. */
const TOLD = 3

interface Widened {
  readonly into: 'front.waistDart'
  readonly operation: Extract<Operation, { op: 'ROT' }>
  readonly level: string
  readonly by: number
}
/** A turn taken up by the waist dart swings the front below it outwards. */
function widened(
  { tries }: OnDraft,
  list: readonly NewCorrection[],
  tried: Tried,
): Widened | undefined {
  const turned = list.find((c) => receiverOf(c) === 'front.waistDart')
  if (turned?.kind !== 'operate' || turned.operation.op !== 'ROT') return undefined
  const [was, is] = [sewnEase(tries([]).draft), sewnEase(tried.draft)]
  const grown = was.flatMap(({ level, sewn }) => {
    const now = is.find((e) => e.level === level)
    return now && now.sewn - sewn > TOLD ? [{ level: LEVEL_WORDS[level], by: now.sewn - sewn }] : []
  })
  const lowest = grown[grown.length - 1]
  return lowest && { into: 'front.waistDart', operation: turned.operation, ...lowest }
}

/** What else changes: a dart that is drawn, and width below a waist dart that takes a turn up. */
function besides(on: OnDraft, list: readonly NewCorrection[], tried: Tried): readonly string[] {
  const drawn = [
    ...[...new Set(tried.notes)].map((note) => NOTE_WORDS[note] ?? note),
    ...slanted(on, list),
  ]
  const wider = widened(on, list, tried)
  if (!wider) return drawn
  const { apexToNeck, apexToArmhole, apexToSide: leg } = on.facts.reaches
  const { edge, width } = wider.operation
  const turn = turnOf(width, (edge === 'neck' ? apexToNeck : apexToArmhole) ?? 0)
  const instead =
    leg !== undefined && turn !== undefined
      ? ` In a side bust dart it would open ${tenth(openingAt(turn, leg))} mm at the side and leave the width below the waist.`
      : ''
  return [
    ...drawn,
    `Below the waist the front turns along: ${tenth(wider.by)} mm more round the ${wider.level}.${instead}`,
  ]
}

/** A wedge is told where it is so many times wider than what the edge loses. Judgement. */
const SLANT_TOLD = 1.15

/** An edge at a slant to the bust tip loses less than the wedge is wide; its dart opens by more. */
function slanted({ tries }: OnDraft, list: readonly NewCorrection[]): readonly string[] {
  return list.flatMap((c) => {
    if (c.kind !== 'operate' || c.operation.op !== 'ROT') return []
    const { piece, edge, width } = c.operation
    const across = wedgeAcross(pieceOf(tries([]).draft, piece), c.operation)
    if (across === undefined || across < Math.abs(width) * SLANT_TOLD) return []
    const point = piece === 'front' ? 'bust tip' : 'blade point'
    return [
      `The ${piece} ${EDGE_WORDS[edge]} runs slantwise to the ${point} there: to ${width > 0 ? 'take' : 'give'} it ${tenth(Math.abs(width))} mm of length the wedge is ${tenth(across)} mm wide, and the dart opens by as much more.`,
    ]
  })
}

function lost(decision: Decision, complaint: ComplaintId, why: string): NotDrawn[] {
  const edits = decision.changes.find(({ id }) => id === complaint)?.edits ?? []
  return edits
    .filter(({ follows }) => follows === undefined)
    .slice(0, 1)
    .map(({ target, op, applied }) => ({
      complaint,
      target,
      op,
      why: `${tenth(applied)} mm cannot be drawn here. ${why}`,
    }))
}
