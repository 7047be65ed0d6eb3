/** Two rounds side by side: the page, the pieces laid over, what changed, what was said, the course. */
import type { Mm } from '../../units/length.ts'
import type { Said } from '../fitting/change-said.ts'
import type { SaidLine } from './said-between.ts'

export const COMPARE_WORDS = {
  title: 'Compare',
  pair: (before: number, after: number) => `Round ${before} with round ${after}`,
  about: 'What one muslin taught, beside what the next one did with it.',
  below: 'Below',
  onTop: 'On top',
  emptyTitle: 'One round has nothing to lie over yet.',
  empty:
    'When a muslin has led to a change, the next round lies here over this one: the old lines as running stitch, what changed in violet, with every number that moved.',
  sayWhat: (round: number) => `Say what muslin ${round} does`,
  openDraft: 'Open the draft',
  openDraftOf: (round: number) => `Open the draft of round ${round}`,
  startNext: (round: number) => `Start round ${round} from here`,
  putOnPaper: (round: number) => `Put round ${round} on paper`,
  inView: 'In view',
  parts: { pieces: 'pieces', body: 'body', changes: 'changes', record: 'record' },
  round: (number: number) => `Round ${number}`,
  /** In a list to pick from. */
  roundStanding: (number: number, standing: string) => `Round ${number}, ${standing}`,
  onPaper: (day: string) => `on paper ${day}`,
  aside: 'set aside',
  beingDrawn: 'being drawn',
}

export const LAID_WORDS = {
  title: 'Pieces laid over',
  piece: 'Piece',
  pinnedOn: 'Pinned on',
  writtenOn: 'Written on it',
  lengths: 'lengths',
  points: 'points',
  /** What the drawing shows; `changed` is a sentence that ends with a full stop. */
  label: (piece: string, before: number, after: number, changed: string) =>
    `${piece}, round ${before} under round ${after}: ${changed}`,
  lineOfRound: (round: number) => `round ${round}`,
  lineChanged: (round: number) => `changed in round ${round}`,
  lineSame: 'the same',
  moved: (count: number) => `Points that moved: ${count}`,
  noneMoved: (pinned: string) =>
    `Pinned on the ${pinned}, no lettered point and no tip of a dart lies elsewhere.`,
  movedOf: (piece: string, pinned: string) => `${piece}, pinned on the ${pinned}; farthest first.`,
  fromFold: (length: string) => `${length} away from the fold`,
  toFold: (length: string) => `${length} towards the fold`,
  right: (length: string) => `${length} to the right`,
  left: (length: string) => `${length} to the left`,
  down: (length: string) => `${length} down`,
  up: (length: string) => `${length} up`,
}

export const CHANGED_WORDS = {
  title: 'What changed',
  largestFirst: 'largest first',
  halfPieces: 'Half pieces',
  allSame: 'Every number prints the same.',
  nothing: 'Every number prints the same. Nothing was changed between these two rounds.',
  same: (count: number) => `The same in both: ${count}`,
  /** A piece that came or went. */
  aPiece: 'a piece',
  noPiece: 'none',
  /** "bias strip of the neck, short end" */
  partOf: (piece: string, part: string) => `${piece}, ${part}`,
}

/** What changed between two rounds, in numbers. */
export interface Counted {
  readonly numbers: number
  /** Choices that stand at another word. */
  readonly picked: number
  readonly gone: number
  readonly better: number
  readonly again: number
  readonly worse: number
  readonly new: number
}
const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']
const number = (count: number): string => NUMBERS[count] ?? `${count}`
const some = (count: number, how: string): string[] =>
  count === 0 ? [] : [`${number(count)} ${how}`]

/** The sentence under the heading: "Three numbers changed. Of what you said: one gone, one new." */
export function SUMMARY(counted: Counted): string {
  const { numbers, picked } = counted
  const changed = [
    ...some(numbers, numbers === 1 ? 'number' : 'numbers'),
    ...some(picked, picked === 1 ? 'choice' : 'choices'),
  ].join(' and ')
  const first =
    changed === ''
      ? 'No number changed.'
      : `${changed.charAt(0).toUpperCase()}${changed.slice(1)} changed.`
  const said = [
    ...some(counted.gone, 'gone'),
    ...some(counted.better, 'better'),
    ...some(counted.again, 'said again'),
    ...some(counted.worse, 'worse'),
    ...some(counted.new, 'new'),
  ]
  return said.length === 0 ? first : `${first} Of what you said: ${said.join(', ')}.`
}

export const SAID_WORDS = {
  title: 'What you said',
  nothing: 'Nothing was said of either muslin yet.',
  undecided: 'undecided',
  nothingToChange: 'nothing to change',
  /** "Gaping armhole, from 1.2 cm to 0.6 cm." */
  still: (name: string, now: Mm): Said => [`${name}, still `, now, '.'],
  fromTo: (name: string, was: Mm, now: Mm): Said => [`${name}, from `, was, ' to ', now, '.'],
  read: (name: string, read: Mm): Said => [`${name}, `, read, '.'],
  unread: (name: string): Said => [`${name}.`],
}
export const HOW_WORDS: Readonly<Record<SaidLine['how'], string>> = {
  gone: 'gone',
  better: 'better',
  same: 'same',
  worse: 'worse',
  again: 'again',
  new: 'new',
  unseen: 'not looked at yet',
}

export const COURSE_WORDS = {
  title: 'Is it settling?',
  fact: 'by zone, round by round',
  nothing:
    'Nothing was corrected yet. From the second round on, what each muslin asked for is drawn here, so that you see it become less.',
  nought: 'nothing',
  round: (round: number) => `round ${round}`,
  open: (count: number) => `${count} open`,
  /** A line of the drawing, read out: "bust: round 2 −1.4 cm, round 3 −0.5 cm" */
  line: (zone: string, amounts: readonly { round: number; amount: string }[]) =>
    `${zone}: ${amounts.map(({ round, amount }) => `round ${round} ${amount}`).join(', ')}`,
  about:
    'Let out above the line, taken in below it. “Open” are complaints of that muslin that ask for something.',
  /** `zone` begins with a capital. */
  swings: (zone: string) => `${zone} goes up and down.`,
  turned: (rounds: readonly number[], untried: boolean) =>
    `Rounds ${rounds.join(', ')} turned it one way, the other and back. Before it is turned once more, look at what was not tried: ${untried ? '' : 'every cause we know was.'}`,
}
