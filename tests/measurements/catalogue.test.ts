import { describe, expect, it } from 'vitest'
import { CATALOGUE, measure, MEASUREMENT_IDS } from '../../src/measurements/catalogue.ts'
import { shoulderSlope } from '../../src/measurements/shoulder-slope.ts'
import { radians, toDegrees } from '../../src/units/angle.ts'
import { inches, mm } from '../../src/units/length.ts'
import { parseLength } from '../../src/units/parse.ts'
import { INVENTED_BODIES } from '../bodies.ts'

describe('the catalogue', () => {
  it('holds every id once, under its own name', () => {
    expect(Object.keys(CATALOGUE).sort()).toEqual([...MEASUREMENT_IDS].sort())
    for (const id of MEASUREMENT_IDS) expect(measure(id).id).toBe(id)
  })

  it('gives each measurement a definition of its own', () => {
    const definitions = MEASUREMENT_IDS.map((id) => measure(id).definition)
    expect(new Set(definitions).size).toBe(definitions.length)
    for (const id of MEASUREMENT_IDS) expect(measure(id).definition).toMatch(new RegExp(`^${id}/`))
    // The standard puts its waist midway between rib and hip bone (5.3.10): not ours.
    expect(measure('waistGirth').definition).toBe('waistGirth/natural')
    expect(measure('waistGirth').iso).toBeUndefined()
  })

  // ANSUR II handbook NATICK/TR-11/017, appendix G, allowable observer error, mm.
  it.each([
    ['bustGirth', 14],
    ['waistGirth', 12],
    ['hipGirth', 12],
    ['neckBaseGirth', 8],
    ['stature', 6],
    ['napeToWaist', 5],
    ['shoulderLengthLeft', 3],
    ['shoulderLengthRight', 3],
  ] as const)('%s agrees within the published %d mm', (id, tolerance) => {
    expect(measure(id).tolerance.value).toBe(tolerance)
    expect(measure(id).tolerance.source).toContain('TR-11/017')
  })

  // Percentiles 1 and 99 of women, mm: ANSUR 1988 (public data, n 2208).
  it.each([
    ['bustGirth', 785, 1074],
    ['waistGirth', 609, 904.9],
    ['hipGirth', 843.1, 1125.9],
    ['napeToWaist', 315, 428.9],
    ['frontNeckToWaist', 261, 371],
    ['apexSpacing', 149, 224],
    ['sideNeckToApex', 220, 324.9],
    ['shoulderLengthLeft', 120, 170],
    ['acrossBack', 322.1, 433.9],
    ['armholeGirth', 324, 434],
    ['neckBaseGirth', 312, 386.9],
    ['stature', 1486.1, 1781.9],
    ['waistToFloor', 941, 1181.9],
  ] as const)('%s expects what surveys found, and more', (id, p1, p99) => {
    expect(measure(id).plausible.min).toBeLessThan(p1 * 0.95)
    expect(measure(id).plausible.max).toBeGreaterThan(p99 * 1.05)
  })

  it('takes the printed sizes of home sewing patterns as they stand, in inches', () => {
    // US home-sewing pattern body sizes, women's 54 and misses' 6 (industry standard, 1960s).
    const inch = { unit: 'inch', inchStep: 8 } as const
    for (const [id, text] of [
      ['bustGirth', '54'],
      ['bustGirth', '30.5'],
      ['waistGirth', '49'],
      ['waistGirth', '23'],
      ['hipGirth', '56'],
      ['napeToWaist', '18'],
      ['napeToWaist', '15 1/2'],
    ] as const) {
      const said = text === '30.5' ? '30 1/2' : text
      expect(parseLength(text, inch, measure(id).plausible)).toMatchObject({
        ok: true,
        read: `${said} in`,
      })
    }
  })

  it('expects every number of the invented bodies', () => {
    for (const [, numbers] of INVENTED_BODIES) {
      for (const id of MEASUREMENT_IDS) {
        const { min, max } = measure(id).plausible
        expect(numbers[id], id).toBeGreaterThan(min)
        expect(numbers[id], id).toBeLessThan(max)
      }
    }
  })

  it('speaks plainly: whole sentences, nothing about her, no cry and no plea', () => {
    for (const id of MEASUREMENT_IDS) {
      const { words, alone } = measure(id)
      for (const text of [words, alone]) {
        expect(text, id).toMatch(/^[A-Z].*\.$/)
        expect(text, id).not.toMatch(/!|please|simply|just |smart|problem|flaw|fat|heavy/i)
      }
      for (const text of [measure(id).label, measure(id).moves]) {
        expect(text.length, id).toBeGreaterThan(3)
        expect(text, id).not.toMatch(/[.!]$/)
      }
    }
  })

  it('lets one reading stand only for a garment on the table', () => {
    for (const id of MEASUREMENT_IDS) {
      expect(measure(id).readingsNeeded).toBe(id.startsWith('flat') ? 1 : 2)
    }
  })
})

describe('the shoulder slope', () => {
  it('is the published 19.7 degrees for the published mean drop and length', () => {
    // 7th Korean body survey, 2015: mean drop 38.7 mm over a mean shoulder of 114.9 mm; the
    // mean slope measured for itself is 19.7 degrees.
    expect(toDegrees(shoulderSlope(mm(38.7), mm(114.9)) ?? radians(NaN))).toBeCloseTo(19.7, 0)
  })
  it('is 30 degrees where the drop is half the shoulder (sine of 30 degrees)', () => {
    expect(toDegrees(shoulderSlope(inches(2.5), inches(5)) ?? radians(NaN))).toBeCloseTo(30, 9)
  })
  it('does not exist where the drop is as long as the shoulder', () => {
    expect(shoulderSlope(mm(120), mm(120))).toBeUndefined()
  })
})
