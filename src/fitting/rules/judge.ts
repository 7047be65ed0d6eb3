/**
 * What one complaint comes to by itself: answers to causes, cause to work, pin to amounts. Rules:
 * the table of complaints and the reading rules of `half-amount.ts`. Over 200 lines: one road, step
 * after step, that reads worse in two files.
 */
import { causeId, complaintOf } from '../complaints/catalogue.ts'
import type { Cause, Complaint, ComplaintId, Remedy, Way, Work } from '../complaints/complaint.ts'
import { halfAmount, type AmountRules, type Pin } from '../half-amount.ts'
import { mm } from '../../units/length.ts'
import { causeSaid, readAnswers } from './answers.ts'
import { derivedAmount } from './derived.ts'
import { editAmounts } from './edit-amounts.ts'
import { cutInOne, workFor } from './for-garment.ts'
import { contradicted, stretchedBy, TAPE_AT } from './gates.ts'
import type { Asked, Facts, Judged, Reported } from './judged.ts'
import { howItCame, pastCap, tenth } from './told.ts'

/** @param pins of one side; more than one are averaged */
export function judge(
  { id, answers, cannotTell = [] }: Reported,
  pins: readonly Pin[],
  side: 'left' | 'right' | undefined,
  facts: Facts,
  rules: AmountRules,
): Judged {
  const c = complaintOf(id)
  const read = readAnswers(id, answers)
  const unread = read.unread.map(
    (key) => `${id}: the answer “${key}” names no cause or test of it.`,
  )
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
  const nothing = (why: string, causes = base.causes): Judged => ({
    ...base,
    causes,
    status: 'nothing',
    reasons: [why, ...unread],
  })
  const ask = (asks: readonly Asked[], more: Partial<Judged> = {}): Judged => ({
    ...base,
    status: 'ask',
    asks,
    reasons: [...asks.map(({ what }) => `${id}: ${what}`), ...unread],
    ...more,
  })

  const stretch = stretchedBy(id, facts.reaches)
  const made = c.causes.find(
    ({ number, remedy }) => remedy.kind === 'making' && read.yes.includes(number),
  )
  const stretched = c.causes.find(({ name }) => name.includes('stretched'))
  if (stretch !== undefined && stretched?.remedy.kind === 'making')
    return nothing(
      `${id}: the edge is sewn ${tenth(stretch)} mm longer than drafted; over 3 mm is stretch from sewing. ${stretched.remedy.advice}`,
      [causeId(id, stretched.number)],
    )
  if (made?.remedy.kind === 'making')
    return nothing(`${causeSaid(id, made.number)}: ${made.remedy.advice}`, [
      causeId(id, made.number),
    ])

  const against = contradicted(id, facts.reaches)
  if (against && !facts.retaped?.includes(TAPE_AT[against.level]))
    return ask([{ complaint: id, what: against.why, tape: [TAPE_AT[against.level]] }])

  const untold = read.openTests.filter((n) => !cannotTell.includes(n))
  const settled = settledCause(c, read.yes, open, Object.keys(answers).length > 0)
  // With nothing left to try the likeliest is taken, and said to be no more than that.
  const likeliest =
    settled === undefined && read.yes.length === 0 && cannotTell.length > 0 && untold.length === 0
      ? c.causes.find(({ number }) => open.includes(number))
      : undefined
  const cause = settled ?? likeliest
  if (!cause) return ask(whatTells(c, read.yes, untold))
  const { chain, remedy, leads } = followed(id, cause)
  const to = complaintOf(leads)
  const causes = chain.map(({ of, number }) => causeId(of, number))
  const along = { causes, leads, kind: to.kind, order: to.order, found: [cause.number] }
  if (remedy.kind === 'making') return nothing(`${causes.join(', ')}: ${remedy.advice}`, causes)
  if (remedy.kind === 'tape')
    return ask([{ complaint: id, what: remedy.advice, tape: remedy.ids }], along)
  if (remedy.kind === 'see') throw new Error(`${id}: the causes lead round in a circle`)

  if (leads === 'SH8' && side === undefined)
    return ask(
      [
        {
          complaint: id,
          what: 'Say on which side it is pinned, left or right: the sides are not averaged.',
        },
      ],
      along,
    )
  const pin = pins[0]
  if (pin && remedy.never?.places.includes(pin.where))
    return ask([{ complaint: id, what: remedy.never.why }], along)
  const work = turnedAbout(workFor(workAt(remedy, pin), facts, pin?.where), leads, pins)
  if (work.edits.length === 0)
    return nothing(`${id}: this garment has no part for it. ${elsewhere(facts)}`, causes)
  const derived = pin ? undefined : derivedAmount(leads, facts.reaches)
  if (derived?.kind === 'enough') return nothing(`${id}: ${derived.why}`, causes)
  const raw = pin ? meanOf(pins.map((p) => halfAmount(p, work.readAs))) : derived?.raw
  if (raw === undefined)
    return ask(
      [
        {
          complaint: id,
          what: `Pin or read how much, at the ${to.where}, and say how it was read.`,
        },
      ],
      { ...along, work },
    )
  const how = pin?.how ?? 'level'
  if (raw < rules.smallest)
    return nothing(
      `${id}: ${tenth(raw)} mm on the half piece is under ${rules.smallest} mm; nobody cuts truer than that.`,
      causes,
    )
  const cap = capFor(leads, id, work, rules)
  const { edits, missing } = editAmounts(work, mm(raw), how, cap, facts.reaches, rules)
  const sided = edits.map((e) => (side ? { ...e, side } : e))
  return {
    ...base,
    ...along,
    status: 'change',
    work,
    raw: mm(raw),
    ...(pin ? { pin } : {}),
    cap,
    edits: sided,
    heldBack: pastCap(id, sided),
    reasons: [
      `${chain.map(({ of, number }) => causeSaid(of, number)).join(' = ')}.`,
      ...(likeliest
        ? [`${id}: the likeliest, not proved; look at it again on the next muslin.`]
        : []),
      ...howItCame(id, pins, raw, work, cap, rules, sided[0]?.applied),
      ...(missing.length > 0 && facts.darts === undefined
        ? [`${id}: no angle without ${missing.join(', ')}.`]
        : []),
      ...(pin?.side === 'one' && CENTRED.every((w) => w !== pin.where)
        ? [`${id}: repeated on the other side; say so if the other side lies as it should.`]
        : []),
      ...(cutInOne(facts) && leads !== id && leads.startsWith('SH')
        ? [`${id}: on a sleeve cut in one the overarm swings about the side neck.`]
        : []),
      ...unread,
    ],
  }
}
/** What does have meaning where a part is missing. */
function elsewhere({ garment }: Facts): string {
  if (garment === 'blouse')
    return 'Its sleeve is cut in one: swing the overarm about the side neck, move the underarm, or change the sweep.'
  if (garment === 'sleeve')
    return 'Its sleeve is set in: change the cap, its width, its length or its pitch.'
  return 'It has no sleeve: change the armhole or the shoulder.'
}

