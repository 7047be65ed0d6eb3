/** Where the phrases of this language are learnt from, and where its weights go. */
export const TAUGHT = {
  phrases: new URL('../../tests/fitting/phrases/', import.meta.url),
  weights: new URL('../../src/fitting/finding/weights.words.ts', import.meta.url),
}
