import type {
  FIRST_THING_WORDS as EnglishThings,
  LIES_WORDS as EnglishLies,
  LINE_READ as EnglishRead,
  LINE_WORDS as EnglishLines,
} from './first-things.words.ts'

export const FIRST_THING_WORDS: typeof EnglishThings = {
  pressed: 'Das Probeteil ist gebügelt, die Nahtzugaben so, wie sie liegen werden.',
  grain: 'Der Fadenlauf lag wie eingezeichnet: längs der Mitten und den Ärmel hinunter.',
  square: 'Das gedruckte Quadrat hat gestimmt, oder die Teile sind von Hand gezeichnet.',
  underwear: 'Darunter ist, was später unter dem Stück getragen wird.',
  arms: 'Die Arme hängen, das Gewicht ruht auf beiden Füßen, der Blick geht in den Spiegel oder die Kamera.',
  levels: 'Brust-, Taillen- und Hüftlinie und beide Mitten sind auf den Stoff gezeichnet.',
}

export const LINE_WORDS: typeof EnglishLines = {
  waist: 'Taillenlinie',
  side: 'Seitennaht',
  centres: 'Vordere und hintere Mitte',
  hem: 'Saum',
}

export const LIES_WORDS: typeof EnglishLies = {
  waist: {
    true: 'waagerecht, in der Taille',
    above: 'rundum über der Taille',
    frontUp: 'an der vorderen Mitte zu hoch',
    frontDown: 'an der vorderen Mitte zu tief',
    backUp: 'an der hinteren Mitte zu hoch',
    oneSide: 'auf einer Seite tiefer',
  },
  side: {
    true: 'im Lot',
    forward: 'ihr unteres Ende schwingt nach vorn',
    backward: 'ihr unteres Ende schwingt nach hinten',
    bows: 'sie verläuft im Bogen',
  },
  centres: { true: 'im Lot', lean: 'sie neigen sich' },
  hem: {
    true: 'parallel zum Boden',
    frontUp: 'an der vorderen Mitte zu hoch',
    backUp: 'an der hinteren Mitte zu hoch',
    uneven: 'ungleich',
  },
}

/** German nouns keep their capital within a sentence. */
export const LINE_READ: typeof EnglishRead = (line, lies) => `${line}: ${lies}`
