import type { GARMENT_WORDS as English } from './garments.words.ts'

export const GARMENT_WORDS: typeof English = {
  blouse: {
    name: 'Bluse mit angeschnittenem Ärmel',
    what: 'Aus Webware, mit weit fallendem, angeschnittenem Ärmel und Taillenabnähern.',
    notFor: 'Nicht für Einsatz- oder Raglanärmel, Maschenware oder Nachtwäsche für Kinder.',
  },
  block: {
    name: 'Grundschnitt Oberteil',
    what: 'Die Form des Körpers auf Papier, mit seitlichem Brustabnäher, Taillenabnähern und hinterem Schulterabnäher. Näh ihn zuerst als Probeteil und pass ihn an; aus ihm werden andere Stücke gezeichnet.',
    notFor:
      'Nicht für Maschenware und kein Stück zum Tragen: Seine Mehrweite reicht zum Stehen und Atmen.',
  },
  sleeveless: {
    name: 'Ärmellose Bluse',
    what: 'Aus Webware, am Armloch anliegend, mit seitlichem Brustabnäher und Taillenabnähern; Hals und Armlöcher mit Schrägstreifen oder Belegen.',
    notFor:
      'Nicht für Maschenware und nicht für einen Ärmel: Dafür sitzt das Armloch zu hoch und zu eng.',
  },
  sleeve: {
    name: 'Bluse mit Einsatzärmel',
    what: 'Aus Webware, mit einem Ärmel im Armloch des angepassten Oberteils. Pass zuerst das Oberteil an; der Ärmel folgt seinem Armloch.',
    notFor: 'Nicht für Maschenware, zweiteilige Ärmel oder Kragen.',
  },
  dress: {
    name: 'Kleid mit Taillennaht',
    what: 'Aus Webware und ärmellos: ein anliegendes Oberteil, an das in der Taille ein gerader, ein ausgestellter oder ein Tellerrock genäht wird.',
    notFor: 'Nicht für Maschenware, eingereihte Röcke oder Futter.',
  },
}
