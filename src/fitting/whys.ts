/**
 * Why a cause is likely or not, one sentence each, from the numbers of the draft and the tape and
 * from the movements that were tried: in words and lengths, never in percent. What contradicts a
 * complaint says so and asks to measure again first. `besideOf` hands it to the rules, which decide.
 */
import { pieceOf, type Draft } from '../draft/draft.ts'
import { sewnEase, type EaseLevel } from '../draft/ease.ts'
import type { EdgeName, PieceId } from '../draft/piece.ts'
import { pathLength } from '../geometry/length.ts'
import { measure, type MeasurementId } from '../measurements/catalogue.ts'
import { knows, lengthOf } from '../measurements/confirmed.ts'
import { mm, type Mm } from '../units/length.ts'
import { complaintOf } from './complaints/catalogue.ts'
import { causeId, type Cause, type ComplaintId } from './complaints/complaint.ts'
import type { ReachName, Reaches } from './reaches.ts'
import type { Beside, Doubt, Lean, LineSays } from './rules/beside.ts'
import { EASE_ENOUGH, EASE_LEAST, STRETCHED, type Level } from './rules/gates.ts'
import { WHYS_WORDS, type Found } from './whys.words.ts'

/** A sentence with its lengths, to be set in her unit. */
export type Words = readonly (string | Mm)[]
export interface Why {
  /** One, or several of which the same number says the same. */
  readonly causes: readonly Cause[]
  readonly leans: Lean
  readonly said: Words
  /** The number that was held against the draft, where there is one; taped again it may change. */
  readonly tape?: MeasurementId
  /** Drawn just to that number: it says that the tape may be wrong, nothing of the cause itself. */
  readonly drawn?: true
  /** The muslin itself shows it: a line, a movement, a measured edge. */
  readonly shown?: true
}
/** What she saw the muslin do when she moved. */
export interface Moves {
  readonly freedom?: 'free' | 'pulls' | 'cannot' | undefined
  readonly rose?: Mm | undefined
}
export interface Known {
  readonly draft: Draft
  readonly reaches: Reaches
  readonly armsForward?: Moves
  readonly armsUp?: Moves
  readonly sit?: Moves
  /** What the level and plumb lines name. */
  readonly lines?: readonly LineSays[]
  /** By complaint: how much longer its edge is sewn than drafted, as she measured it. */
  readonly longer?: Readonly<Partial<Record<ComplaintId, Mm>>>
}

/** How a number is read for one cause. */
type Reading =
  | { readonly kind: 'ease'; readonly level: Level; readonly tight: boolean }
  /** Room between the tape and the draft, from too little to enough. */
  | {
      readonly kind: 'room'
      readonly body: MeasurementId
      readonly drafted: ReachName
      readonly halves: 1 | 2
      readonly tight: boolean
      readonly span: readonly [least: number, enough: number]
    }
  /** A length that is drawn as it was taped, or stands in for one that was not. */
  | { readonly kind: 'drawnAs'; readonly body: MeasurementId }
  | { readonly kind: 'edge'; readonly piece: PieceId; readonly edges: readonly EdgeName[] }
  | { readonly kind: 'cap'; readonly over: boolean }
  | { readonly kind: 'dart' }
  | { readonly kind: 'tip' }
  | { readonly kind: 'moves'; readonly which: 'armsForward' | 'armsUp' | 'sit' }

const ease = (level: Level, tight: boolean): Reading => ({ kind: 'ease', level, tight })
const room = (
  body: MeasurementId,
  drafted: ReachName,
  halves: 1 | 2,
  tight: boolean,
  span: readonly [number, number],
): Reading => ({ kind: 'room', body, drafted, halves, tight, span })
const drawnAs = (body: MeasurementId): Reading => ({ kind: 'drawnAs', body })
const moves = (which: 'armsForward' | 'armsUp' | 'sit'): Reading => ({ kind: 'moves', which })
const edgeOf = (piece: PieceId, ...edges: readonly EdgeName[]): Reading => ({
  kind: 'edge',
  piece,
  edges,
})
/** Room across half the back and chest, and round the upper arm, mm. Common practice, no source. */
const ACROSS = [8, 30] as const
const ARM = [40, 75] as const

