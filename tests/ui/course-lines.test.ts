/** The course drawn: one line a corrected zone, names that do not lie on each other. Worked by hand. */
import { expect, test } from 'vitest'
import { courseLines, spread } from '../../src/ui/rounds/course-lines.ts'
import { mm } from '../../src/units/length.ts'

test('a line for every zone that was corrected, the most corrected first; a quiet round is nothing', () => {
  const steps = [
    { round: 1, corrected: {}, open: [] },
    { round: 2, corrected: { waist: mm(10), bust: mm(-12) }, open: [] },
    { round: 3, corrected: { bust: mm(-6) }, open: [] },
  ]
  expect(courseLines(steps)).toEqual([
    { zone: 'bust', amounts: [-12, -6] },
    { zone: 'waist', amounts: [10, 0] },
  ])
})

test('names at one height are moved apart in their order, lone ones stay', () => {
  expect(spread([50, 50, 10], 17)).toEqual([50, 67, 10])
  expect(spread([10, 15, 20], 17)).toEqual([10, 27, 44])
})
