/** A frame of the live picture as a small picture of plain bytes; runs in the worker. */
import type { LiveFrame } from './camera.ts'
import type { Picture } from './picture.ts'

/** Frames are looked at this high: joints of rendered bodies come out as from the whole photo. */
const LOOK_HEIGHT = 480

let canvas: OffscreenCanvas | undefined

/** Undefined for a frame without pixels, or where the browser gives no room to draw in. */
export function smallPicture(frame: LiveFrame): Picture | undefined {
  const [wide, tall] =
    'displayWidth' in frame
      ? [frame.displayWidth, frame.displayHeight]
      : [frame.width, frame.height]
  if (wide < 1 || tall < 1) return undefined
  const height = Math.min(LOOK_HEIGHT, tall)
  const width = Math.max(1, Math.round((wide * height) / tall))
  canvas ??= new OffscreenCanvas(width, height)
  if (canvas.width !== width) canvas.width = width
  if (canvas.height !== height) canvas.height = height
  const context = canvas.getContext('2d', { willReadFrequently: true, alpha: false })
  context?.drawImage(frame, 0, 0, width, height)
  return context
    ? { width, height, data: context.getImageData(0, 0, width, height).data }
    : undefined
}
