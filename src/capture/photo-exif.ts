/**
 * The focal length a camera wrote into its JPEG, read before the metadata is dropped. It is the
 * length on 36 x 24 mm film with the same field of view (tag 0xA405 FocalLengthIn35mmFilm).
 * Sources: Exif 2.32 (CIPA DC-008-2019), 4.5.4 APP1, 4.6.2 IFD, 4.6.5; TIFF 6.0 for the byte order.
 */
const APP1 = 0xe1
const START_OF_SCAN = 0xda
const EXIF_POINTER = 0x8769
const FOCAL_35 = 0xa405
const [SHORT, LONG] = [3, 4]
/** Shorter or longer is no camera that photographs a standing person; 0 means "not known". */
const [LEAST, MOST] = [8, 300]

/** Millimetres on 36 x 24 mm film, or undefined when the file does not say. */
export function focalOnFilm(bytes: Uint8Array): number | undefined {
  const tiff = exifBlock(bytes)
  if (!tiff) return undefined
  const focal = tagIn(tiff, tagIn(tiff, firstFolder(tiff), EXIF_POINTER), FOCAL_35)
  return focal !== undefined && focal >= LEAST && focal <= MOST ? focal : undefined
}

/** Diagonal of 36 x 24 mm film. */
const FILM_DIAGONAL = Math.hypot(36, 24)
/** Sensors of phones and most small cameras: the long side is 0.8 of the diagonal (from memory). */
const LONG_SIDE_OF_4_3 = 0.8
/** Wider pictures are cut from a 4:3 sensor at top and bottom, so the long side is whole. */
const WIDEST_UNCUT = 1.55

/**
 * Focal length in px of a picture of the given size. The equivalent is taken over the diagonal of
 * the whole sensor (CIPA DCG-001).
 */
export function focalPx(onFilm: number, size: { width: number; height: number }): number {
  const long = Math.max(size.width, size.height)
  const whole = long / Math.min(size.width, size.height) <= WIDEST_UNCUT
  const diagonal = whole ? Math.hypot(size.width, size.height) : long / LONG_SIDE_OF_4_3
  return (onFilm / FILM_DIAGONAL) * diagonal
}

interface Tiff {
  readonly view: DataView
  readonly little: boolean
}

function exifBlock(bytes: Uint8Array): Tiff | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  if (bytes.length < 4 || view.getUint16(0) !== 0xffd8) return undefined
  let at = 2
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0
    if (marker === START_OF_SCAN) return undefined
    const length = view.getUint16(at + 2)
    const body = bytes.subarray(at + 4, at + 2 + length)
    if (marker === APP1 && new TextDecoder().decode(body.subarray(0, 4)) === 'Exif')
      return tiffOf(body.subarray(6))
    at += 2 + length
  }
  return undefined
}

function tiffOf(bytes: Uint8Array): Tiff | undefined {
  if (bytes.length < 8) return undefined
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const order = view.getUint16(0)
  return order === 0x4949 || order === 0x4d4d ? { view, little: order === 0x4949 } : undefined
}

const firstFolder = ({ view, little }: Tiff): number => view.getUint32(4, little)

/** The value of a tag of one SHORT or LONG in the folder at an offset; undefined when absent. */
function tagIn(
  { view, little }: Tiff,
  folder: number | undefined,
  tag: number,
): number | undefined {
  if (folder === undefined || folder + 2 > view.byteLength) return undefined
  const count = view.getUint16(folder, little)
  for (let k = 0; k < count; k++) {
    const at = folder + 2 + k * 12
    if (at + 12 > view.byteLength) return undefined
    if (view.getUint16(at, little) !== tag) continue
    const type = view.getUint16(at + 2, little)
    if (type === SHORT) return view.getUint16(at + 8, little)
    return type === LONG ? view.getUint32(at + 8, little) : undefined
  }
  return undefined
}
