import { expect, it } from 'vitest'
import { bodyFrame } from '../../src/capture/frame.ts'
import { napeByContour } from '../../src/capture/nape.ts'
import type { OutlineRow } from '../../src/capture/reading.ts'

const joint = (x: number, y: number) => ({ at: { x, y }, score: 1 })
/** Torso of 300 px: shoulders at 400, hips at 700; ears at 300, knees at 950. */
const frame = bodyFrame({
  left_ear: joint(540, 300),
  right_ear: joint(560, 300),
  left_shoulder: joint(540, 400),
  right_shoulder: joint(560, 400),
  left_hip: joint(540, 700),
  right_hip: joint(560, 700),
  left_knee: joint(540, 950),
  right_knee: joint(560, 950),
})
if (!frame) throw new Error('no frame')
const back = (row: OutlineRow): number => row.right

/** A hollow at 340, then a half wave of a cosine down to a round that begins at 420. */
const outline: OutlineRow[] = Array.from({ length: 400 }, (_, k) => {
  const y = 250 + k
  const way = Math.min(1, Math.max(0, (y - 340) / 80))
  const above = Math.max(0, 340 - y) * 0.2
  return { y, left: 400, right: 600 + above + 30 * (1 - Math.cos(Math.PI * way)) }
})

it('lies the measured share of the way from the hollow to the turn', () => {
  // Steepest half way down the half wave, at 380; 0.093 of 300 and 0.224 of 40 below the hollow (nape.ts).
  const expected = 340 + 0.093 * 300 + 0.224 * 40
  expect(Math.abs((napeByContour(outline, frame, back) ?? NaN) - expected)).toBeLessThan(3)
})

it('says nothing where the outline is too short to show a hollow', () => {
  expect(napeByContour(outline.slice(0, 12), frame, back)).toBeUndefined()
})
