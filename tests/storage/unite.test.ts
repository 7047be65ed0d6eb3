/** Two tape books made into one, where the clock of the device was set back. Common practice, no source. */
import { expect, test } from 'vitest'
import { propose, type Book } from '../../src/measurements/book.ts'
import type { Estimate } from '../../src/measurements/estimate.ts'
import { uniteBooks } from '../../src/storage/unite.ts'
import { mm } from '../../src/units/length.ts'
import { device, loaded, opened, value } from './opened.ts'

const said = (length: number): Estimate => ({
  value: mm(length),
  pm90: mm(15),
  basis: 'back photo, invented',
})
const read = (book: Book, length: number, on: string): Book =>
  propose(book, 'napeToWaist', said(length), on)
const lengthOf = (book: Book) => book.napeToWaist?.proposal?.estimate.value

test('photos read under an earlier date take the place of those before, here and opened anew', async () => {
  const on = device()
  const store = await opened(on)
  const first = value(await store.saveBook(read({}, 400, '2026-11-25')))
  const second = value(await store.saveBook(read(first, 410, '2026-11-20')))
  expect(lengthOf(second)).toBe(410)
  const again = await opened(on)
  const book = (await loaded(again)).book
  expect(lengthOf(book)).toBe(410)
  expect(lengthOf(value(await again.saveBook(read(book, 405, '2026-11-01'))))).toBe(405)
})
test('a window that changed something else does not bring the old ones back', async () => {
  const on = device()
  const [left, right] = [await opened(on), await opened(on)]
  const before = value(await left.saveBook(read({}, 400, '2026-11-25')))
  await right.load()
  value(await left.saveBook(read(before, 410, '2026-11-20')))
  const kept = value(await right.saveBook(propose(before, 'bustGirth', said(900), '2026-11-25')))
  expect(lengthOf(kept)).toBe(410)
  expect(kept.bustGirth?.proposal?.estimate.value).toBe(900)
})
test('of two books that know nothing of one another the later photographs count', () => {
  const [early, late] = [read({}, 400, '2026-11-20'), read({}, 410, '2026-11-25')]
  expect(lengthOf(uniteBooks(early, late))).toBe(410)
  expect(lengthOf(uniteBooks(late, early))).toBe(410)
})
