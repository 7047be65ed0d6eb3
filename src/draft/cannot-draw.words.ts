/** Why numbers cannot be drawn together; {value} and {limit} are lengths. */
export const UNDRAWABLE_WORDS = {
  sideTooShort:
    'Between underarm and waist {value} would be left for the side seam; {limit} is the least.',
  neckShallow: 'The front neck edge would lie {value} under the side neck; {limit} is the least.',
}

export const WHAT_TO_DO = {
  tapeAgain: (names: readonly string[]): string => `Tape again: ${names.join(', ')}.`,
  orTurn: (names: readonly string[]): string => `Or turn: ${names.join(', ')}.`,
}
