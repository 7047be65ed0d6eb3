import { describe, expect, it } from 'vitest'
import { crownOf, tied } from '../../src/capture/body-height.ts'
import type { Card } from '../../src/capture/card.ts'
import type { Readings, View, ViewReading } from '../../src/capture/reading.ts'
import { scaleAt } from '../../src/capture/scale.ts'
import { mm } from '../../src/units/length.ts'

/** A body 1080 mm from crown to knee, each photo 2 mm a px in its middle plane; `off` spoils the card's scale. */
function reading(view: View, looks: number, off = 1): ViewReading {
  const px = (1080 / 2) * looks
  const joint = (x: number, y: number) => ({ at: { x, y }, score: 1 })
  const joints = Object.fromEntries(
    (
      [
        ['ear', 30, 60],
        ['shoulder', 70, 150],
        ['hip', 45, 380],
        ['knee', 50, 20 + px],
        ['wrist', 160, 400],
      ] as const
    ).flatMap(([name, out, y]) => [
      [`left_${name}`, joint(500 + out, y)],
      [`right_${name}`, joint(500 - out, y)],
    ]),
  )
  const card: Card = {
    kind: 'sheet',
    corners: [
      { x: 480, y: 300 },
      { x: 520, y: 300 },
      { x: 520, y: 340 },
      { x: 480, y: 340 },
    ],
    widthMm: mm(100),
    heightMm: mm(100),
    homography: [1, 0, 0, 0, 1, 0, 0, 0, 1],
    mmPerPx: 2 * off,
    residualPx: 0.1,
  }
  return {
    view,
    size: { width: 1080, height: 1440 },
    person: { ok: true, score: 1, joints },
    card: { ok: true, card },
    points: {},
    missing: {},
    outline: Array.from({ length: 500 }, (_, k) => ({ y: 20 + k, left: 430, right: 570 })),
    facing: -1,
    crown: 20,
  }
}
const scaleOf = (readings: Readings, view: View) => {
  const one = readings[view]
  const scale = one && scaleAt(one, 0, 0)
  if (!scale) throw new Error(view)
  return scale
}
/** The three photos with the middle planes' scales made equal before one is spoiled: offsets of scale.ts. */
function photos(spoilt: number): Readings {
  const bare = {
    front: reading('front', 1),
    side: reading('side', 1),
    back: reading('back', 1),
  }
  const middle = scaleOf(bare, 'back').mmPerPx
  const even = (view: View, looks: number, by: number): ViewReading => {
    const own = reading(view, looks)
    const less = (scaleOf({ [view]: own }, view).mmPerPx - middle * by) / 2
    return reading(view, looks, 1 - less)
  }
  return {
    front: even('front', 1, 1),
    side: even('side', 1, spoilt),
    back: even('back', 1, 1),
  }
}

describe('one body ties the scales of her photos', () => {
  it('changes nothing when they agree, and makes each surer', () => {
    const readings = photos(1)
    const made = tied(readings)
    for (const view of ['front', 'side', 'back'] as const) {
      expect(scaleOf(made, view).mmPerPx / scaleOf(readings, view).mmPerPx).toBeCloseTo(1, 3)
      expect(scaleOf(made, view).sdShare).toBeLessThan(scaleOf(readings, view).sdShare)
    }
  })

  it('draws a scale 4 % too large towards the other two, never past them', () => {
    const readings = photos(1.04)
    const before = scaleOf(readings, 'side').mmPerPx / scaleOf(photos(1), 'side').mmPerPx
    const after = scaleOf(tied(readings), 'side').mmPerPx / scaleOf(photos(1), 'side').mmPerPx
    expect(before).toBeCloseTo(1.04, 3)
    expect(after).toBeLessThan(1.03)
    expect(after).toBeGreaterThan(1)
  })

  it('leaves a single photo as it is', () => {
    const { side } = photos(1.04)
    expect(side && tied({ side }).side?.tie).toBeUndefined()
  })
})

it('the crown is the top of the head over the ears, not a hand held higher', () => {
  const { person } = reading('front', 1)
  if (!person.ok) throw new Error(person.reason)
  const data = new Uint8Array(1080 * 1440)
  const fill = (x0: number, x1: number, y0: number, y1: number): void => {
    for (let y = y0; y < y1; y++) data.fill(255, y * 1080 + x0, y * 1080 + x1)
  }
  fill(460, 540, 20, 700)
  fill(600, 640, 2, 300)
  const crown = crownOf({ width: 1080, height: 1440, data }, person.joints)
  // Row 20 begins at 20; its middle is at 20.5 and that of row 19 at 19.5 (picture.ts).
  expect(crown).toBeCloseTo(20, 1)
})
