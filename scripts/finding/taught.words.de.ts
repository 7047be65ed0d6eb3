import type { TAUGHT as English } from './taught.words.ts'

export const TAUGHT: typeof English = {
  phrases: new URL('../../tests/fitting/phrases/german/', import.meta.url),
  weights: new URL('../../src/fitting/finding/weights.words.de.ts', import.meta.url),
}
