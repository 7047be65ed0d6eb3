import type { LENGTH_WORDS as English } from './compare.words.ts'

const ENDS: Readonly<Record<string, string>> = { upper: 'obere ', lower: 'untere ' }

export const LENGTH_WORDS: typeof English = {
  edge: (piece, edge) => `${piece}, ${edge}`,
  dart: (piece, dart) => `${piece}, ${dart}, Inhalt`,
  tip: (piece, dart, end) => `${piece}, ${dart}, ${ENDS[end ?? ''] ?? ''}Spitze`,
}
