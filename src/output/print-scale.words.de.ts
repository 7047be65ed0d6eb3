import type { PRINT_WORDS as English } from './print-scale.words.ts'

const WAY = { across: 'quer', down: 'längs', both: 'in beiden Richtungen' }

export const PRINT_WORDS: typeof English = {
  measureAgain: (square) => `Miss das Quadrat von ${square} noch einmal und tipp seine Länge ein.`,
  absurd: (square, said, least, most) =>
    `Das Quadrat von ${square} würde ${said} messen; zwischen ${least} und ${most} lässt es sich ausgleichen. Drucke Seite eins noch einmal mit 100 %, nie an die Seite angepasst, und miss noch einmal.`,
  disagree: (way, a, squareA, b, squareB) =>
    `${way === 'across' ? 'Quer' : 'Längs'} gemessen stimmen die beiden Quadrate nicht überein: ${a} für ${squareA} und ${b} für ${squareB}. Leg das Lineal an die Linien und miss beide noch einmal.`,
  measureASide: 'Miss eine Seite eines der Quadrate auf Seite eins und tipp ihre Länge ein.',
  isTrue: (within, on) => `Der Druck stimmt: auf ${within} genau bei ${on}.`,
  notTrue: 'Der Druck stimmt nicht.',
  assumed: (way) =>
    `Nur eine Richtung ist gemessen; ${WAY[way]} gilt das Blatt bis dahin als gleich. Miss auch das.`,
  lineTrue: (long, way) => `Eine Linie von ${long} wird ${WAY[way]} richtig gedruckt.`,
  lineOff: (long, way, by, tooLong) =>
    `Eine Linie von ${long} wird ${WAY[way]} ${by} zu ${tooLong ? 'lang' : 'kurz'} gedruckt.`,
  everyPageStays: 'Jede Seite bleibt.',
  bin: (tiled, steps) => {
    const bin =
      tiled === 1
        ? 'Seite 1 kommt ins Altpapier.'
        : `Die Seiten 1 bis ${tiled} kommen ins Altpapier, alle.`
    if (steps === 0) return bin
    return steps === 1
      ? `${bin} Auf Seite ${tiled + 1} stehen Schritte, sie bleibt.`
      : `${bin} Auf den Seiten ${tiled + 1} bis ${tiled + steps} stehen Schritte, sie bleiben.`
  },
  corrected: (drawn) =>
    `Für einen Drucker berichtigt: ${drawn.map(({ way, by, larger }) => `${WAY[way]} ${by} ${larger ? 'größer' : 'kleiner'}`).join(' und ')} gezeichnet. Stimmt nur aus diesem Drucker, mit 100 %, und nur, wenn beide Quadrate stimmen.`,
  noSide: (typed, side) =>
    `„${typed}“ kann keine Seite dieses Quadrats sein; gezeichnet wurde sie ${side} lang. Leg das Lineal an eine Seite und schreib, was es sagt, mit der Einheit.`,
}
