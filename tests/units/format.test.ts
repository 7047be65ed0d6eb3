import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  changeParts,
  formatChange,
  formatLength,
  formatNumber,
  formatParts,
  printedMm,
  type UnitChoice,
} from '../../src/units/format.ts'
import { inches, mm } from '../../src/units/length.ts'

const CM: UnitChoice = { unit: 'cm', inchStep: 8 }
const EIGHTHS: UnitChoice = { unit: 'inch', inchStep: 8 }
const SIXTEENTHS: UnitChoice = { unit: 'inch', inchStep: 16 }
const anyChoice = fc.constantFrom(CM, EIGHTHS, SIXTEENTHS)
const anyLength = fc.double({ min: -1600, max: 1600, noNaN: true }).map(mm)

/** Reads a printed number back with nothing of ours: the inch is 25.4 mm (ISO 80000-3). */
function readBack(text: string, choice: UnitChoice): number {
  const sign = text.startsWith('−') ? -1 : 1
  const plain = text.replace(/^[−+]/, '')
  if (choice.unit === 'cm') return sign * Number(plain) * 10
  const total = plain.split(' ').reduce((sum, piece) => {
    const [top, bottom] = piece.split('/').map(Number)
    return sum + (top ?? 0) / (bottom ?? 1)
  }, 0)
  return sign * total * 25.4
}

describe('printing a length', () => {
  // 16 1/4 in × 25.4 = 412.75 mm; 412.75 mm is 41.3 cm to the millimetre. Arithmetic.
  it.each([
    [412.75, CM, '41.3 cm'],
    [412.75, EIGHTHS, '16 1/4 in'],
    [412.75, SIXTEENTHS, '16 1/4 in'],
    [390.525, EIGHTHS, '15 3/8 in'],
    [388.9375, SIXTEENTHS, '15 5/16 in'],
    [9.525, EIGHTHS, '3/8 in'],
    [304.8, EIGHTHS, '12 in'],
    [0, EIGHTHS, '0 in'],
    [0, CM, '0.0 cm'],
    [-5, CM, '−0.5 cm'],
    [-0.2, CM, '0.0 cm'],
    [-3.175, EIGHTHS, '−1/8 in'],
  ])('%d mm reads %s', (length, choice, printed) => {
    expect(formatLength(mm(length), choice)).toBe(printed)
  })

  it('keeps a slot for the fraction so that whole inches stand under each other', () => {
    expect(formatParts(mm(412.75), EIGHTHS)).toEqual({
      sign: '',
      whole: '16',
      fraction: '1/4',
      unit: 'in',
    })
    expect(formatParts(mm(9.525), EIGHTHS)).toMatchObject({ whole: '', fraction: '3/8' })
    expect(formatParts(mm(-413), CM)).toEqual({
      sign: '−',
      whole: '41.3',
      fraction: '',
      unit: 'cm',
    })
  })

  it('prints the nearest mark, never farther than half a step', () => {
    fc.assert(
      fc.property(anyLength, anyChoice, (length, choice) => {
        const step = choice.unit === 'cm' ? 1 : 25.4 / choice.inchStep
        const back = readBack(formatNumber(length, choice), choice)
        expect(Math.abs(back - length)).toBeLessThanOrEqual(step / 2 + 1e-4)
        expect(printedMm(length, choice)).toBeCloseTo(back, 6)
      }),
    )
  })

  it('prints fractions reduced', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 960 }), (count) => {
        const { fraction } = formatParts(inches(count / 16), SIXTEENTHS)
        if (fraction === '') return
        const [top, bottom] = fraction.split('/').map(Number)
        expect((top ?? 0) % 2).toBe(1)
        expect([2, 4, 8, 16]).toContain(bottom)
      }),
    )
  })

  it('refuses to print what is no number', () => {
    expect(() => formatLength(mm(Number.NaN), CM)).toThrow('NaN')
  })
})

describe('printing a change', () => {
  it('is the difference of the two printed numbers, so the columns add up', () => {
    // 26.74 and 26.26 print as 26.7 and 26.3; the change is −0.4, where the lengths differ by 0.48.
    expect(formatChange(mm(267.4), mm(262.6), CM)).toBe('−0.4 cm')
    fc.assert(
      fc.property(anyLength, anyLength, anyChoice, (before, after, choice) => {
        const change = formatChange(before, after, choice)
        const steps = (text: string) => readBack(text, choice)
        const said = change === 'same' ? 0 : steps(change.replace(/ (cm|in)$/, ''))
        expect(steps(formatNumber(before, choice)) + said).toBeCloseTo(
          steps(formatNumber(after, choice)),
          6,
        )
      }),
    )
  })

  it('says "same" rather than zero, and signs the rest', () => {
    expect(formatChange(mm(412.7), mm(413.3), CM)).toBe('same')
    expect(formatChange(mm(400), mm(405), CM)).toBe('+0.5 cm')
    expect(formatChange(inches(16.25), inches(16.125), EIGHTHS)).toBe('−1/8 in')
    expect(changeParts(inches(16), inches(17.5), EIGHTHS)).toMatchObject({
      sign: '+',
      whole: '1',
      fraction: '1/2',
    })
  })
})
