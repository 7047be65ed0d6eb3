import type { FOLD_WORDS as English } from './fold-places.words.ts'

export const FOLD_WORDS: typeof English = {
  betweenApexes: 'waagerecht, von Brustpunkt zu Brustpunkt',
  apexToSideWaist: 'schräg, vom Brustpunkt hinunter zur Seite der Taille',
  neckToArmpit: 'schräg, vom Hals hinunter zur Achsel',
  shoulderTipToCentre: 'fächerförmig, vom Schulterpunkt zur Mitte',
  aboveBackWaist: 'waagerecht, quer über den Rücken oberhalb der Taille',
  besideArmhole: 'senkrecht, neben dem Armloch',
}
