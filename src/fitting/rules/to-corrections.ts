/**
 * Edits of a decision as corrections of a garment: a choice of the construction wherever one says
 * it, an operation on the halves where none does. Over 200 lines because it is one table, edit by
 * edit. What this garment cannot draw is given back with what to do instead.
 */
import type { ChoiceId } from '../../draft/choices.ts'
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { GARMENTS } from '../../draft/garments.ts'
import { namedPoint, type AnyDart } from '../../draft/piece.ts'
import { knows } from '../../measurements/confirmed.ts'
import { distance } from '../../geometry/point.ts'
import { mm, type Mm } from '../../units/length.ts'
import type { ComplaintId, Way } from '../complaints/complaint.ts'
import type { Because } from '../correction.ts'
import { isPinned, STANDARD_RULES, type AmountRules, type How, type Pin } from '../half-amount.ts'
import { usualAlong } from '../landmarks.ts'
import type { Operation, WedgeLevel } from '../ops/operation.ts'
import type { HowRead } from '../pinned.ts'
import type { NewCorrection } from '../preview.ts'
import { capEaseFor } from './cap-height.ts'
import type { Decision } from './decide.ts'
import { DRAWN_WORDS } from './drawn.words.ts'
import { readFor, type EditAmount } from './edit-amounts.ts'
import type { Judged } from './judged.ts'

export interface NotDrawn {
  readonly complaint: ComplaintId
  readonly target: string
  readonly op: string
  readonly why: string
}
export interface Corrections {
  readonly corrections: readonly NewCorrection[]
  readonly notDrawn: readonly NotDrawn[]
}

export function correctionsFor(
  decision: Decision,
  draft: Draft,
  round: number,
  rules: AmountRules = STANDARD_RULES,
): Corrections {
  const parts = decision.changes.map((j) => ofJudged(j, draft, round, rules))
  return {
    corrections: parts.flatMap((p) => p.corrections),
    notDrawn: parts.flatMap((p) => p.notDrawn),
  }
}

/** What one edit comes to. */
type Act =
  | { readonly choice: ChoiceId; readonly by: number }
  | { readonly operation: Operation }
  /** Told by another edit of the same complaint. */
  | { readonly told: true }
  | { readonly why: string }

function ofJudged(j: Judged, draft: Draft, round: number, rules: AmountRules): Corrections {
  const edits = j.edits.filter((e) => e.follows === undefined)
  const acts = actsOf(j, edits, draft)
  const because = becauseOf(j, round, rules)
  const side = j.side ? { side: j.side } : {}
  const corrections: NewCorrection[] = []
  const notDrawn: NotDrawn[] = []
  for (const [act, e] of acts) {
    if ('choice' in act && j.side && !SIDED.includes(act.choice))
      notDrawn.push({ complaint: j.id, target: e.target, op: e.op, why: DRAWN_WORDS.oneSide })
    else if ('choice' in act && !GARMENTS[draft.garment].choices.includes(act.choice))
      notDrawn.push({ complaint: j.id, target: e.target, op: e.op, why: DRAWN_WORDS.noSuchPart })
    else if ('choice' in act)
      corrections.push({
        kind: 'turn-choice',
        choice: act.choice,
        by: mm(act.by),
        ...side,
        because,
      })
    else if ('operation' in act)
      corrections.push({
        kind: 'operate',
        operation: act.operation,
        ...side,
        because,
      })
    else if ('why' in act)
      notDrawn.push({ complaint: j.id, target: e.target, op: e.op, why: act.why })
  }
  return { corrections, notDrawn }
}

/** Choices that leave the centre line and the neck where they are, so that one side may have its own. */
const SIDED: readonly ChoiceId[] = [
  'easeBust',
  'easeWaist',
  'easeHip',
  'easeHighHip',
  'underarmDrop',
  'overarmDrop',
  'frontShare',
  'shoulderDart',
  'frontDartLow',
  'backDartLow',
  'armRoom',
  'capEase',
  'sleeveLength',
  'sleevePitch',
]

