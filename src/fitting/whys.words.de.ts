import { roundBody } from './rules/drawn.words.de.ts'
import type { Level } from './rules/gates.ts'
import type { WHYS_WORDS as English } from './whys.words.ts'

const LEVELS: Readonly<Record<Level, string>> = { bust: 'Brust', waist: 'Taille', hip: 'Hüfte' }
const MOVED: Readonly<Record<'armsForward' | 'armsUp' | 'sit', string>> = {
  armsForward: 'Mit beiden Armen nach vorn',
  armsUp: 'Mit beiden Armen oben',
  sit: 'Im Sitzen',
}

export const WHYS_WORDS: typeof English = {
  line: (read) => [`Abgelesen: ${read}. Linien gehen vor Falten: Das spricht dafür.`],
  ease: (level, ease) => ({
    found: ['Nach den Zahlen ist es ', ease, ` ${roundBody(level)} weiter als gemessen`],
    what: LEVELS[level],
  }),
  room: (label, room, halves) => ({
    found: [
      halves === 2 ? 'Auf jeder Hälfte bleiben ' : 'Es bleiben ',
      room,
      ` Platz neben dem gemessenen Maß (${label})`,
    ],
    what: label,
  }),
  cap: (extra) => ({
    found: ['Die Armkugel ist ', extra, ' länger als das Armloch'],
    what: 'beides',
  }),
  tight: ({ found }, least) => [...found, '; ', least, ' sind das Mindeste. Das spricht dafür.'],
  notLoose: ({ found, what }) => [
    ...found,
    `. Weit ist das nicht: Miss zuerst noch einmal nach (${what}).`,
  ],
  enough: ({ found, what }) => [...found, `. Das reicht: Miss zuerst noch einmal nach (${what}).`],
  loose: ({ found }, plenty) => [...found, '; ', plenty, ' sind reichlich. Das spricht dafür.'],
  open: ({ found }) => [...found, '. Das lässt es offen: Die Probe entscheidet.'],
  notTaped: (label) => [
    `${label}: noch nicht mit dem Maßband gemessen, darum sagen die Zahlen noch nichts. Miss nach.`,
  ],
  drawnTo: (label, taped) => [
    `Gezeichnet ist es nach deinem Maßband: ${label} `,
    taped,
    '. Miss zuerst noch einmal nach; bleibt es dabei, sieh dir die nächste Ursache an.',
  ],
  fromSize: (label) => [
    `${label}: nicht mit dem Maßband gemessen. Der Schnitt nahm es aus der Größe, es kann also gut danebenliegen. Miss nach.`,
  ],
  stretched: (longer) => [
    'Genäht ist es ',
    longer,
    ' länger, als es gezeichnet wurde. Es hat sich gedehnt.',
  ],
  notStretched: (within) => [
    'Genäht ist es wie gezeichnet, auf ',
    within,
    ' genau: Es hat sich nicht gedehnt.',
  ],
  layTape: (long, most) => [
    'Gezeichnet wurde es auf der Hälfte ',
    long,
    ' lang. Leg ein Maßband auf die genähte Kante: Ist sie mehr als ',
    most,
    ' länger, hat sie sich gedehnt.',
  ],
  dartWide: (mouth, most) => [
    'Er ist an der Öffnung ',
    mouth,
    ' breit; mehr als ',
    most,
    ' fasst ein Abnäher nicht. Das spricht dafür.',
  ],
  dartHolds: (mouth) => [
    'Er ist an der Öffnung ',
    mouth,
    ' breit, und das fasst ein Abnäher: Sieh zuerst nach, wie er genäht ist.',
  ],
  tipNear: (tip, least) => [
    'Der Abnäher endet ',
    tip,
    ' vor dem Brustpunkt; ',
    least,
    ' sind das Mindeste. Das spricht dafür.',
  ],
  tipFar: (tip) => [
    'Gezeichnet endet der Abnäher ',
    tip,
    ' vor dem Brustpunkt: Zeichne den Brustpunkt zuerst noch einmal an.',
  ],
  moved: (which, { freedom, rose }, speaksFor) => [
    `${MOVED[which]} ${freedom === 'free' ? 'saß es frei' : 'zog es'}`,
    ...(rose ? [', und der Saum stieg um ', rose] : []),
    speaksFor ? '. Das spricht dafür.' : '. Das spricht dagegen.',
  ],
}
