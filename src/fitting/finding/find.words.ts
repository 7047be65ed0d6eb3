/** Why an answer was given, in one sentence. */

const listed = (said: readonly string[]): string =>
  said.length < 2 ? said.join('') : `${said.slice(0, -1).join(', ')} and ${said.at(-1) ?? ''}`

export const BECAUSE_WORDS = {
  quoted: (words: string) => `“${words}”`,
  because: (said: readonly string[]) => `Because of ${listed(said)}.`,
}
