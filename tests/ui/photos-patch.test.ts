import { expect, it } from 'vitest'
import type { ViewReading } from '../../src/capture/reading.ts'
import { arrow, headPatch, nearestWithin, partShown } from '../../src/ui/measure/photos/patch.ts'

const size = { width: 1000, height: 1500 }
const joint = (x: number, y: number) => ({ at: { x, y }, score: 0.9 })
const reading: ViewReading = {
  view: 'front',
  size,
  person: {
    ok: true,
    score: 0.9,
    joints: {
      nose: joint(500, 205),
      left_ear: joint(530, 200),
      right_ear: joint(470, 200),
      left_shoulder: joint(600, 320),
      right_shoulder: joint(400, 320),
      left_knee: joint(550, 1000),
      right_knee: joint(450, 1000),
    },
  },
  card: { ok: false, reason: 'No card.' },
  points: {},
  missing: {},
  outline: [],
  facing: -1,
}

// Head height is about an eighth of stature and ears lie at its middle (figure drawing, from memory).
it('covers nose and ears, a hand above them, and ends above the shoulders', () => {
  const { x, y, width, height } = headPatch(size, reading)
  expect(x).toBeLessThan(470)
  expect(x + width).toBeGreaterThan(530)
  expect(y).toBeLessThan(100)
  expect(y + height).toBeGreaterThan(240)
  expect(y + height).toBeLessThan(320)
})

it('covers the whole width of the upper third where nobody was found', () => {
  expect(headPatch(size)).toEqual({ x: 0, y: 0, width: 1000, height: 500 })
})

it('shows from the crown to the knee, inside the picture', () => {
  const part = partShown(size, reading)
  expect(part.y + part.height).toBe(1000)
  expect(part.x).toBeGreaterThan(0)
  expect(part.x + part.width).toBeLessThanOrEqual(1000)
  expect(partShown(size)).toEqual({ x: 0, y: 0, width: 1000, height: 1500 })
})

it('takes the nearest ring in reach, and none beyond it', () => {
  const rings = [
    ['a', { x: 0, y: 0 }],
    ['b', { x: 30, y: 0 }],
  ] as const
  expect(nearestWithin(rings, { x: 20, y: 0 }, 26)).toBe('b')
  expect(nearestWithin(rings, { x: 100, y: 0 }, 26)).toBeUndefined()
})

it('arrows move by one pixel, with Shift by ten', () => {
  expect(arrow('ArrowUp', false)).toEqual({ x: 0, y: -1 })
  expect(arrow('ArrowRight', true)).toEqual({ x: 10, y: 0 })
  expect(arrow('Tab', false)).toBeUndefined()
})
