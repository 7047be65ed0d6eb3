/**
 * A garment she likes, laid flat: where the wanted ease comes from. One reading stands, because
 * the garment lies on a table with both ends in sight and does not breathe; it describes a wish,
 * never a body, so no draft width rests on it alone. A second reading, if made, must agree.
 */
import { judged, own, type Measure } from '../measure.ts'

const flat = { kind: 'flat', group: 'a garment laid flat', readingsNeeded: 1 } as const
const SMOOTH =
  'Close the garment, lay it on a table and smooth it from the middle outwards without stretching. '
/** Half of a girth with ease: about half the smallest and largest bust above, and more. */
const HALF_GIRTHS = 'half of the girths above, with ease'

export const FLAT = {
  flatBustWidth: {
    ...flat,
    id: 'flatBustWidth',
    label: 'Flat width at the bust',
    spoken: 'flat width at the bust',
    definition: 'flatBustWidth/side-seam-to-side-seam',
    from: 'one side seam, directly under the armhole',
    to: 'the other side seam, at the same level',
    words: 'Straight across from side seam to side seam, directly under the armholes.',
    alone: `${SMOOTH}Lay the ruler across under the armholes.`,
    moves: 'the wanted ease at the bust',
    tolerance: own(5),
    plausible: judged(270, 1000, HALF_GIRTHS),
  },
  flatWaistWidth: {
    ...flat,
    id: 'flatWaistWidth',
    label: 'Flat width at the waist',
    spoken: 'flat width at the waist',
    definition: 'flatWaistWidth/side-seam-to-side-seam',
    from: 'one side seam, at the waist',
    to: 'the other side seam, at the same level',
    words: 'Straight across from side seam to side seam where the garment sits at your waist.',
    alone: `${SMOOTH}Put it on first and mark the waist with a pin; lay the ruler across at the pin.`,
    moves: 'the wanted ease at the waist',
    tolerance: own(5),
    plausible: judged(220, 1000, HALF_GIRTHS),
  },
  flatHemWidth: {
    ...flat,
    id: 'flatHemWidth',
    label: 'Flat width at the hem',
    spoken: 'flat width at the hem',
    definition: 'flatHemWidth/along-hem',
    from: 'one side seam, at the hem',
    to: 'the other side seam, at the hem',
    words: 'Along the hem from side seam to side seam.',
    alone: `${SMOOTH}Let the tape follow the edge of the hem.`,
    moves: 'the wanted hem width',
    tolerance: own(5),
    plausible: judged(220, 2000, 'from a narrow blouse to a flared skirt'),
  },
  flatBackLength: {
    ...flat,
    id: 'flatBackLength',
    label: 'Flat back length',
    spoken: 'flat back length',
    definition: 'flatBackLength/neck-seam-to-hem-centre-back',
    from: 'the neck seam, middle of the back',
    to: 'the hem, middle of the back',
    words: 'Down the middle of the back from the neck seam to the hem.',
    alone: `${SMOOTH}Back up. Lay the tape down the middle.`,
    moves: 'the wanted length',
    tolerance: own(5),
    plausible: judged(250, 1600, 'from a short blouse to a long dress'),
  },
} as const satisfies Record<string, Measure>
