import { DARTS, EDGES, PIECES } from '../draft/piece.words.de.ts'
import { capital } from '../units/capital.ts'
import type { ON_PAPER_WORDS as English } from './on-paper.words.ts'

export const ON_PAPER_WORDS: typeof English = {
  stepOf: (piece, step) => `${PIECES[piece].bare}. ${step}`,
  does: (words, amount) => `${words}, ${amount}.`,
  turned: (choice, from, to) => `${capital(choice)}: aus ${from} wird ${to}.`,
  cutAcross:
    'Rückenteil und Vorderteil gleich. Zieh auf halbem Weg zwischen Brustlinie und Taillenlinie eine Linie rechtwinklig zum Stoffbruch und schneide sie auf.',
  spread: (by) =>
    `Leg einen Papierstreifen unter die Schnittkanten und zieh sie um ${by} auseinander, der Stoffbruch in einer Linie. Kleb sie fest.`,
  overlap: (by) =>
    `Schieb die Schnittkanten um ${by} übereinander, der Stoffbruch in einer Linie. Kleb sie fest.`,
  smoothAcross:
    'Zieh die Seitennaht glatt über die Klebestelle, und die Schenkel der Abnäher wieder gerade von der Spitze zur Öffnung.',
  markAnew: (letter) => `${letter} neu anzeichnen, wie die Schritte es sagen`,
  letter: (letter, way) => `${letter} ${way}`,
  tip: (words, way) => `${words} ${way}`,
  out: (by) => `${by} nach außen`,
  in: (by) => `${by} nach innen`,
  down: (by) => `${by} nach unten`,
  up: (by) => `${by} nach oben`,
  ways: (parts) => parts.join(' und '),
  move: (half, spots, taped) =>
    `${PIECES[half].bare}. ${taped ? 'Zur Kontrolle, oder statt zu schneiden, gemessen von der alten Stelle:' : 'Versetzen:'} ${spots.join('; ')}.`,
  edge: (name) => EDGES[name].der,
  dart: (name) => DARTS[name].der,
  drawAnew: (half, lines) => `${PIECES[half].bare}. Neu zu zeichnen: ${lines.join(', ')}.`,
  cutAnew: (piece, length) => `Neu zuschneiden: ${piece}, jetzt ${length} lang.`,
}
