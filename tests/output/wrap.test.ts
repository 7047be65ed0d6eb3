/** Long words on paper. Soft hyphen: Unicode Standard Annex 14, class BA, seen only where a line ends. */
import { expect, test } from 'vitest'
import { point } from '../../src/geometry/point.ts'
import { textMark } from '../../src/output/mark.ts'
import { wrapped, type Face } from '../../src/output/wrap.ts'

/** Every letter as wide as the type is high. */
const FACE: Face = { width: (text, size) => text.length * size }
const SHY = '\u00ad'

test('a word is parted at a soft hyphen only where it does not fit, and none is left on the paper', () => {
  const word = `Zuschneide${SHY}liste`
  // By hand: 15 letters fit in 15, not in 14; "Die Zuschneide-" is 15 long.
  expect(wrapped(word, 1, 15, FACE)).toEqual(['Zuschneideliste'])
  expect(wrapped(word, 1, 14, FACE)).toEqual(['Zuschneide-', 'liste'])
  expect(wrapped(`Die ${word} da`, 1, 15, FACE)).toEqual(['Die Zuschneide-', 'liste da'])
  expect(wrapped(`Die ${word} da`, 1, 14, FACE)).toEqual(['Die', 'Zuschneide-', 'liste da'])
  expect(textMark(word, point(0, 0), 3).text).toBe('Zuschneideliste')
})

test('a word without one is broken where it must be', () => {
  expect(wrapped('Zuschneideliste', 1, 10, FACE)).toEqual(['Zuschneide', 'liste'])
})

test('a number stays on one line with its fraction and its unit', () => {
  // The International System of Units, 9th edition, 5.4.3: a space between number and unit, which
  // belong together. By hand: "begins 2.3" is 10 long, "begins 2.3 cm" 13.
  expect(wrapped('begins 2.3 cm on', 1, 12, FACE)).toEqual(['begins', '2.3 cm on'])
  expect(wrapped('cut 16 1/4 in long', 1, 10, FACE)).toEqual(['cut', '16 1/4 in', 'long'])
  expect(wrapped('buy 1⅛ yd', 1, 8, FACE)).toEqual(['buy', '1⅛ yd'])
  // No unit: a word that only begins like one.
  expect(wrapped('cut 2 more', 1, 8, FACE)).toEqual(['cut 2', 'more'])
  expect(wrapped('Round 3 mm', 1, 10, FACE).join(' ')).toBe('Round 3 mm')
})
