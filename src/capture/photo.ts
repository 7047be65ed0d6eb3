/**
 * From a file she chose to pixels. The photo is turned as its EXIF says, made small enough to
 * work with, and written anew without metadata (place, time, device). It never leaves the device.
 */
import { focalOnFilm, focalPx } from './photo-exif.ts'
import { looksLike, pixelSize } from './photo-header.ts'
import { PHOTO_WORDS } from './photo.words.ts'
import type { Picture } from './picture.ts'

export type PhotoOutcome =
  | {
      readonly ok: true
      readonly picture: Picture
      /** Pixels of the picture per pixel of the photo as turned upright; 1 or less. */
      readonly factor: number
      /** The same pixels as a new JPEG without metadata. */
      readonly jpeg: Blob
    }
  | { readonly ok: false; readonly reason: string }

/** Tall enough that a body of 1.7 m has about 1 mm a pixel; more only costs time. */
const MAX_HEIGHT_PX = 2000
/** A panorama is not a photo of a standing person; this bounds the memory of the canvas. */
const MAX_WIDTH_PX = 4000
/** Above this a browser on a phone runs out of memory while decoding (common practice, no source). */
const MAX_MEGAPIXELS = 100
/** Below this a card of 100 mm has too few pixels to be measured (40 px a side needs about 800). */
const MIN_HEIGHT_PX = 480
const JPEG_QUALITY = 0.92
/** Paper, as the patch on the screen (LOOK: fixed colours on photos). */
const PATCH = '#f1eee2'
/** Enough of the file to hold its size, also behind a long EXIF block. */
const HEADER_BYTES = 256 * 1024

const refuse = (reason: string): PhotoOutcome => ({ ok: false, reason })

export async function decodePhoto(file: Blob): Promise<PhotoOutcome> {
  if (file.size === 0) return refuse(PHOTO_WORDS.empty)
  const head = new Uint8Array(await file.slice(0, HEADER_BYTES).arrayBuffer())
  const said = pixelSize(head)
  if (said && tooLarge(said.width, said.height))
    return refuse(largeSentence(said.width, said.height))
  let bitmap: ImageBitmap
  try {
    bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' })
  } catch {
    return refuse(unreadableSentence(head))
  }
  const photo = await photoOf(bitmap)
  const onFilm = focalOnFilm(head)
  if (!photo.ok || onFilm === undefined) return photo
  const picture = { ...photo.picture, focalPx: focalPx(onFilm, photo.picture) }
  return { ...photo, picture }
}

/** The same from pixels already decoded, such as a frame of the live picture; closes the bitmap. */
export async function photoOf(bitmap: ImageBitmap): Promise<PhotoOutcome> {
  try {
    if (tooLarge(bitmap.width, bitmap.height))
      return refuse(largeSentence(bitmap.width, bitmap.height))
    if (bitmap.height < MIN_HEIGHT_PX)
      return refuse(PHOTO_WORDS.tooSmall(bitmap.width, bitmap.height, MIN_HEIGHT_PX))
    return await drawn(bitmap)
  } finally {
    bitmap.close()
  }
}

/** A photo with a patch of paper in its own pixels: what lay under it is gone. */
export async function patched(
  jpeg: Blob,
  patch: { x: number; y: number; width: number; height: number },
): Promise<Blob> {
  const bitmap = await createImageBitmap(jpeg)
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height)
  const context = canvas.getContext('2d', { alpha: false })
  if (!context) throw new Error('photo: no 2d context for the patch')
  context.drawImage(bitmap, 0, 0)
  bitmap.close()
  context.fillStyle = PATCH
  context.fillRect(patch.x, patch.y, patch.width, patch.height)
  return canvas.convertToBlob({ type: 'image/jpeg', quality: JPEG_QUALITY })
}

async function drawn(bitmap: ImageBitmap): Promise<PhotoOutcome> {
  const factor = Math.min(1, MAX_HEIGHT_PX / bitmap.height, MAX_WIDTH_PX / bitmap.width)
  const width = Math.round(bitmap.width * factor)
  const height = Math.round(bitmap.height * factor)
  const canvas = new OffscreenCanvas(width, height)
  const context = canvas.getContext('2d', { willReadFrequently: true, alpha: false })
  if (!context) return refuse(PHOTO_WORDS.noRoom)
  context.imageSmoothingQuality = 'high'
  // A picture with see-through parts lies on white, as it would on paper.
  context.fillStyle = 'white'
  context.fillRect(0, 0, width, height)
  context.drawImage(bitmap, 0, 0, width, height)
  const { data } = context.getImageData(0, 0, width, height)
  const jpeg = await canvas.convertToBlob({ type: 'image/jpeg', quality: JPEG_QUALITY })
  return { ok: true, picture: { width, height, data }, factor: width / bitmap.width, jpeg }
}

const tooLarge = (width: number, height: number): boolean => width * height > MAX_MEGAPIXELS * 1e6

const largeSentence = (width: number, height: number): string =>
  PHOTO_WORDS.tooLarge(Math.round((width * height) / 1e6), MAX_MEGAPIXELS)

function unreadableSentence(head: Uint8Array): string {
  switch (looksLike(head)) {
    case 'heic':
      return PHOTO_WORDS.heic
    case 'image':
      return PHOTO_WORDS.damaged
    case 'other':
      return PHOTO_WORDS.notAPhoto
  }
}