const CENTRED = ['cf', 'cb', 'centre', 'allRound'] as const

const meanOf = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length

/** Where the way is open a reading under nought goes the other way: up for down, in for out. */
const EITHER_WAY: readonly ComplaintId[] = ['B5', 'B6', 'SH6', 'L4', 'L9', 'D5', 'W6', 'W7']
const BACK: Readonly<Record<Way, Way>> = {
  out: 'in',
  in: 'out',
  up: 'down',
  down: 'up',
  forward: 'back',
  back: 'forward',
  wider: 'narrower',
  narrower: 'wider',
}
function turnedAbout(work: Work, leads: ComplaintId, pins: readonly Pin[]): Work {
  if (!EITHER_WAY.includes(leads) || !((pins[0]?.value ?? 0) < 0)) return work
  return { ...work, edits: work.edits.map((e) => ({ ...e, way: BACK[e.way] })) }
}

/** The most of one round: what she set for it, else that of the work. */
const capFor = (leads: ComplaintId, id: ComplaintId, work: Work, rules: AmountRules): number =>
  rules.caps[id] ?? rules.caps[leads] ?? work.cap

/** One cause, or several that come to the same; undefined while they cannot be told apart. */
function settledCause(
  c: Complaint,
  yes: readonly number[],
  open: readonly number[],
  answered: boolean,
): Cause | undefined {
  const of = (numbers: readonly number[]): Cause[] =>
    c.causes.filter(({ number }) => numbers.includes(number))
  const alike = (list: readonly Cause[]): Cause | undefined => {
    const [first, ...rest] = list
    const same = rest.every((x) => JSON.stringify(x.remedy) === JSON.stringify(first?.remedy))
    return same ? first : undefined
  }
  if (yes.length > 0) return alike(of(yes))
  if (c.causes.length === 1 && open.length === 1) return c.causes[0]
  return answered && open.length > 0 ? alike(of(open)) : undefined
}

function whatTells(
  c: Complaint,
  yes: readonly number[],
  openTests: readonly number[],
): readonly Asked[] {
  if (yes.length > 1)
    return [
      {
        complaint: c.id,
        what: `${yes.map((n) => causeSaid(c.id, n)).join(' and ')} are different work. Which pin makes it vanish, with no new fold?`,
      },
    ]
  const list = c.tests.filter(({ number }) => openTests.includes(number))
  const asks = list.length > 0 ? list : c.tests
  return asks.map(({ number, ask }) => ({ complaint: c.id, what: `Test ${number}: ${ask}` }))
}

interface Link {
  readonly of: ComplaintId
  readonly number: number
}
/** From a cause that is another complaint to the cause and the work of that one. */
function followed(
  id: ComplaintId,
  cause: Cause,
): { chain: readonly Link[]; remedy: Remedy; leads: ComplaintId } {
  const chain: Link[] = [{ of: id, number: cause.number }]
  let [remedy, leads] = [cause.remedy, id]
  while (remedy.kind === 'see') {
    const { complaint, cause: wanted }: Extract<Remedy, { kind: 'see' }> = remedy
    if (chain.some(({ of }) => of === complaint)) break
    const next = complaintOf(complaint).causes.find(({ number }) => number === (wanted ?? 1))
    if (!next) throw new Error(`${id}: no cause ${wanted} of ${complaint}`)
    chain.push({ of: complaint, number: next.number })
    remedy = next.remedy
    leads = complaint
  }
  return { chain, remedy, leads }
}

function workAt(remedy: Extract<Remedy, { kind: 'work' }>, pin: Pin | undefined): Work {
  const at = pin && remedy.at?.find(({ places }) => places.includes(pin.where))
  return at ? at.work : remedy
}
