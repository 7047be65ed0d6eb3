/**
 * A small drawing for each way a question may come out, as plain path data in a box of 76 by 64.
 * Drawn by ourselves: the front seen flat for the arm opening, the trunk for the waist line.
 */
import type { ComplaintId } from '../../../fitting/complaints.ts'

/** ink: cloth as it is. thin: folds and pins. chalk: plumb or level, or the elastic. stitch: as drawn. */
export type Stroke = 'ink' | 'thin' | 'chalk' | 'stitch'
export interface SmallDrawing {
  readonly lines: readonly (readonly [stroke: Stroke, d: string])[]
  readonly words?: readonly (readonly [x: number, y: number, word: string])[]
}

const FRONT = 'M6 14C10 12 14 8 16 4L66 12'
const TIP = 'M20 34h8M24 30v8'
const TRUNK = 'M14 4C19 18 19 40 12 60M62 4C57 18 57 40 64 60'
const ARROW = (x: number, from: number, to: number): string => `M${x} ${from}V${to}m-3 -4l3 4l3 -4`

export const OUTCOME_DRAWINGS: Readonly<
  Record<ComplaintId, Readonly<Record<string, SmallDrawing>>>
> = {
  B8: {
    'bust shaping': {
      lines: [
        ['ink', `${FRONT}C64 24 58 32 47 37V60`],
        ['thin', TIP],
        ['thin', 'M24 34L63 20M24 34L57 31M49 22l7 9'],
        ['chalk', 'M54 40V62'],
      ],
    },
    'overarm slope': {
      lines: [
        ['ink', `${FRONT}C66 26 60 34 47 37C51 46 49 52 42 60`],
        ['thin', TIP],
        ['thin', 'M66 12L48 15M66 12L50 9M57 8l2 9'],
        ['thin', 'M30 40C38 34 44 26 48 18M36 48C44 42 50 32 53 22'],
        ['chalk', 'M54 40V62'],
      ],
    },
    'stretched edge': {
      lines: [
        ['ink', 'M6 22C12 10 18 34 26 22S40 12 46 22S60 32 70 18'],
        ['stitch', 'M6 48C24 42 50 42 68 46'],
      ],
    },
  },
  W1: {
    'short all round': {
      lines: [
        ['ink', TRUNK],
        ['ink', 'M18 24H58'],
        ['chalk', 'M17 40H59'],
        ['thin', ARROW(26, 27, 37) + ARROW(38, 27, 37) + ARROW(50, 27, 37)],
      ],
    },
    'front short': {
      lines: [
        ['ink', TRUNK],
        ['ink', 'M18 36L58 22'],
        ['chalk', 'M17 40H59'],
        ['thin', ARROW(52, 27, 37)],
      ],
      words: [[44, 57, 'front']],
    },
    'back short': {
      lines: [
        ['ink', TRUNK],
        ['ink', 'M18 22L58 36'],
        ['chalk', 'M17 40H59'],
        ['thin', ARROW(24, 27, 37)],
      ],
      words: [[18, 57, 'back']],
    },
  },
}
