/** What is said, large, while the photos are taken: one line for what to do, one for the sheet. */
import { HINT_WORDS } from '../../../capture/hints.ts'
import { digit, type LiveState, type Step } from '../../../capture/live.ts'
import type { View } from '../../../capture/reading.ts'
import type { ToneName } from './tones.ts'
import { VIEW_WORDS } from './words.ts'

const NEXT: Readonly<Record<View, string>> = {
  front: 'Now face the camera.',
  side: 'Now your side.',
  back: 'Now your back.',
}

/** Where the sheet or card hangs in each view, after "The sheet hangs". */
export const CARD_PLACE: Readonly<Record<View, string>> = {
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
