/**
 * What one complaint comes to by itself: answers to causes, cause to work, pin to amounts. Rules:
 * the table of complaints and the reading rules of `half-amount.ts`. Over 200 lines: one road, step
 * after step, that reads worse in two files.
 */
import { complaintOf } from '../complaints/catalogue.ts'
import {
  causeId,
  type Cause,
  type Complaint,
  type ComplaintId,
  type Test,
  type Work,
} from '../complaints/complaint.ts'
import type { AmountRules, Pin } from '../half-amount.ts'
import { mm } from '../../units/length.ts'
import { causeSaid, readAnswers, type ReadAnswers } from './answers.ts'
import { leftAlone, untold, whatTells } from './asking.ts'
import {
  deniedByLine,
  isShown,
  leanOf,
  NOTHING_BESIDE,
  provedByLine,
  type Beside,
  type Lean,
} from './beside.ts'
import { derivedAmount } from './derived.ts'
import { editAmounts } from './edit-amounts.ts'
import { stretchedCause, withEdge } from './edge-read.ts'
import { followed, workAt } from './followed.ts'
import { cutInOne, underarmHeld, workFor } from './for-garment.ts'
import {
  contradicted,
  leavesTooLittle,
  stretchedBy,
  TAPE_AT,
  tapeAgain,
  type Contradiction,
} from './gates.ts'
import type { Asked, Facts, Judged, Reported } from './judged.ts'
import { JUDGE_WORDS as W } from './judge.words.ts'
import { absurd, halfOf, oddPin, wayOf, wrongWay } from './pins.ts'
import { howItCame, pastCap, tenth } from './told.ts'
import { broughtByTape } from './tape-proposals.ts'
import { remainderOf } from './watched.ts'

