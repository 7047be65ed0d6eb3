/** Words of the question and of what was pinned. */
import type { Cause } from '../../fitting/complaints/complaint.ts'
import type { PinSide } from '../../fitting/half-amount.ts'
import type { Side } from '../../draft/piece.ts'
import type { Mm } from '../../units/length.ts'
import { capital } from '../../units/capital.ts'
import type { Said } from './change-said.ts'

type Named = readonly Pick<Cause, 'name'>[]
const either = (causes: Named): string => causes.map(({ name }) => name).join('; or ')
const SIDES: Readonly<Record<PinSide, string>> = {
  both: 'both sides alike',
  one: 'one side, meant for both',
  left: 'left only',
  right: 'right only',
}

export const ASK_WORDS = {
  title: 'One question',
  fact: '2 of 3',
  sewnEdge: (sewn: Mm): Said => ['The sewn edge is ', sewn, ' on the half.'],
  measureAgain: 'Measure it again',
  answers: { yes: 'yes', no: 'no', cannotTell: 'cannot tell' },
  answerAgain: 'Answer again',
  answerAgainLabel: (ask: string) => `Answer again: ${ask}`,
  yes: (sees: string) => `Yes. ${sees}`,
  no: (sees: string) => `No. ${sees}`,
  /** What a yes would mean: these causes. */
  then: (causes: Named) =>
    causes.length > 0 ? `Then: ${either(causes)}.` : 'Then nothing is wrong in the draft.',
  /** What a no leaves. */
  left: (causes: Named) =>
    causes.length > 0
      ? `Then it is not that. Left: ${either(causes)}.`
      : 'Then it is something else.',
  alsoSaid: (ways: readonly string[]) =>
    `Also said of it: ${ways.map((way) => `“${way}”`).join(', ')}.`,
  whereFrom: 'Where this comes from',
  evidence: (words: string) => `Evidence: ${words}.`,
  source: (words: string) => `${words}.`,
  leftOver: 'Left over from the last muslin: look there again.',
  leftOverOne: (name: string, side: Side | undefined, left: Mm): Said => [
    `${name}${side ? `, ${side} side` : ''}, `,
    left,
  ],
  readAgain: 'Read it again',
  sayFirst: 'Say what you see. One question follows, with a test you do on the muslin.',
  numbersSay: 'What the numbers say',
  /** The causes that a number speaks of alike. */
  causes: (causes: Named) => `${capital(either(causes))}.`,

  layTape: (drawn: Mm): Said => [
    'Or lay a tape on it: it was drawn ',
    drawn,
    ' long on the half. Stand the tape on its edge along the seam line, without pulling.',
  ],
  sewnLength: 'The sewn edge, on the half',
  takeLength: 'Take this length',

  howMuch: 'How much did you pin or measure?',
  howRead: 'How you read it',
  where: 'Where',
  on: 'On',
  sides: SIDES,
  read: (word: string) => capital(word),
  fromFold: 'From the fold, along the edge',
  fromUnderarm: 'From the underarm, along the edge',
  middleOfFold: 'Where the middle of the fold lies.',
  underNought: 'Under nought it goes the other way.',
  usual: (from: Mm, to: Mm): Said => ['Usual on a half piece: ', from, ' to ', to, '.'],

  /** @param most degrees as text, or a length */
  part: (share: string, most: string | Mm): Said => [
    `Of a take-in ${share}, in one round at most `,
    most,
  ],
  degrees: (most: number) => `${most}°`,
  share: 'Of a pinned take-in, change',
  shareWhy: 'A muslin is often pinned too close; the rest shows next time.',
  most: 'The most of one round',
  mostWhy: 'What is past it is looked at again on the next muslin.',
  asUsual: 'As usual again',
}
