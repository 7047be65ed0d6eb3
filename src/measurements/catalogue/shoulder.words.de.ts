import type { SHOULDER_WORDS as English } from './shoulder.words.ts'

export const SHOULDER_WORDS: typeof English = {
  drop: {
    from: 'die Höhe des Halspunkts',
    to: 'der Schulterpunkt',
    words: 'Wie weit der Schulterpunkt unter dem Halspunkt liegt. Es ist eine Höhe.',
    alone:
      'Leg ein Lineal an den Halspunkt und halte es waagerecht über die Schulter, Wasserwaage oder Handy darauf. Stell ein zweites auf den Schulterknochen und lies ab, wie hoch das erste darüber liegt.',
    moves: 'die Schulterschräge',
  },
  shoulder: {
    from: 'der Halspunkt',
    to: 'der Schulterpunkt',
    words: 'Oben auf der Schulter entlang vom Halspunkt bis zum äußeren Schulterknochen.',
    alone:
      'Lass die Halsschnur an. Heb den Arm: Das Grübchen ist das Ende des Knochens; kleb dort einen Punkt auf. Lass den Arm hängen und leg das Maßband von der Schnur zum Punkt.',
    moves: 'die Schulter und das Armloch',
  },
  sideNeckToSleeveEdge: {
    from: 'der Halspunkt',
    to: 'wo der Ärmel enden soll',
    words: 'Vom Halspunkt über den Schulterknochen den Arm hinunter bis zur gewünschten Kante.',
    alone:
      'Kleb das Nullende mit Pflaster auf den Halspunkt. Lass den Arm hängen, leg das Maßband über den Schulterknochen und lies im Spiegel ab, wo der Ärmel enden soll.',
    moves: 'die Ärmellänge',
  },
}
