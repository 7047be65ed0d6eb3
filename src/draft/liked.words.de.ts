import type { LIKED_WORDS as English } from './liked.words.ts'

export const LIKED_WORDS: typeof English = {
  length: (flat, napeToWaist, waist, below) =>
    `${flat} minus ${napeToWaist}, ${waist}: ${below} unter der Taille.`,
  girth: (flat, girth, ease, quarter) =>
    `Zweimal ${flat} minus ${girth} sind ${ease} rundum; ein Viertel davon auf jeder Hälfte sind ${quarter}.`,
}
