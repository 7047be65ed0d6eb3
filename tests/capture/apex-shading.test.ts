import { describe, expect, it } from 'vitest'
import { apexSpots, pickApexes } from '../../src/capture/apex-shading.ts'
import type { Picture } from '../../src/capture/picture.ts'

/**
 * A chest drawn by Lambert's law (light = normal . direction): two broad bumps 60 mm wide with an apex
 * of 7 mm on each, 2 mm a px, a torso of 245 px. What is found must be where the apexes were put.
 */
const [WIDTH, HEIGHT, TORSO] = [160, 140, 245]
type Bump = readonly [x: number, y: number, sd: number, height: number]

function chest(
  bumps: readonly Bump[],
  light: readonly [number, number, number],
  fold = false,
): Picture {
  const height = (x: number, y: number): number =>
    bumps.reduce(
      (z, [bx, by, sd, h]) => z + h * Math.exp(-(((x - bx) ** 2 + (y - by) ** 2) / (2 * sd * sd))),
      0,
    ) + (fold ? 2 * Math.exp(-(((y - 0.8 * x - 10) / 4) ** 2)) : 0)
  const length = Math.hypot(...light)
  const data = new Uint8ClampedArray(WIDTH * HEIGHT * 4)
  for (let y = 0; y < HEIGHT; y++)
    for (let x = 0; x < WIDTH; x++) {
      const n = [
        height(x - 0.5, y) - height(x + 0.5, y),
        height(x, y - 0.5) - height(x, y + 0.5),
        1,
      ] as const
      const shade =
        (n[0] * light[0] + n[1] * light[1] + n[2] * light[2]) / (Math.hypot(...n) * length)
      const grain = ((x * 7 + y * 13) % 5) - 2
      data.set(
        [0.9, 0.5, 0.7].map((c) => 40 + 150 * c * Math.max(0.1, shade) + grain),
        (y * WIDTH + x) * 4,
      )
    }
  return { width: WIDTH, height: HEIGHT, data }
}
const rows = Array.from({ length: HEIGHT }, (_, y) => ({ y, left: 5, right: 155 }))
const broad: readonly Bump[] = [
  [34, 72, 16, 18],
  [128, 70, 16, 18],
]
const tips: readonly Bump[] = [
  [31.5, 72.5, 2.6, 3],
  [130.5, 70.5, 2.6, 3],
]
const search = {
  left: { x: 122, y: 66 },
  right: { x: 38, y: 66 },
  torso: TORSO,
  sdY: 6,
}

describe('apexes by the light on the cloth', () => {
  it.each([
    ['from the side', [0.6, -0.3, 1]],
    ['from the other side and above', [-0.4, -0.7, 1]],
    ['from above', [0.1, -0.9, 1]],
  ] as const)('light %s: spacing to 6 mm, each place to 10 mm', (_, light) => {
    const found = pickApexes(apexSpots(chest([...broad, ...tips], light), rows, TORSO), search)
    // Facing the camera, her left is on the right of the picture. The lit flank of an apex stands
    // out more than its top, on both alike: 10 mm are 5 px here, 6 mm of spacing 3 px.
    const [left, right] = [found?.left.at.x ?? 0, found?.right.at.x ?? 0]
    expect(Math.abs(left - 130.5)).toBeLessThan(5)
    expect(Math.abs(right - 31.5)).toBeLessThan(5)
    expect(Math.abs(left - right - 99)).toBeLessThan(3)
  })

  it('says nothing of a flat chest, nor of one with a fold across', () => {
    expect(pickApexes(apexSpots(chest([], [0.6, -0.3, 1]), rows, TORSO), search)).toBeUndefined()
    expect(
      pickApexes(apexSpots(chest([], [0.6, -0.3, 1], true), rows, TORSO), search),
    ).toBeUndefined()
  })

  it('takes no pair of which one lies a hand lower than the other', () => {
    const askew: readonly Bump[] = [
      [31.5, 30, 2.6, 3],
      [130.5, 80, 2.6, 3],
    ]
    expect(pickApexes(apexSpots(chest(askew, [0.6, -0.3, 1]), rows, TORSO), search)).toBeUndefined()
  })
})
