import { describe, expect, it } from 'vitest'
import type { OutlineRow } from '../../src/capture/reading.ts'
import { hungBefore } from '../../src/capture/relief.ts'

const EXTENT = { above: 40, below: 40 }
/** A profile that stands out by `out(mm below the waist)`, 2 mm a pixel, waist at row 300. */
const rowsOf = (out: (down: number) => number, last = 500): OutlineRow[] =>
  Array.from({ length: last - 200 }, (_, k) => ({
    y: 200 + k,
    left: 0,
    right: 100 + out((200 + k - 300) * 2) / 2,
  }))
const before = (rows: readonly OutlineRow[]) =>
  hungBefore(rows, (row) => row.right, 100, 300, 100, 2, EXTENT)

describe('how far a hung card lies before the middle', () => {
  it('on a straight front line it lies on it', () => {
    expect(before(rowsOf(() => 90))?.mm).toBeCloseTo(90, 6)
  })

  it('over a belly below it, between leaning on it and hanging plumb from it', () => {
    // Flat to 120 mm below the waist, then 0.5 mm a mm: 10 mm further out at the card's lower rim.
    const belly = before(rowsOf((down) => 90 + Math.max(0, down - 120) * 0.5))
    // Straight from the upper rim (60 down, 90) to the lower (140 down, 100): 95 in its middle.
    expect(belly?.mm).toBeCloseTo((95 + 100) / 2, 6)
    const flat = before(rowsOf(() => 90))
    expect(belly && flat && belly.sd > flat.sd).toBe(true)
  })

  it('is less sure where a hand hides its lower part, and says nothing where all is hidden', () => {
    const half = before(rowsOf(() => 90, 352))
    expect(half?.mm).toBeCloseTo(90, 6)
    const flat = before(rowsOf(() => 90))
    expect(half && flat && half.sd > flat.sd).toBe(true)
    expect(before(rowsOf(() => 90, 332))).toBeUndefined()
  })
})
