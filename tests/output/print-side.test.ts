/** A side of a printed square as she may type it. */
import { describe, expect, test } from 'vitest'
import { readSide } from '../../src/output/print-side.ts'
import { SQUARE_INCH, SQUARE_MM } from '../../src/output/squares.ts'

describe('a side', () => {
  // 1 in = 25.4 mm (international yard and pound, 1959): 3 15/16 in = 100.0125 mm.
  test.each([
    ['99.5', SQUARE_MM, 99.5],
    ['9,95', SQUARE_MM, 99.5],
    ['9.95 cm', SQUARE_MM, 99.5],
    ['3 15/16', SQUARE_MM, 100.0125],
    ['98.5 mm', SQUARE_MM, 98.5],
    ['4', SQUARE_INCH, 101.6],
    ['10.16', SQUARE_INCH, 101.6],
    ['101', SQUARE_INCH, 101],
    ['99,500', SQUARE_MM, 99.5],
  ])('%s is read as the one length that can be meant', (text, side, value) => {
    expect(readSide(text, side)).toMatchObject({
      ok: true,
      value: expect.closeTo(value, 9) as number,
    })
  })
  test.each(['', 'about ten', '250', '0.5', '99 in'])('"%s" is refused with what to do', (text) => {
    const read = readSide(text, SQUARE_MM)
    expect(read.ok).toBe(false)
    if (!read.ok) expect(read.reason).toMatch(/Write|write/)
  })
})
