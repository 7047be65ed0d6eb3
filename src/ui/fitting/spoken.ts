/**
 * The spoken sentence: its gaps and what may fill them, and what of it the finder hears beside the
 * words she types.
 */
import type { ConceptId } from '../../fitting/finding/lexicon.ts'
import type { Fold } from '../parts/folds.ts'
import { POINTED_AT } from './pointed-at.ts'
import {
  CLOTH_WORDS,
  FOLDS_WORDS,
  GAP_WORDS,
  saidInFull,
  SIDES_WORDS,
  TOWARDS_WORDS,
  WHERE_WORDS,
} from './spoken.words.ts'

export type WhereId = keyof (typeof POINTED_AT)['where']
export type SidesId = keyof (typeof POINTED_AT)['sides']
export type ClothId = keyof (typeof POINTED_AT)['cloth']
export const CLOTH_IDS = Object.keys(POINTED_AT.cloth) as readonly ClothId[]
export type FoldsId = keyof (typeof POINTED_AT)['folds']
export type TowardsId = keyof (typeof POINTED_AT)['towards']
export interface Said {
  readonly where: WhereId
  readonly sides: SidesId
  readonly cloth: ClothId
  readonly folds: FoldsId
  readonly towards: TowardsId
}
export type GapId = keyof Said
export type Spoken = Partial<Said>

export interface Gap {
  /** Read out as the name of the gap, and shown in it while it is empty. */
  readonly label: string
  readonly empty: string
  /** `name` is the word by itself, `said` how it stands in the sentence. */
  readonly words: readonly { readonly id: string; readonly name: string; readonly said: string }[]
}
type Worded = Readonly<Record<string, { readonly name: string; readonly said: string }>>
const gap = (id: GapId, words: Worded): Gap => ({
  ...GAP_WORDS[id],
  words: Object.entries(words).map(([id, word]) => ({ id, ...word })),
})
export const GAPS: Readonly<Record<GapId, Gap>> = {
  where: gap('where', WHERE_WORDS),
  sides: gap('sides', SIDES_WORDS),
  cloth: gap('cloth', CLOTH_WORDS),
  folds: gap('folds', FOLDS_WORDS),
  towards: gap('towards', TOWARDS_WORDS),
}

/** Folds that do not show run nowhere, so the last gap closes. */
export const hasTowards = (spoken: Spoken): boolean => spoken.folds !== 'none'

/** The first gap still open, in the order in which it is heard. */
export const openGap = (spoken: Spoken): GapId | undefined =>
  (['where', 'sides', 'cloth', 'folds', 'towards'] as const).find(
    (id) => spoken[id] === undefined && (id !== 'towards' || hasTowards(spoken)),
  )

/** The sentence as plain words, for a note; undefined while where or how is open. */
export function inFull(spoken: Spoken): string | undefined {
  const said = (id: GapId): string | undefined =>
    GAPS[id].words.find((w) => w.id === spoken[id])?.said
  const [where, cloth] = [said('where'), said('cloth')]
  if (!where || !cloth) return undefined
  const towards = hasTowards(spoken) ? said('towards') : undefined
  return saidInFull({ where, sides: said('sides'), cloth, folds: said('folds'), towards })
}

/** What she pointed at and chose, as the finder hears it; nothing before place and cloth are said. */
export function pointedIn({ where, sides, cloth, folds, towards }: Spoken): readonly ConceptId[] {
  const run = folds === 'none' ? undefined : folds
  if (!where || (!cloth && !run)) return []
  const heard: readonly (readonly ConceptId[])[] = [
    POINTED_AT.where[where],
    sides ? POINTED_AT.sides[sides] : [],
    cloth ? POINTED_AT.cloth[cloth] : [],
    run ? POINTED_AT.folds[run] : [],
    run && towards ? POINTED_AT.towards[towards] : [],
  ]
  return [...new Set(heard.flat())]
}

/** The dial shows four ways a fold can lie; the sentence knows three. */
export function dialOf(spoken: Spoken, slant: Fold): Fold | undefined {
  if (spoken.folds === 'level' || spoken.folds === 'upright') return spoken.folds
  return spoken.folds === 'slantwise' ? slant : undefined
}
export const foldsOf = (fold: Fold): FoldsId =>
  fold === 'level' || fold === 'upright' ? fold : 'slantwise'
