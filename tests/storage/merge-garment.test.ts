/** One garment changed in two windows: worked by hand. */
import { expect, test } from 'vitest'
import { mergedGarment } from '../../src/storage/merge-garment.ts'
import { GARMENT } from './invented.ts'

test.each([
  ['both change other things', { name: 'mine' }, { order: 7 }, { name: 'mine', order: 7 }],
  ['only the other changes', {}, { takenOffOn: '2026-11-24' }, { takenOffOn: '2026-11-24' }],
  ['both change to the same', { name: 'same' }, { name: 'same' }, { name: 'same' }],
])('%s', (_case, mine, stored, merged) => {
  expect(mergedGarment(GARMENT, { ...GARMENT, ...mine }, { ...GARMENT, ...stored })).toEqual({
    ...GARMENT,
    ...merged,
  })
})

test('hung again here while it is renamed there: the date it was taken off is gone', () => {
  const off = { ...GARMENT, takenOffOn: '2026-11-24' }
  expect(mergedGarment(off, GARMENT, { ...off, name: 'theirs' })).toEqual({
    ...GARMENT,
    name: 'theirs',
  })
})

test('two names at once are no name', () => {
  expect(
    mergedGarment(GARMENT, { ...GARMENT, name: 'mine' }, { ...GARMENT, name: 'theirs' }),
  ).toBeUndefined()
})
