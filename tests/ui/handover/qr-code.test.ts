/**
 * A square made by one library is read by the other (ISO/IEC 18004 is what they share), as large as
 * our codes are, coarse and fine, turned, dim and with noise.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { writeCode } from '../../../src/handover/code.ts'
import { QUIET_ZONE, squareOf, textIn, type Square } from '../../../src/ui/handover/qr-code.ts'
import { FIRST, SECRET, subtle } from '../../handover/invented.ts'

const code = async (): Promise<string> =>
  (await writeCode(subtle, { side: 'offer', about: FIRST, secret: SECRET })).join('')

interface Shot {
  /** Pixels a module. */
  readonly scale: number
  readonly dark?: number
  readonly light?: number
  /** Grey levels up or down, at random. */
  readonly noise?: number
  /** Quarter turns. */
  readonly turns?: number
}
/** A picture of the square as it is drawn on the screen. */
function picture({ size, path }: Square, shot: Shot): ImageData {
  const { scale, dark = 0, light = 255, noise = 0, turns = 0 } = shot
  const cells = size + 2 * QUIET_ZONE
  const width = cells * scale
  const data = new Uint8ClampedArray(width * width * 4).fill(255)
  const filled = cellsOf(path)
  const isDark = (x: number, y: number): boolean => filled.has(`${x} ${y}`)
  let state = 7
  for (let y = 0; y < width; y += 1)
    for (let x = 0; x < width; x += 1) {
      let [cx, cy] = [Math.floor(x / scale) - QUIET_ZONE, Math.floor(y / scale) - QUIET_ZONE]
      for (let k = 0; k < turns; k += 1) [cx, cy] = [cy, size - 1 - cx]
      state = (state * 1_103_515_245 + 12_345) >>> 0
      const grain = noise * ((state >>> 16) / 32_768 - 1)
      data.fill(
        (isDark(cx, cy) ? dark : light) + grain,
        (y * width + x) * 4,
        (y * width + x) * 4 + 3,
      )
    }
  return { data, width, height: width, colorSpace: 'srgb' } as ImageData
}
function cellsOf(path: string): ReadonlySet<string> {
  const runs = [...path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)].map((run) =>
    run.slice(1).map(Number),
  )
  return new Set(
    runs.flatMap(([x = 0, y = 0, long = 0]) =>
      Array.from({ length: long }, (_, k) => `${x + k} ${y}`),
    ),
  )
}

test('our code, coarse and fine, every way up, on a dim and grainy screen', async () => {
  const text = await code()
  const square = squareOf(text)
  for (const shot of [
    { scale: 3 },
    { scale: 4, turns: 1 },
    { scale: 5, turns: 2 },
    { scale: 6, turns: 3 },
    { scale: 6, dark: 60, light: 150 },
    { scale: 6, noise: 40 },
  ])
    expect(textIn(picture(square, shot)), JSON.stringify(shot)).toBe(text)
})

test('a code with three addresses takes at most 57 modules a side (version 10)', async () => {
  expect(squareOf(await code()).size).toBeLessThanOrEqual(57)
})

test('any text of our symbols', () => {
  const symbols = fc.string({
    unit: fc.constantFrom(...'0123456789ABCDEFGHJKMNPQRSTVWXYZ'),
    minLength: 100,
    maxLength: 260,
  })
  fc.assert(
    fc.property(symbols, (text) => {
      expect(textIn(picture(squareOf(text), { scale: 4 }))).toBe(text)
    }),
    { numRuns: 20 },
  )
})

test('a picture without a square, and one that is half covered, hold nothing', async () => {
  const square = squareOf(await code())
  const half = picture(square, { scale: 5 })
  half.data.fill(255, 0, half.data.length / 2)
  expect(textIn(half)).toBeUndefined()
  expect(
    textIn({ ...half, data: new Uint8ClampedArray(half.data.length).fill(90) }),
  ).toBeUndefined()
})
