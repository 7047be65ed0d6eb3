/**
 * The spoken sentence: its gaps and the words that fill them, which complaint it reads as, and
 * which complaint is heard in words she types. Simple matching, no guess: what fits nothing is
 * said to fit nothing.
 */
import { COMPLAINT_IDS, COMPLAINTS, type ComplaintId } from '../../fitting/complaints.ts'
import type { GarmentId } from '../../draft/draft.ts'
import type { ComplaintId as AnyComplaint } from '../../fitting/complaints/complaint.ts'
import type { Fold } from '../parts/folds.ts'

export type GapId = 'where' | 'sides' | 'cloth' | 'folds' | 'towards'
export type Spoken = Readonly<Partial<Record<GapId, string>>>

export interface Gap {
  /** Read out as the name of the gap, and shown in it while it is empty. */
  readonly label: string
  readonly empty: string
  /** `word` is what a complaint is told by, `said` how it stands in the sentence. */
  readonly words: readonly { readonly word: string; readonly said: string }[]
}

const plain = (...words: readonly string[]): Gap['words'] =>
  words.map((word) => ({ word, said: word }))

export const GAPS: Readonly<Record<GapId, Gap>> = {
  where: {
    label: 'Where',
    empty: 'where',
    words: plain(
      'front sleeve edge',
      'back sleeve edge',
      'front neck edge',
      'back neck edge',
      'overarm seam',
      'front armhole',
      'back armhole',
      'shoulder seam',
      'sleeve',
      'bust',
      'blade',
      'waist line',
      'hip',
      'side seam',
      'hem',
    ),
  },
  sides: {
    label: 'On which side',
    empty: 'on which side',
    words: [
      { word: 'both sides', said: 'on both sides' },
      { word: 'left side', said: 'on the left side' },
      { word: 'right side', said: 'on the right side' },
      { word: 'all round', said: 'all round' },
    ],
  },
  cloth: {
    label: 'How the cloth is',
    empty: 'how',
    words: plain('loose', 'tight', 'too long', 'too short'),
  },
  folds: {
    label: 'How folds run',
    empty: 'folds run how',
    words: [
      { word: 'none', said: 'no folds show' },
      { word: 'level', said: 'folds run level' },
      { word: 'slantwise', said: 'folds run slantwise' },
      { word: 'upright', said: 'folds run upright' },
    ],
  },
  towards: {
    label: 'Towards what',
    empty: 'what',
    words: plain('the bust tip', 'the waist', 'the underarm', 'the neck', 'the hem'),
  },
}

/** Folds that do not show run nowhere, so the last gap closes. */
export const hasTowards = (spoken: Spoken): boolean => spoken.folds !== 'none'

/** The first gap still open, in the order of the sentence. */
export const openGap = (spoken: Spoken): GapId | undefined =>
  (['where', 'sides', 'cloth', 'folds', 'towards'] as const).find(
    (id) => spoken[id] === undefined && (id !== 'towards' || hasTowards(spoken)),
  )

/** Place and cloth tell a complaint; sides and folds only colour it. */
export const readsAs = (spoken: Spoken): ComplaintId | undefined =>
  COMPLAINT_IDS.find((id) => {
    const { where, cloth } = COMPLAINTS[id].sentence
    return spoken.where === where && spoken.cloth === cloth
  })

export const sentenceOf = (id: ComplaintId): Spoken => COMPLAINTS[id].sentence

/** The sentence as plain words, for a note; undefined while where or how is open. */
export function inFull(spoken: Spoken): string | undefined {
  const said = (id: GapId) => GAPS[id].words.find((w) => w.word === spoken[id])?.said
  const [where, sides, cloth, folds, towards] = [
    said('where'),
    said('sides'),
    said('cloth'),
    said('folds'),
    said('towards'),
  ]
  if (!where || !cloth) return undefined
  const run = folds && hasTowards(spoken) && towards ? `${folds}, towards ${towards}` : folds
  return `At the ${where},${sides ? ` ${sides},` : ''} the cloth is ${cloth}${run ? ` and ${run}` : ''}.`
}

/** The dial shows four ways a fold can lie; the sentence knows three. */
export function dialOf(spoken: Spoken, slant: Fold): Fold | undefined {
  if (spoken.folds === 'level' || spoken.folds === 'upright') return spoken.folds
  return spoken.folds === 'slantwise' ? slant : undefined
}
export const foldsOf = (fold: Fold): string =>
  fold === 'level' || fold === 'upright' ? fold : 'slantwise'

/** Complaints of the draped sleeve whose pin is told with its place on the edge. */
export const knowsPlace = (id: AnyComplaint, garment: GarmentId): id is ComplaintId =>
  garment === 'blouse' && COMPLAINT_IDS.some((known) => known === id)
