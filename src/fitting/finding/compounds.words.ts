/**
 * Letters that join the parts of a word written as one. English writes its compounds apart, or has
 * them in the lexicon as they are: without joints no word is taken apart.
 */
export const JOINTS: readonly string[] = []
