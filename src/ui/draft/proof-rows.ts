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
import { overShoulder, sewnLength, type EdgeName, type PieceId } from '../../draft/piece.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import { mm, type Mm } from '../../units/length.ts'
import { opensFor } from './opens-for.ts'
import { PROOF_WORDS, QUESTIONS } from './proof.words.ts'
import { OPENING_WORDS } from './turning.words.ts'

const KINDS = [
  'gettingIn',
  'head',
  'armOpening',
  'neck',
  'shoulderSeams',
  'sideSeams',
  'frontAndBack',
  'darts',
  'outline',
] as const
export type ProofKind = (typeof KINDS)[number]

/** Complete by construction: a finding of no kind does not compile. */
const KIND_OF: Readonly<Record<FindingId, ProofKind>> = {
  gettingIn: 'gettingIn',
  gettingInUnknown: 'gettingIn',
  openingAdded: 'gettingIn',
  headOpening: 'head',
  headUnknown: 'head',
  armOpening: 'armOpening',
  upperArmUnknown: 'armOpening',
  armpitUnknown: 'armOpening',
  underarmPlace: 'armOpening',
  underarmDeeper: 'armOpening',
  neckJoin: 'neck',
  neckBaseUnknown: 'neck',
  frontNeckHigh: 'neck',
  armholeJoin: 'armOpening',
  armholeSmall: 'armOpening',
  acrossWide: 'armOpening',
  acrossBackUnknown: 'armOpening',
  acrossChestUnknown: 'armOpening',
  capPair: 'armOpening',
  capUnsolved: 'armOpening',
  capGathered: 'armOpening',
  sleeveWider: 'armOpening',
  sleeveLonger: 'armOpening',
  sleeveHemWider: 'armOpening',
  sleevePair: 'armOpening',
  sleeveEndWider: 'armOpening',
  cuffWider: 'armOpening',
  cuffRound: 'armOpening',
  cuffPair: 'armOpening',
  slitShorter: 'armOpening',
  handPasses: 'armOpening',
  waistPair: 'darts',
  waistDarts: 'darts',
  hemNarrow: 'gettingIn',
  shoulderPair: 'shoulderSeams',
  overarmPair: 'shoulderSeams',
  overarmShort: 'shoulderSeams',
  overarmRaised: 'shoulderSeams',
  struckOutside: 'shoulderSeams',
  sidePair: 'sideSeams',
  sideJoin: 'sideSeams',
  balanceUnknown: 'frontAndBack',
  fullerBust: 'frontAndBack',
  bustDart: 'frontAndBack',
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
  return PROOF_WORDS.count(holding, asking, notes)
}

/** The words of the finding; of an opening that was added, also which one it is. */
function foundSaid(draft: Draft, finding: Finding, units: UnitChoice): string {
  const sentence = findingSentence(finding, units)
  if (finding.id !== 'openingAdded') return sentence
  const added = opensFor(draft, kindOf(finding) === 'head' ? 'head' : 'waist')
  return added ? PROOF_WORDS.opensNow(sentence, OPENING_WORDS[added.kind]) : sentence
}

/** Seams are walked on either side; where they differ both lengths are said. Girths go round both. */
function heldOf(draft: Draft, kind: ProofKind, units: UnitChoice): string {
  const { sides } = draft
  if (!sides || kind === 'head' || kind === 'gettingIn') return holds(draft, kind, units)
  const [left, right] = [holds(sides.left, kind, units), holds(sides.right, kind, units)]
  return left === right ? left : PROOF_WORDS.eitherSide(left, right)
}

function holds(draft: Draft, kind: ProofKind, units: UnitChoice): string {
  const length = (piece: PieceId, name: EdgeName): Mm => mm(sewnLength(pieceOf(draft, piece), name))
  const both = (name: EdgeName): string => say(length('back', name) + length('front', name))
  const say = (value: number): string => formatLength(mm(value), units)
  const front = pieceOf(draft, 'front')
  switch (kind) {
    case 'gettingIn': {
      const opening = opensFor(draft, 'waist')
      return opening ? PROOF_WORDS.waistPassesWith(opening.kind) : PROOF_WORDS.waistPasses
    }
    case 'head': {
      const opening = opensFor(draft, 'head')
      return opening
        ? PROOF_WORDS.headPassesWith(opening.kind)
        : PROOF_WORDS.neckRound(
            say(draft.together?.neck ?? 2 * (length('back', 'neck') + length('front', 'neck'))),
          )
    }
    case 'armOpening':
      return front.edges.some((e) => e.name === 'sleeveEdge')
        ? PROOF_WORDS.armOpeningRound(both('sleeveEdge'))
        : PROOF_WORDS.armholeRound(both('armhole'))
    case 'shoulderSeams':
      return PROOF_WORDS.bothAsSewn(say(sewnLength(front, overShoulder(front).name)))
    case 'sideSeams':
      return PROOF_WORDS.bothAsSewn(say(length('front', 'side')))
    case 'darts':
      return PROOF_WORDS.legsEqual
    case 'neck':
      return PROOF_WORDS.neckRunsOn(overShoulder(front).name)
    case 'frontAndBack':
      return PROOF_WORDS.raisedByTape
    case 'outline':
      return PROOF_WORDS.squareOnFold
  }
}
