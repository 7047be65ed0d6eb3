/**
 * A decision drawn until the draft carries it: a dart that is full hands the turn on to the other,
 * which is drawn where there is none; an amount that cannot be drawn whole is made as large as it
 * can be and the rest watched; and what cannot be drawn at all is said with numbers.
 */
import { mm, type Mm } from '../../units/length.ts'
import type { ComplaintId } from '../complaints/complaint.ts'
import type { AmountRules } from '../half-amount.ts'
import type { NewCorrection } from '../preview.ts'
import { refusalSaid } from '../refusal.words.ts'
import { besides, receiverOf, widened } from './besides.ts'
import { decide, type Decision } from './decide.ts'
import type { Drawable, OnDraft } from './drawable.ts'
import { DRAWN_WORDS } from './drawn.words.ts'
import type { EditAmount } from './edit-amounts.ts'
import type { Reported } from './judged.ts'
import { correctionsFor, type NotDrawn } from './to-corrections.ts'
import { tenth } from './told.ts'

/** More attempts than there are darts and complaints of one round. */
const ATTEMPTS = 8

export function attempted(
  reported: readonly Reported[],
  on: OnDraft,
  rules: AmountRules,
): Drawable {
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
    const waist = !refused && left.some((c) => receiverOf(c) === 'front.waistDart')
    const wider = waist ? widened(on.tries([]).draft, tried) : undefined
    if (
      wider &&
      facts.full?.includes('front.bustDart') &&
      !facts.full.includes('front.waistDart')
    ) {
      facts = { ...facts, full: [...facts.full, 'front.waistDart'] }
      said.push(DRAWN_WORDS.wouldWiden(tenth(wider.by), wider.level))
      continue
    }
    if (!refused || !bad || bad.kind === 'withdraw') {
      const tells = besides(on, left, tried)
      return {
        decision: {
          ...decision,
          reasons: [...new Set([...decision.reasons, ...said, ...tells])],
        },
        corrections: left,
        notDrawn: [...plan.notDrawn, ...gaveUp],
        besides: tells,
      }
    }
    const { complaint } = bad.because
    const into = receiverOf(bad)
    const why = refusalSaid(refused.why, inMm)
    const other = into !== undefined && refused.why.id !== 'edgeSlants'
    if (attempt < ATTEMPTS && other && !facts.full?.includes(into)) {
      facts = { ...facts, full: [...(facts.full ?? []), into] }
      said.push(DRAWN_WORDS.otherDart(complaint, why))
      continue
    }
    const part = partOf(left, complaint, on)
    const cap = attempt < ATTEMPTS ? capAt(decision, complaint, part) : 0
    if (cap >= rules.smallest || (part > 0 && isDegrees(decision, complaint))) {
      own = { ...own, caps: { ...own.caps, [complaint]: cap } }
      said.push(DRAWN_WORDS.inPart(complaint, why))
      continue
    }
    gaveUp.push(...lost(decision, complaint, why))
  }
}
/** Reasons speak in millimetres; the screen puts them in her unit. */
const inMm = (length: Mm): string => `${tenth(length)} mm`

const isOf = (c: NewCorrection, complaint: ComplaintId): boolean =>
  c.kind !== 'withdraw' && c.because.complaint === complaint

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

function lost(decision: Decision, complaint: ComplaintId, why: string): NotDrawn[] {
  const edits = decision.changes.find(({ id }) => id === complaint)?.edits ?? []
  return edits
    .filter(({ follows }) => follows === undefined)
    .slice(0, 1)
    .map(({ target, op, applied }) => ({
      complaint,
      target,
      op,
      why: DRAWN_WORDS.notHere(tenth(applied), why),
    }))
}
