import { expect, it } from 'vitest'
import { mm } from '../../../src/units/length.ts'
import { largestFirst } from '../../../src/ui/parts/changes.ts'

const row = (id: string, before: number, after: number) => ({
  id,
  name: id,
  before: mm(before),
  after: mm(after),
})

it('puts what moved most first and what stayed last, up or down alike', () => {
  const rows = [row('same', 395, 395), row('edge', 267, 263), row('dart', 20, 29)]
  expect(largestFirst(rows, { unit: 'cm', inchStep: 8 }).map((r) => r.id)).toEqual([
    'dart',
    'edge',
    'same',
  ])
})

it('goes by the printed numbers: two changes that print alike keep their order', () => {
  // Both print as 1/8 in (3.175 mm), though the second moved 0.4 mm further.
  const rows = [row('first', 0, 3), row('second', 0, 3.4)]
  expect(largestFirst(rows, { unit: 'inch', inchStep: 8 }).map((r) => r.id)).toEqual([
    'first',
    'second',
  ])
})
