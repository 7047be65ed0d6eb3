/**
 * A case as a file gives it, read with patience for how a word may be written, and its decision in
 * the shape of RESULT. Lengths alone suffice; a whole draft gives them by itself.
 */
import { isGarmentId } from '../../draft/garments.ts'
import type { GarmentId } from '../../draft/draft.ts'
import { mm } from '../../units/length.ts'
import { complaintOf } from '../complaints/catalogue.ts'
import { COMPLAINT_IDS, PLACES, type ComplaintId, type PinPlace } from '../complaints/complaint.ts'
import { HOWS, PIN_SIDES, STANDARD_RULES, type AmountRules, type Pin } from '../half-amount.ts'
import { readReaches, type Reaches } from '../reaches.ts'
import { decide, type Decision } from './decide.ts'
import type { Reported } from './judged.ts'

export type Read<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string }

const isRecord = (x: unknown): x is Readonly<Record<string, unknown>> =>
  typeof x === 'object' && x !== null && !Array.isArray(x)
const plain = (s: unknown): string =>
  String(s)
    .toLowerCase()
    .replace(/[^a-z0-9]/g, '')
const shown = (x: unknown): string => JSON.stringify(x) ?? 'nothing'

const oneOf = <T extends string>(names: readonly T[], given: unknown): T | undefined =>
  names.find((n) => plain(n) === plain(given))

/** Other ways a place is written. */
const ALSO: Readonly<Record<string, PinPlace>> = {
  centrefront: 'cf',
  centerfront: 'cf',
  centreback: 'cb',
  centerback: 'cb',
  center: 'centre',
  fold: 'centre',
  sideseam: 'side',
  shoulderseam: 'shoulder',
  shouldertip: 'shoulder',
  overarmseam: 'overarm',
  around: 'allRound',
  round: 'allRound',
  girth: 'allRound',
  all: 'allRound',
  neckline: 'neck',
  frontneck: 'neck',
  backneck: 'neck',
  neckedge: 'neck',
  frontarmhole: 'armhole',
  backarmhole: 'armhole',
  armholeedge: 'armhole',
  sleevecap: 'cap',
  underarm: 'inside',
  biceps: 'sleeve',
  elbow: 'sleeve',
  waistline: 'waist',
  bustline: 'bust',
  hipline: 'hip',
  waistdart: 'dart',
  bustdart: 'dart',
  sidedart: 'dart',
  shoulderdart: 'dart',
  frontseam: 'seam',
  backseam: 'seam',
  chest: 'inside',
  blade: 'inside',
  back: 'inside',
  front: 'inside',
}

export function readPin(given: unknown): Read<Pin | undefined> {
  if (given === undefined || given === null) return { ok: true, value: undefined }
  if (!isRecord(given)) return { ok: false, reason: `pin: ${shown(given)} is no pin.` }
  const how = oneOf(HOWS, given['how'])
  if (!how) return { ok: false, reason: `pin.how: ${shown(given['how'])}; use ${HOWS.join(', ')}.` }
  const asked = plain(given['where']).replace(
    /^(front|back|sleeve)(?=neck|armhole|sleeveedge|side|shoulder|overarm|hem|centre|cap|waistdart|bustdart)/,
    '',
  )
  const where = oneOf(PLACES, asked) ?? ALSO[asked] ?? ALSO[plain(given['where'])]
  if (!where)
    return {
      ok: false,
      reason: `pin.where: ${shown(given['where'])}; use an edge or ${PLACES.join(', ')}.`,
    }
  const side = oneOf(PIN_SIDES, given['side'] ?? 'both')
  if (!side)
    return { ok: false, reason: `pin.side: ${shown(given['side'])}; use ${PIN_SIDES.join(', ')}.` }
  const read = given['value_mm'] ?? given['value']
  const value = typeof read === 'string' && read.trim() !== '' ? Number(read) : read
  if (typeof value !== 'number' || !Number.isFinite(value))
    return { ok: false, reason: `pin.value_mm: ${shown(read)} is no number of millimetres.` }
  return { ok: true, value: { how, where, side, value: mm(value) } }
}

const YES_NO: Readonly<Record<string, boolean>> = { true: true, yes: true, false: false, no: false }

