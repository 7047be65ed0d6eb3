/** How the measurements of `flat.ts` are taken. */
import type { MeasureWords } from '../measure.ts'

const SMOOTH =
  'Close the garment, lay it on a table and smooth it from the middle outwards without stretching. '

export const FLAT_WORDS = {
  flatBustWidth: {
    from: 'one side seam, directly under the armhole',
    to: 'the other side seam, at the same level',
    words: 'Straight across from side seam to side seam, directly under the armholes.',
    alone: `${SMOOTH}Lay the ruler across under the armholes.`,
    moves: 'the wanted ease at the bust',
  },
  flatWaistWidth: {
    from: 'one side seam, at the waist',
    to: 'the other side seam, at the same level',
    words: 'Straight across from side seam to side seam where the garment sits at your waist.',
    alone: `${SMOOTH}Put it on first and mark the waist with a pin; lay the ruler across at the pin.`,
    moves: 'the wanted ease at the waist',
  },
  flatHemWidth: {
    from: 'one side seam, at the hem',
    to: 'the other side seam, at the hem',
    words: 'Along the hem from side seam to side seam.',
    alone: `${SMOOTH}Let the tape follow the edge of the hem.`,
    moves: 'the wanted hem width',
  },
  flatBackLength: {
    from: 'the neck seam, middle of the back',
    to: 'the hem, middle of the back',
    words: 'Down the middle of the back from the neck seam to the hem.',
    alone: `${SMOOTH}Back up. Lay the tape down the middle.`,
    moves: 'the wanted length',
  },
} satisfies Record<string, MeasureWords>
