const HOW = 'Write it as 2.30 m, 230 cm or 2 1/2 yd.'

export const CLOTH_LENGTH_WORDS = {
  how: HOW,
  noLength: (typed: string): string => `${typed} is no length of cloth up to 10 m. ${HOW}`,
}
