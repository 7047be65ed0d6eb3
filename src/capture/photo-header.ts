/**
 * What the first bytes of a file say: which kind it is and how many pixels it holds, before any
 * of it is decoded. Sources: JPEG ITU-T T.81 annex B (SOF markers), PNG (ISO/IEC 15948) IHDR,
 * HEIF ISO/IEC 23008-12 (ftyp brands), WebP container (RIFF).
 */
export interface PixelSize {
  readonly width: number
  readonly height: number
}

const HEIC_BRANDS = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1']

/** Whether a file that would not open was meant to be a photo. */
export function looksLike(bytes: Uint8Array): 'heic' | 'image' | 'other' {
  if (text(bytes, 4, 8) === 'ftyp' && HEIC_BRANDS.includes(text(bytes, 8, 12))) return 'heic'
  const known = isJpeg(bytes) || isPng(bytes) || text(bytes, 0, 3) === 'GIF'
  const webp = text(bytes, 0, 4) === 'RIFF' && text(bytes, 8, 12) === 'WEBP'
  const avif = text(bytes, 4, 12) === 'ftypavif'
  return known || webp || avif ? 'image' : 'other'
}

/** Pixels across and down as stored (EXIF turns not applied), or undefined when not said here. */
export function pixelSize(bytes: Uint8Array): PixelSize | undefined {
  if (isPng(bytes)) return { width: number(bytes, 16, 4), height: number(bytes, 20, 4) }
  return isJpeg(bytes) ? jpegSize(bytes) : undefined
}

const isJpeg = (bytes: Uint8Array): boolean => number(bytes, 0, 2) === 0xffd8
const isPng = (bytes: Uint8Array): boolean => text(bytes, 1, 4) === 'PNG'

/** SOF0..SOF15 hold the size; DHT, JPG and DAC share the number range and do not. */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)

function jpegSize(bytes: Uint8Array): PixelSize | undefined {
  let at = 2
  while (at + 9 < bytes.length) {
    if (bytes[at] !== 0xff) return undefined
    const marker = bytes[at + 1] ?? 0
    if (marker === 0xff) at += 1
    else if (isFrame(marker))
      return { width: number(bytes, at + 7, 2), height: number(bytes, at + 5, 2) }
    else at += 2 + number(bytes, at + 2, 2)
  }
  return undefined
}

function number(bytes: Uint8Array, from: number, count: number): number {
  let value = 0
  for (let k = from; k < from + count; k++) value = value * 256 + (bytes[k] ?? 0)
  return value
}

const text = (bytes: Uint8Array, from: number, to: number): string =>
  String.fromCharCode(...bytes.slice(from, to))
