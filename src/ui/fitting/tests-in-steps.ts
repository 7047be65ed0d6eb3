/** The test of each question, in small steps, for when the first try did not tell. */
import type { ComplaintId } from '../../fitting/complaints.ts'

/** Common practice, no source. */
export const TESTS: Readonly<Record<ComplaintId, readonly string[]>> = {
  B8: [
    'Take all pins out and smooth the front from the neck down.',
    'Hang a thread with a pin from the underarm: it shows whether the side hangs plumb.',
    'Lift the loose cloth at the edge into a flat fold that ends at the bust tip, and pin it.',
    'Look at the thread. Plumb and quiet is the first answer; drawn up is the second.',
    'Lay the edge on the draft: over 3 mm longer than it was drawn is the third.',
  ],
  W1: [
    'Tie elastic round the waist and roll it until it stays where it settles by itself.',
    'Stand with both feet level and arms down; let a camera with a timer do the looking.',
    'Measure from the drawn waist line down to the elastic at the front, at the side, at the back.',
    'Numbers within 3 mm of each other count as the same.',
  ],
}
