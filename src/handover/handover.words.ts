/** What is said of a code that does not fit, and why the talk of two devices ended. */
import type { Side } from './description.ts'

export const CODE_WORDS = {
  foreign:
    'This is no code of this page. Point at the square on the other device, where “Bring over” is open.',
  cutShort: 'A part of this code is missing. Copy all of it, from the first group to the last.',
  another:
    'This code answers another one. Let the other device read the code that is shown here now.',
  group: (group: number, text: string) =>
    `Group ${group} (${text}) does not fit. Compare it with the other screen and type it again.`,
}
export const SAME_SIDE: Readonly<Record<Side, string>> = {
  offer:
    'Both devices show a first code. On one of them choose “Read the code of the other” instead.',
  answer:
    'This is an answer, and nothing was asked here yet. Choose “Show a code here” on one of the devices.',
}

export const WRONG_SECRET: string =
  'The other device does not know the secret of this code, so nothing was sent or taken. Begin again on both devices.'
export const OUT_OF_TURN: string =
  'The other device sent what this page does not understand, so the connection was closed. Reload the page on both devices, so that they have the same version, and begin again.'
export const SPOILT: string =
  'It did not arrive as it was sent, so it was not taken. Send it once more.'
