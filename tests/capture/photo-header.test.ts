import { describe, expect, it } from 'vitest'
import { looksLike, pixelSize } from '../../src/capture/photo-header.ts'

const bytes = (...parts: (string | readonly number[])[]): Uint8Array =>
  Uint8Array.from(
    parts.flatMap((part) =>
      typeof part === 'string' ? [...part].map((c) => c.charCodeAt(0)) : [...part],
    ),
  )

describe('pixels a file says it holds', () => {
  it('reads a JPEG frame header behind an application block (ITU-T T.81, B.2.2)', () => {
    // SOI; APP1 of length 6; SOF2: length 17, 8 bit, height 0x0fc0 = 4032, width 0x0bd0 = 3024.
    const jpeg = bytes(
      [0xff, 0xd8, 0xff, 0xe1, 0, 6, 1, 2, 3, 4],
      [0xff, 0xc2, 0, 17, 8, 0x0f, 0xc0, 0x0b, 0xd0, 3, 0, 0, 0],
    )
    expect(pixelSize(jpeg)).toEqual({ width: 3024, height: 4032 })
  })

  it('does not take a table of Huffman codes for a frame', () => {
    const jpeg = bytes([0xff, 0xd8, 0xff, 0xc4, 0, 17, 0, 9, 9, 9, 9, 0, 0, 0])
    expect(pixelSize(jpeg)).toBeUndefined()
  })

  it('reads a PNG image header (ISO/IEC 15948, 11.2.2)', () => {
    const png = bytes(
      [0x89],
      'PNG',
      [13, 10, 26, 10, 0, 0, 0, 13],
      'IHDR',
      [0, 0, 4, 0, 0, 0, 8, 0],
    )
    expect(pixelSize(png)).toEqual({ width: 1024, height: 2048 })
  })
})

describe('what a file that will not open was meant to be', () => {
  it('knows HEIC by its brand (ISO/IEC 23008-12)', () => {
    expect(looksLike(bytes([0, 0, 0, 24], 'ftypheic'))).toBe('heic')
    expect(looksLike(bytes([0, 0, 0, 24], 'ftypmif1'))).toBe('heic')
  })
  it('tells a broken photo from something else', () => {
    expect(looksLike(bytes([0xff, 0xd8, 0xff]))).toBe('image')
    expect(looksLike(bytes('%PDF-1.7 and so on'))).toBe('other')
    expect(looksLike(new Uint8Array())).toBe('other')
  })
})