const READ: Readonly<Partial<Record<string, Reading>>> = {
  'B1.1': ease('bust', true),
  'B1.2': ease('bust', true),
  'B12.1': ease('bust', true),
  'B12.3': ease('bust', true),
  'X2.1': ease('bust', true),
  'B3.1': ease('bust', false),
  'B3.2': ease('bust', false),
  'A2.3': ease('bust', false),
  'X3.1': ease('bust', false),
  'W3.1': ease('waist', true),
  'W4.1': ease('waist', false),
  'K6.1': ease('waist', false),
  'B13.1': ease('waist', false),
  'W9.1': ease('hip', true),
  'W10.1': ease('hip', true),
  'K1.1': room('acrossBack', 'backWidth', 2, true, ACROSS),
  'A4.1': room('acrossBack', 'backWidth', 2, false, ACROSS),
  'B11.1': room('acrossChest', 'chestWidth', 2, true, ACROSS),
  'B10.1': room('acrossChest', 'chestWidth', 2, false, ACROSS),
  'L3.1': room('upperArmGirth', 'biceps', 1, true, ARM),
  'B2.1': drawnAs('sideNeckOverApexToWaist'),
  'B15.1': drawnAs('sideNeckOverApexToWaist'),
  'B14.1': drawnAs('sideNeckOverApexToWaist'),
  'B9.2': drawnAs('sideNeckOverApexToWaist'),
  'K3.1': drawnAs('sideNeckOverBladeToWaist'),
  'K3.3': drawnAs('sideNeckOverBladeToWaist'),
  'K5.1': drawnAs('sideNeckOverBladeToWaist'),
  'K2.1': drawnAs('napeToWaist'),
  'W1.1': drawnAs('napeToWaist'),
  'W2.1': drawnAs('napeToWaist'),
  'SH1.1': drawnAs('shoulderSlopeRight'),
  'SH2.1': drawnAs('shoulderSlopeRight'),
  'SH3.1': drawnAs('shoulderLengthRight'),
  'SH4.1': drawnAs('shoulderLengthRight'),
  'B5.1': drawnAs('sideNeckToApex'),
  'B6.1': drawnAs('apexSpacing'),
  'A1.1': drawnAs('napeToArmpitLevel'),
  'A2.1': drawnAs('napeToArmpitLevel'),
  'N1.4': edgeOf('front', 'neck'),
  'N3.5': edgeOf('back', 'neck'),
  'B8.5': edgeOf('front', 'armhole', 'sleeveEdge'),
  'L6.1': { kind: 'cap', over: true },
  'L7.1': { kind: 'cap', over: false },
  'B7.1': { kind: 'dart' },
  'B4.1': { kind: 'tip' },
  'K1.2': moves('armsForward'),
  'L5.1': moves('armsUp'),
  'D3.1': moves('armsUp'),
  'W3.2': moves('sit'),
}

/** One sentence for each cause that a number speaks of, its own or the one it leads to. */
export const whysFor = (id: ComplaintId, known: Known): readonly Why[] =>
  complaintOf(id)
    .causes.flatMap((cause) => {
      const { remedy, number } = cause
      const at =
        remedy.kind === 'see' ? causeId(remedy.complaint, remedy.cause ?? 1) : causeId(id, number)
      const reading = READ[at]
      const why = reading && read(reading, known, id)
      return [ofLine(remedy, known), why].flatMap((said) =>
        said ? [{ causes: [cause], ...said }] : [],
      )
    })
    .reduce<readonly Why[]>(joined, [])

