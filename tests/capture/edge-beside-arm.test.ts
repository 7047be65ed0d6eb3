import { describe, expect, it } from 'vitest'
import { withoutArms } from '../../src/capture/arms.ts'
import { edgeBesideArm } from '../../src/capture/edge-beside-arm.ts'
import type { Picture } from '../../src/capture/picture.ts'
import type { OutlineRow } from '../../src/capture/reading.ts'

// A drawing, worked out by hand: a trunk in purple cloth whose right edge bulges at a bust line, an
// arm to its right. Rows 0 to 59: trunk and arm touch; 60 to 99: wall between them, but the mask
// takes both as one down to row 79.
const [WIDTH, HEIGHT] = [240, 160]
const trunkRight = (y: number): number => 150 + 8 * Math.exp(-(((y - 55) / 14) ** 2))
const trunkLeft = 60
type Rgb = readonly [number, number, number]
const [WALL, CLOTH, SKIN]: readonly Rgb[] = [
  [150, 170, 150],
  [90, 75, 95],
  [180, 130, 95],
]
const armLeft = (y: number): number => (y < 60 ? trunkRight(y) : trunkRight(y) + (y - 60) * 0.5)

function drawn(arm: Rgb): Picture {
  const data = new Uint8ClampedArray(WIDTH * HEIGHT * 4)
  for (let y = 0; y < HEIGHT; y++)
    for (let x = 0; x < WIDTH; x++) {
      const cover = (from: number, to: number): number =>
        Math.max(0, Math.min(1, x + 1 - from)) * Math.max(0, Math.min(1, to - x))
      const trunk = cover(trunkLeft, trunkRight(y + 0.5))
      const limb = cover(armLeft(y + 0.5), armLeft(y + 0.5) + 40) * (1 - trunk)
      for (let c = 0; c < 3; c++)
        data[(y * WIDTH + x) * 4 + c] =
          (CLOTH?.[c] ?? 0) * trunk + (arm[c] ?? 0) * limb + (WALL?.[c] ?? 0) * (1 - trunk - limb)
      data[(y * WIDTH + x) * 4 + 3] = 255
    }
  return { width: WIDTH, height: HEIGHT, data }
}
/** As a coarse mask gives it: below row 80 the trunk, above it arm and trunk in one. */
const outline: readonly OutlineRow[] = Array.from({ length: HEIGHT }, (_, y) => ({
  y,
  left: trunkLeft,
  right: y < 80 ? armLeft(y + 0.5) + 40 : trunkRight(y + 0.5),
}))
const farthest = (rows: readonly OutlineRow[], from: number, to: number): number =>
  Math.max(...rows.slice(from, to).map(({ y, right }) => Math.abs(right - trunkRight(y + 0.5))))

describe('the edge of a trunk that the mask joins to an arm', () => {
  it('is followed between cloth and wall, and on between cloth and bare arm', () => {
    const trunk = withoutArms(outline, 120, drawn(SKIN ?? [0, 0, 0]))
    // Followed for half of the trunk's width, 45 rows, from 4 rows below the jump.
    expect(trunk.seenFrom.right).toBeLessThan(45)
    expect(farthest(trunk.rows, 45, HEIGHT)).toBeLessThan(0.5)
  })

  it('ends where a sleeve of the same cloth touches the trunk without a crease', () => {
    const sleeved = withoutArms(outline, 120, drawn(CLOTH ?? [0, 0, 0]))
    // 4 px of wall are what a colour over two pixels to each side needs: row 68 down.
    expect(sleeved.seenFrom.right).toBeGreaterThan(55)
    expect(farthest(sleeved.rows, 68, HEIGHT)).toBeLessThan(0.5)
  })

  it('is carried on where no picture is given', () => {
    expect(withoutArms(outline, 120).seenFrom.right).toBeGreaterThanOrEqual(80)
  })

  it('is not found on a plain ground', () => {
    const plain = { width: WIDTH, height: HEIGHT, data: new Uint8ClampedArray(WIDTH * HEIGHT * 4) }
    const edge = outline.map(({ right }) => right)
    const search = { first: 0, from: 84, step: -1, width: 90, outward: 1 } as const
    expect(edgeBesideArm(plain, edge, search)).toEqual([])
  })
})
