import { expect, test } from 'vitest'
import { unbroken } from '../../src/units/unbroken.ts'

// House rule: a ruler is read in one piece. SI brochure, 9th edition, 5.4.3: a space stands between
// number and unit; that it does not break is common practice, no source.
test.each([
  ['Down from A, 16 1/4 in. Square out.', 'Down from A, 16\u00a01/4\u00a0in. Square out.'],
  ['U 1/8 in in and 1/4 in up', 'U 1/8\u00a0in in and 1/4\u00a0in up'],
  ['Buy 1⅛ yd, 41.3 cm of it', 'Buy 1⅛\u00a0yd, 41.3\u00a0cm of it'],
  ['3 inches and 2 metres', '3 inches and 2 metres'],
])('%s', (said, whole) => {
  expect(unbroken(said)).toBe(whole)
})
