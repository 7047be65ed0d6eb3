/**
 * Complaints heard together: which is told by another, which pull opposite ways, which share a
 * length or a slack, which wait. Each step takes and gives the whole list. Over 200 lines because
 * the steps are one order. Sources: `interactions.ts`; least ease: `gates.ts`.
 */
import { complaintOf } from '../complaints/catalogue.ts'
import type { ComplaintId } from '../complaints/complaint.ts'
import type { Kind } from '../complaints/heads.ts'
import type { AmountRules } from '../half-amount.ts'
import { mm } from '../../units/length.ts'
import { editAmounts } from './edit-amounts.ts'
import { leavesTooLittle, TAPE_AT, tapeAgain } from './gates.ts'
import { EVEN_PART, FIRST, OPPOSED, SAME_SLACK, TOGETHER } from './interactions.ts'
import { INTERACTION_WORDS } from './interactions.words.ts'
import type { Facts, HeldBack, Judged } from './judged.ts'
import { pastCap, tenth } from './told.ts'

export interface Choice {
  readonly between: readonly [ComplaintId, ComplaintId]
  readonly why: string
  /** What each would do, mm on the half piece. */
  readonly amounts: readonly [number, number]
}

/** Without an answer only the likeliest causes are taken to be the other complaint. Judgement. */
const LIKELY = 2

/** A complaint whose cause is another that was reported and found is told by that one. */
export function explained(list: readonly Judged[]): Judged[] {
  const changing = (id: ComplaintId): Judged | undefined =>
    list.find((j) => j.id === id && j.status === 'change')
  return list.map((j) => {
    const open = j.open.length > 0 ? j.open : complaintOf(j.id).causes.map((c) => c.number)
    const leads = complaintOf(j.id).causes.flatMap(({ number, remedy }) =>
      remedy.kind === 'see' && open.includes(number) && (j.found.length > 0 || number <= LIKELY)
        ? [{ number, to: remedy.complaint }]
        : [],
    )
    const found = leads.find(({ to }) => changing(to))
    const own = j.status === 'change' && j.leads === j.id
    if (!found || own || j.status === 'nothing') return j
    return {
      ...j,
      status: 'nothing',
      causes: [`${j.id}.${found.number}`],
      edits: [],
      heldBack: [],
      asks: [],
      reasons: [INTERACTION_WORDS.comesFrom(j.id, found.to)],
    }
  })
}

export function opposed(list: readonly Judged[], choices: Choice[]): Judged[] {
  let out = [...list]
  for (const [a, b, why] of OPPOSED) {
    const [x, y] = [working(out, a), working(out, b)]
    if (!x || !y) continue
    const amounts = [x.edits[0]?.applied ?? 0, y.edits[0]?.applied ?? 0] as const
    choices.push({ between: [a, b], why, amounts })
    const said = INTERACTION_WORDS.chooseOne([a, b], why, [tenth(amounts[0]), tenth(amounts[1])])
    out = out.map((j) =>
      j === x || j === y
        ? {
            ...j,
            status: 'ask',
            edits: [],
            heldBack: [],
            asks: [{ complaint: j.id, what: said }],
            reasons: [said],
          }
        : j,
    )
  }
  return out
}

/** The even part is taken from the one that is deepest at the centre; what is left is a wedge. */
export function evenPart(list: readonly Judged[], facts: Facts, rules: AmountRules): Judged[] {
  let out = [...list]
  for (const { of, before, why } of EVEN_PART) {
    const even = of.map((id) => working(out, id)).find((j) => j !== undefined)
    if (!even) continue
    for (const id of before) {
      const wedge = working(out, id)
      if (!wedge?.work || wedge.raw === undefined || even.raw === undefined) continue
      const left = wedge.raw - even.raw
      out = out.map((j) => (j === wedge ? leftOver(j, even.id, left, why, facts, rules) : j))
    }
  }
  return out
}

function leftOver(
  j: Judged,
  even: ComplaintId,
  left: number,
  why: string,
  facts: Facts,
  rules: AmountRules,
): Judged {
  const said = INTERACTION_WORDS.takesItsPart(j.id, why, even, tenth(Math.max(0, left)))
  if (left < rules.smallest || !j.work)
    return { ...j, status: 'nothing', edits: [], heldBack: [], reasons: [...j.reasons, said] }
  const { edits } = editAmounts(
    j.work,
    mm(left),
    j.pin?.how ?? 'level',
    j.cap ?? j.work.cap,
    facts.reaches,
    rules,
  )
  return {
    ...j,
    raw: mm(left),
    edits,
    heldBack: pastCap(j.id, edits),
    reasons: [...j.reasons, said],
  }
}

