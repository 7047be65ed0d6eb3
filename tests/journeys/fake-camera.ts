/**
 * A camera that shows the invented figure: an uncompressed film of two equal frames that the
 * browser reads again and again as its fake device. `show` writes another picture into the same
 * file, so the figure turns when the journey says so and not by the clock.
 * Format: YUV4MPEG2, 4:2:0; luma and chroma as JFIF (ITU-T T.871, 7), full range.
 */
import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Picture } from '../../src/capture/picture.ts'
import { openCanvas } from '../../scripts/figure/canvas.ts'

const SIZE = { width: 1080, height: 1440 }
const HEADER = `YUV4MPEG2 W${SIZE.width} H${SIZE.height} F5:1 Ip A1:1 C420jpeg\n`
const FRAME = 'FRAME\n'
const FRAMES = 2

export type Shown = 'front' | 'side' | 'back' | 'empty room'

export interface FakeCamera {
  readonly file: string
  show(what: Shown): void
  remove(): void
}

/** Flags that make the browser take the file for its camera; without `allowed` it asks as usual. */
export const fakeCameraFlags = (file: string, allowed: boolean): string[] => [
  '--use-fake-device-for-media-stream',
  `--use-file-for-fake-video-capture=${file}`,
  ...(allowed ? ['--use-fake-ui-for-media-stream'] : []),
]

export const fakeCameraFile = (): string =>
  join(mkdtempSync(join(tmpdir(), 'fake-camera-')), 'film.y4m')

/** Reads the figure's photos and lays an empty room into the file. */
export async function fakeCamera(file: string): Promise<FakeCamera> {
  const canvas = await openCanvas()
  if (!canvas) throw new Error('fake camera: no Chromium to decode the figure with')
  const pictures = new Map<Shown, Buffer>([['empty room', planes(wall())]])
  for (const view of ['front', 'side', 'back'] as const) {
    const path = new URL(`../photos/figure-${view}.jpg`, import.meta.url).pathname
    pictures.set(view, planes(await canvas.decode(path)))
  }
  await canvas.close()
  const film = openSync(file, 'w')
  writeSync(film, HEADER)
  const show = (what: Shown): void => {
    const frame = pictures.get(what)
    if (!frame) throw new Error(`fake camera: ${what}`)
    for (let k = 0; k < FRAMES; k++) {
      const at = HEADER.length + k * (FRAME.length + frame.length)
      writeSync(film, FRAME, at)
      writeSync(film, frame, 0, frame.length, at + FRAME.length)
    }
  }
  show('empty room')
  return {
    file,
    show,
    remove: () => {
      closeSync(film)
      rmSync(join(file, '..'), { recursive: true, force: true })
    },
  }
}

function wall(): Picture {
  const data = new Uint8ClampedArray(SIZE.width * SIZE.height * 4).fill(190)
  return { ...SIZE, data }
}

/** Y of every pixel, then Cb and Cr of every second one across and down. */
function planes({ width, height, data }: Picture): Buffer {
  if (width !== SIZE.width || height !== SIZE.height)
    throw new Error(`fake camera: a photo of ${width} x ${height}`)
  const out = Buffer.alloc((width * height * 3) / 2)
  const [cb, cr] = [width * height, (width * height * 5) / 4]
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const p = (y * width + x) * 4
      const [r, g, b] = [data[p] ?? 0, data[p + 1] ?? 0, data[p + 2] ?? 0]
      out[y * width + x] = Math.round(0.299 * r + 0.587 * g + 0.114 * b)
      if (x % 2 === 1 || y % 2 === 1) continue
      const k = (y / 2) * (width / 2) + x / 2
      out[cb + k] = Math.round(128 - 0.168736 * r - 0.331264 * g + 0.5 * b)
      out[cr + k] = Math.round(128 + 0.5 * r - 0.418688 * g - 0.081312 * b)
    }
  return out
}
