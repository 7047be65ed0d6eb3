import { describe, expect, it } from 'vitest'
import { expectedOf } from '../../src/measurements/tape-expected.ts'

describe('what other lengths lead one to expect', () => {
  it('of nothing: the middle of the two surveys, spread within and between', () => {
    // Published means 367.3 and 402.2, spread within 505.03 (tape-model.ts): by hand 384.75, and
    // sqrt(505.03 + 34.9^2 / 2) = sqrt(1114.0) = 33.38.
    const { mean, sd } = expectedOf('nape-to-waist', [])
    expect(mean).toBeCloseTo(384.75, 6)
    expect(sd).toBeCloseTo(33.38, 2)
  })

  it('of one: the two regression lines by hand', () => {
    // Slope 653.33 / 3595.63 = 0.18170. At a stature of 1650: 367.3 + 0.1817 * 20.6 = 371.04 and
    // 402.2 + 0.1817 * 63 = 413.65; their middle 392.35; left within 386.3, apart 42.6^2 / 2 = 907.6.
    const { mean, sd } = expectedOf('nape-to-waist', [{ name: 'stature', value: 1650, sd: 0 }])
    expect(mean).toBeCloseTo(392.35, 1)
    expect(sd).toBeCloseTo(Math.sqrt(386.3 + 907.6), 1)
  })

  it('leans less on a length that is itself unsure', () => {
    const from = (sd: number) => expectedOf('hip', [{ name: 'waist', value: 900, sd }])
    const none = expectedOf('hip', [])
    expect(from(0).mean).toBeGreaterThan(from(80).mean)
    expect(from(80).mean).toBeGreaterThan(none.mean)
    expect(from(0).sd).toBeLessThan(from(80).sd)
    expect(from(80).sd).toBeLessThan(none.sd)
  })
})
