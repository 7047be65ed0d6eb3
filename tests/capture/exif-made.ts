/** An EXIF block made by hand from the standard's own tables (Exif 2.32, TIFF 6.0), for the tests. */
export interface ExifSaid {
  /** Tag 0x0112 in the first folder, 1 to 8. */
  readonly orientation?: number
  /** Tag 0xA405 in the EXIF folder. */
  readonly focal?: number
  readonly little?: boolean
  /** Words that have to be gone from what is kept, as a place or a device name would be. */
  readonly words?: string
}

/** APP1 with its marker and length. */
export function exifSegment({
  orientation = 1,
  focal,
  little = false,
  words = '',
}: ExifSaid): Uint8Array {
  const tiff = new DataView(new ArrayBuffer(62))
  const u16 = (at: number, value: number): void => tiff.setUint16(at, value, little)
  const u32 = (at: number, value: number): void => tiff.setUint32(at, value, little)
  tiff.setUint16(0, little ? 0x4949 : 0x4d4d)
  u16(2, 42)
  u32(4, 8)
  // An entry is 12 bytes: tag, type (3 SHORT, 4 LONG), count, value.
  const entry = (at: number, tag: number, type: 3 | 4, value: number): void => {
    u16(at, tag)
    u16(at + 2, type)
    u32(at + 4, 1)
    if (type === 3) u16(at + 8, value)
    else u32(at + 8, value)
  }
  u16(8, 2)
  entry(10, 0x0112, 3, orientation)
  entry(22, 0x8769, 4, 38)
  u32(34, 0)
  u16(38, 1)
  entry(40, focal === undefined ? 0x9000 : 0xa405, 3, focal ?? 0)
  u32(52, 0)
  const said = new TextEncoder().encode(words)
  const length = 2 + 6 + tiff.byteLength + said.length
  return Uint8Array.from([
    0xff,
    0xe1,
    length >> 8,
    length & 255,
    ...new TextEncoder().encode('Exif\0\0'),
    ...new Uint8Array(tiff.buffer),
    ...said,
  ])
}

/** A JPEG with the block right behind its start marker. */
export const withExif = (jpeg: Uint8Array, said: ExifSaid): Uint8Array =>
  Uint8Array.from([...jpeg.subarray(0, 2), ...exifSegment(said), ...jpeg.subarray(2)])
