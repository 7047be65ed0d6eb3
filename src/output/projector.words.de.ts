import { undListed } from '../units/german-noun.ts'
import type { FIELD_WORDS as Field, PROJECTOR_WORDS as Projector } from './projector.words.ts'

export const PROJECTOR_WORDS: typeof Projector = {
  noNumber: 'keine Zahl',
  outside: (said, least, most) =>
    `Die Kreuze lägen ${said} auseinander; zwischen ${least} und ${most} lässt sich nutzen. Miss von Kreuz zu Kreuz, wo das Licht hinfällt.`,
  drawnOut: (percent) =>
    `Das Bild ist in einer Richtung um ${percent} % verzogen. Stell den Beamer im rechten Winkel zum Tisch oder sein Bild auf die eigene Form zurück und miss beides noch einmal.`,
  narrow: (width, height, least) =>
    `Das Licht deckt ${width} mal ${height}; nötig sind mindestens ${least} in jeder Richtung. Rück den Beamer weiter weg und miss noch einmal.`,
}

export const FIELD_WORDS: typeof Field = {
  whole: 'Das ganze Teil wird auf einmal projiziert.',
  field: (name, at, of) => `Feld ${name}, ${at} von ${of}.`,
  lay: (field, crosses) =>
    `Schieb den Stoff, bis die Kreide von ${field} unter ${undListed(crosses)} liegt.`,
  chalk: (crosses, field) => `Zeichne ${undListed(crosses)} mit Kreide für ${field}.`,
  pin: 'Ein Kreuz, das auf dem Teil liegt, wird stattdessen mit einer Stecknadel markiert.',
}