/** What of it the rules weigh: complaints that a line names or denies, causes, numbers in doubt. */
export function besideOf(
  ids: readonly ComplaintId[],
  known: Known,
  denied: readonly LineSays[] = [],
): Beside {
  const all = ids.flatMap((id) => whysFor(id, known).map((why) => ({ id, why })))
  const leans = all
    .filter(({ why }) => !why.drawn)
    .flatMap(({ id, why }) => why.causes.map(({ number }) => [causeId(id, number), why.leans]))
  return {
    named: known.lines ?? [],
    denied,
    // What a line says stands first and is not written over by a number.
    leans: Object.fromEntries(leans.reverse()) as Beside['leans'],
    shown: all
      .filter(({ why }) => why.shown && why.leans === 'for')
      .flatMap(({ id, why }) => why.causes.map(({ number }) => causeId(id, number))),
    doubts: all.flatMap(({ id, why }) => doubtOf(id, why)),
  }
}
/** The likeliest cause has its number, and that says no. */
const doubtOf = (complaint: ComplaintId, { causes, leans, said, tape }: Why): readonly Doubt[] =>
  tape && leans === 'against' && causes.some(({ number }) => number === 1)
    ? [{ complaint, tape, why: plainly(said) }]
    : []
const plainly = (said: Words): string =>
  said.map((part) => (typeof part === 'number' ? `${Math.round(part)} mm` : part)).join('')

function joined(all: readonly Why[], why: Why): readonly Why[] {
  const same = all.find((w) => w.leans === why.leans && sameWords(w.said, why.said))
  return same
    ? all.map((w) => (w === same ? { ...w, causes: [...w.causes, ...why.causes] } : w))
    : [...all, why]
}
const sameWords = (a: Words, b: Words): boolean =>
  a.length === b.length && a.every((part, i) => part === b[i])

type Read = Omit<Why, 'causes'>
/** Lines come before folds: a cause that is another complaint is spoken for by the line that names it. */
function ofLine(remedy: Cause['remedy'], { lines = [] }: Known): Read | undefined {
  const line =
    remedy.kind === 'see'
      ? lines.find(({ complaint }) => complaint === remedy.complaint)
      : undefined
  return line && { shown: true, leans: 'for', said: WHYS_WORDS.line(line.read) }
}
function read(reading: Reading, known: Known, id: ComplaintId): Read | undefined {
  switch (reading.kind) {
    case 'ease':
      return ofEase(reading.level, reading.tight, known.draft)
    case 'room':
      return ofRoom(reading, known)
    case 'drawnAs':
      return ofTape(reading.body, known.draft)
    case 'edge':
      return ofEdge(reading, known.draft, known.longer?.[id])
    case 'cap':
      return ofCap(reading.over, known.reaches)
    case 'dart':
      return ofDart(known.reaches)
    case 'tip':
      return ofTip(known.reaches)
    case 'moves':
      return ofMoves(reading.which, known[reading.which])
  }
}

