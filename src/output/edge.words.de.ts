import { capital } from '../units/capital.ts'
import { EDGES, PIECES } from '../draft/piece.words.de.ts'
import { undListed } from '../units/german-noun.ts'
import type {
  ALLOWANCE_WORDS as Allowance,
  EDGE_LINES as Lines,
  EDGE_OF as Of,
  MISFIT_WORDS as Misfit,
} from './edge.words.ts'
import { FINISH_NAMES, THE_FINISH } from './finish.words.de.ts'

export const EDGE_OF: typeof Of = {
  pieces: (edge, pieces) =>
    `${EDGES[edge].bare} ${undListed([...new Set(pieces.map((id) => PIECES[id].des))])}`,
}

export const EDGE_LINES: typeof Lines = {
  none: (group) => `${capital(group)}: keine, auf der Linie schneiden`,
  width: (group, by, { finish, twice }) =>
    `${capital(group)}: ${finish === undefined ? '' : `${finish}, `}${by}${twice === undefined ? '' : `, zweimal ${twice} tief umgeschlagen`}`,
  mark: (group, by) =>
    `${capital(group)}: Miss in fingerbreiten Abständen ${by} nach außen, im rechten Winkel zur Linie, und zeichne durch die Marken.`,
  onTheLine: (groups) => `Auf der Linie schneiden: ${groups.map(capital).join(', ')}.`,
  corners: (turnedTwice) =>
    `Führ an einer Ecke beide Linien weiter, bis sie sich treffen. Schlag das Papier ${turnedTwice ? 'so um wie den Saum, zweimal,' : 'auf der Saumlinie um'} und schneide die Seite durch alle Lagen, damit der umgeschlagene Saum flach liegt. Falte einen Abnäher an einer Kante, bevor du sein Ende schneidest.`,
  finished: (group, finish, passes) => `${capital(group)}, ${finish}. ${passes}`,
}

export const ALLOWANCE_WORDS: typeof Allowance = {
  noEdge: (name, names) =>
    `„${name}“ ist keine Kante dieses Teils. Nenne eine von ${names.join(', ')}.`,
  noNumber: 'keine Zahl',
  outside: (edge, said, widest) =>
    `Die Nahtzugabe ${EDGES[edge].am} wäre ${said}; gib 0 bis ${widest} an.`,
  onFold: (edge) =>
    `${capital(EDGES[edge].der)} liegt im Stoffbruch und hat keine Nahtzugabe. Gib dort 0 an.`,
  crosses: (edge) =>
    `Die Nahtzugabe ${EDGES[edge].am} ist breiter, als die Rundung erlaubt: Die Schneidelinie würde sich kreuzen. Gib dort weniger an.`,
}

export const MISFIT_WORDS: typeof Misfit = {
  instead: (finish) => `Dort geht: ${FINISH_NAMES[finish]}.`,
  tooLong: (finish, edge, { turned, radius, share, most }) =>
    `${capital(THE_FINISH[finish])} schlägt ${EDGES[edge].am} ${turned} um; die engste Rundung hat dort einen Radius von ${radius}. Die Schnittkante ist ${share} länger als die Linie, auf die sie zu liegen kommt, und mehr als ${most} liegen nicht flach.`,
  deepest: (depth) => `Zweimal umgeschlagen würden höchstens ${depth} Tiefe flach liegen.`,
  tooTight: (finish, edge, radius, least) =>
    `Die engste Rundung ${EDGES[edge].am} hat einen Radius von ${radius}; ${THE_FINISH[finish]} geht nur um Rundungen von mehr als ${least}.`,
  tooHollow: (finish, edge, turned, radius) =>
    `${capital(THE_FINISH[finish])} schlägt ${EDGES[edge].am} ${turned} um, und dort ist die Kante hohl mit einem Radius von ${radius}: Von der Schnittkante bleibt nichts zum Umlegen.`,
}
