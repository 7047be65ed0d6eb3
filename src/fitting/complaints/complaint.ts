/**
 * What a complaint is, as data: its signs, the tests that tell its causes apart, and for every
 * cause the operation on the half piece, how a pin is read for it and how much of it a round may
 * use. Its words stand apart, beside each zone, and nowhere in the rules that read it.
 */
import type { AnyDart, EdgeName } from '../../draft/piece.ts'
import type { MeasurementId } from '../../measurements/catalogue.ts'
import type { ReachName } from '../reaches.ts'
import type { Head } from './heads.ts'

// prettier-ignore
export const COMPLAINT_IDS = [
  'N1', 'N2', 'N3', 'N4', 'N5', 'N6', 'N7', 'N8',
  'SH1', 'SH2', 'SH3', 'SH4', 'SH5', 'SH6', 'SH7', 'SH8',
  'B1', 'B2', 'B3', 'B4', 'B5', 'B6', 'B7', 'B8', 'B9', 'B10', 'B11', 'B12', 'B13', 'B14', 'B15',
  'A1', 'A2', 'A3', 'A4', 'A5',
  'K1', 'K2', 'K3', 'K4', 'K5', 'K6', 'K7',
  'W1', 'W2', 'W3', 'W4', 'W5', 'W6', 'W7', 'W8', 'W9', 'W10', 'W11', 'W12',
  'L1', 'L2', 'L3', 'L4', 'L5', 'L6', 'L7', 'L8', 'L9',
  'D1', 'D2', 'D3', 'D4', 'D5', 'D6', 'D7', 'D8',
  'X1', 'X2', 'X3', 'X4',
] as const
export type ComplaintId = (typeof COMPLAINT_IDS)[number]
export const isComplaintId = (id: string): id is ComplaintId =>
  COMPLAINT_IDS.some((known) => known === id)
/** "N1.2": the second cause of N1. */
export const causeId = (id: ComplaintId, number: number): string => `${id}.${number}`

/** What can be done to a half piece; a plus lets out or lengthens, a minus takes in or shortens. */
// prettier-ignore
export const OP_NAMES = [
  'ROT', 'WEDGE+', 'WEDGE-', 'PAR+', 'PAR-', 'STRIP+', 'STRIP-', 'DROP', 'FBA', 'SBA', 'EDGE',
  'SWAP', 'MOVE', 'GROUP', 'DARTLEN', 'DARTSHAPE', 'SPLIT', 'CAP+', 'CAP-', 'CAPLEN', 'BICEPS+',
  'BICEPS-', 'PITCH', 'ANGLE', 'SWEEP', 'UNDERARM', 'HEM',
] as const
export type OpName = (typeof OP_NAMES)[number]

export type PieceName = 'front' | 'back' | 'sleeve'
export type Target = `${PieceName}.${EdgeName | AnyDart}`

/** Which way the line goes: out of the piece lets out, in takes in; or plainly up, down, forward. */
export type Way = 'out' | 'in' | 'up' | 'down' | 'forward' | 'back' | 'wider' | 'narrower'

/** Where a pin was read. An edge name says the edge itself. */
// prettier-ignore
export const PLACES = [
  'cf', 'cb', 'side', 'seam', 'allRound',
  'neck', 'shoulder', 'overarm', 'armhole', 'sleeveEdge', 'centre', 'hem', 'waist', 'bust', 'hip',
  'dart', 'cap', 'sleeve', 'inside',
] as const
export type PinPlace = (typeof PLACES)[number]

/**
 * How a pin becomes the amount of a half piece:
 * across: a width by its place – halved on a centre line and at a seam, a quarter all round;
 * half: a width shared by everything in half the body – halved all round and on a centre line;
 * onePiece: a width that one piece takes alone – halved on a centre line and all round only;
 * length: a height, never halved; perPiece: at a seam, so much on each piece;
 * asRead: a distance a line or a point moves.
 */
export type ReadAs = 'across' | 'half' | 'onePiece' | 'length' | 'perPiece' | 'asRead'

/** What gives the angle: names of lengths on the draft. */
export type Angle =
  | { readonly kind: 'turn'; readonly reach: ReachName; readonly opens?: Receiver }
  | { readonly kind: 'hinge'; readonly depth: ReachName }
  | { readonly kind: 'bust' }
  | { readonly kind: 'swing'; readonly radius: ReachName }
  | { readonly kind: 'sector'; readonly radius: ReachName }
/** The dart that takes up what a turn opens. */
export interface Receiver {
  readonly target: Target
  readonly reach: ReachName
}

