import { expect, test } from 'vitest'
import { clothLengthWords, parseClothLength } from '../../src/units/cloth-length.ts'
import { inches, mm } from '../../src/units/length.ts'

const cm = { unit: 'cm', inchStep: 8 } as const
const inch = { unit: 'inch', inchStep: 8 } as const
const read = (text: string, choice: typeof cm | typeof inch = cm) => {
  const parsed = parseClothLength(text, choice)
  return parsed.ok ? Math.round(parsed.value * 100) / 100 : parsed.reason
}

test.each([
  // A yard is 914.4 mm exactly (international yard, 1959).
  ['2.30 m', 2300],
  ['2,30', 2300],
  ['230 cm', 2300],
  ['230', 2300],
  ['2 1/2 yd', 2286],
  ['2½ yards', 2286],
  ['90 in', 2286],
])('%s in centimetres is %d mm', (text, length) => expect(read(text)).toBe(length))

test('a bare number of hers who reads inches is yards, a large one inches', () => {
  expect(read('2 1/2', inch)).toBe(2286)
  expect(read('90', inch)).toBe(2286)
})
test('what is no length of cloth says how to write one', () => {
  expect(read('a lot')).toMatch(/2\.30 m/)
  expect(read('40 m')).toMatch(/up to 10 m/)
  expect(read('0')).toMatch(/2\.30 m/)
})
test('in words', () => {
  expect(clothLengthWords(mm(2300), cm)).toBe('2.30 m')
  expect(clothLengthWords(inches(90), inch)).toBe('2 yd 18 in')
  expect(clothLengthWords(inches(72), inch)).toBe('2 yd')
})
