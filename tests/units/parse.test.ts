import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatLength, formatNumber, type UnitChoice } from '../../src/units/format.ts'
import { inches, mm } from '../../src/units/length.ts'
import { parseLength, type ParsedLength } from '../../src/units/parse.ts'

const CM: UnitChoice = { unit: 'cm', inchStep: 8 }
const INCH: UnitChoice = { unit: 'inch', inchStep: 8 }
const SIXTEENTHS: UnitChoice = { unit: 'inch', inchStep: 16 }
/** Nape to waist, roughly; wide enough for anyone, narrow enough to tell the units apart. */
const BACK = { min: mm(225), max: mm(650) }

const accepted = (parsed: ParsedLength): number => {
  if (!parsed.ok) throw new Error(parsed.reason)
  return parsed.value
}
const asked = (parsed: ParsedLength): readonly number[] => {
  if (parsed.ok || !parsed.ask) throw new Error(`not asked: ${JSON.stringify(parsed)}`)
  return parsed.ask.map(({ value }) => Math.round(value * 1000) / 1000)
}

describe('what is written plainly', () => {
  // Millimetres by hand: inches × 25.4, centimetres × 10.
  it.each([
    ['15 3/8', INCH, 390.525],
    ['15⅜', INCH, 390.525],
    ['15 ⅜ in', INCH, 390.525],
    ['15-3/8', INCH, 390.525],
    ['15.375"', INCH, 390.525],
    ['15.375″', CM, 390.525],
    ['39,1 cm', INCH, 391],
    ['39.1CM', CM, 391],
    ['391 mm', CM, 391],
    ['391mm.', INCH, 391],
    ['11/16', INCH, 17.4625],
    ['3⁄8 inches', CM, 9.525],
    ['1\' 2 1/2"', INCH, 368.3],
    ['1’ 2½”', CM, 368.3],
    ['5\'3"', INCH, 1600.2],
    ['5 ft 3 in', CM, 1600.2],
    ["5'", INCH, 1524],
    ['1.58 m', CM, 1580],
    ['15 1/2 cm', INCH, 155],
    ['0', CM, 0],
    ['.5', INCH, 12.7],
    ['0,125', INCH, 3.175],
  ])('%s', (text, choice, millimetres) => {
    expect(accepted(parseLength(text, choice))).toBeCloseTo(millimetres, 9)
  })

  it('says how it was understood', () => {
    expect(parseLength('39,1 cm', INCH)).toMatchObject({ read: '39.1 cm' })
    expect(parseLength('391 mm', CM)).toMatchObject({ read: '391 mm' })
    expect(parseLength('15⅜', INCH)).toMatchObject({ read: '15 3/8 in' })
    expect(parseLength('1.6 m', CM)).toMatchObject({ read: '1.60 m' })
  })

  it('takes eighths for inches even where she reads centimetres', () => {
    // A centimetre tape carries no eighths. Common practice, no source.
    expect(accepted(parseLength('15 3/8', CM, BACK))).toBeCloseTo(390.525, 9)
  })
})

