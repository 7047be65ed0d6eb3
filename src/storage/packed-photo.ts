/**
 * A photo as its row lies in the store: the outline of its reading is one block of numbers, y, left and
 * right of each row after one another. A thousand rows a photo are slow to clone as objects.
 */
import type { OutlineRow, ViewReading } from '../capture/reading.ts'
import type { KeptPhoto } from './schema/photo.ts'

export type PackedPhoto = Omit<KeptPhoto, 'reading'> & {
  readonly reading?: Omit<ViewReading, 'outline'> & { readonly outline: Float64Array }
}

export function packedPhoto({ reading, ...photo }: KeptPhoto): PackedPhoto {
  if (!reading) return photo
  const outline = new Float64Array(reading.outline.length * PER_ROW)
  reading.outline.forEach(({ y, left, right }, i) => outline.set([y, left, right], i * PER_ROW))
  return { ...photo, reading: { ...reading, outline } }
}

/** The rows of a packed outline; undefined for anything else. */
export function outlineRows(value: unknown): readonly OutlineRow[] | undefined {
  if (!isBlock(value) || value.length % PER_ROW !== 0) return undefined
  if (!value.every(Number.isFinite)) return undefined
  return Array.from({ length: value.length / PER_ROW }, (_, i) => {
    const [y = 0, left = 0, right = 0] = value.subarray(i * PER_ROW, (i + 1) * PER_ROW)
    return { y, left, right }
  })
}
const PER_ROW = 3

/** By its tag: a block that comes out of another realm is still one. */
const isBlock = (value: unknown): value is Float64Array =>
  Object.prototype.toString.call(value) === '[object Float64Array]'