const HOW: Readonly<Record<How, HowRead>> = {
  fold: 'foldToPin',
  pinch: 'wholeFold',
  slit: 'slitOpen',
  level: 'levelError',
  newLine: 'seamToPin',
}
function becauseOf(j: Judged, round: number, rules: AmountRules): Because {
  const pin: Pin | undefined = j.pin
  const read = pin?.how ?? 'level'
  const how = HOW[read]
  const taken = j.work?.moves === 'in' && isPinned(readFor(j.work, read))
  return {
    complaint: j.id,
    cause: j.causes[j.causes.length - 1] ?? j.id,
    pinned: {
      how,
      read: mm(Math.abs(pin?.value ?? j.raw ?? 0)),
      share: taken ? rules.takeInShare : 1,
    },
    watch: mm(j.heldBack.reduce((most, h) => Math.max(most, h.mm), 0)),
    round,
  }
}

type Acts = readonly (readonly [Act, EditAmount])[]

function actsOf(j: Judged, edits: readonly EditAmount[], draft: Draft): Acts {
  const girth = girthActs(j, edits, draft)
  if (girth) return girth
  const [first] = edits
  return edits.map((e) => [
    e === first || !TOGETHER.includes(e.op) ? actOf(j, e, draft) : restOf(j, e, draft),
    e,
  ])
}
/** Ops whose other edits of one complaint are carried by the first. */
const TOGETHER: readonly string[] = [
  'PAR+',
  'PAR-',
  'EDGE',
  'SWAP',
  'MOVE',
  'UNDERARM',
  'ANGLE',
  'SWEEP',
  'DROP',
]

/** Girth all round is ease of the construction, which shapes side and darts anew. */
function girthActs(j: Judged, edits: readonly EditAmount[], draft: Draft): Acts | undefined {
  const ids = EASE[j.leads]
  const [first] = edits
  if (!ids || !first) return undefined
  const sides = edits.filter((e) => e.target === 'front.side' || e.target === 'front.waistDart')
  if (!edits.some((e) => e.target === 'front.side')) return undefined
  const per =
    sides.reduce((s, e) => s + e.applied, 0) *
    (first.way === 'in' || first.way === 'wider' ? -1 : 1)
  const has = ids.filter((id) => GARMENTS[draft.garment].choices.includes(id))
  return has.map((choice) => [{ choice, by: per }, first] as const)
}
const EASE: Partial<Record<ComplaintId, readonly ChoiceId[]>> = {
  B1: ['easeBust'],
  B12: ['easeBust'],
  B3: ['easeBust'],
  A2: ['easeBust'],
  W3: ['easeWaist'],
  W4: ['easeWaist'],
  W9: ['easeHip', 'easeHighHip'],
  X2: ['easeBust', 'easeWaist', 'easeHip', 'easeHighHip'],
  X3: ['easeBust', 'easeWaist', 'easeHip', 'easeHighHip'],
}

/** Further edits: those that the first carries, and a second point that moves by itself. */
function restOf(j: Judged, e: EditAmount, draft: Draft): Act {
  if (e.point === 'sideNeck' && e.target === 'front.neck' && j.edits[0]?.point !== 'sideNeck')
    return actOf(j, e, draft)
  if (e.op === 'MOVE' && e.target === 'front.waistDart') return actOf(j, e, draft)
  if (e.target === 'front.side' && e.op === 'UNDERARM' && j.edits[0]?.op === 'ANGLE')
    return actOf(j, e, draft)
  return { told: true }
}

const sign = (way: Way): number =>
  way === 'in' || way === 'up' || way === 'narrower' || way === 'back' ? -1 : 1
const LEVEL: Partial<Record<ComplaintId, WedgeLevel>> = {
  B9: 'chest',
  B14: 'chest',
  B15: 'chest',
  K2: 'waist',
  K3: 'blade',
  K5: 'blade',
  K7: 'nape',
  W10: 'belowWaist',
}

