/** Words of what would change, what was changed and what stands so far. */
import type { EaseLevel } from '../../draft/ease.ts'
import { DART_WORDS } from '../../draft/piece.words.ts'
import type { AnyDart, HalfId } from '../../draft/piece.ts'
import { roundBody } from '../../fitting/rules/drawn.words.ts'
import { capital } from '../../units/capital.ts'
import type { Mm } from '../../units/length.ts'
import type { Said } from './change-said.ts'

export const DECIDE_WORDS = {
  title: 'What would change',
  fact: '3 of 3',
  seenToo: 'Seen on this muslin too, and decided together:',
  leaveOut: 'Leave out',
  leaveOutLabel: (name: string) => `Leave out: ${name}`,
  notYetAsked:
    'Once the question is answered, what it comes to lies here. Nothing changes until you say so.',
  nothing: 'Nothing to change in the draft.',
  open: 'One thing is still open.',
  twoWays: 'Two ways, choose one.',
  whichDart: 'Which dart takes up the wedge?',
  whichDartDoes: 'Each with its two numbers; nothing else differs.',
  dart: (dart: AnyDart) => DART_WORDS[dart],
  /** @param wider round the body below the waist; 0 where it stays */
  takesUp: (dart: AnyDart, opens: Mm, wider: Mm, level: EaseLevel): Said => [
    `${capital(DART_WORDS[dart])}: opens by `,
    opens,
    ...(wider > 0
      ? [', and the garment is ', wider, ` wider ${roundBody(level)}.`]
      : ['; the width below the waist stays.']),
  ],
  notForCutting: 'After this change it is not for cutting.',
  goodToKnow: 'Good to know.',
  cannot: 'This change cannot be made on this draft.',
  stands: (why: string) => `${why} The draft stands as it was.`,
  notDrawn: (name: string) => `${name}:`,
  watch: 'Watch next time:',
  held: (name: string, by: Mm, why: string): Said => [`${name}, `, by, `. ${why}`],
  reckoned: 'How it was reckoned, and where it comes from',
  make: 'Make this change',
  notYet: 'Not yet',
  openBook: 'Open the tape book',
  keep: 'Keep it with the round',
  somethingElse: 'I see something else too',

  halfPieces: 'Half pieces',
  round: (round: number) => `Round ${round}`,
  willBe: 'Will be',
  piece: 'Piece',
  pieces: { front: 'Front', back: 'Back' },
  /** The drawing, for those who do not see it. */
  drawing: (piece: string, changed: string) => `${piece}: ${changed}`,
  pivot: (half: HalfId): string => (half === 'front' ? 'bust tip' : 'blade point'),
  edge: (change: string) => `edge ${change}`,
  dartBy: (change: string) => `dart ${change}`,
  hem: (change: string) => `hem ${change}`,

  changedIn: (round: number) => `Changed in round ${round}`,
  hasChanged: (round: number) => `The draft of round ${round} has changed.`,
  takeBack: 'Take it back',
  /** `what` as it stands in a list. */
  lookAgain: (muslin: number, what: readonly string[]) =>
    `On muslin ${muslin} look at what the change touches: ${what.join('; ')}.`,
  sayNext: 'Say the next thing',
  putOnPaper: (round: number) => `Put round ${round} on paper`,

  notOnPaper: (round: number) => `Round ${round}, not on paper yet`,
  takeBackLabel: (cause: string, round: number) => `Take back ${cause} of round ${round}`,
  onPaperOf: (muslin: number) => `On the paper of muslin ${muslin}`,
  noChange: (muslin: number) => `No change from muslin ${muslin} stands in this round so far.`,
  haveSewn: (muslin: number) => `I have sewn muslin ${muslin}`,
}
