/** What the printed squares say, and what is asked while they are measured. */
import type { Way } from './print-scale.ts'

type Ways = Way | 'both'
const WAY: Readonly<Record<Ways, string>> = { across: 'across', down: 'down', both: 'both ways' }

export const PRINT_WORDS = {
  measureAgain: (square: string) => `Measure the ${square} square again and type its length.`,
  absurd: (square: string, said: string, least: string, most: string) =>
    `The ${square} square would measure ${said}; between ${least} and ${most} can be put right. Print page one again at 100 %, never fitted to the page, and measure it once more.`,
  disagree: (way: Way, a: string, squareA: string, b: string, squareB: string) =>
    `Measured ${way}, the two squares do not agree: ${a} for ${squareA} and ${b} for ${squareB}. Lay the ruler along the lines and measure both again.`,
  measureASide: 'Measure a side of either square on page one and type its length.',
  isTrue: (within: string, on: string) => `The print is true: within ${within} on ${on}.`,
  notTrue: 'The print is not true.',
  assumed: (way: Way) =>
    `Only one way was measured; ${way} the sheet is taken to be the same. Measure it too.`,
  lineTrue: (long: string, way: Ways) => `A line of ${long}, ${WAY[way]}, is printed true.`,
  lineOff: (long: string, way: Ways, by: string, tooLong: boolean) =>
    `A line of ${long}, ${WAY[way]}, is printed ${by} too ${tooLong ? 'long' : 'short'}.`,
  everyPageStays: 'Every page stays.',
  /** Pages 1 to `tiled`; `steps` further ones hold steps. */
  bin: (tiled: number, steps: number) => {
    const bin =
      tiled === 1
        ? 'Page 1 goes into the bin.'
        : `Pages 1 to ${tiled} go into the bin, all of them.`
    if (steps === 0) return bin
    return steps === 1
      ? `${bin} Page ${tiled + 1} holds steps and stays.`
      : `${bin} Pages ${tiled + 1} to ${tiled + steps} hold steps and stay.`
  },
  /** Shares with their %; undefined way: both alike. */
  corrected: (
    drawn: readonly { readonly way: Ways; readonly by: string; readonly larger: boolean }[],
  ) =>
    `Corrected for one printer: drawn ${drawn.map(({ way, by, larger }) => `${by} ${larger ? 'larger' : 'smaller'} ${WAY[way]}`).join(' and ')}. True from that printer only, at 100 %, and only where both squares measure true.`,
  noSide: (typed: string, side: string) =>
    `"${typed}" is no side of this square; it was drawn ${side} long. Lay the ruler along one side and write what it says, with its unit.`,
}