function actOf(j: Judged, e: EditAmount, draft: Draft): Act {
  const [piece, part] = e.target.split('.') as ['front' | 'back' | 'sleeve', string]
  const by = sign(e.way) * e.applied
  const blouse = draft.garment === 'blouse'
  const operation = (op: Operation): Act => ({ operation: op })
  if (piece === 'sleeve') return sleeveAct(j, e, by, draft)
  switch (e.op) {
    case 'ROT':
      if (part === 'shoulderDart')
        return operation({ op: 'WEDGE', piece: 'back', level: 'blade', by: mm(by) })
      return operation(turn(j, e, piece, part))
    case 'WEDGE+':
    case 'WEDGE-':
      return operation({
        op: 'WEDGE',
        piece,
        level: LEVEL[j.leads] ?? 'waist',
        by: mm(e.op === 'WEDGE+' ? e.applied : -e.applied),
      })
    case 'PAR+':
    case 'PAR-':
      return { choice: 'lengthAdded', by: e.op === 'PAR+' ? e.applied : -e.applied }
    case 'STRIP+':
    case 'STRIP-':
      return blouse
        ? { why: DRAWN_WORDS.noWidthAcross }
        : operation({ op: 'STRIP', piece, by: mm(e.op === 'STRIP+' ? e.applied : -e.applied) })
    case 'DROP':
      return operation({ op: 'DROP', by: mm(e.applied) })
    case 'FBA':
    case 'SBA':
      return operation({ op: 'BUST', by: mm(e.op === 'FBA' ? e.applied : -e.applied) })
    case 'EDGE':
      return edgeAct(e, piece, part, by, blouse)
    case 'SWAP':
      return part === 'side'
        ? { choice: 'frontShare', by: piece === 'front' ? by : -by }
        : operation({ op: 'SWAP', by: mm(piece === 'front' ? -by : by) })
    case 'MOVE':
      return moveAct(j, e, piece, part, by, draft)
    case 'GROUP':
      return hasDart(draft, piece, part)
        ? operation({ op: 'GROUP', piece, dart: part as AnyDart, out: mm(0), down: mm(by) })
        : { told: true }
    case 'DARTLEN':
      return e.way === 'up'
        ? { choice: piece === 'front' ? 'frontDartLow' : 'backDartLow', by: -e.applied }
        : operation({ op: 'DARTLEN', piece, dart: part as AnyDart, by: mm(e.applied) })
    case 'DARTSHAPE':
      return part === 'shoulderDart'
        ? { choice: 'shoulderDart', by }
        : operation({ op: 'DARTSHAPE', piece, dart: part as AnyDart, by: mm(by) })
    case 'SPLIT':
      return operation({ op: 'SPLIT', width: mm(e.applied) })
    case 'ANGLE':
    case 'SWEEP':
      return { choice: 'overarmDrop', by: overarmDrop(draft, e) }
    case 'UNDERARM':
      return { choice: 'underarmDrop', by }
    case 'HEM':
      return { choice: 'lengthBelowWaist', by }
    case 'CAP+':
    case 'CAP-':
    case 'CAPLEN':
    case 'BICEPS+':
    case 'BICEPS-':
    case 'PITCH':
      return { told: true }
  }
}

function turn(j: Judged, e: EditAmount, piece: 'front' | 'back', part: string): Operation {
  const receiver = j.edits.find((f) => f.follows === e.target)?.target.split('.')[1]
  const edge = part === 'neck' ? 'neck' : part === 'armhole' ? 'armhole' : 'sleeveEdge'
  const along = j.pin?.along ?? usualAlong(piece, edge)
  const into = (receiver ??
    (piece === 'back' ? 'shoulderDart' : edge === 'armhole' ? 'bustDart' : 'waistDart')) as AnyDart
  return { op: 'ROT', piece, edge, along, width: mm(e.applied), into }
}

const hasDart = (draft: Draft, piece: 'front' | 'back', name: string): boolean => {
  const { darts, edgeDarts } = pieceOf(draft, piece)
  return [...darts, ...edgeDarts].some((d) => d.name === name)
}

function edgeAct(
  e: EditAmount,
  piece: 'front' | 'back',
  part: string,
  by: number,
  blouse: boolean,
): Act {
  if (part === 'centre')
    return { operation: { op: 'DARTSHAPE', piece, dart: 'waistDart', by: mm(e.applied) } }
  if (part === 'side') return { choice: 'easeBust', by }
  if (blouse) return { why: DRAWN_WORDS.noArmhole }
  if (e.point === 'shoulderTip')
    return {
      operation: { op: 'MOVE', piece: 'both', point: 'shoulderTip', out: mm(by), down: mm(0) },
    }
  return { operation: { op: 'STRIP', piece, by: mm(by) } }
}

