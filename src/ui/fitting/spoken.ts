/**
 * The spoken sentence: its gaps and the words that fill them, and what of it the finder hears
 * beside the words she types.
 */
import type { ConceptId } from '../../fitting/finding/lexicon.ts'
import type { Fold } from '../parts/folds.ts'
import { POINTED_AT } from './pointed-at.ts'

export type GapId = 'where' | 'sides' | 'cloth' | 'folds' | 'towards'
export type Spoken = Readonly<Partial<Record<GapId, string>>>

export interface Gap {
  /** Read out as the name of the gap, and shown in it while it is empty. */
  readonly label: string
  readonly empty: string
  /** `word` is what is heard, `said` how it stands in the sentence. */
  readonly words: readonly { readonly word: string; readonly said: string }[]
}

const plain = (...words: readonly string[]): Gap['words'] =>
  words.map((word) => ({ word, said: word }))

export const GAPS: Readonly<Record<GapId, Gap>> = {
  where: {
    label: 'Where',
    empty: 'where',
    words: plain(
      'front neck edge',
      'back neck edge',
      'side of the neck',
      'shoulder seam',
      'shoulder tip',
      'upper chest',
      'bust',
      'bust dart',
      'under the bust',
      'front closing',
      'front armhole',
      'back armhole',
      'underarm',
      'upper back',
      'shoulder blade',
      'middle back',
      'overarm seam',
      'front sleeve edge',
      'back sleeve edge',
      'sleeve opening under the arm',
      'sleeve cap',
      'upper arm',
      'elbow',
      'sleeve seam',
      'sleeve hem',
      'side seam',
      'waist line',
      'back waist',
      'waist dart',
      'back waist dart',
      'below the waist in front',
      'hip',
      'seat',
      'front hem',
      'back hem',
      'hem',
      'whole garment',
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
    words: [
      ...plain('loose', 'tight', 'too long', 'too short', 'too high', 'too low'),
      { word: 'off', said: 'standing off' },
      { word: 'up', said: 'pulled up' },
      ...plain('crooked', 'puckered', 'bulging'),
    ],
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

/** What she pointed at and chose, as the finder hears it; nothing before place and cloth are said. */
export function pointedIn(spoken: Spoken): readonly ConceptId[] {
  const { where, sides, cloth, folds, towards } = spoken
  const run = folds === 'none' ? undefined : folds
  if (!where || (!cloth && !run)) return []
  const said = [where, sides, cloth, run, run && towards]
  return [...new Set(said.flatMap((word) => (word ? (POINTED_AT[word] ?? []) : [])))]
}

/** The dial shows four ways a fold can lie; the sentence knows three. */
export function dialOf(spoken: Spoken, slant: Fold): Fold | undefined {
  if (spoken.folds === 'level' || spoken.folds === 'upright') return spoken.folds
  return spoken.folds === 'slantwise' ? slant : undefined
}
export const foldsOf = (fold: Fold): string =>
  fold === 'level' || fold === 'upright' ? fold : 'slantwise'
