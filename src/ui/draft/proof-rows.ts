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
import type { OpeningKind } from '../../draft/opening.ts'
import { overShoulder, sewnLength, type EdgeName, type PieceId } from '../../draft/piece.ts'
import { EDGE_WORDS } from '../../draft/piece.words.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import { mm, type Mm } from '../../units/length.ts'
import { OPENING_WORDS, opensFor } from './opening-words.ts'

const KINDS = [
  'getting in',
  'head',
  'arm opening',
  'neck',
  'shoulder seams',
  'side seams',
  'front and back',
  'darts',
  'outline',
] as const
export type ProofKind = (typeof KINDS)[number]

/** Complete by construction: a finding of no kind does not compile. */
const KIND_OF: Readonly<Record<FindingId, ProofKind>> = {
  gettingIn: 'getting in',
  gettingInUnknown: 'getting in',
  openingAdded: 'getting in',
  headOpening: 'head',
  headUnknown: 'head',
  armOpening: 'arm opening',
  upperArmUnknown: 'arm opening',
  armpitUnknown: 'arm opening',
  underarmPlace: 'arm opening',
  underarmDeeper: 'arm opening',
  neckJoin: 'neck',
  neckBaseUnknown: 'neck',
  frontNeckHigh: 'neck',
  armholeJoin: 'arm opening',
  armholeSmall: 'arm opening',
  acrossWide: 'arm opening',
  acrossUnknown: 'arm opening',
  capPair: 'arm opening',
  capUnsolved: 'arm opening',
  capGathered: 'arm opening',
  sleeveWider: 'arm opening',
  sleeveLonger: 'arm opening',
  sleeveHemWider: 'arm opening',
  sleevePair: 'arm opening',
  waistPair: 'darts',
  waistDarts: 'darts',
  hemNarrow: 'getting in',
  shoulderPair: 'shoulder seams',
  overarmPair: 'shoulder seams',
  overarmShort: 'shoulder seams',
  overarmRaised: 'shoulder seams',
  struckOutside: 'shoulder seams',
  sidePair: 'side seams',
  sideJoin: 'side seams',
  balanceUnknown: 'front and back',
  fullerBust: 'front and back',
  bustDart: 'front and back',
  dartLegs: 'darts',
  bustDartHigher: 'darts',
  dartStays: 'darts',
  seamNotHere: 'darts',
  dartWide: 'darts',
  secondDart: 'darts',
  centreBackSeam: 'darts',
  dartOpen: 'darts',
  waistLooser: 'darts',
  straightWaist: 'darts',
  waistWider: 'darts',
  notSquare: 'outline',
  outlineCrosses: 'outline',
  centresApart: 'outline',
}

/** A slit is added at the back neck for the head, a zip in the side for the waist. */
export const kindOf = ({ id, place }: Finding): ProofKind =>
  id === 'openingAdded' && place === 'back.centre' ? 'head' : KIND_OF[id]

const QUESTIONS: Readonly<Record<ProofKind, string>> = {
  'getting in': 'Can you get in?',
  head: 'Does the head pass?',
  'arm opening': 'Does the arm pass?',
  neck: 'Neck edge',
  'shoulder seams': 'Seams over shoulder and arm',
  'side seams': 'Side seams of back and front',
  'front and back': 'Front beside the back',
  darts: 'Darts',
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
      .filter((f) => kindOf(f) === kind)
      .sort((a, b) => WEIGHT[a.severity] - WEIGHT[b.severity])
      .map((finding) => ({ finding, sentence: foundSaid(draft, finding, units) }))
    return {
      kind,
      words: QUESTIONS[kind],
      severity: found[0]?.finding.severity,
      found,
      holds: heldOf(draft, kind, units),
    }
  })
  const weight = ({ severity }: ProofRow) => (severity === undefined ? 3 : WEIGHT[severity])
  return rows.toSorted((a, b) => weight(a) - weight(b))
}

/** "6 hold, 1 asks, 2 to know": a note keeps nothing from being cut. */
export function proofCount(rows: readonly ProofRow[]): string {
  const holding = rows.filter((r) => r.severity === undefined).length
  const notes = rows.filter((r) => r.severity === 'note').length
  const asking = rows.length - holding - notes
  if (holding === rows.length) return `all ${holding} hold`
  return [
    `${holding} ${holding === 1 ? 'holds' : 'hold'}`,
    ...(asking > 0 ? [`${asking} ${asking === 1 ? 'asks' : 'ask'}`] : []),
    ...(notes > 0 ? [`${notes} to know`] : []),
  ].join(', ')
}

/** The words of the finding; of an opening that was added, also which one it is. */
function foundSaid(draft: Draft, finding: Finding, units: UnitChoice): string {
  const sentence = findingSentence(finding, units)
  if (finding.id !== 'openingAdded') return sentence
  const added = opensFor(draft, kindOf(finding) === 'head' ? 'head' : 'waist')
  return added ? `${sentence} Now: ${OPENING_WORDS[added.kind]}.` : sentence
}

/** Seams are walked on either side; where they differ both lengths are said. Girths go round both. */
function heldOf(draft: Draft, kind: ProofKind, units: UnitChoice): string {
  const { sides } = draft
  if (!sides || kind === 'head' || kind === 'getting in') return holds(draft, kind, units)
  const [left, right] = [holds(sides.left, kind, units), holds(sides.right, kind, units)]
  return left === right ? left : `Left: ${left} Right: ${right}`
}

function holds(draft: Draft, kind: ProofKind, units: UnitChoice): string {
  const length = (piece: PieceId, name: EdgeName): Mm => mm(sewnLength(pieceOf(draft, piece), name))
  const both = (name: EdgeName): string => say(length('back', name) + length('front', name))
  const say = (value: number): string => formatLength(mm(value), units)
  const front = pieceOf(draft, 'front')
  switch (kind) {
    case 'getting in': {
      const opening = opensFor(draft, 'waist')
      return opening
        ? `${WITH[opening.kind]} lets the waist pass over bust and shoulders.`
        : 'The waist passes over bust and shoulders.'
    }
    case 'head': {
      const opening = opensFor(draft, 'head')
      return opening
        ? `${WITH[opening.kind]} lets the head pass.`
        : `The neck opening is ${say(draft.together?.neck ?? 2 * (length('back', 'neck') + length('front', 'neck')))} round.`
    }
    case 'arm opening':
      return front.edges.some((e) => e.name === 'sleeveEdge')
        ? `The opening is ${both('sleeveEdge')} round.`
        : `The armhole is ${both('armhole')} round.`
    case 'shoulder seams':
      return `${say(sewnLength(front, overShoulder(front).name))} both, as sewn.`
    case 'side seams':
      return `${say(length('front', 'side'))} both, as sewn.`
    case 'darts':
      return 'The legs are equal in pairs.'
    case 'neck':
      return `It runs on in one line over the ${EDGE_WORDS[overShoulder(front).name]}.`
    case 'front and back':
      return 'The front is raised by what the tape says.'
    case 'outline':
      return 'Square on the fold, and it crosses itself nowhere.'
  }
}
const WITH: Readonly<Record<OpeningKind, string>> = {
  sideZip: 'A zip in the left side',
  backZip: 'A zip at the centre back',
  buttonedFront: 'The buttoned front',
  neckSlit: 'A slit at the back neck',
  keyhole: 'A keyhole at the front neck',
}
