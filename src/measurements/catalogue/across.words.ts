/** How the measurements of `across.ts` are taken. */
import type { MeasureWords } from '../measure.ts'

export const ACROSS_WORDS = {
  acrossBack: {
    from: 'the crease of the left arm, halfway up the armhole',
    to: 'the crease of the right arm, at the same level',
    words:
      'Level across the back from arm crease to arm crease, halfway between shoulder and armpit.',
    alone:
      'Reach behind and put a strip of plaster on each crease, then drop the arms. Lay the tape from one to the other, hold it with clips, and read it in a photo.',
    moves: 'the back width',
  },
  acrossChest: {
    from: 'the crease of the left arm, halfway up the armhole',
    to: 'the crease of the right arm, at the same level',
    words: 'Level across the chest from arm crease to arm crease, above the bust.',
    alone: 'Mark both creases with a washable pen, arms down. Lay the tape between them, mirror.',
    moves: 'the chest width',
  },
} satisfies Record<string, MeasureWords>
