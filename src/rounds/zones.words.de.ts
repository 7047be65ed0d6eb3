import type { ZONE_WORDS as English } from './zones.words.ts'

export const ZONE_WORDS: typeof English = {
  neck: 'Hals',
  shoulder: 'Schulter',
  bust: 'Brust',
  armhole: 'Armloch',
  back: 'Rücken',
  waist: 'Taille und Hüfte',
  sleeve: 'Ärmel',
  whole: 'das ganze Stück',
}
