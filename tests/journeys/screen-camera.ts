/**
 * A camera before the screen of another device: what is shown there lies in the middle of its
 * picture. Written as an uncompressed film of two equal frames that the browser reads again and
 * again as its fake device. Format: YUV4MPEG2, 4:2:0, without colour.
 */
import { closeSync, existsSync, openSync, writeSync } from 'node:fs'
import type { Picture } from '../../src/capture/picture.ts'

const SIZE = { width: 960, height: 720 }
const HEADER = `YUV4MPEG2 W${SIZE.width} H${SIZE.height} F5:1 Ip A1:1 C420jpeg\n`
const FRAME = 'FRAME\n'
/** A dim room round the screen. */
const ROOM = 110
const NO_COLOUR = 128

/** Shows the screen, or the bare room, in the film; the browser sees it with its next frame. */
export function showScreen(file: string, screen: Picture | undefined): void {
  const pixels = SIZE.width * SIZE.height
  const frame = Buffer.alloc((pixels * 3) / 2, NO_COLOUR).fill(ROOM, 0, pixels)
  if (screen) {
    const left = Math.round((SIZE.width - screen.width) / 2)
    const top = Math.round((SIZE.height - screen.height) / 2)
    if (left < 0 || top < 0) throw new Error(`a screen of ${screen.width} x ${screen.height}`)
    for (let y = 0; y < screen.height; y += 1)
      for (let x = 0; x < screen.width; x += 1)
        frame[(top + y) * SIZE.width + left + x] = screen.data[(y * screen.width + x) * 4] ?? 0
  }
  // In place: a film that is emptied first ends for a browser that reads it just then.
  const film = openSync(file, existsSync(file) ? 'r+' : 'w')
  writeSync(film, Buffer.concat([Buffer.from(HEADER + FRAME), frame, Buffer.from(FRAME), frame]))
  closeSync(film)
}
