import { DARTS } from '../../draft/piece.words.de.ts'
import { roundBody } from '../../fitting/rules/drawn.words.de.ts'
import { capital } from '../../units/capital.ts'
import type { DECIDE_WORDS as English } from './decide.words.ts'

export const DECIDE_WORDS: typeof English = {
  title: 'Was sich ändern würde',
  fact: '3 von 3',
  seenToo: 'Auch an diesem Probeteil gesehen und zusammen entschieden:',
  leaveOut: 'Weglassen',
  leaveOutLabel: (name) => `Weglassen: ${name}`,
  notYetAsked:
    'Ist die Frage beantwortet, steht hier, worauf es hinausläuft. Geändert wird erst, wenn du es sagst.',
  nothing: 'Am Schnitt ist nichts zu ändern.',
  open: 'Eines ist noch offen.',
  twoWays: 'Zwei Wege, wähl einen.',
  whichDart: 'Welcher Abnäher nimmt den Keil auf?',
  whichDartDoes: 'Jeder mit seinen zwei Zahlen; sonst ist alles gleich.',
  dart: (dart) => DARTS[dart].bare,
  takesUp: (dart, opens, wider, level) => [
    `${capital(DARTS[dart].bare)}: öffnet sich um `,
    opens,
    ...(wider > 0
      ? [`, und das Stück wird ${roundBody(level)} `, wider, ' weiter.']
      : ['; die Weite unter der Taille bleibt.']),
  ],
  notForCutting: 'Nach dieser Änderung ist er nicht zum Zuschneiden.',
  goodToKnow: 'Gut zu wissen.',
  cannot: 'Diese Änderung geht an diesem Schnitt nicht.',
  stands: (why) => `${why} Der Schnitt bleibt, wie er war.`,
  notDrawn: (name) => `${name}:`,
  watch: 'Nächstes Mal ansehen:',
  held: (name, by, why) => [`${name}, `, by, `. ${why}`],
  reckoned: 'Wie es gerechnet ist und woher es kommt',
  make: 'So ändern',
  notYet: 'Noch nicht',
  openBook: 'Maßbuch öffnen',
  keep: 'Mit der Runde behalten',
  somethingElse: 'Ich sehe noch etwas',

  halfPieces: 'Halbe Teile',
  round: (round) => `Runde ${round}`,
  willBe: 'Nachher',
  piece: 'Schnittteil',
  pieces: { front: 'Vorn', back: 'Rücken' },
  drawing: (piece, changed) => `${piece}: ${changed}`,
  pivot: (half) => (half === 'front' ? 'Brustpunkt' : 'Schulterblatt'),
  edge: (change) => `Kante ${change}`,
  dartBy: (change) => `Abnäher ${change}`,
  hem: (change) => `Saum ${change}`,

  changedIn: (round) => `In Runde ${round} geändert`,
  hasChanged: (round) => `Der Schnitt von Runde ${round} ist geändert.`,
  takeBack: 'Zurücknehmen',
  lookAgain: (muslin, what) =>
    `Am Probeteil ${muslin} ansehen, was die Änderung berührt: ${what.join('; ')}.`,
  sayNext: 'Das Nächste sagen',
  putOnPaper: (round) => `Runde ${round} zu Papier bringen`,

  notOnPaper: (round) => `Runde ${round}, noch nicht auf Papier`,
  takeBackLabel: (cause, round) => `Zurücknehmen, Runde ${round}: ${cause}`,
  onPaperOf: (muslin) => `Auf dem Papier von Probeteil ${muslin}`,
  noChange: (muslin) => `Bisher steht in dieser Runde keine Änderung von Probeteil ${muslin}.`,
  haveSewn: (muslin) => `Probeteil ${muslin} ist genäht`,
}
