/** The proof as she reads it: questions, what holds, what was found and what can be turned. */
import type { Severity } from '../../draft/finding.ts'
import type { OpeningKind } from '../../draft/opening.ts'
import type { EdgeName } from '../../draft/piece.ts'
import { EDGE_WORDS } from '../../draft/piece.words.ts'
import type { ProofKind } from './proof-rows.ts'

export const QUESTIONS: Readonly<Record<ProofKind, string>> = {
  gettingIn: 'Can you get in?',
  head: 'Does the head pass?',
  armOpening: 'Does the arm pass?',
  neck: 'Neck edge',
  shoulderSeams: 'Seams over shoulder and arm',
  sideSeams: 'Side seams of back and front',
  frontAndBack: 'Front beside the back',
  darts: 'Darts',
  outline: 'Outline',
}

export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  stop: 'Not for cutting',
  muslin: 'For a muslin only',
  note: 'Good to know',
}

const WITH: Readonly<Record<OpeningKind, string>> = {
  sideZip: 'A zip in the left side',
  backZip: 'A zip at the centre back',
  buttonedFront: 'The buttoned front',
  neckSlit: 'A slit at the back neck',
  keyhole: 'A keyhole at the front neck',
}

export const PROOF_WORDS = {
  proof: 'Proof',
  /** "6 hold, 1 asks, 2 to know": a note keeps nothing from being cut. */
  count: (holding: number, asking: number, notes: number): string =>
    asking + notes === 0
      ? `all ${holding} hold`
      : [
          `${holding} ${holding === 1 ? 'holds' : 'hold'}`,
          ...(asking > 0 ? [`${asking} ${asking === 1 ? 'asks' : 'ask'}`] : []),
          ...(notes > 0 ? [`${notes} to know`] : []),
        ].join(', '),
  opensNow: (sentence: string, opening: string): string => `${sentence} Now: ${opening}.`,
  eitherSide: (left: string, right: string): string => `Left: ${left} Right: ${right}`,
  holds: 'Holds.',
  showIt: (place: string): string => `Show it: ${place}`,
  severity: (severity: Severity): string => `${SEVERITY_WORDS[severity]}.`,

  waistPassesWith: (opening: OpeningKind): string =>
    `${WITH[opening]} lets the waist pass over bust and shoulders.`,
  waistPasses: 'The waist passes over bust and shoulders.',
  headPassesWith: (opening: OpeningKind): string => `${WITH[opening]} lets the head pass.`,
  neckRound: (length: string): string => `The neck opening is ${length} round.`,
  armOpeningRound: (length: string): string => `The opening is ${length} round.`,
  armholeRound: (length: string): string => `The armhole is ${length} round.`,
  bothAsSewn: (length: string): string => `${length} both, as sewn.`,
  legsEqual: 'The legs are equal in pairs.',
  neckRunsOn: (over: EdgeName): string => `It runs on in one line over the ${EDGE_WORDS[over]}.`,
  raisedByTape: 'The front is raised by what the tape says.',
  squareOnFold: 'Square on the fold, and it crosses itself nowhere.',

  act: {
    chooseOpening: 'Choose an opening',
    chooseOther: 'Choose another opening',
    lookAtDarts: 'Look at the darts',
    turnNeck: 'Turn the neck',
    turnUnderarm: 'Turn the underarm',
    turnSleeve: 'Turn the sleeve',
    chooseSleeveEnd: 'Choose a slit or a cuff',
    widenFront: 'Make the front wider',
    turnLength: 'Turn the length',
  },
}
