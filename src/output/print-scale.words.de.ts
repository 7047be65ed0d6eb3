import type { PRINT_WORDS as English } from './print-scale.words.ts'

const WAY = { across: 'quer', down: 'längs', both: 'in beiden Richtungen' }

export const PRINT_WORDS: typeof English = {
  measureAgain: (square) => `Miss das Quadrat von ${square} noch einmal und tippe seine Länge.`,
  absurd: (square, said, least, most) =>
    `Das Quadrat von ${square} würde ${said} messen; zwischen ${least} und ${most} lässt es sich richten. Drucke Seite eins noch einmal mit 100 %, nie an die Seite angepasst, und miss noch einmal.`,
  disagree: (way, a, squareA, b, squareB) =>
    `${way === 'across' ? 'Quer' : 'Längs'} gemessen sind sich die beiden Quadrate nicht einig: ${a} für ${squareA} und ${b} für ${squareB}. Lege das Lineal an die Linien und miss beide noch einmal.`,
  measureASide: 'Miss eine Seite eines der Quadrate auf Seite eins und tippe ihre Länge.',
  isTrue: (within) => `Der Druck stimmt: auf ${within} genau bei 100 mm.`,
  notTrue: 'Der Druck stimmt nicht.',
  assumed: (way) =>
    `Nur eine Richtung ist gemessen; ${WAY[way]} wird das Blatt als gleich angenommen. Miss auch das.`,
  lineTrue: (long, way) => `Eine Linie von ${long} wird ${WAY[way]} richtig gedruckt.`,
  lineOff: (long, way, by, tooLong) =>
    `Eine Linie von ${long} wird ${WAY[way]} ${by} zu ${tooLong ? 'lang' : 'kurz'} gedruckt.`,
  everyPageStays: 'Jede Seite bleibt.',
  bin: (tiled, steps) => {
    const bin =
      tiled === 1
        ? 'Seite 1 kommt in den Müll.'
        : `Die Seiten 1 bis ${tiled} kommen in den Müll, alle.`
    if (steps === 0) return bin
    return steps === 1
      ? `${bin} Auf Seite ${tiled + 1} stehen Schritte, sie bleibt.`
      : `${bin} Auf den Seiten ${tiled + 1} bis ${tiled + steps} stehen Schritte, sie bleiben.`
  },
  corrected: (drawn) =>
    `Für einen Drucker berichtigt: ${drawn.map(({ way, by, larger }) => `${WAY[way]} ${by} ${larger ? 'größer' : 'kleiner'}`).join(' und ')} gezeichnet. Stimmt nur aus diesem Drucker, mit 100 %, und nur, wenn beide Quadrate stimmen.`,
  noSide: (typed, side) =>
    `„${typed}“ ist keine Seite dieses Quadrats; gezeichnet wurde sie ${side} lang. Lege das Lineal an eine Seite und schreibe, was es sagt, mit der Einheit.`,
}
