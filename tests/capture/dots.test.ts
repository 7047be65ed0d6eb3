import { describe, expect, it } from 'vitest'
import { findDots } from '../../src/capture/dots.ts'
import type { BodyFrame } from '../../src/capture/frame.ts'
import type { Mask } from '../../src/capture/person.ts'
import type { Picture } from '../../src/capture/picture.ts'

/** A body of grey cloth 200 px wide, shoulders at 100, hips at 300 (200 px are a torso of 490 mm). */
const [WIDTH, HEIGHT, MM_PER_PX] = [400, 420, 490 / 200]
const frame: BodyFrame = {
  ear: { x: 200, y: 20 },
  shoulder: { x: 200, y: 100 },
  hip: { x: 200, y: 300 },
  knee: { x: 200, y: 400 },
  torso: 200,
  level: (share) => 100 + 200 * share,
}
const mask: Mask = {
  width: WIDTH,
  height: HEIGHT,
  data: Uint8Array.from({ length: WIDTH * HEIGHT }, (_, k) =>
    Math.abs((k % WIDTH) - 200) < 100 ? 255 : 0,
  ),
}
type Spot = readonly [x: number, y: number, a: number, b: number]

/** Spots as ellipses of half axes a, b; `colour` shades from left to right as a light from the side does. */
function dressed(
  spots: readonly Spot[],
  colour: readonly [number, number, number],
  cloth: readonly [number, number, number] = [90, 88, 92],
): Picture {
  const data = new Uint8ClampedArray(WIDTH * HEIGHT * 4)
  for (let k = 0; k < WIDTH * HEIGHT; k++) {
    const [x, y] = [(k % WIDTH) + 0.5, Math.floor(k / WIDTH) + 0.5]
    const on = spots.some(([sx, sy, a, b]) => ((x - sx) / a) ** 2 + ((y - sy) / b) ** 2 < 1)
    const shade = 1.1 - (0.5 * x) / WIDTH
    const own = on ? colour : cloth
    data.set([...own.map((v) => v * shade), 255], k * 4)
  }
  return { width: WIDTH, height: HEIGHT, data }
}
/** A dot of 19 mm is 7.8 px across here. */
const R = 19 / 2 / MM_PER_PX
const front: readonly Spot[] = [
  [240, 165, R, R],
  [161, 166, R, R],
  [201, 232, R, R],
]
const HUES = [
  ['magenta', [235, 16, 191]],
  ['green', [20, 190, 60]],
  ['blue', [30, 60, 230]],
  ['yellow', [240, 215, 20]],
] as const

describe('sticker dots', () => {
  it.each(HUES)('%s: apexes and waist to half a pixel, left and right hers', (_, colour) => {
    const dots = findDots('front', dressed(front, colour), mask, frame, MM_PER_PX, -1)
    expect(Object.keys(dots).sort()).toEqual(['apexLeft', 'apexRight', 'waistFront'])
    // Facing the camera, her left is on the right of the picture. Truth: where they were painted.
    expect(
      Math.hypot((dots.apexLeft?.at.x ?? 0) - 240, (dots.apexLeft?.at.y ?? 0) - 165),
    ).toBeLessThan(0.5)
    expect(
      Math.hypot((dots.apexRight?.at.x ?? 0) - 161, (dots.apexRight?.at.y ?? 0) - 166),
    ).toBeLessThan(0.5)
    expect(
      Math.hypot((dots.waistFront?.at.x ?? 0) - 201, (dots.waistFront?.at.y ?? 0) - 232),
    ).toBeLessThan(0.5)
  })

  it('finds them foreshortened, as less of a dot', () => {
    const askew: readonly Spot[] = [[240, 165, R * 0.6, R], ...front.slice(1)]
    const dots = findDots('front', dressed(askew, [235, 16, 191]), mask, frame, MM_PER_PX, -1)
    expect(dots.apexLeft?.share).toBeGreaterThan(0.4)
    expect(dots.apexLeft?.share).toBeLessThan(0.8)
  })

  it('takes nape and waist from the back', () => {
    const spots: readonly Spot[] = [
      [200, 70, R, R * 0.8],
      [200, 230, R, R],
    ]
    const dots = findDots('back', dressed(spots, [20, 190, 60]), mask, frame, MM_PER_PX, -1)
    expect(Object.keys(dots).sort()).toEqual(['nape', 'waistBack'])
  })

  const shoulders: readonly Spot[] = [
    [205, 82, R, R],
    [210, 108, R, R],
  ]
  it('from the side takes the upper of the two dots by the shoulder for the side neck', () => {
    const dots = findDots('side', dressed(shoulders, [30, 60, 230]), mask, frame, MM_PER_PX, -1)
    expect(dots.sideNeckLeft?.at.y).toBeCloseTo(82, 0)
    expect(dots.shoulderLeft?.at.y).toBeCloseTo(108, 0)
  })

  it('from the side takes the hip dot of the near side', () => {
    const picture = dressed([...shoulders, [208, 316, R, R]], [20, 190, 60])
    const dots = findDots('side', picture, mask, frame, MM_PER_PX, -1)
    expect(Object.keys(dots).sort()).toEqual(['hipLeft', 'shoulderLeft', 'sideNeckLeft'])
    expect(
      Math.hypot((dots.hipLeft?.at.x ?? 0) - 208, (dots.hipLeft?.at.y ?? 0) - 316),
    ).toBeLessThan(0.5)
  })

  // A hand is about 80 mm by 180, a finger 15 by 70 (DIN 33402-2, women, from memory).
  it.each<[string, Spot, readonly string[]]>([
    ['a whole hand, as much as cloth,', [195, 312, 40 / MM_PER_PX, 90 / MM_PER_PX], []],
    [
      'a hand half seen',
      [195, 312, 20 / MM_PER_PX, 45 / MM_PER_PX],
      ['shoulderLeft', 'sideNeckLeft'],
    ],
    ['a finger', [195, 312, 7.5 / MM_PER_PX, 35 / MM_PER_PX], ['shoulderLeft', 'sideNeckLeft']],
    ['a sliver at the rim of the sheet', [208, 316, R, 0.2 * R], ['shoulderLeft', 'sideNeckLeft']],
  ])('takes %s of the same colour for no hip dot', (_, spot, found) => {
    const picture = dressed([...shoulders, spot], [20, 190, 60])
    const dots = findDots('side', picture, mask, frame, MM_PER_PX, -1)
    expect(Object.keys(dots).sort()).toEqual(found)
  })

  it.each([
    ['one spot alone', dressed(front.slice(0, 1), [235, 16, 191])],
    ['cloth of a strong colour', dressed([], [0, 0, 0], [20, 170, 60])],
    [
      'spots too large',
      dressed(
        front.map(([x, y]) => [x, y, 3 * R, 3 * R]),
        [235, 16, 191],
      ),
    ],
    [
      'lines',
      dressed(
        front.map(([x, y]) => [x, y, 5 * R, 1]),
        [235, 16, 191],
      ),
    ],
    [
      'a print of spots',
      dressed(
        Array.from({ length: 60 }, (_, k): Spot => [120 + (k % 8) * 22, 90 + (k >> 3) * 28, R, R]),
        [235, 16, 191],
      ),
    ],
  ])('%s: no dots', (_, picture) => {
    expect(findDots('front', picture, mask, frame, MM_PER_PX, -1)).toEqual({})
  })
})
