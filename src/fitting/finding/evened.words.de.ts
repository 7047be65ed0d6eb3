/** ä, ae and a are one letter, ß and ss too: typed with or without them it is the same word. */
import type { evened as English } from './evened.words.ts'

export const evened: typeof English = (raw) =>
  raw
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/ß/g, 'ss')
    .replace(/(?<![aeq])([aou])e(?=.)/g, '$1')
