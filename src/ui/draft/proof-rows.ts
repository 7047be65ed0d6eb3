/**
 * The proof as she reads it: what was looked at, and for each either that it holds, with its
 * number, or what was found. Nothing found of a kind is a tick.
 */
import { pieceOf, type Draft } from '../../draft/draft.ts'
import {
  findingSentence,
  type Finding,
  type FindingId,
  type Severity,
} from '../../draft/finding.ts'
import { edge, type EdgeName, type PieceId } from '../../draft/piece.ts'
import { pathLength } from '../../geometry/length.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import { mm, type Mm } from '../../units/length.ts'

const KINDS = [
  'getting in',
  'arm opening',
  'head',
  'overarm seams',
  'side seams',
  'darts',
  'neck join',
  'front length',
  'outline',
] as const
export type ProofKind = (typeof KINDS)[number]

/** Complete by construction: a finding of no kind does not compile. */
const KIND_OF: Readonly<Record<FindingId, ProofKind>> = {
  overarmPair: 'overarm seams',
  sidePair: 'side seams',
  sideJoin: 'side seams',
  dartLegs: 'darts',
  dartWide: 'darts',
  secondDart: 'darts',
  centreBackSeam: 'darts',
  dartOpen: 'darts',
  bustDart: 'darts',
  straightWaist: 'darts',
  waistWider: 'darts',
  neckJoin: 'neck join',
  neckBaseUnknown: 'neck join',
  frontNeckHigh: 'head',
  notSquare: 'outline',
  outlineCrosses: 'outline',
  armOpening: 'arm opening',
  upperArmUnknown: 'arm opening',
  armpitUnknown: 'arm opening',
  underarmPlace: 'arm opening',
  overarmShort: 'overarm seams',
  struckOutside: 'overarm seams',
  headUnknown: 'head',
  headOpening: 'head',
  gettingInUnknown: 'getting in',
  gettingIn: 'getting in',
  openingAdded: 'getting in',
  fullerBust: 'front length',
  balanceUnknown: 'front length',
}

/** The question of a kind, and what a tick beside it says. */
const QUESTIONS: Readonly<Record<ProofKind, string>> = {
  'getting in': 'Can you get in?',
  'arm opening': 'Does the arm pass?',
  head: 'Does the head pass?',
  'overarm seams': 'Overarm seams of back and front',
  'side seams': 'Side seams of back and front',
  darts: 'Waist darts',
  'neck join': 'Neck edge over the overarm seam',
  'front length': 'Front and back length',
  outline: 'Outline',
}

export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  stop: 'Not for cutting',
  muslin: 'For a muslin only',
  note: 'Good to know',
}
const WEIGHT: Readonly<Record<Severity, number>> = { stop: 0, muslin: 1, note: 2 }

export interface FoundLine {
  readonly finding: Finding
  readonly sentence: string
}
export interface ProofRow {
  readonly kind: ProofKind
  readonly words: string
  /** The heaviest of what was found; undefined: it holds. */
  readonly severity: Severity | undefined
  readonly found: readonly FoundLine[]
  /** What holds, with its number. */
  readonly holds: string
}

/** Heaviest first, then in the order in which she would try the garment on. */
export function proofRows(draft: Draft, units: UnitChoice): readonly ProofRow[] {
  const rows = KINDS.map((kind): ProofRow => {
    const found = draft.findings
      .filter((f) => KIND_OF[f.id] === kind)
      .sort((a, b) => WEIGHT[a.severity] - WEIGHT[b.severity])
      .map((finding) => ({ finding, sentence: findingSentence(finding, units) }))
    return {
      kind,
      words: QUESTIONS[kind],
      severity: found[0]?.finding.severity,
      found,
      holds: holds(draft, kind, units),
    }
  })
  const weight = ({ severity }: ProofRow) => (severity === undefined ? 3 : WEIGHT[severity])
  return rows.toSorted((a, b) => weight(a) - weight(b))
}

/** "7 hold, 2 ask" */
export function proofCount(rows: readonly ProofRow[]): string {
  const holding = rows.filter((r) => r.severity === undefined).length
  const asking = rows.length - holding
  if (asking === 0) return `all ${holding} hold`
  return `${holding} ${holding === 1 ? 'holds' : 'hold'}, ${asking} ${asking === 1 ? 'asks' : 'ask'}`
}

function holds(draft: Draft, kind: ProofKind, units: UnitChoice): string {
  const length = (piece: PieceId, name: EdgeName): Mm =>
    mm(pathLength(edge(pieceOf(draft, piece), name).path))
  const say = (value: number): string => formatLength(mm(value), units)
  switch (kind) {
    case 'getting in':
      return 'The waist passes over bust and shoulders.'
    case 'arm opening':
      return `The opening is ${say(length('back', 'sleeveEdge') + length('front', 'sleeveEdge'))} round.`
    case 'head':
      return `The neck opening is ${say(2 * (length('back', 'neck') + length('front', 'neck')))} round.`
    case 'overarm seams':
      return `${say(length('front', 'overarm'))} both.`
    case 'side seams':
      return `${say(length('front', 'side'))} both.`
    case 'darts':
      return 'The legs are equal in pairs.'
    case 'neck join':
      return 'It runs on in one line.'
    case 'front length':
      return 'The front is raised by what the tape says.'
    case 'outline':
      return 'It crosses itself nowhere.'
  }
}
