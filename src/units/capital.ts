/** The first letter large, for words that begin a sentence. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
