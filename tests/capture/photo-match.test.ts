/** An invented trunk seen twice: the second picture is the first one scaled, turned and moved by known amounts. */
import { expect, test } from 'vitest'
import type { Card } from '../../src/capture/card.ts'
import type { Joint } from '../../src/capture/person.ts'
import { matchPhotos } from '../../src/capture/photo-match.ts'
import type { OutlineRow, ViewReading } from '../../src/capture/reading.ts'
import { carried, inverse, scaleBy, turnBy, type Similarity } from '../../src/capture/similarity.ts'
import { distance, type Point } from '../../src/geometry/point.ts'
import { mm } from '../../src/units/length.ts'

const SIZE = { width: 1000, height: 1400 }
/** Half breadth of the trunk: wide at bust and hips, narrow between, px. */
const half = (y: number): number => 75 + 18 * Math.cos(((y - 480) / 220) * Math.PI * 2)
const AT: Readonly<Record<string, Point>> = {
  nose: { x: 500, y: 250 },
  left_ear: { x: 530, y: 250 },
  right_ear: { x: 470, y: 250 },
  left_shoulder: { x: 580, y: 380 },
  right_shoulder: { x: 420, y: 380 },
  left_hip: { x: 545, y: 620 },
  right_hip: { x: 455, y: 620 },
  left_knee: { x: 545, y: 880 },
  right_knee: { x: 455, y: 880 },
  left_ankle: { x: 545, y: 1100 },
  right_ankle: { x: 455, y: 1100 },
  left_wrist: { x: 700, y: 640 },
  right_wrist: { x: 300, y: 640 },
}

function card(by: Similarity, mmPerPx: number): Card {
  const [p = AT.nose, q, r, s] = [
    { x: 475, y: 640 },
    { x: 525, y: 640 },
    { x: 525, y: 690 },
    { x: 475, y: 690 },
  ].map((corner) => carried(by, corner))
  if (!p || !q || !r || !s) throw new Error('test card')
  const side = mm(100)
  return {
    kind: 'sheet',
    corners: [p, q, r, s],
    widthMm: side,
    heightMm: side,
    homography: [1, 0, 0, 0, 1, 0, 0, 0, 1],
    mmPerPx,
    residualPx: 0.05,
  }
}

interface Muslin {
  readonly by: Similarity
  readonly scale?: number
  /** Taken in at the waist on one side, px. */
  readonly takenIn?: number
  /** The joints of the model stray by this, px, in turn this way and that. */
  readonly stray?: number
}

function photo({ by, scale = 2, takenIn = 0, stray = 0 }: Muslin): ViewReading {
  const back = inverse(by)
  const edge = (y: number, side: -1 | 1): number => {
    // Walk along the row until the edge of the first picture is crossed.
    let inner = carried(by, { x: 500, y: carried(back, { x: 500, y }).y }).x
    let outer = inner + side * 300
    for (let k = 0; k < 50; k++) {
      const middle = (inner + outer) / 2
      const here = carried(back, { x: middle, y })
      const waist = takenIn * Math.exp(-(((here.y - 510) / 30) ** 2))
      const reach = half(here.y) - (side === 1 ? waist : 0)
      if ((here.x - 500) * side < reach) inner = middle
      else outer = middle
    }
    return inner
  }
  const outline: OutlineRow[] = []
  for (let y = 200; y < 1300; y++) {
    const level = carried(back, { x: 500, y }).y
    if (level > 400 && level < 700)
      outline.push({ y, left: edge(y + 0.5, -1), right: edge(y + 0.5, 1) })
  }
  const joints = Object.fromEntries(
    Object.entries(AT).map(([name, p], k): [string, Joint] => {
      const { x, y } = carried(by, p)
      const off = k % 2 ? stray : -stray
      return [name, { at: { x: x + off, y: y - off }, score: 1 }]
    }),
  )
  return {
    view: 'front',
    size: SIZE,
    person: { ok: true, score: 1, joints },
    card: scale ? { ok: true, card: card(by, scale) } : { ok: false, reason: 'no card' },
    points: {},
    missing: {},
    outline,
    facing: -1,
  }
}

const STILL: Similarity = { a: 1, b: 0, dx: 0, dy: 0 }
/** 0.9 times as large, turned by 1.5 degrees, moved. */
const TURN = (1.5 * Math.PI) / 180
const MOVED: Similarity = { a: 0.9 * Math.cos(TURN), b: 0.9 * Math.sin(TURN), dx: 60, dy: 90 }

function matched(earlier: ViewReading, later: ViewReading) {
  const outcome = matchPhotos(earlier, later)
  if (!outcome.ok) throw new Error(outcome.reason)
  return outcome.match
}

/** Farthest that a place of the trunk lies from where it was, px of the earlier picture. */
const off = (onto: Similarity): number =>
  Math.max(
    ...['left_shoulder', 'right_shoulder', 'left_hip', 'right_hip'].map((name) => {
      const at = AT[name] ?? { x: 0, y: 0 }
      return distance(carried(onto, carried(MOVED, at)), at)
    }),
  )

test('the second photo is brought over the first', () => {
  const match = matched(photo({ by: STILL }), photo({ by: MOVED, scale: 2 / 0.9 }))
  expect(off(match.onto)).toBeLessThan(0.3)
  expect(scaleBy(match.onto)).toBeCloseTo(1 / 0.9, 3)
  expect(turnBy(match.onto)).toBeCloseTo(-TURN, 3)
  expect(match.apart?.shoulders).toBeLessThan(1)
  expect(match.card).toBe('both')
})

test('joints that stray by 6 px do not pull the edges off each other, and are told', () => {
  const match = matched(photo({ by: STILL }), photo({ by: MOVED, scale: 2 / 0.9, stray: 6 }))
  expect(off(match.onto)).toBeLessThan(2)
  // 6 px each way, 1/0.9 larger, 2 mm a pixel at the card and more where the body is.
  expect(match.apart?.shoulders).toBeGreaterThan(15)
})

test('a waist taken in on one side does not turn the photo', () => {
  const match = matched(photo({ by: STILL }), photo({ by: MOVED, scale: 2 / 0.9, takenIn: 12 }))
  expect(off(match.onto)).toBeLessThan(2)
})

test('without a card nothing is told in mm', () => {
  const match = matched(photo({ by: STILL, scale: 0 }), photo({ by: MOVED, scale: 0 }))
  expect(match.card).toBe('none')
  expect(match.apart).toBeUndefined()
  expect(match.mmPerPx).toBeUndefined()
  expect(off(match.onto)).toBeLessThan(0.5)
})

test('one card serves both photos', () => {
  const first = matched(photo({ by: STILL }), photo({ by: MOVED, scale: 0 }))
  const second = matched(photo({ by: STILL, scale: 0 }), photo({ by: MOVED, scale: 2 / 0.9 }))
  expect([first.card, second.card]).toEqual(['earlier', 'later'])
  expect(second.mmPerPx).toBeCloseTo(first.mmPerPx ?? 0, 1)
})

test('two views, and a photo without a person, are refused with what to do', () => {
  const front = photo({ by: STILL })
  const side = matchPhotos(front, { ...front, view: 'side' })
  expect(side).toEqual({ ok: false, reason: expect.stringContaining('same view') as string })
  const nobody = matchPhotos(front, { ...front, person: { ok: false, reason: '' } })
  expect(nobody).toEqual({ ok: false, reason: expect.stringContaining('later photo') as string })
})
