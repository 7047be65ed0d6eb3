import { undListed } from '../../units/german-noun.ts'
import type { FigureView } from './figure-places.ts'
import type { SAY_WORDS as English } from './say.words.ts'

const FROM: Readonly<Record<FigureView, string>> = {
  front: 'von vorn',
  back: 'von hinten',
  side: 'von der Seite',
  arm: 'am Ärmel',
}
const KIND: Readonly<Record<Parameters<(typeof English)['kind']>[0], string>> = {
  place: 'Stelle',
  part: 'Teil',
  sign: 'Was es tut',
  direction: 'Wohin',
  side: 'Seite',
  movement: 'Wann',
  figure: 'Redensart',
  relation: 'Lage',
}

export const SAY_WORDS: typeof English = {
  title: 'Sag es',
  fact: '1 von 3',
  dial: 'Wie liegen die Falten, auf der rechten Hälfte?',
  cloth: 'Was tut der Stoff dort?',
  keepSentence: 'Den Satz als Notiz behalten',
  byName: 'Alle Beobachtungen mit Namen',

  own: 'Oder mit deinen Worten',
  example: 'man sieht meinen BH',
  find: 'Finden',
  findLabel: 'Die Beobachtung in diesen Worten finden',
  keepWords: 'Diese Worte als Notiz behalten',

  pickOne: 'Das spricht für eines davon. Wähl, was du siehst.',
  nothingHeard:
    'Aus diesen Worten ist nichts herauszuhören. Sag, wo es ist und was der Stoff dort tut.',
  several: (parts) =>
    `Das ist mehr als eines: ${undListed(parts.map((part) => `„${part}“`))}. Nimm jetzt eines; „Ich sehe noch etwas“ geht zum nächsten weiter, und alles wird zusammen entschieden.`,
  rest: (parts) => parts.join(', und '),
  understood: 'Verstanden. Ein falsches Wort lässt sich ändern.',
  kind: (kind, denied) => `${KIND[kind]}${denied ? ', verneint' : ''}`,
  somethingElse: 'etwas anderes',
  notUnderstood: (words) => `Nicht verstanden: ${words.join(', ')}.`,

  view: { front: 'Vorn', back: 'Hinten', side: 'Seite', arm: 'Ärmel' },
  sideOfGarment: 'Seite des Stücks',
  looksRight: 'Vorn ist rechts.',
  asInMirror: 'Wie im Spiegel: Dein Links ist links.',
  point: 'Auf die Stelle zeigen',
  figure: (view, place) =>
    `Das Stück ${FROM[view]}, ${place === undefined ? 'keine Stelle markiert' : `markiert: ${place}`}.`,

  firstThings: 'Das Erste zuerst',
  all: (count) => `alle ${count}`,
  of: (done, count) => `${done} von ${count}`,
  lines: 'Linien gehen vor Falten. Wie liegen sie?',
  notLookedAt: 'noch nicht angesehen',
  linesLead: 'Fang mit dem an, was die Linien sagen.',
  linesText: 'Viele Falten verschwinden, sobald die Linien richtig liegen.',

  movements: 'Bewegungsprobe',
  movementsHow:
    'Markiere im Stehen, wo der Saum am Körper liegt. Beweg dich langsam und miss dann, wie weit er gestiegen ist.',
  hemRose: 'Der Saum stieg um',
  movingLead: 'Auch die Bewegung sagt etwas.',
  movingText: 'Sieh dir das Probeteil auch mit hängenden Armen an, und geh dem dann nach.',
}
