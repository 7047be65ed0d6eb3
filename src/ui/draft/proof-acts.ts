/** What she can turn about a finding: the group of choices that holds it, and the words of the way there. */
import type { FindingId } from '../../draft/finding.ts'
import type { GroupId } from './choice-groups.ts'
import { PROOF_WORDS } from './proof.words.ts'

const W = PROOF_WORDS.act

export interface ProofAct {
  readonly words: string
  readonly group: GroupId
}

const act = (words: string, group: GroupId): ProofAct => ({ words, group })
const OPENING = act(W.chooseOpening, 'opening')
const DARTS = act(W.lookAtDarts, 'waist')

/** Only findings a choice can answer; the others ask for the tape or lie in the drawing. */
export const PROOF_ACTS: Readonly<Partial<Record<FindingId, ProofAct>>> = {
  openingAdded: act(W.chooseOther, 'opening'),
  gettingIn: OPENING,
  headOpening: OPENING,
  frontNeckHigh: act(W.turnNeck, 'neck'),
  armOpening: act(W.turnUnderarm, 'arm'),
  underarmDeeper: act(W.turnUnderarm, 'arm'),
  underarmPlace: act(W.turnUnderarm, 'arm'),
  armholeSmall: act(W.turnUnderarm, 'arm'),
  capUnsolved: act(W.turnSleeve, 'arm'),
  sleeveHemWider: act(W.chooseSleeveEnd, 'arm'),
  sleeveEndWider: act(W.turnSleeve, 'arm'),
  cuffWider: act(W.turnSleeve, 'arm'),
  slitShorter: act(W.turnSleeve, 'arm'),
  handPasses: act(W.turnSleeve, 'arm'),
  fullerBust: act(W.widenFront, 'ease'),
  secondDart: DARTS,
  centreBackSeam: DARTS,
  dartWide: DARTS,
  dartOpen: act(W.turnLength, 'length'),
  waistLooser: DARTS,
  straightWaist: DARTS,
}
