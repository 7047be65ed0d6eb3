/** Widths across the back and the chest, between the arms. */
import { own, seen, type Measure } from '../measure.ts'

const length = { kind: 'length', group: 'across', readingsNeeded: 2 } as const

export const ACROSS = {
  acrossBack: {
    ...length,
    id: 'acrossBack',
    label: 'Across back',
    spoken: 'across back',
    definition: 'acrossBack/mid-armhole',
    from: 'the crease of the left arm, halfway up the armhole',
    to: 'the crease of the right arm, at the same level',
    words:
      'Level across the back from arm crease to arm crease, halfway between shoulder and armpit.',
    alone:
      'Reach behind and put a strip of plaster on each crease, then drop the arms. Lay the tape from one to the other, hold it with clips, and read it in a photo.',
    moves: 'the back width',
    tolerance: own(10),
    plausible: seen(284, 474),
  },
  acrossChest: {
    ...length,
    id: 'acrossChest',
    label: 'Across chest',
    spoken: 'across chest',
    definition: 'acrossChest/mid-armhole',
    from: 'the crease of the left arm, halfway up the armhole',
    to: 'the crease of the right arm, at the same level',
    words: 'Level across the chest from arm crease to arm crease, above the bust.',
    alone: 'Mark both creases with a washable pen, arms down. Lay the tape between them, mirror.',
    moves: 'the chest width',
    tolerance: own(5),
    plausible: seen(261, 420, 'women of the 7th Korean body survey, 2015'),
  },
} as const satisfies Record<string, Measure>
