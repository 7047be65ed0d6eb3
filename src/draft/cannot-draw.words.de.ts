import type * as English from './cannot-draw.words.ts'

export const UNDRAWABLE_WORDS: typeof English.UNDRAWABLE_WORDS = {
  sideTooShort:
    'Zwischen Achsel und Taille blieben {value} für die Seitennaht; {limit} ist das Mindeste.',
  neckShallow:
    'Der vordere Halsausschnitt läge {value} unter dem Halspunkt; {limit} ist das Mindeste.',
}

export const WHAT_TO_DO: typeof English.WHAT_TO_DO = {
  tapeAgain: (names) => `Noch einmal messen: ${names.join(', ')}.`,
  orTurn: (names) => `Oder verstellen: ${names.join(', ')}.`,
}
