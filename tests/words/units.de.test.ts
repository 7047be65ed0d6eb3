/** Decimal comma and thousands point: DIN 1333 and DIN 5008, from memory. */
import { describe, expect, it } from 'vitest'
import { fixed, measurementAmount, inWords, over, plus } from '../../src/units/amount.ts'
import { clothLengthWords, parseClothLength } from '../../src/units/cloth-length.ts'
import { formatChange, formatLength, formatStep } from '../../src/units/format.ts'
import { mm } from '../../src/units/length.ts'
import { grouped } from '../../src/units/number.ts'
import { parseLength } from '../../src/units/parse.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const INCH = { unit: 'inch', inchStep: 8 } as const

describe('numbers in German', () => {
  it('writes the decimal comma and leaves inches as fractions', () => {
    expect(formatLength(mm(413), CM)).toBe('41,3\u00a0cm')
    expect(formatStep(mm(268.5), CM)).toBe('26,85\u00a0cm')
    expect(formatChange(mm(413), mm(408), CM)).toBe('−0,5\u00a0cm')
    expect(formatChange(mm(413), mm(413), CM)).toBe('gleich')
    expect(formatLength(mm(16.25 * 25.4), INCH)).toBe('16 1/4\u00a0in')
    expect(clothLengthWords(mm(2300), CM)).toBe('2,30\u00a0m')
    expect(grouped(1200)).toBe('1.200')
  })

  it('reads a comma and a point, and German units', () => {
    for (const text of ['41,3', '41.3', '41,3 cm', '413 mm', '0,413 Meter', '41,3 Zentimeter'])
      expect(parseLength(text, CM)).toMatchObject({ ok: true, value: 413 })
    expect(parseLength('16 1/4 Zoll', CM)).toMatchObject({ ok: true, value: 16.25 * 25.4 })
    expect(parseClothLength('2,3', CM)).toMatchObject({
      ok: true,
      value: 2300,
      read: '2,30\u00a0m',
    })
  })

  it('takes three places after a comma as decimals and asks about three after a point', () => {
    expect(parseLength('1,200 m', CM)).toMatchObject({ ok: true, value: 1200, read: '1,20 m' })
    const asked = parseLength('1.200 mm', CM)
    expect(asked).toMatchObject({ ok: false })
    expect(asked.ok ? [] : asked.ask?.map((a) => a.label)).toEqual([
      '1,2 mm (0,1\u00a0cm)',
      '1200 mm (120,0\u00a0cm)',
    ])
  })

  it('tells the arithmetic as German drafting books do', () => {
    const bust = measurementAmount('bust', 'Brustumfang', mm(920))
    expect(inWords(plus(over(bust, 4), fixed(mm(22))), CM)).toBe('1/4 Brustumfang + 2,2\u00a0cm')
    expect(inWords(over(plus(bust, fixed(mm(40))), 2), CM)).toBe(
      '1/2 von (Brustumfang + 4,0\u00a0cm)',
    )
  })
})
