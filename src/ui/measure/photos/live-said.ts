/** What is said in one sitting of photos, and with which tone. */
import { faultSaid } from '../../../capture/fault.ts'
import { HINT_WORDS } from '../../../capture/hints.words.ts'
import { digit, type LiveState, type Step } from '../../../capture/live.ts'
import type { View, ViewReading } from '../../../capture/reading.ts'
import type { Sentence } from './found-in.ts'
import { LIVE_WORDS as W, type CardKind } from './live.words.ts'
import type { ToneName } from './tones.ts'

/** The words of one sitting: her body for the tape book, or a muslin for its round. */
export interface LiveWords {
  /** What lies in the frame drawn on the picture. */
  readonly card: CardKind
  readonly title: string
  readonly hangs: (view: View) => string
  readonly found: (reading: ViewReading) => Sentence
  /** The key that ends it. */
  readonly use: string
}

export const measuringWords = (card: CardKind): LiveWords => ({
  card,
  title: W.threePhotos,
  hangs: (view) => W.hangs(card, view),
  found: ({ card: seen, person }) =>
    !person.ok
      ? { stop: true, text: faultSaid(person.reason) }
      : seen.ok
        ? { stop: false, text: W.sheetAndPerson }
        : { stop: true, text: faultSaid(seen.reason) },
  use: W.use,
})

/** A muslin needs no sheet to be laid over the one before; with it they are told in millimetres. */
export const muslinWords = (round: number): LiveWords => ({
  card: 'sheet',
  title: W.muslin(round),
  hangs: W.muslinHangs,
  found: ({ card: seen, person }) =>
    !person.ok
      ? { stop: true, text: faultSaid(person.reason) }
      : { stop: false, text: seen.ok ? W.sheetAndPerson : W.personNoSheet },
  use: W.keepWithRound(round),
})

/** The large line. */
export function said({ step, todo }: LiveState): string {
  switch (step.phase) {
    case 'waiting':
      return HINT_WORDS[step.hint]
    case 'near':
      return W.standStill
    case 'steady':
      return W.good
    case 'counting':
      return step.by === 'hand' ? W.handDown : W.standStill
    case 'shooting':
      return W.stay
    case 'taken': {
      const [next] = todo
      return `${W.taken[step.view]} ${next ? W.next[next] : ''}`.trim()
    }
    case 'done':
      return W.all
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