export function readComplaint(given: unknown): Read<Reported> {
  if (!isRecord(given)) return { ok: false, reason: `${shown(given)} is no complaint.` }
  const id = oneOf<ComplaintId>(COMPLAINT_IDS, given['id'])
  if (!id)
    return {
      ok: false,
      reason: `complaint ${shown(given['id'])} is none of the 76; --schema lists their ids.`,
    }
  const pin = readPin(given['pin'])
  if (!pin.ok) return { ok: false, reason: `${id}: ${pin.reason}` }
  const answers = isRecord(given['answers']) ? given['answers'] : {}
  const said = Object.fromEntries(
    Object.entries(answers).flatMap(([key, x]) => {
      const word = YES_NO[plain(x)]
      return word === undefined ? [] : [[key, word]]
    }),
  )
  return { ok: true, value: { id, answers: said, ...(pin.value ? { pin: pin.value } : {}) } }
}

export interface CaseFile {
  readonly id: string
  readonly garment: GarmentId | undefined
  readonly lengths: Reaches
  readonly unknown: readonly string[]
  /** What of it could not be read, each with what may stand there. */
  readonly unread: readonly string[]
  readonly input: unknown
  readonly complaints: readonly Reported[]
  readonly rules: AmountRules
}

export function readCase(given: unknown, number: number): Read<CaseFile> {
  if (!isRecord(given)) return { ok: false, reason: `Case ${number} is no object.` }
  const id = typeof given['id'] === 'string' ? given['id'] : String(given['id'] ?? number)
  const list = given['complaints']
  const unread: string[] = Array.isArray(list) ? [] : ['complaints is no list.']
  const complaints: Reported[] = []
  for (const one of Array.isArray(list) ? list : []) {
    const read = readComplaint(one)
    if (read.ok) complaints.push(read.value)
    else unread.push(read.reason)
  }
  const named = given['garment']
  const garment = typeof named === 'string' ? plain(named) : ''
  if (named !== undefined && !isGarmentId(garment))
    unread.push(`garment ${shown(named)} is not drawn here; decided without one.`)
  const draft = isRecord(given['draft']) ? given['draft'] : {}
  const numbers = Object.fromEntries(
    Object.entries(draft).flatMap(([k, x]) => (typeof x === 'number' ? [[k, x]] : [])),
  )
  const { reaches, unknown } = readReaches(numbers)
  return {
    ok: true,
    value: {
      id,
      garment: isGarmentId(garment) ? garment : undefined,
      lengths: reaches,
      unknown,
      unread,
      input: given['input'],
      complaints,
      rules: STANDARD_RULES,
    },
  }
}

const tenths = (x: number): number => Math.round(x * 1000) / 1000

/** RESULT of one case: numbers in mm and degrees to a thousandth. What was not read is asked for. */
export function resultOf(d: Decision, unread: readonly string[] = []): object {
  const silent = d.decision === 'nothing' && unread.length > 0 && d.reasons.length === 0
  return {
    decision: silent ? 'ask' : d.decision,
    causes: d.causes,
    edits: d.edits.map((e) => ({
      target: e.target,
      op: e.op,
      rawHalf_mm: tenths(e.raw),
      applied_mm: tenths(e.applied),
      cap_mm: e.cap === undefined ? null : tenths(e.cap),
      theta_deg: e.theta === undefined ? null : tenths(e.theta),
      way: e.way,
      ...(e.side ? { side: e.side } : {}),
      ...(e.point ? { point: e.point } : {}),
      ...(e.follows ? { follows: e.follows } : {}),
    })),
    heldBack: d.heldBack.map((h) => ({ ...h, mm: tenths(h.mm) })),
    reasons: [...unread, ...d.reasons],
    asks: d.asks,
    choices: d.choices,
  }
}

/** Of lengths alone. */
export const decideCase = ({ complaints, garment, lengths, rules }: CaseFile): Decision =>
  decide(complaints, { garment, darts: undefined, reaches: lengths }, rules)

/** What a case may say, for --schema. */
export const complaintWords = (): readonly object[] =>
  COMPLAINT_IDS.map((id) => {
    const c = complaintOf(id)
    return {
      id,
      name: c.name,
      sign: c.sign,
      causes: Object.fromEntries(c.causes.map((x) => [x.number, x.name])),
      tests: Object.fromEntries(c.tests.map((t) => [`test ${t.number}`, t.ask])),
      ...(c.cap === undefined ? {} : { cap: c.cap }),
    }
  })