export interface Edit {
  readonly op: OpName
  readonly target: Target
  readonly way: Way
  /** Part of the half amount; 1 when left out. */
  readonly part?: number
  /** The named point that moves, where an edge has several. */
  readonly point?: 'sideNeck' | 'shoulderTip' | 'underarm' | 'frontNeck' | 'nape' | 'apex' | 'tip'
  readonly angle?: Angle
}

export interface Work {
  /** in: cloth is taken in, of which a share is applied; out: let out whole; place: a line moves. */
  readonly moves: 'in' | 'out' | 'place'
  readonly readAs: ReadAs
  readonly edits: readonly Edit[]
  /** Most of the half amount in one round, mm; degrees for a swing. */
  readonly cap: number
  readonly capUnit?: 'deg'
  /** A new line here is a mark on the body, not cloth in pins: it is taken whole. */
  readonly marked?: true
  /** Past the cap nothing is changed: these are taped again, and why. */
  readonly past?: { readonly ids: readonly MeasurementId[]; readonly why: string }
}

export type Remedy =
  /** `at`: read at one of these places the pin means other work. */
  | ({
      readonly kind: 'work'
      readonly at?: readonly { readonly places: readonly PinPlace[]; readonly work: Work }[]
      /** A pin here would cure it in the wrong place; the sentence says why. */
      readonly never?: { readonly places: readonly PinPlace[]; readonly why: string }
    } & Work)
  /** The same fault under its own name. */
  | { readonly kind: 'see'; readonly complaint: ComplaintId; readonly cause?: number }
  /** Sewing, cutting or wear: nothing to change in the draft. */
  | { readonly kind: 'making'; readonly advice: string }
  /** A number is in doubt before anything is changed. */
  | { readonly kind: 'tape'; readonly ids: readonly MeasurementId[]; readonly advice: string }

export interface Cause {
  /** Counted from 1, likeliest first. */
  readonly number: number
  readonly name: string
  readonly remedy: Remedy
}

/** A test with pins, tape or scissors that she can answer with yes or no. */
export interface Test {
  readonly number: number
  readonly ask: string
  /** Numbers of the causes a yes points to. */
  readonly yes: readonly number[]
  /** This answer says that nothing is wrong with the draft, and why. */
  readonly leaves?: { readonly on: boolean; readonly why: string }
}

/** Where a complaint and its correction come from; the works stand in sources.ts. */
// prettier-ignore
export type SourceId =
  | 'R1' | 'R2' | 'R3' | 'R8' | 'R12' | 'R13' | 'R14' | 'R16' | 'R17' | 'R19' | 'R20' | 'R21'
  | 'R22' | 'R23' | 'R24' | 'R43' | 'PUBLIC' | 'CP' | 'MEM'
/** How much of the source was seen; its words stand in sources.words.ts. */
export type Evidence = 'operative' | 'partly' | 'heading' | 'practice' | 'memory'

/** What she reads of a complaint; its name stands apart in heads.words.ts. */
export interface ComplaintWords {
  /** Other ways she may say it. */
  readonly said: readonly string[]
  /** The place, as it is named standing alone. */
  readonly where: string
  readonly sign: string
  /** Causes, tests and advice by the numbers of the causes and tests. */
  readonly causes: Readonly<Record<number, string>>
  readonly tests: Readonly<Record<number, string>>
  readonly advice?: Readonly<Record<number, string>>
  /** Looked at again once it is corrected, as in a list; none where every cause leads elsewhere. */
  readonly trueAfter: readonly string[]
  readonly doNot: string
}

/** Numbers of the causes a yes points to; with a reason where an answer leaves the draft alone. */
export type TestRule = Test['yes'] | Pick<Test, 'yes' | 'leaves'>

/** The rules of a complaint. Its words say how many causes and tests there are. */
export interface ComplaintRules<Words extends ComplaintWords = ComplaintWords> {
  readonly causes: { readonly [N in keyof Words['causes']]: Remedy }
  readonly tests: { readonly [N in keyof Words['tests']]: TestRule }
  /** Usual amounts on the half piece, mm; undefined where none is given. */
  readonly usual: readonly [number, number] | undefined
  /** Most in one round as the table gives it, mm or degrees; undefined where another entry decides. */
  readonly cap: number | undefined
  readonly source: readonly SourceId[]
  readonly evidence: Evidence
}

/** An entry without its head, which stands in heads.ts. */
export interface ComplaintBody
  extends
    Omit<ComplaintWords, 'causes' | 'tests' | 'advice'>,
    Omit<ComplaintRules, 'causes' | 'tests'> {
  readonly id: ComplaintId
  readonly causes: readonly Cause[]
  readonly tests: readonly Test[]
}

export interface Complaint extends Head, ComplaintBody {}