describe('what is asked about', () => {
  it('takes a bare number in her unit when no other unit fits', () => {
    expect(accepted(parseLength('39,1', CM, BACK))).toBeCloseTo(391, 9)
    expect(accepted(parseLength('15', INCH, BACK))).toBeCloseTo(381, 9)
  })
  it('asks when only another unit fits', () => {
    expect(asked(parseLength('15.5', CM, BACK))).toEqual([393.7])
    expect(asked(parseLength('391', CM, BACK))).toEqual([391])
    expect(asked(parseLength('39.1', INCH, BACK))).toEqual([391])
    expect(asked(parseLength('1.58', CM, { min: mm(1200), max: mm(2100) }))).toEqual([1580])
  })
  it('asks when more than one unit fits, hers first', () => {
    expect(asked(parseLength('25', CM, BACK))).toEqual([250, 635])
    expect(asked(parseLength('25', INCH, BACK))).toEqual([635, 250])
    expect(asked(parseLength('15 1/2', CM, { min: mm(100), max: mm(650) }))).toEqual([155, 393.7])
  })
  it('takes any fraction for inches where she reads inches', () => {
    const wide = { min: mm(100), max: mm(650) }
    expect(accepted(parseLength('15 1/2', INCH, wide))).toBeCloseTo(393.7, 9)
    expect(asked(parseLength('15.5', INCH, wide))).toEqual([393.7, 155])
  })
  it('asks what a comma before three digits parts', () => {
    expect(asked(parseLength('1,200', CM))).toEqual([12])
    expect(asked(parseLength('1,200', CM, { min: mm(700), max: mm(1300) }))).toEqual([1200])
    expect(asked(parseLength('1,200 mm', CM))).toEqual([1.2, 1200])
    expect(asked(parseLength('15,375 in', INCH))).toEqual([390.525])
  })
  it('asks about an unlikely length even with its unit, and lets her insist', () => {
    const parsed = parseLength('70 cm', CM, BACK)
    expect(asked(parsed)).toEqual([700])
    expect(asked(parseLength('39 mm', CM, BACK))).toEqual([390, 39])
    if (!parsed.ok) expect(parsed.reason).toContain('22.5 cm to 65.0 cm')
  })
  it('shows each answer in its unit and in hers', () => {
    const parsed = parseLength('15.5', CM, BACK)
    expect(parsed).toMatchObject({ ask: [{ label: '15 1/2 in (39.4 cm)' }] })
  })
})

describe('what is refused, with what to write instead', () => {
  it.each([
    ['', '41.3 cm'],
    ['15 3', '15 3/8'],
    ['-5', 'below zero'],
    ['−5 cm', 'below zero'],
    ['about 40', '41.3 cm'],
    ['40 ells', '41.3 cm'],
    ['15 3/10', 'not a mark'],
    ['11/8', 'not a mark'],
    ['15 0/8', 'not a mark'],
    ['5\'13"', '0 to 11 7/8'],
    ['1.200,5', '41.3 cm'],
    ['15 - 3/8', '41.3 cm'],
    ['15..3', '41.3 cm'],
    ['1e3', '41.3 cm'],
    ['Infinity', '41.3 cm'],
    ['400 cm', '300.0 cm'],
    ["15'", '300.0 cm'],
  ])('%s', (text, hint) => {
    const parsed = parseLength(text, CM)
    expect(parsed.ok).toBe(false)
    if (parsed.ok) return
    expect(parsed.ask).toBeUndefined()
    expect(parsed.reason).toContain(hint)
    expect(parsed.reason).toMatch(/[.]$/)
    expect(parsed.reason).not.toMatch(/!|\binvalid\b|error/i)
  })
  it('refuses a bare number that fits in no unit', () => {
    expect(parseLength('7', CM, BACK)).toMatchObject({ ok: false })
    expect(parseLength('7', CM, BACK)).not.toHaveProperty('ask')
  })
})

describe('printing and reading again', () => {
  it.each([
    ['eighths', INCH, 8],
    ['sixteenths', SIXTEENTHS, 16],
  ] as const)('0 to 60 in by %s', (_, choice, step) => {
    for (let count = 0; count <= 60 * step; count++) {
      const length = inches(count / step)
      expect(accepted(parseLength(formatLength(length, choice), choice))).toBeCloseTo(length, 9)
      expect(accepted(parseLength(formatNumber(length, choice), choice))).toBeCloseTo(length, 9)
    }
  })
  it('every whole millimetre in centimetres, with a point or a comma', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3000 }), (count) => {
        const printed = formatLength(mm(count), CM)
        expect(accepted(parseLength(printed, INCH))).toBeCloseTo(count, 9)
        expect(accepted(parseLength(printed.replace('.', ','), INCH))).toBeCloseTo(count, 9)
      }),
    )
  })
  it('never throws and never takes more than a tape, whatever is typed', () => {
    const keys = fc.constantFrom(...'0123456789 ./,-\'"½⅛incmft'.split(''))
    fc.assert(
      fc.property(fc.array(keys, { maxLength: 12 }), (typed) => {
        const parsed = parseLength(typed.join(''), CM, BACK)
        if (!parsed.ok) return
        expect(parsed.value).toBeGreaterThanOrEqual(BACK.min)
        expect(parsed.value).toBeLessThanOrEqual(BACK.max)
      }),
      { numRuns: 2000 },
    )
  })
})
