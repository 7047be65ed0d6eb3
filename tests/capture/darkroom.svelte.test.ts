/** Photos opened, taken and covered in a real browser, by the real worker. */
import { describe, expect, it } from 'vitest'
import { openDarkroom } from '../../src/capture/darkroom.ts'
import type { PhotoOutcome } from '../../src/capture/photo.ts'
import { withExif } from './exif-made.ts'

const room = openDarkroom()
type Colour = readonly [number, number, number]
const [RED, BLUE]: readonly [Colour, Colour] = [
  [200, 40, 40],
  [40, 40, 200],
]
const css = ([r, g, b]: Colour): string => `rgb(${r} ${g} ${b})`

/** Left half red, right half blue. */
async function halves(width: number, height: number): Promise<OffscreenCanvas> {
  const canvas = new OffscreenCanvas(width, height)
  const context = canvas.getContext('2d')
  if (!context) throw new Error('no 2d context')
  context.fillStyle = css(RED)
  context.fillRect(0, 0, width, height)
  context.fillStyle = css(BLUE)
  context.fillRect(width / 2, 0, width / 2, height)
  return canvas
}
const jpegOf = async (canvas: OffscreenCanvas): Promise<Uint8Array<ArrayBuffer>> =>
  new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer())
const file = (bytes: Uint8Array): Blob => new Blob([Uint8Array.from(bytes)], { type: 'image/jpeg' })

function opened(photo: PhotoOutcome): Extract<PhotoOutcome, { ok: true }> {
  if (!photo.ok) throw new Error(photo.reason)
  return photo
}
function at(photo: PhotoOutcome, x: number, y: number): Colour {
  const { data, width } = opened(photo).picture
  const k = (y * width + x) * 4
  return [data[k] ?? 0, data[k + 1] ?? 0, data[k + 2] ?? 0]
}
/** JPEG changes a plain colour by a few of 255. */
const near = (seen: Colour, wanted: Colour): void =>
  seen.forEach((value, k) => expect(Math.abs(value - (wanted[k] ?? 0))).toBeLessThan(12))

describe('a photo with metadata', () => {
  it('is turned as it says, gives its focal length, and is kept without any of it', async () => {
    // Orientation 6: the stored right side is the bottom (Exif 2.32, 4.6.4: row 0 is the right).
    const said = { orientation: 6, focal: 26, words: 'a place and a device' }
    const turned = await room.decode(file(withExif(await jpegOf(await halves(800, 600)), said)))
    const { picture, jpeg } = opened(turned)
    expect([picture.width, picture.height]).toEqual([600, 800])
    near(at(turned, 300, 100), RED)
    near(at(turned, 300, 700), BLUE)
    // 26 / 43.267 * 1000 px of diagonal.
    expect(picture).toHaveProperty('focalPx', expect.closeTo(600.9, 1))
    const kept = new TextDecoder('latin1').decode(await jpeg.arrayBuffer())
    expect(kept).not.toContain('Exif')
    expect(kept).not.toContain('a place and a device')
  })
  it('of 50 megapixels is opened and made small', async () => {
    const { picture, factor } = opened(
      await room.decode(file(await jpegOf(await halves(6130, 8170)))),
    )
    expect(picture.height).toBe(2000)
    expect(factor).toBeCloseTo(2000 / 8170, 3)
  })
})

it('a HEIC photo this browser cannot open is refused with the way to a JPEG', async () => {
  const heic = Uint8Array.from([0, 0, 0, 24, ...new TextEncoder().encode('ftypheic'), 1, 2, 3, 4])
  const photo = await room.decode(file(heic))
  expect(photo.ok ? '' : photo.reason).toMatch(/HEIC.*export or share it as JPEG/)
})

it('a frame of the live picture becomes a photo at its own size', async () => {
  const frame = await createImageBitmap(await halves(720, 1280))
  const photo = await room.develop(frame)
  expect([opened(photo).picture.width, opened(photo).picture.height]).toEqual([720, 1280])
  near(at(photo, 100, 600), RED)
  near(at(photo, 600, 600), BLUE)
})

it('a patch is in the pixels that are kept, and nowhere else', async () => {
  const photo = await room.develop(await createImageBitmap(await halves(600, 800)))
  const covered = await room.patch(opened(photo).jpeg, { x: 200, y: 100, width: 240, height: 160 })
  const again = await room.decode(covered)
  near(at(again, 210, 110), [0xf1, 0xee, 0xe2])
  near(at(again, 430, 250), [0xf1, 0xee, 0xe2])
  near(at(again, 180, 180), RED)
  near(at(again, 460, 180), BLUE)
  near(at(again, 320 - 60, 290), RED)
})

it('after it is closed the next photo still opens', async () => {
  room.close()
  const photo = await room.decode(file(await jpegOf(await halves(600, 800))))
  expect(photo.ok).toBe(true)
  room.close()
})