/** @param pins of one side; more than one are averaged */
export function judge(
  { id, answers: given, cannotTell = [], longer }: Reported,
  pins: readonly Pin[],
  side: 'left' | 'right' | undefined,
  facts: Facts,
  rules: AmountRules,
): Judged {
  const c = complaintOf(id)
  const beside = facts.beside ?? NOTHING_BESIDE
  const answers = withEdge(c, given, longer)
  const read = readAnswers(id, answers)
  const unread = read.unread.map((key) => W.unread(id, key))
  const open = c.causes.map(({ number }) => number).filter((n) => !read.no.includes(n))
  const base = {
    id,
    ...(side ? { side } : {}),
    leads: id,
    open: read.yes.length > 0 ? read.yes : open,
    found: read.yes,
    kind: c.kind,
    order: c.order,
    causes: read.yes.map((n) => causeId(id, n)),
    edits: [],
    heldBack: [],
    asks: [],
  }
  const nothing = (why: string, causes: readonly string[] = base.causes): Judged => ({
    ...base,
    causes,
    status: 'nothing',
    reasons: [why, ...unread],
  })
  const ask = (asks: readonly Asked[], more: Partial<Judged> = {}): Judged => ({
    ...base,
    status: 'ask',
    asks,
    reasons: [...asks.map(({ what }) => W.of(id, what)), ...unread],
    ...more,
  })

  const stretch = stretchedBy(
    id,
    longer === undefined ? facts.reaches : { ...facts.reaches, sewnLonger: longer },
  )
  const made = c.causes.find(
    ({ number, remedy }) => remedy.kind === 'making' && read.yes.includes(number),
  )
  const stretched = stretchedCause(c)
  if (stretch !== undefined && stretched?.remedy.kind === 'making')
    return nothing(W.stretched(id, tenth(stretch), stretched.remedy.advice), [
      causeId(id, stretched.number),
    ])
  if (made?.remedy.kind === 'making')
    return nothing(W.making([causeSaid(id, made.number)], made.remedy.advice), [
      causeId(id, made.number),
    ])

  const left = leftAlone(c, read)
  if (left) return nothing(W.of(id, left))
  const rest = leftOver(id, read, pins, side, facts, rules)
  const odd = rest ? undefined : oddPin(id, pins, rules)
  if (odd?.small) return nothing(odd.why)
  if (odd) return ask([{ complaint: id, what: odd.why }])

  const against = contradicted(id, facts.reaches)
  if (against && !facts.retaped?.includes(TAPE_AT[against.level]))
    return ask([{ complaint: id, what: against.why, tape: [TAPE_AT[against.level]] }])

  const doubted = beside.doubts.find(({ complaint }) => complaint === id)
  if (doubted && !facts.retaped?.includes(doubted.tape))
    return ask([{ complaint: id, what: doubted.why, tape: [doubted.tape] }])
  const denied = deniedByLine(id, beside)
  if (denied) return ask([{ complaint: id, what: denied }])

  if (rest) return { ...base, ...rest, reasons: [...rest.reasons, ...unread] }
  const tests = untold(c, open, read.openTests, cannotTell, pins[0], beside)
  const proved = read.yes.length === 0 ? provedByLine(c, open, beside) : undefined
  const settled = settledCause(c, read, open) ?? proved?.cause
  // With nothing left to try the likeliest is taken, and said to be no more than that.
  const likeliest =
    settled === undefined && read.yes.length === 0 && tests.length === 0
      ? likeliestOf(c, open, cannotTell, beside)
      : undefined
  const cause = settled ?? likeliest
  const doubt = cause ? undefined : overTaken(c, tests[0], pins, facts, rules)
  if (doubt && facts.retaped?.includes(TAPE_AT[doubt.level]))
    return nothing(doubt.why, doubt.causes)
  if (doubt)
    return ask([{ complaint: id, what: tapeAgain(doubt.level), tape: [TAPE_AT[doubt.level]] }])
  if (!cause) return ask(whatTells(c, read.yes, open, tests))
  const { chain, remedy, leads } = followed(id, cause)
  const to = complaintOf(leads)
  const causes = chain.map(({ of, number }) => causeId(of, number))
  const along = { causes, leads, kind: to.kind, order: to.order, found: [cause.number] }
  if (remedy.kind === 'making') return nothing(W.making(causes, remedy.advice), causes)
  if (remedy.kind === 'tape')
    return ask([{ complaint: id, what: remedy.advice, tape: remedy.ids }], along)

  if (leads === 'SH8' && side === undefined)
    return ask(
      [
        {
          complaint: id,
          what: W.whichSide,
        },
      ],
      along,
    )
  const pin = pins[0]
  if (pin && remedy.never?.places.includes(pin.where))
    return ask([{ complaint: id, what: remedy.never.why }], along)
  const own = workFor(workAt(remedy, pin), facts, pin?.where)
  const derived = pin ? undefined : derivedAmount(leads, facts.reaches)
  if (derived?.kind === 'enough') return nothing(W.of(id, derived.why), causes)
  const signed = pin ? halfOf(pins, own.readAs) : derived?.raw
  const work = wayOf(own, leads, signed ?? 0)
  if (work.edits.length === 0) return nothing(W.noPart(id, elsewhere(facts)), causes)
  const brought = broughtByTape(leads, work.edits[0]?.way, facts.moved)
  const raw = signed === undefined ? undefined : Math.abs(signed) - brought
  if (raw !== undefined && brought > 0 && raw < rules.smallest)
    return nothing(W.tapeSaidIt(id, tenth(brought)), causes)
  if (raw === undefined)
    return ask(
      [
        {
          complaint: id,
          what: W.howMuch(to.where),
        },
      ],
      { ...along, work },
    )
  const how = pin?.how ?? 'level'
  if (raw < rules.smallest) return nothing(W.under(id, tenth(raw), rules.smallest), causes)
  const cap = capFor(leads, id, work, rules)
  const wrong = pin && wrongWay(pin, work)
  const odder = wrong ?? absurd(raw, work, cap)
  if (odder !== undefined) return ask([{ complaint: id, what: odder }], { ...along, work })
  if (remedy.past && raw > cap)
    return ask([{ complaint: id, what: remedy.past.why, tape: remedy.past.ids }], along)
  const { edits, missing } = editAmounts(work, mm(raw), how, cap, facts.reaches, rules)
  const sided = edits.map((e) => (side ? { ...e, side } : e))
  return {
    ...base,
    ...along,
    status: 'change',
    work,
    raw: mm(raw),
    ...(pin ? { pin } : {}),
    ...(likeliest ? { guess: true as const } : {}),
    cap,
    edits: sided,
    heldBack: pastCap(id, sided),
    reasons: [
      W.causes(chain.map(({ of, number }) => causeSaid(of, number))),
      ...(proved && proved.cause === settled ? [W.lineSaysIt(id, proved.read)] : []),
      ...(likeliest ? [W.likeliest(id)] : []),
      ...howItCame(id, pins, raw, work, cap, rules, sided[0]?.applied),
      ...(missing.length > 0 && facts.darts === undefined ? [W.noAngle(id, missing)] : []),
      ...(pin?.side === 'one' && CENTRED.every((w) => w !== pin.where) ? [W.repeated(id)] : []),
      ...(underarmHeld(remedy, facts) ? [W.underarmStays(id)] : []),
      ...(cutInOne(facts) && leads !== id && leads.startsWith('SH') ? [W.swings(id)] : []),
      ...unread,
    ],
  }
}

type LeftOver = Pick<Judged, 'causes' | 'leads' | 'kind' | 'order' | 'found' | 'reasons'> &
  Pick<Judged, 'status' | 'work' | 'raw' | 'cap' | 'edits' | 'heldBack'> & { readonly pin: Pin }

