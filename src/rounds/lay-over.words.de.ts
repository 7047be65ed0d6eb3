import type { ANCHOR_WORDS as English } from './lay-over.words.ts'

export const ANCHOR_WORDS: typeof English = {
  sideNeck: 'Halspunkt',
  apex: 'Brustpunkt',
  waistFold: 'Taille',
  nape: 'Nackenpunkt',
  grain: 'Fadenlauf',
}
