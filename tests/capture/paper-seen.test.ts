import { describe, expect, it } from 'vitest'
import type { Card } from '../../src/capture/card.ts'
import { paperSeen } from '../../src/capture/paper-seen.ts'
import type { Picture } from '../../src/capture/picture.ts'
import { mm } from '../../src/units/length.ts'

/** Grey cloth, paper in shade that deepens to the right, a black square of 40 px at (80, 90). */
function sheetAt(paper: { left: number; right: number; top: number; bottom: number }): Picture {
  const [width, height] = [240, 260]
  const data = new Uint8ClampedArray(width * height * 4)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const on = x >= paper.left && x < paper.right && y >= paper.top && y < paper.bottom
      const square = x >= 80 && x < 120 && y >= 90 && y < 130
      const grey = square ? 25 : on ? 235 - 0.4 * (x - 60) : 105
      data.set([grey, grey, grey, 255], (y * width + x) * 4)
    }
  return { width, height, data }
}
const corners = [
  { x: 80, y: 90 },
  { x: 120, y: 90 },
  { x: 120, y: 130 },
  { x: 80, y: 130 },
] as const
const card: Card = {
  kind: 'sheet',
  corners,
  widthMm: mm(100),
  heightMm: mm(100),
  homography: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  mmPerPx: 2.5,
  residualPx: 0,
}

describe('the paper round the black square', () => {
  it('ends where its white ends, whichever way it lies and through its own shade', () => {
    // Upright A5 (ISO 216: 148 by 210 mm) at 2.5 mm a pixel, 36 mm over the square; worked by hand.
    const paper = { left: 70, right: 130, top: 76, bottom: 160 }
    const seen = paperSeen(sheetAt(paper), card)
    for (const edge of ['left', 'right', 'top', 'bottom'] as const)
      expect(Math.abs((seen[edge] ?? NaN) - paper[edge])).toBeLessThanOrEqual(1)
  })

  it('says nothing of a side whose end does not show', () => {
    const seen = paperSeen(sheetAt({ left: 70, right: 240, top: 76, bottom: 160 }), card)
    expect(seen.right).toBeUndefined()
    expect(Math.abs((seen.left ?? NaN) - 70)).toBeLessThanOrEqual(1)
  })
})
