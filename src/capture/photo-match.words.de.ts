import type { MATCH_WORDS as English } from './photo-match.words.ts'

const nobody = (which: string): string =>
  `Im ${which} Foto war keine ganze stehende Person zu finden, darum lassen sich die beiden nicht von selbst auf einen Maßstab bringen. Markiere in beiden dieselben zwei Stellen.`

export const MATCH_WORDS: typeof English = {
  nobody: { earlier: nobody('früheren'), later: nobody('späteren') },
  samePlace:
    'Die zwei Marken eines Fotos liegen aufeinander. Zieh sie auseinander: eine an den Hals, eine an die Hüfte.',
  otherView: 'Ein Foto ist von einer anderen Seite. Wähl zwei Fotos derselben Ansicht.',
}