export function sameSlack(list: readonly Judged[]): Judged[] {
  let out = [...list]
  for (const { of, before, why } of SAME_SLACK)
    for (const first of of)
      for (const id of before) {
        const [a, b] = [working(out, first), working(out, id)]
        if (!a || !b || a.side !== b.side) continue
        // The pin that makes it vanish decides: a radial tuck that cures outright keeps its place.
        const turned = first === 'B9' && id === 'N1' && vanishes(b)
        const [keep, drop] = turned ? [a.id, a] : [a.id, b]
        const other = turned ? b : a
        const said = turned
          ? INTERACTION_WORDS.atTheNeck([a.id, b.id], [firstOf(a), firstOf(b)])
          : INTERACTION_WORDS.notTwice([keep, drop.id], why, [firstOf(other), firstOf(drop)])
        out = out.map((j) => (j === drop ? held(j, said) : j))
      }
  return out
}
const firstOf = (j: Judged): number => tenth(j.edits[0]?.applied ?? 0)
/** Neck: a cause that the radial tuck proves. */
const vanishes = (j: Judged): boolean => j.found.some((n) => n === 1 || n === 3)

export function waiting(list: readonly Judged[]): Judged[] {
  let out = [...list]
  for (const { of, before, why } of FIRST)
    for (const first of of) {
      const a = out.find((j) => j.id === first && j.status !== 'nothing')
      if (!a) continue
      for (const id of before)
        out = out.map((j) =>
          j.id === id && j.status === 'change' && j !== a
            ? held(j, INTERACTION_WORDS.waitsFor(id, first, why))
            : j,
        )
    }
  return out
}

/** What is taken in leaves the least ease there; the rest is held back. */
export function easeKept(list: readonly Judged[], facts: Facts): Judged[] {
  return list.map((j) => {
    if (j.status !== 'change') return j
    const little = leavesTooLittle(j.id, j.leads, j.work, j.edits, facts.reaches)
    if (!little) return j
    const id = TAPE_AT[little.level]
    if (facts.retaped?.includes(id)) return held(j, little.why)
    const asks = [{ complaint: j.id, what: tapeAgain(little.level), tape: [id] }]
    return { ...held(j, little.why), asks }
  })
}

/** One group of each kind in a round; what is left waits for the next muslin. */
export function grouped(list: readonly Judged[]): Judged[] {
  const taken: Partial<Record<Kind, ComplaintId>> = {}
  return list.map((j) => {
    if (j.status !== 'change') return j
    const first = taken[j.kind]
    if (first === undefined || first === j.id || areOne(first, j.leads) || areOne(first, j.id)) {
      taken[j.kind] ??= j.id
      return j
    }
    return held(j, INTERACTION_WORDS.oneOfAKind(j.id, j.kind, first))
  })
}
const areOne = (a: ComplaintId, b: ComplaintId): boolean =>
  TOGETHER.some((group) => group.includes(a) && group.includes(b))

/**
 * One talk at a time: a test is not asked for while another complaint comes first, explains this
 * one, or takes the only change of its kind. Numbers in doubt are still told.
 */
export function askedInTurn(list: readonly Judged[]): Judged[] {
  return list.reduce<Judged[]>(
    (out, j) => {
      const first = tested(j) ? firstBefore(j, out) : undefined
      if (!first) return out
      const said = INTERACTION_WORDS.inTurn(j.id, first)
      return out.map((x) => (x === j ? { ...j, asks: [], reasons: [said] } : x))
    },
    [...list],
  )

  function firstBefore(j: Judged, now: readonly Judged[]): ComplaintId | undefined {
    const others = now.filter((o) => o.id !== j.id)
    const standing = others.filter((o) => o.status === 'change' || tested(o))
    const pair = FIRST.find(
      ({ of, before }) => before.includes(j.id) && standing.some((o) => of.includes(o.id)),
    )
    const before = pair?.of.find((id) => standing.some((o) => o.id === id))
    const explains = standing.find((o) => leadsTo(j.id, o.id) && !leadsTo(o.id, j.id))
    const same = others.find(
      (o) => o.status === 'change' && o.kind === j.kind && !areOne(o.id, j.id),
    )
    return before ?? explains?.id ?? same?.id
  }
}
const tested = (j: Judged): boolean => j.status === 'ask' && j.asks.some((a) => a.test)

/** What is only likely waits for what is proved, and for what a test may still prove. */
export function provedFirst(list: readonly Judged[]): Judged[] {
  return list.map((j) => {
    const other =
      j.guess &&
      list.find((o) => o.kind === j.kind && !o.guess && (o.status === 'change' || tested(o)))
    return other ? held(j, INTERACTION_WORDS.onlyLikely(j.id, other.id)) : j
  })
}

/** Is one of its causes another complaint, straight or by way of a third? */
function leadsTo(from: ComplaintId, to: ComplaintId, seen: readonly ComplaintId[] = []): boolean {
  return complaintOf(from).causes.some(
    ({ remedy }) =>
      remedy.kind === 'see' &&
      !seen.includes(remedy.complaint) &&
      (remedy.complaint === to || leadsTo(remedy.complaint, to, [...seen, from])),
  )
}

const working = (list: readonly Judged[], id: ComplaintId): Judged | undefined =>
  list.find((j) => j.id === id && j.status === 'change')

/** Not this round: all of it is watched on the next muslin. */
const held = (j: Judged, why: string): Judged => ({
  ...j,
  status: 'nothing',
  edits: [],
  heldBack: j.edits.flatMap((e): HeldBack[] =>
    e.follows === undefined
      ? [{ complaint: j.id, target: e.target, op: e.op, mm: e.applied, why }]
      : [],
  ),
  reasons: [...j.reasons, why],
})
