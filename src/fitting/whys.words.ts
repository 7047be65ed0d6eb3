/** Why a cause is likely or not: the sentences, with their lengths as lengths. */
import type { Mm } from '../units/length.ts'
import { roundBody } from './rules/drawn.words.ts'
import type { Level } from './rules/gates.ts'
import type { Moves, Words } from './whys.ts'

/** What was found, then what it speaks for. */
export interface Found {
  readonly found: Words
  /** What is to be taped once more. */
  readonly what: string
}
const low = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1)
const MOVED: Readonly<Record<'armsForward' | 'armsUp' | 'sit', string>> = {
  armsForward: 'With both arms forward',
  armsUp: 'With both arms up',
  sit: 'Sitting',
}

export const WHYS_WORDS = {
  line: (read: string): Words => [
    `Read off the muslin: ${read}. Lines come before folds: that speaks for it.`,
  ],
  ease: (level: Level, ease: Mm): Found => ({
    found: ['By the numbers it is ', ease, ` larger ${roundBody(level)} than the tape`],
    what: `the ${level}`,
  }),
  room: (label: string, room: Mm, halves: 1 | 2): Found => ({
    found: [
      halves === 2 ? 'On each half it has ' : 'It has ',
      room,
      ` of room beside the taped ${low(label)}`,
    ],
    what: low(label),
  }),
  cap: (extra: Mm): Found => ({
    found: ['The cap is ', extra, ' longer than the armhole'],
    what: 'both',
  }),
  tight: ({ found }: Found, least: Mm): Words => [
    ...found,
    '; ',
    least,
    ' is the least. That speaks for it.',
  ],
  notLoose: ({ found, what }: Found): Words => [
    ...found,
    `. That is not loose: tape ${what} once more first.`,
  ],
  enough: ({ found, what }: Found): Words => [
    ...found,
    `. That is enough: tape ${what} once more first.`,
  ],
  loose: ({ found }: Found, plenty: Mm): Words => [
    ...found,
    '; ',
    plenty,
    ' is plenty. That speaks for it.',
  ],
  open: ({ found }: Found): Words => [...found, '. That leaves it open: the test decides.'],
  notTaped: (label: string): Words => [
    `${label} is not taped, so the numbers say nothing yet: tape it.`,
  ],
  drawnTo: (label: string, taped: Mm): Words => [
    `It is drawn to your tape: ${low(label)} `,
    taped,
    '. Tape it once more first; if that stands, look at the next cause.',
  ],
  fromSize: (label: string): Words => [
    `${label} is not taped: the draft took it from the size, so it may well be off. Tape it.`,
  ],
  stretched: (longer: Mm): Words => [
    'It is sewn ',
    longer,
    ' longer than it was drawn. It stretched.',
  ],
  notStretched: (within: Mm): Words => [
    'It is sewn as it was drawn, within ',
    within,
    ': it did not stretch.',
  ],
  layTape: (long: Mm, most: Mm): Words => [
    'It was drawn ',
    long,
    ' long on the half. Lay a tape on the sewn edge: more than ',
    most,
    ' longer, and it has stretched.',
  ],
  dartWide: (mouth: Mm, most: Mm): Words => [
    'Its mouth is ',
    mouth,
    '; ',
    most,
    ' is the most one dart holds. That speaks for it.',
  ],
  dartHolds: (mouth: Mm): Words => [
    'Its mouth is ',
    mouth,
    ', which one dart holds: look to the sewing first.',
  ],
  tipNear: (tip: Mm, least: Mm): Words => [
    'The dart ends ',
    tip,
    ' from the bust tip; ',
    least,
    ' is the least. That speaks for it.',
  ],
  tipFar: (tip: Mm): Words => [
    'The dart ends ',
    tip,
    ' from the bust tip as drawn: mark the bust tip once more first.',
  ],
  moved: (which: keyof typeof MOVED, { freedom, rose }: Moves, speaksFor: boolean): Words => [
    `${MOVED[which]} it ${freedom === 'free' ? 'was free' : 'pulled'}`,
    ...(rose ? [', and the hem rose by ', rose] : []),
    speaksFor ? '. That speaks for it.' : '. That speaks against it.',
  ],
}
