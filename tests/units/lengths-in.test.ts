/** Millimetres in a sentence. By hand: 13 mm are 4.09 eighths of an inch, 25.4 mm are one inch (ISO 80000-3). */
import { expect, test } from 'vitest'
import { lengthsIn } from '../../src/units/lengths-in.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const INCH = { unit: 'inch', inchStep: 8 } as const

test.each([
  ['51 mm and more', '5.1 cm and more', '2 in and more'],
  [
    '6 to 13 mm a half, 12.7 mm at most',
    '0.6 to 1.3 cm a half, 1.3 cm at most',
    '1/4 to 1/2 in a half, 1/2 in at most',
  ],
  ['29 mm at 830 mm', '2.9 cm at 83.0 cm', '1 1/8 in at 32 5/8 in'],
  [
    '95 of 100 hands of 1,986 women',
    '95 of 100 hands of 1,986 women',
    '95 of 100 hands of 1,986 women',
  ],
])('%s', (told, cm, inch) => {
  expect(lengthsIn(told, CM)).toBe(cm)
  expect(lengthsIn(told, INCH)).toBe(inch)
})
