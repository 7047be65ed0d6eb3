import { expect, test } from 'vitest'
import { homographyOf } from '../../src/capture/card-plane.ts'
import type { Corners } from '../../src/capture/card-marker.ts'
import { mmPerPxByPose } from '../../src/capture/card-pose.ts'

const [F, CX, CY] = [1077, 540, 720]

/** Four corners of a square of 100 mm at depth 2400, by pixel = middle + f X / Z (Hartley, Zisserman 6.1). */
function seen(turn: number, tilt: number, x: number, y: number): Corners {
  const [a, b] = [(turn * Math.PI) / 180, (tilt * Math.PI) / 180]
  const along = [Math.cos(a), 0, Math.sin(a)] as const
  const down = [-Math.sin(b) * Math.sin(a), Math.cos(b), Math.sin(b) * Math.cos(a)] as const
  const middle = [(x * 2400) / F, (y * 2400) / F, 2400] as const
  const corner = (u: number, v: number) => {
    const at = (k: 0 | 1 | 2): number => middle[k] + along[k] * u + down[k] * v
    return { x: CX + (F * at(0)) / at(2), y: CY + (F * at(1)) / at(2) }
  }
  return [corner(-50, -50), corner(50, -50), corner(50, 50), corner(-50, 50)]
}

const SQUARE: Corners = [
  { x: 0, y: 0 },
  { x: 100, y: 0 },
  { x: 100, y: 100 },
  { x: 0, y: 100 },
]

test.each([
  [10, 0, 0, 0],
  [10, 0, 200, 100],
  [-10, 5, 200, 100],
  [0, 12, -250, 300],
  [15, -15, 150, 250],
] as const)('turned %d, tilted %d, off the middle by %d, %d px: Z / f', (turn, tilt, x, y) => {
  const toPicture = homographyOf(SQUARE, seen(turn, tilt, x, y))
  const mmPerPx = toPicture && mmPerPxByPose(toPicture, { x: 50, y: 50 }, { x: CX, y: CY }, F)
  expect(mmPerPx).toBeCloseTo(2400 / F, 4)
})

test('a focal length 8 % wrong costs less than half a per cent', () => {
  const toPicture = homographyOf(SQUARE, seen(15, -15, 150, 250))
  const mmPerPx =
    toPicture && mmPerPxByPose(toPicture, { x: 50, y: 50 }, { x: CX, y: CY }, F * 1.08)
  expect(Math.abs((mmPerPx ?? 0) / (2400 / F) - 1)).toBeLessThan(0.005)
})
