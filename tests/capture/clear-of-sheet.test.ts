import { expect, it } from 'vitest'
import { clearOfSheet } from '../../src/capture/clear-of-sheet.ts'
import type { OutlineRow } from '../../src/capture/reading.ts'

/** A back line that leans inward by 1 px in 5 rows down to the waist at 300; 2 mm a pixel. */
const rows = (juts: number): OutlineRow[] =>
  Array.from({ length: 120 }, (_, k) => {
    const y = 200 + k
    return { y, left: 400, right: 560 - k / 5 + (y > 296 ? juts : 0) }
  })
const right = (row: OutlineRow): number => row.right

it('goes where the rows above lead when a sheet stands out behind her', () => {
  // The line above reaches 560 - 99.5 / 5 = 540.1 half a row above 300.
  expect(clearOfSheet(rows(14), 300, 554.1, right, 1, 2)).toBeCloseTo(540.1, 6)
})

it('leaves the edge of a body as it is, also one that curves in more', () => {
  expect(clearOfSheet(rows(0), 300, 540.1, right, 1, 2)).toBe(540.1)
  expect(clearOfSheet(rows(-3), 300, 537.1, right, 1, 2)).toBe(537.1)
})
