import type { GARMENT_WORDS as English } from './garments.words.ts'

export const GARMENT_WORDS: typeof English = {
  blouse: {
    name: 'Bluse mit angeschnittenem Ärmel',
    what: 'Gewebt, mit weitem, angeschnittenem Ärmel und Taillenabnähern.',
    notFor: 'Nicht für Einsatz- oder Raglanärmel, Maschenware oder Nachtwäsche für Kinder.',
  },
  block: {
    name: 'Grundschnitt Oberteil',
    what: 'Die Form des Körpers auf Papier, mit seitlichem Brustabnäher, Taillenabnähern und hinterem Schulterabnäher. Näh ihn zuerst als Probeteil und probiere ihn an; andere Stücke werden aus ihm gezeichnet.',
    notFor:
      'Nicht für Maschenware und kein Stück zum Tragen: Seine Mehrweite reicht zum Stehen und Atmen.',
  },
  sleeveless: {
    name: 'Ärmellose Bluse',
    what: 'Gewebt, am Armloch anliegend, mit seitlichem Brustabnäher und Taillenabnähern; Hals und Armlöcher mit Schrägstreifen oder Belegen.',
    notFor:
      'Nicht für Maschenware und nicht für einen Ärmel: Dafür sitzt das Armloch zu hoch und zu eng.',
  },
  sleeve: {
    name: 'Bluse mit Einsatzärmel',
    what: 'Gewebt, mit einem Ärmel im Armloch des angepassten Oberteils. Passe zuerst das Oberteil an; der Ärmel folgt seinem Armloch.',
    notFor: 'Nicht für Maschenware, zweiteilige Ärmel oder Kragen.',
  },
  dress: {
    name: 'Kleid mit Taillennaht',
    what: 'Gewebt und ärmellos, ein anliegendes Oberteil mit geradem, ausgestelltem oder Kreisrock, an der Taille angenäht.',
    notFor: 'Nicht für Maschenware, eingereihte Röcke oder Futter.',
  },
}
