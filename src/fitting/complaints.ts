/**
 * What a muslin can say, what may cause it, the question that tells the causes apart, and what
 * each answer changes. Words for her, sources beside them. The ids are those of our table of
 * complaints. Sources and evidence: the articles named, seen in part; figures as quoted there.
 */
import type { ChoiceId } from '../draft/choices.ts'
import type { HalfEdgeName, HalfId } from '../draft/piece.ts'
import type { MeasurementId } from '../measurements/catalogue.ts'
import { mm, type Mm } from '../units/length.ts'
import { LET_OUT_SHARE, TAKE_IN_SHARE, type HowRead } from './pinned.ts'

export type ComplaintId = 'B8' | 'W1'

/** What an answer leads to. */
export type Remedy =
  | { readonly kind: 'close-wedge'; readonly piece: HalfId; readonly edge: HalfEdgeName }
  | { readonly kind: 'turn-choice'; readonly choice: ChoiceId; readonly sign: 1 | -1 }
  /** The draft is right; something else is to be done. */
  | { readonly kind: 'leave'; readonly advice: string }
  /** A number is in doubt before anything is changed. */
  | { readonly kind: 'tape-again'; readonly ids: readonly MeasurementId[]; readonly advice: string }

export interface Outcome {
  readonly cause: string
  readonly sees: string
  readonly means: string
  readonly remedy: Remedy
  readonly readAs: readonly HowRead[]
  readonly share: number
}

export interface Complaint {
  readonly id: ComplaintId
  readonly name: string
  /** Ways she may say it. */
  readonly said: readonly string[]
  /** Gaps of the spoken sentence: where, which cloth, which folds, towards what. */
  readonly sentence: {
    readonly where: string
    readonly sides: string
    readonly cloth: string
    readonly folds: string
    readonly towards: string
  }
  readonly sign: string
  readonly ask: string
  readonly outcomes: readonly [Outcome, Outcome, Outcome]
  readonly howMuch: string
  readonly range: { readonly from: Mm; readonly to: Mm }
  readonly cap: Mm
  readonly doNot: string
  readonly source: string
  readonly evidence: string
}

export const COMPLAINTS: Readonly<Record<ComplaintId, Complaint>> = {
  B8: {
    id: 'B8',
    name: 'Gaping armhole',
    said: [
      'gaping armhole',
      'armhole stands away in front',
      'sleeve edge gapes',
      'baggy at the front of the arm',
      'the side shows when I reach',
    ],
    sentence: {
      where: 'front sleeve edge',
      sides: 'both sides',
      cloth: 'loose',
      folds: 'slantwise',
      towards: 'the bust tip',
    },
    sign: 'A loose loop along the front edge of the arm opening, with a soft fold that points to the bust tip.',
    ask: 'Two causes look alike here. Lift the loose cloth into a flat wedge, wide at the edge and nothing at the bust tip, and pin it. What happens?',
    outcomes: [
      {
        cause: 'bust shaping',
        sees: 'The edge lies close and the side stays plumb',
        means: 'The bust needs more dart. The wedge goes into the waist dart.',
        remedy: { kind: 'close-wedge', piece: 'front', edge: 'sleeveEdge' },
        readAs: ['wholeFold', 'foldToPin'],
        share: TAKE_IN_SHARE,
      },
      {
        cause: 'overarm slope',
        sees: 'It pulls; a pinch at the end of the overarm seam does it better',
        means: 'The arm slopes more than the overarm is drawn. Its end comes down.',
        remedy: { kind: 'turn-choice', choice: 'overarmDrop', sign: 1 },
        readAs: ['seamToPin'],
        share: TAKE_IN_SHARE,
      },
      {
        cause: 'stretched edge',
        sees: 'The edge itself is wavy, longer than it was drawn',
        means: 'It stretched while it was sewn. Nothing to change in the draft.',
        remedy: {
          kind: 'leave',
          advice:
            'Stay-stitch the edge straight after cutting, then measure it against the draft: over 3 mm longer is stretch.',
        },
        readAs: [],
        share: 1,
      },
    ],
    howMuch: 'How much did you pin at the edge, on one side?',
    range: { from: mm(6), to: mm(13) },
    cap: mm(15),
    doNot: 'Do not take it in at the side seam: that tightens the bust and leaves the gape.',
    source:
      'amounts 6 mm at a plain and 13 mm at a cut-away armhole: a pattern-making lesson site; wedge turned into the bust dart: common practice',
    evidence: 'sign and correction seen in a source',
  },
  W1: {
    id: 'W1',
    name: 'Waist too high',
    said: [
      'waist too high',
      'waistline rides up all round',
      'too short in the body',
      'waist line sits above my waist',
    ],
    sentence: {
      where: 'waist line',
      sides: 'all round',
      cloth: 'too short',
      folds: 'none',
      towards: 'the waist',
    },
    sign: 'The waist line drawn on the muslin lies above the elastic tied at the waist.',
    ask: 'Tie the elastic, stand level, and measure from the drawn waist line down to it at the front, the side and the back. How do the three compare?',
    outcomes: [
      {
        cause: 'short all round',
        sees: 'The same all round',
        means: 'Back and front need length between bust and waist.',
        remedy: { kind: 'turn-choice', choice: 'lengthAdded', sign: 1 },
        readAs: ['levelError'],
        share: LET_OUT_SHARE,
      },
      {
        cause: 'front short',
        sees: 'More at the front',
        means: 'The front needs length over the bust. The tape over the bust tip decides it.',
        remedy: {
          kind: 'tape-again',
          ids: ['sideNeckOverApexToWaist', 'sideNeckOverBladeToWaist'],
          advice:
            'The front raise follows from the two lengths over bust tip and blade. Tape both once more.',
        },
        readAs: [],
        share: 1,
      },
      {
        cause: 'back short',
        sees: 'More at the back',
        means: 'The back needs length over the blades. The tape from the nape decides it.',
        remedy: {
          kind: 'tape-again',
          ids: ['napeToWaist', 'sideNeckOverBladeToWaist'],
          advice: 'Tape nape to waist once more, with the tape lying on the back.',
        },
        readAs: [],
        share: 1,
      },
    ],
    howMuch: 'How far below the drawn line does the elastic lie?',
    range: { from: mm(6), to: mm(40) },
    cap: mm(40),
    doNot: 'Do not add a wedge before the even part is let out.',
    source: 'slash across and spread: a university costume text and a dressmaking manual of 1921',
    evidence: 'sign and correction seen in a source',
  },
}
export const COMPLAINT_IDS = Object.keys(COMPLAINTS) as readonly ComplaintId[]
