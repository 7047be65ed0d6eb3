/** Pieces thrown by a projector. */
export const THROW_WORDS = {
  title: 'Throw the pieces',
  absent: 'This garment is not on the rail.',
  notTaped: 'Pieces are thrown from numbers the tape has given twice.',
  nothing: 'Nothing to throw.',
  back: 'Back to Cut',
  ask: (round: number) =>
    `What is thrown can be cut, so round ${round} goes on paper: it stays as it is from then on, and changes go into round ${round + 1}.`,
  crosses: 'Three crosses: 1 and 2 above, 3 under 1',
  zoomed: 'The page was zoomed.',
  zoomedSo: 'Measure the crosses again.',
  how: 'Set the projector square to the table and darken the room. Then lay the tape from cross to cross where the light falls.',
  from1to2: 'From 1 to 2',
  from1to3: 'From 1 to 3',
  ifYouLike: 'if you like',
  misread: ({ by, off, line }: { by: string; off: string; line: string }) =>
    `${by} misread here is ${off} on a line of ${line}.`,
  notYet: 'Not yet.',
  measureAgain: 'Measure again.',
  typeFirst: 'Type the length first.',
  fill: 'Fill the screen',
  thrown: (piece: string) => `${piece}, thrown in true size`,
  field: (piece: string, words: string) => `${piece}: ${words}`,
  nextField: (field: string) => `Next field, ${field}`,
  nextPiece: (piece: string) => `Next: ${piece}`,
  /** What the key turns it to. */
  ground: { dark: 'Light lines on dark', light: 'Dark lines on light' },
  lines: { fine: 'Lines: fine', middle: 'Lines: middle', heavy: 'Lines: heavy' },
  anew: 'Measure again',
}
