/** What is kept with a round besides corrections: what was seen, once, and notes in her words. */
import type { Round, Seen } from '../../rounds/round.ts'

/** Pressing a key again after a failure must not put the same thing down twice. */
export const alreadySeen = (round: Round, seen: Omit<Seen, 'on'>): boolean =>
  round.seen.some(
    (s) =>
      s.complaint === seen.complaint &&
      s.answer === seen.answer &&
      s.pinned?.how === seen.pinned?.how &&
      s.pinned?.read === seen.pinned?.read &&
      s.pinned?.share === seen.pinned?.share,
  )

/** A note under the earlier ones, on its own line; the same words are not written twice. */
export function withNote(notes: string, words: string): string {
  const lines = notes.split('\n').filter((line) => line.trim() !== '')
  return lines.includes(words.trim()) ? notes : [...lines, words.trim()].join('\n')
}
