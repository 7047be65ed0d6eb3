import { describe, expect, it } from 'vitest'
import {
  choiceAmount,
  fixed,
  found,
  inWords,
  measurementAmount,
  minus,
  over,
  plus,
  sources,
} from '../../src/units/amount.ts'
import type { UnitChoice } from '../../src/units/format.ts'
import { cm, mm } from '../../src/units/length.ts'

const CM: UnitChoice = { unit: 'cm', inchStep: 8 }
const INCH: UnitChoice = { unit: 'inch', inchStep: 8 }
const bust = measurementAmount('bustGirth', 'bust', mm(940))
const ease = choiceAmount('bustEase', 'bust ease', mm(80))

describe('an amount', () => {
  it('reads like a drafting book and comes to what the words say', () => {
    const width = plus(over(bust, 4), fixed(cm(2.2)))
    expect(inWords(width, CM)).toBe('a quarter of the bust + 2.2 cm')
    // 94.0 / 4 + 2.2 = 25.7. By hand.
    expect(width.mm).toBeCloseTo(257, 9)
    expect(inWords(width, INCH)).toBe('a quarter of the bust + 7/8 in')
  })
  it('puts brackets where the arithmetic needs them', () => {
    const half = over(plus(bust, ease), 2)
    expect(inWords(half, CM)).toBe('half (bust + bust ease)')
    expect(half.mm).toBe(510)
    const less = minus(bust, plus(ease, fixed(cm(1))))
    expect(inWords(less, CM)).toBe('bust − (bust ease + 1.0 cm)')
    expect(less.mm).toBe(850)
  })
  it('subtracts a negative fixed length instead of adding a minus', () => {
    expect(inWords(plus(bust, fixed(cm(-1.5))), CM)).toBe('bust − 1.5 cm')
    expect(inWords(minus(bust, fixed(cm(-1.5))), CM)).toBe('bust + 1.5 cm')
  })
  it('says a measurement or a found length as it is', () => {
    expect(inWords(bust, CM)).toBe('bust')
    expect(inWords(found('distance S–U', mm(212)), CM)).toBe('distance S–U')
    expect(inWords(over(found('distance S–U', mm(212)), 2), CM)).toBe('half the distance S–U')
    expect(inWords(over(bust, 7.5), CM)).toBe('1/7.5 of the bust')
  })
  it('knows once what it rests on', () => {
    const dart = found('dart width', mm(30), ['waistGirth', 'bustGirth'])
    expect(sources(plus(over(plus(bust, ease), 4), minus(bust, dart)))).toEqual([
      'bustGirth',
      'bustEase',
      'waistGirth',
    ])
    expect(sources(fixed(cm(1)))).toEqual([])
  })
  it('cannot be divided by nothing', () => {
    expect(() => over(bust, 0)).toThrow('0')
  })
})
