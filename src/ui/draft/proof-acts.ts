/** What she can turn about a finding: the group of choices that holds it, and the words of the way there. */
import type { FindingId } from '../../draft/finding.ts'
import type { GroupId } from './choice-groups.ts'

export interface ProofAct {
  readonly words: string
  readonly group: GroupId
}

const act = (words: string, group: GroupId): ProofAct => ({ words, group })
const OPENING = act('Choose an opening', 'opening')
const DARTS = act('Look at the darts', 'waist')

/** Only findings a choice can answer; the others ask for the tape or lie in the drawing. */
export const PROOF_ACTS: Readonly<Partial<Record<FindingId, ProofAct>>> = {
  openingAdded: act('Choose another opening', 'opening'),
  gettingIn: OPENING,
  headOpening: OPENING,
  frontNeckHigh: act('Turn the neck', 'neck'),
  armOpening: act('Turn the underarm', 'arm'),
  underarmDeeper: act('Turn the underarm', 'arm'),
  underarmPlace: act('Turn the underarm', 'arm'),
  armholeSmall: act('Turn the underarm', 'arm'),
  capUnsolved: act('Turn the sleeve', 'arm'),
  fullerBust: act('Make the front wider', 'ease'),
  secondDart: DARTS,
  centreBackSeam: DARTS,
  dartWide: DARTS,
  dartOpen: act('Turn the length', 'length'),
  waistLooser: DARTS,
  straightWaist: DARTS,
}
