import { describe, expect, it } from 'vitest'
import { focalOnFilm, focalPx } from '../../src/capture/photo-exif.ts'
import { exifSegment, withExif } from './exif-made.ts'

const START = Uint8Array.from([0xff, 0xd8, 0xff, 0xda, 0, 2])

describe('the focal length a camera wrote down (Exif 2.32, tag 0xA405)', () => {
  it.each([true, false])('is read in either byte order, little end first: %s', (little) =>
    expect(focalOnFilm(withExif(START, { focal: 26, little }))).toBe(26),
  )
  it('is not made up where it is missing, 0 or absurd', () => {
    expect(focalOnFilm(START)).toBeUndefined()
    expect(focalOnFilm(withExif(START, {}))).toBeUndefined()
    expect(focalOnFilm(withExif(START, { focal: 0 }))).toBeUndefined()
    expect(focalOnFilm(withExif(START, { focal: 2000 }))).toBeUndefined()
  })
  it('stops at a block that is cut off', () => {
    const whole = Uint8Array.from([0xff, 0xd8, ...exifSegment({ focal: 26 })])
    for (let length = 0; length < whole.length - 12; length++)
      expect(focalOnFilm(whole.subarray(0, length))).toBeUndefined()
  })
})

describe('in pixels', () => {
  // 26 mm on film: diagonal field 2 atan(43.267 / 52) = 79.5 degrees (trigonometry). On 3000 x 4000
  // the diagonal is 5000 px, so f = 2500 / tan(39.76) = 3004.6.
  it('of a whole 4:3 picture', () =>
    expect(focalPx(26, { width: 3000, height: 4000 })).toBeCloseTo(3004.6, 0))
  it('of a 16:9 picture cut from the same sensor: its long side sees the same', () =>
    expect(focalPx(26, { width: 2250, height: 4000 })).toBeCloseTo(3004.6, 0))
  // 36 x 24 mm itself: 50 mm lens on 6000 px for 36 mm is 50 / 36 * 6000 px.
  it('of a 3:2 picture', () =>
    expect(focalPx(50, { width: 6000, height: 4000 })).toBeCloseTo(8333.3, 0))
})
