/** The arithmetic of a length in words: "a quarter of the bust + 2.2 cm". */
const PARTS: Readonly<Record<number, string>> = {
  2: 'half',
  3: 'a third of',
  4: 'a quarter of',
  5: 'a fifth of',
  6: 'a sixth of',
  8: 'an eighth of',
  10: 'a tenth of',
  12: 'a twelfth of',
  16: 'a sixteenth of',
  20: 'a twentieth of',
}
const part = (divisor: number): string => PARTS[divisor] ?? `1/${divisor} of`

export const AMOUNT_WORDS = {
  inFull: (words: string, number: string): string => `${words}, ${number}`,
  /** Of a measurement, a choice or a length read off the paper. */
  partOfNamed: (divisor: number, name: string): string =>
    `${part(divisor)} ${name.startsWith('the ') ? name : `the ${name}`}`,
  /** Of a plain length, a bracket or again a part. */
  partOf: (divisor: number, whole: string): string => `${part(divisor)} ${whole}`,
}
