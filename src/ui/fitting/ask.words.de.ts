import { capital } from '../../units/capital.ts'
import { plainNumber } from '../../units/number.ts'
import type { ASK_WORDS as English } from './ask.words.ts'

const either = (causes: readonly { readonly name: string }[]): string =>
  causes.map(({ name }) => name).join('; oder: ')

export const ASK_WORDS: typeof English = {
  title: 'Eine Frage',
  fact: '2 von 3',
  sewnEdge: (sewn) => ['Die genähte Kante misst auf der Hälfte ', sewn, '.'],
  measureAgain: 'Noch einmal messen',
  answers: { yes: 'ja', no: 'nein', cannotTell: 'unklar' },
  answerAgain: 'Neu antworten',
  answerAgainLabel: (ask) => `Neu antworten: ${ask}`,
  yes: (sees) => `Ja. ${sees}`,
  no: (sees) => `Nein. ${sees}`,
  then: (causes) =>
    causes.length > 0 ? `Dann: ${either(causes)}.` : 'Dann liegt es nicht am Schnitt.',
  left: (causes) =>
    causes.length > 0
      ? `Dann ist es das nicht. Es bleibt: ${either(causes)}.`
      : 'Dann ist es etwas anderes.',
  alsoSaid: (ways) => `Man sagt dazu auch: ${ways.map((way) => `„${way}“`).join(', ')}.`,
  whereFrom: 'Woher das kommt',
  evidence: (words) => `Beleg: ${words}.`,
  source: (words) => `${words}.`,
  leftOver: 'Vom letzten Probeteil übrig: Sieh dort wieder hin.',
  leftOverOne: (name, side, left) => [
    `${name}${side ? `, ${side === 'left' ? 'linke' : 'rechte'} Seite` : ''}, `,
    left,
  ],
  readAgain: 'Neu ablesen',
  sayFirst: 'Sag, was du siehst. Dann folgt eine Frage, mit einer Probe am Probeteil.',
  numbersSay: 'Was die Zahlen sagen',
  causes: (causes) => `${capital(either(causes))}.`,

  layTape: (drawn) => [
    'Oder leg ein Maßband darauf: Gezeichnet wurde sie auf der Hälfte ',
    drawn,
    ' lang. Stell das Maßband hochkant an die Nahtlinie, ohne zu ziehen.',
  ],
  sewnLength: 'Genähte Kante, auf der Hälfte',
  takeLength: 'Diese Länge nehmen',

  howMuch: 'Wie viel hast du abgesteckt oder gemessen?',
  howRead: 'Wie du es abliest',
  where: 'Wo',
  on: 'Auf',
  sides: {
    both: 'beiden Seiten gleich',
    one: 'einer Seite, für beide gemeint',
    left: 'nur links',
    right: 'nur rechts',
  },
  read: (word) => capital(word),
  fromFold: 'Vom Stoffbruch, entlang der Kante',
  fromUnderarm: 'Vom Achselpunkt, entlang der Kante',
  middleOfFold: 'Wo die Mitte der Falte liegt.',
  underNought: 'Unter null geht es andersherum.',
  usual: (from, to) => ['Üblich auf dem halben Teil: ', from, ' bis ', to, '.'],

  part: (share, most) => [`Vom Abgesteckten ${share}, in einer Runde höchstens `, most],
  degrees: (most) => `${plainNumber(most)}°`,
  share: 'Vom Abgesteckten ändern',
  shareWhy: 'Ein Probeteil wird oft zu eng abgesteckt; der Rest zeigt sich beim nächsten.',
  most: 'Höchstens in einer Runde',
  mostWhy: 'Was darüber ist, siehst du dir beim nächsten Probeteil wieder an.',
  asUsual: 'Wieder wie üblich',
}