function moveAct(
  j: Judged,
  e: EditAmount,
  piece: 'front' | 'back',
  part: string,
  by: number,
  draft: Draft,
): Act {
  const blouse = draft.garment === 'blouse'
  const move = (m: Omit<Extract<Operation, { op: 'MOVE' }>, 'op'>): Act => ({
    operation: { op: 'MOVE', ...m },
  })
  switch (e.point) {
    case 'shoulderTip':
      return move({
        piece: 'both',
        point: 'shoulderTip',
        out: mm(0),
        down: mm(by),
        ...(j.edits.some(({ point }) => point === 'underarm') ? { carries: true } : {}),
      })
    case 'sideNeck':
      if (part === 'shoulder' || part === 'overarm')
        return move({ piece, point: 'sideNeck', out: mm(0), down: mm(by) })
      return blouse
        ? { choice: 'neckHalfWidth', by }
        : move({ piece: 'both', point: 'sideNeck', out: mm(by), down: mm(0) })
    case 'frontNeck':
      return blouse
        ? { choice: 'frontNeckDrop', by }
        : move({ piece: 'front', point: 'neckAtCentre', out: mm(0), down: mm(by) })
    case 'nape':
      return move({ piece: 'back', point: 'neckAtCentre', out: mm(0), down: mm(by) })
    case 'underarm':
      return knows(draft.body, 'napeToArmpitLevel') && inRange(draft, by)
        ? { choice: 'underarmDrop', by }
        : move({ piece: 'both', point: 'underarm', out: mm(0), down: mm(by) })
    case 'apex':
    case 'tip': {
      if (!hasDart(draft, piece, part)) return { told: true }
      const across = e.way === 'out' || e.way === 'in'
      return {
        operation: {
          op: 'GROUP',
          piece,
          dart: part as AnyDart,
          out: mm(across ? by : 0),
          down: mm(across ? 0 : by),
        },
      }
    }
    default:
      return { told: true }
  }
}
/** Within what the underarm may be chosen below the armpit, mm. */
const UNDERARM = { least: 10, most: 60 } as const
const inRange = (draft: Draft, by: number): boolean => {
  const to = draft.choices.underarmDrop + by
  return to >= UNDERARM.least && to <= UNDERARM.most
}

/** How far the end of the overarm comes down when it swings about the side neck. */
function overarmDrop(draft: Draft, e: EditAmount): Mm {
  const back = pieceOf(draft, 'back')
  const [s, t] = [namedPoint(back, 'S'), namedPoint(back, 'T')]
  const [long, angle] = [distance(s, t), Math.asin((t.y - s.y) / distance(s, t))]
  const turn = ((e.theta ?? 0) * Math.PI) / 180
  // Wider is flatter: the sector grows upwards, the underarm stays.
  const way = e.way === 'down' || e.way === 'narrower' ? 1 : -1
  return mm(long * (Math.sin(angle + way * turn) - Math.sin(angle)))
}

function sleeveAct(j: Judged, e: EditAmount, by: number, draft: Draft): Act {
  switch (e.op) {
    case 'CAP+':
    case 'CAP-': {
      const ease = capEaseFor(draft, e.op === 'CAP+' ? e.applied : -e.applied)
      return ease === undefined ? { why: DRAWN_WORDS.noSuchCap } : { choice: 'capEase', by: ease }
    }
    case 'CAPLEN':
      return { choice: 'capEase', by }
    case 'BICEPS+':
    case 'BICEPS-':
      return { choice: 'armRoom', by: e.op === 'BICEPS+' ? e.applied : -e.applied }
    case 'PAR+':
      return { choice: 'sleeveLength', by: e.applied }
    case 'PITCH':
      // Where the seam over the shoulder moves, the cap is drawn anew from both armholes.
      return j.leads.startsWith('SH') ? { told: true } : { choice: 'sleevePitch', by }
    default:
      return { why: DRAWN_WORDS.noElbowDart }
  }
}
