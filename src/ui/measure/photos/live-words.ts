/**
 * What is said while the photos are taken: large, one line for what to do; small, where the sheet
 * hangs, what was found in a photo, and what becomes of it.
 */
import { HINT_WORDS } from '../../../capture/hints.ts'
import { digit, type LiveState, type Step } from '../../../capture/live.ts'
import type { View, ViewReading } from '../../../capture/reading.ts'
import type { ToneName } from './tones.ts'
import { VIEW_WORDS, type Sentence } from './words.ts'

/** The words of one sitting: her body for the tape book, or a muslin for its round. */
export interface LiveWords {
  /** What lies in the frame drawn on the picture: "sheet". */
  readonly card: string
  readonly title: string
  readonly hangs: (view: View) => string
  readonly found: (reading: ViewReading) => Sentence
  /** The key that ends it. */
  readonly use: string
}

export const measuringWords = (card: 'sheet' | 'card'): LiveWords => ({
  card,
  title: 'Three photos',
  hangs: (view) => `The ${card} hangs ${CARD_PLACE[view]}. A raised hand begins the count.`,
  found: ({ card: seen, person }) =>
    !person.ok
      ? { stop: true, text: person.reason }
      : seen.ok
        ? { stop: false, text: 'Sheet and person found.' }
        : { stop: true, text: seen.reason },
  use: 'Use these photos',
})

/** A muslin needs no sheet to be laid over the one before; with it they are told in millimetres. */
export const muslinWords = (round: number): LiveWords => ({
  card: 'sheet',
  title: `Muslin ${round}`,
  hangs: (view) =>
    `${MUSLIN_STAND[view]} If you use the printed sheet, it hangs ${CARD_PLACE[view]}. A raised hand begins the count.`,
  found: ({ card: seen, person }) =>
    !person.ok
      ? { stop: true, text: person.reason }
      : { stop: false, text: seen.ok ? 'Sheet and person found.' : 'Person found, no sheet.' },
  use: `Keep them with round ${round}`,
})
const MUSLIN_STAND: Readonly<Record<View, string>> = {
  front: 'Closed and pinned as you judge it, arms a little away.',
  side: 'The side you judge. Side seam in view.',
  back: 'Look ahead, not over your shoulder: turning draws the back.',
}

const NEXT: Readonly<Record<View, string>> = {
  front: 'Now face the camera.',
  side: 'Now your side.',
  back: 'Now your back.',
}

/** Where the sheet or card hangs in each view, after "The sheet hangs". */
const CARD_PLACE: Readonly<Record<View, string>> = {
  front: 'in front, at the waist',
  side: 'at your side, at the waist, towards the camera; that arm lifts forward',
  back: 'at the back, at the waist',
}

/** The large line. */
export function said({ step, todo }: LiveState): string {
  switch (step.phase) {
    case 'waiting':
      return HINT_WORDS[step.hint]
    case 'near':
      return 'Stand still.'
    case 'steady':
      return 'Good. Stay so.'
    case 'counting':
      return step.by === 'hand' ? 'Hand down. Stand still.' : 'Stand still.'
    case 'shooting':
      return 'Stay so.'
    case 'taken': {
      const [next] = todo
      return `${VIEW_WORDS[step.view]} is taken. ${next ? NEXT[next] : ''}`.trim()
    }
    case 'done':
      return 'All are taken.'
  }
}

/** The tone of a change, if it has one: a count that goes on, breaks off or ends. */
export function toneOf(was: Step, is: Step, before: number, now: number): ToneName | undefined {
  const [old, left] = [digit(was, before), digit(is, now)]
  if (left !== undefined) return left === old ? undefined : left === 1 ? 'last' : 'tick'
  if (is.phase === 'taken' && was.phase !== 'taken') return 'taken'
  if (is.phase === 'done' && was.phase !== 'done') return 'done'
  const stopped = is.phase === 'waiting' || is.phase === 'near'
  return was.phase === 'counting' && stopped ? 'broken' : undefined
}
