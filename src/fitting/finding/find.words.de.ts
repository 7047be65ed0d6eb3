import type { BECAUSE_WORDS as English } from './find.words.ts'

const listed = (said: readonly string[]): string =>
  said.length < 2 ? said.join('') : `${said.slice(0, -1).join(', ')} und ${said.at(-1) ?? ''}`

export const BECAUSE_WORDS: typeof English = {
  quoted: (words) => `„${words}“`,
  because: (said) => `Wegen ${listed(said)}.`,
}
