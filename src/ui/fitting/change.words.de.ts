import type { Side } from '../../draft/piece.ts'
import { DARTS, EDGES, PIECES } from '../../draft/piece.words.de.ts'
import type { Edit, Way } from '../../fitting/complaints/complaint.ts'
import { capital } from '../../units/capital.ts'
import { undListed } from '../../units/german-noun.ts'
import type { CHANGE_WORDS as English } from './change.words.ts'

const WAYS: Readonly<Record<Way, string>> = {
  in: ' nach innen',
  out: ' nach außen',
  up: ' nach oben',
  down: ' nach unten',
  forward: ' nach vorn',
  back: ' nach hinten',
  wider: ' breiter',
  narrower: ' schmaler',
}
const POINTS: Readonly<Record<NonNullable<Edit['point']>, string>> = {
  sideNeck: 'Halspunkt',
  shoulderTip: 'Schulterpunkt',
  underarm: 'Achselpunkt',
  frontNeck: 'vordere Halsmitte',
  nape: 'Nackenpunkt',
  apex: 'Brustpunkt',
  tip: 'Abnäherspitze',
}
const NOUNS = { ...EDGES, ...DARTS }
const only = (side: Side | undefined): string =>
  side ? `, nur ${side === 'left' ? 'links' : 'rechts'}` : ''

export const CHANGE_WORDS: typeof English = {
  wedgeClosed: (piece, edge, width) => [
    `${capital(EDGES[edge].am)} ${PIECES[piece].des} wird ein Keil von `,
    width,
    ' geschlossen.',
  ],
  turned: (choice, from, to) => [
    `${capital(choice)}: von `,
    from,
    ' auf ',
    to,
    ', hinten und vorn gleich.',
  ],
  done: (words, amount) => [`${words}, `, amount, '.'],
  takenBack: ['Die Änderung ist zurückgenommen.'],
  foldedOut: (of) => [
    'Falte ',
    of.across,
    ` ${EDGES[of.edge].am} ${PIECES[of.piece].des} weg, auf null am ${of.piece === 'front' ? 'Brustpunkt' : 'Schulterblattpunkt'}. ${capital(DARTS[of.into].der)} `,
    ...(of.dart === 0 ? ['bleibt so breit wie gedruckt'] : ['öffnet sich um ', of.dart]),
    `; ${EDGES[of.edge].der} `,
    ...(of.shorter === 0
      ? ['bleibt im Druck gleich']
      : ['ist nach dem Ausziehen ', of.shorter, ' kürzer']),
    ...(of.hem === 0 ? ['.'] : ['; der Saum gewinnt unter dem Abnäher ', of.hem, '.']),
  ],
  nothingElsewhere: 'alles liegt, wo es lag.',
  changed: (edges, darts) =>
    `geändert: ${undListed([...edges.map((e) => EDGES[e].bare), ...darts.map((d) => DARTS[d].bare)])}; die alten Linien bleiben als Heftstich.`,
  row: capital,

  operation: (name, words, amount, side) => [`${name}: ${words}, `, amount, `${only(side)}.`],
  wedge: (name, piece, edge, width) => [
    `${name}: ein Keil von `,
    width,
    ` ${EDGES[edge].am} ${PIECES[piece].des}.`,
  ],
  choice: (name, choice, by, more, side) => [
    `${name}: ${choice}, `,
    by,
    `${more ? ' mehr' : ' weniger'}${only(side)}.`,
  ],
  share: {
    all: 'alles',
    half: 'die Hälfte',
    of: (inHundred) => `${inHundred}\u00a0%`,
  },

  edit: ({ piece, part, point, way, by, side, follows }) => [
    `${PIECES[piece].bare}, ${point === undefined ? NOUNS[part].bare : `${POINTS[point]} ${NOUNS[part].am}`}: `,
    by,
    `${WAYS[way]}${only(side)}${follows ? ', folgt von selbst' : ''}.`,
  ],
}