/** What the last round left over, read again: its cause is settled, and two readings make it one amount. */
function leftOver(
  id: ComplaintId,
  { yes, no }: ReadAnswers,
  pins: readonly Pin[],
  side: 'left' | 'right' | undefined,
  facts: Facts,
  rules: AmountRules,
): LeftOver | undefined {
  const watched = facts.watched?.find((w) => w.complaint === id && w.side === side)
  const cause = complaintOf(id).causes.find(({ number }) => number === watched?.cause)
  const [pin] = pins
  if (!watched || !cause || !pin) return undefined
  if (no.includes(cause.number) || (yes.length > 0 && !yes.includes(cause.number))) return undefined
  const { chain, remedy, leads } = followed(id, cause)
  if (remedy.kind !== 'work') return undefined
  const own = workFor(workAt(remedy, pin), facts, pin.where)
  const raw = remainderOf(watched, pins, own, rules)
  if (raw === undefined || own.edits.length === 0) return undefined
  const work = wayOf(own, leads, halfOf(pins, own.readAs))
  const cap = capFor(leads, id, work, rules)
  // The share is in the mean already, and the amount is not one reading that may be lost in cutting.
  const whole = { ...rules, letOutShare: 1, smallest: 0 }
  const { edits } = editAmounts(work, raw, 'level', cap, facts.reaches, whole)
  const sided = edits.map((e) => (side ? { ...e, side } : e))
  const { kind, order } = complaintOf(leads)
  return {
    causes: chain.map(({ of, number }) => causeId(of, number)),
    ...{ leads, kind, order, work, raw, pin, cap },
    found: [cause.number],
    status: 'change',
    edits: sided,
    heldBack: pastCap(id, sided),
    reasons: [
      W.causes(chain.map(({ of, number }) => causeSaid(of, number))),
      W.leftOver(id, tenth(watched.left), pin.how, tenth(pin.value), tenth(raw)),
    ],
  }
}

/** Before its tests are made: if the likeliest cause held, would too little ease be left? */
function overTaken(
  c: Complaint,
  first: Test | undefined,
  pins: readonly Pin[],
  facts: Facts,
  rules: AmountRules,
): (Contradiction & { readonly causes: readonly string[] }) | undefined {
  const [pin] = pins
  const cause = c.causes.find(({ number }) => first?.yes.includes(number))
  if (!pin || cause?.remedy.kind !== 'work') return undefined
  const work = workFor(workAt(cause.remedy, pin), facts, pin.where)
  const raw = mm(Math.abs(halfOf(pins, work.readAs)))
  const cap = capFor(c.id, c.id, work, rules)
  const { edits } = editAmounts(work, raw, pin.how, cap, facts.reaches, rules)
  const little = leavesTooLittle(c.id, c.id, work, edits, facts.reaches)
  return little && { ...little, causes: [causeId(c.id, cause.number)] }
}

/** What does have meaning where a part is missing. */
function elsewhere({ garment }: Facts): string {
  if (garment === 'blouse') return W.elsewhere.cutIn
  if (garment === 'sleeve') return W.elsewhere.setIn
  return W.elsewhere.none
}

const CENTRED = ['cf', 'cb', 'centre', 'allRound'] as const

/** The most of one round: what she set for it, else that of the work. */
const capFor = (leads: ComplaintId, id: ComplaintId, work: Work, rules: AmountRules): number =>
  rules.caps[id] ?? rules.caps[leads] ?? work.cap

/**
 * One cause that an answer speaks for, or several that come to the same; the only one there is;
 * or the one left when she ruled out all others by name. Tests that all fail settle nothing.
 */
function settledCause(
  c: Complaint,
  { yes, no, denied }: ReadAnswers,
  open: readonly number[],
): Cause | undefined {
  const byName = denied.length > 0 && no.every((n) => denied.includes(n))
  const only = c.causes.length === 1 || byName ? open : []
  const numbers = yes.length > 0 ? yes : only
  const [first, ...rest] = c.causes.filter(({ number }) => numbers.includes(number))
  const same = rest.every((x) => JSON.stringify(x.remedy) === JSON.stringify(first?.remedy))
  return same ? first : undefined
}

/**
 * Of the causes that she could not tell by a test, the first in the ranking of the trade, one that
 * lines, movements or numbers speak for before others, one they speak against last; one before it
 * that leaves the draft alone is not guessed past.
 */
function likeliestOf(
  c: Complaint,
  open: readonly number[],
  cannotTell: readonly number[],
  beside: Beside,
): Cause | undefined {
  // A test that may leave the draft alone is made again, not guessed past.
  const doubted = c.tests
    .filter(({ number, leaves }) => cannotTell.includes(number) && !leaves)
    .flatMap(({ yes }) => yes)
  const list = c.causes.filter(
    ({ number, remedy }) =>
      open.includes(number) &&
      (doubted.includes(number) || (doubted.length > 0 && remedy.kind === 'making')),
  )
  const lean = (cause: Cause): Lean => leanOf(c.id, cause.number, beside)
  return (
    list.find((cause) => isShown(c.id, cause.number, beside)) ??
    list.find((cause) => lean(cause) === 'for') ??
    list.find((cause) => lean(cause) !== 'against') ??
    list[0]
  )
}