const AT: Readonly<Record<Level, EaseLevel>> = { bust: 'bust', waist: 'waist', hip: 'hip' }
function ofEase(level: Level, tight: boolean, draft: Draft): Read | undefined {
  const found = sewnEase(draft).find((e) => e.level === AT[level])
  if (!found) return undefined
  return between(
    mm(found.ease),
    tight,
    [EASE_LEAST[level], EASE_ENOUGH[level]],
    WHYS_WORDS.ease(level, found.ease),
  )
}
function ofRoom(
  { body, drafted, halves, tight, span }: Extract<Reading, { kind: 'room' }>,
  { draft, reaches }: Known,
): Read | undefined {
  const half = reaches[drafted]
  if (half === undefined) return undefined
  const { label } = measure(body)
  if (!knows(draft.body, body)) return { leans: 'open', said: WHYS_WORDS.notTaped(label) }
  const room = mm(half - lengthOf(draft.body, body) / halves)
  return { ...between(room, tight, span, WHYS_WORDS.room(label, room, halves)), tape: body }
}
/** Less than the least speaks for tightness, enough against it; looseness the other way. */
function between(
  room: Mm,
  tight: boolean,
  [least, enough]: readonly [number, number],
  found: Found,
): Read {
  if (room < least)
    return tight
      ? { leans: 'for', said: WHYS_WORDS.tight(found, mm(least)) }
      : { leans: 'against', said: WHYS_WORDS.notLoose(found) }
  if (room >= enough)
    return tight
      ? { leans: 'against', said: WHYS_WORDS.enough(found) }
      : { leans: 'for', said: WHYS_WORDS.loose(found, mm(enough)) }
  return { leans: 'open', said: WHYS_WORDS.open(found) }
}
function ofTape(body: MeasurementId, draft: Draft): Read {
  const { label } = measure(body)
  return knows(draft.body, body)
    ? {
        drawn: true,
        leans: 'against',
        said: WHYS_WORDS.drawnTo(label, lengthOf(draft.body, body)),
      }
    : { drawn: true, leans: 'for', said: WHYS_WORDS.fromSize(label) }
}
function ofEdge(
  { piece, edges }: Extract<Reading, { kind: 'edge' }>,
  draft: Draft,
  longer: Mm | undefined,
): Read | undefined {
  if (longer !== undefined)
    return longer > STRETCHED
      ? { shown: true, leans: 'for', said: WHYS_WORDS.stretched(longer) }
      : { leans: 'against', said: WHYS_WORDS.notStretched(mm(STRETCHED)) }
  const found = pieceOf(draft, piece).edges.find((e) => edges.includes(e.name))
  if (!found) return undefined
  const long = mm(pathLength(found.path))
  return { leans: 'open', said: WHYS_WORDS.layTape(long, mm(STRETCHED)) }
}
/** Cap ease that woven cloth takes without gathers, mm. Common practice, no source. */
const CAP_TAKES = [8, 30] as const
function ofCap(over: boolean, { cap, frontArmhole, backArmhole }: Reaches): Read | undefined {
  if (cap === undefined || frontArmhole === undefined || backArmhole === undefined) return undefined
  const extra = mm(cap - frontArmhole - backArmhole)
  return between(extra, !over, CAP_TAKES, WHYS_WORDS.cap(extra))
}
/** The widest mouth one dart holds well, mm: public tutorials on oversized darts, 38 to 44. */
const WIDEST = 44
function ofDart({ bustDart, frontWaistDart }: Reaches): Read | undefined {
  const widest = Math.max(bustDart ?? 0, frontWaistDart ?? 0)
  if (widest === 0) return undefined
  return widest > WIDEST
    ? { leans: 'for', said: WHYS_WORDS.dartWide(mm(widest), mm(WIDEST)) }
    : { leans: 'against', said: WHYS_WORDS.dartHolds(mm(widest)) }
}
/** A tip nearer the bust tip than this pokes, mm: public pages on darts, 13 to 64 seen. */
const NEAREST = 13
function ofTip({ dartTip }: Reaches): Read | undefined {
  if (dartTip === undefined) return undefined
  return dartTip < NEAREST
    ? { leans: 'for', said: WHYS_WORDS.tipNear(mm(dartTip), mm(NEAREST)) }
    : { leans: 'against', said: WHYS_WORDS.tipFar(mm(dartTip)) }
}
/** A hem may climb by less than this without anything being wrong, mm. Judgement. */
export const CLIMBS = 30
function ofMoves(
  which: 'armsForward' | 'armsUp' | 'sit',
  seen: Moves | undefined,
): Read | undefined {
  if (!seen?.freedom) return undefined
  return seen.freedom === 'free' && (seen.rose ?? 0) < CLIMBS
    ? { leans: 'against', said: WHYS_WORDS.moved(which, seen, false) }
    : { shown: true, leans: 'for', said: WHYS_WORDS.moved(which, seen, true) }
}
