/** Lengths and tips of a draft by their names in words. */
export const LENGTH_WORDS = {
  /** "front sleeve edge" */
  edge: (piece: string, edge: string): string => `${piece} ${edge}`,
  /** "back waist dart, width" */
  dart: (piece: string, dart: string): string => `${piece} ${dart}, width`,
  /** "front waist dart, upper tip" */
  tip: (piece: string, dart: string, end: string | undefined): string =>
    `${piece} ${dart}, ${end ? `${end} ` : ''}tip`,
}
