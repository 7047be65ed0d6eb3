/**
 * What a point or an estimate rests on, as it is kept: ids and no sentence, so that it is read in the
 * language of the day. What was kept before there were ids is a sentence, and shown as it stands.
 */
import type { View } from './reading.ts'
import {
  BASIS_WORDS,
  FROM_WORDS,
  NOTE_WORDS,
  PHOTO_NAMES,
  RUN_WORDS,
  SCALE_WORDS,
} from './seen.words.ts'

export type FromId = keyof typeof FROM_WORDS
export type ScaleId = keyof typeof SCALE_WORDS
export type RunId = keyof typeof RUN_WORDS
export type NoteId = keyof typeof NOTE_WORDS

const has = <Words extends object>(
  words: Words,
  id: string | undefined,
): id is keyof Words & string => id !== undefined && Object.hasOwn(words, id)

/** Why a point lies where it does, in words she can read. */
export const fromSaid = (from: string): string => (has(FROM_WORDS, from) ? FROM_WORDS[from] : from)

/** Between the parts of a basis, and between the fields of a part. */
const [PART, FIELD] = ['||', '|'] as const

/** One photo's way to a length; `ends` are what its points lie by. */
export const wayBasis = (
  view: View,
  scale: ScaleId,
  run: RunId,
  ...ends: readonly string[]
): string => [view, scale, run, ...ends].join(FIELD)

/** Several parts of a basis as one. */
export const basisOfAll = (...parts: readonly string[]): string => parts.join(PART)
export const noteBasis = (note: NoteId): string => note

/** The one line she can read: which photo, what gave the scale, what was seen. */
export function basisSaid(basis: string): string {
  const parts = basis.split(PART).map(partSaid)
  return parts.every((part) => part !== undefined) ? BASIS_WORDS.all(parts) : basis
}

function partSaid(part: string): string | undefined {
  const [first, scale, run, a, b] = part.split(FIELD)
  if (has(NOTE_WORDS, first)) return NOTE_WORDS[first]
  if (!has(PHOTO_NAMES, first) || !has(SCALE_WORDS, scale) || !has(RUN_WORDS, run)) return undefined
  const said = RUN_WORDS[run](fromSaid(a ?? ''), fromSaid(b ?? ''))
  return BASIS_WORDS.way(PHOTO_NAMES[first], SCALE_WORDS[scale], said)
}
