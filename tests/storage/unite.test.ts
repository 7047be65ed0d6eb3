/** Two tape books made into one, where the clock of the device was set back. Common practice, no source. */
import { expect, test } from 'vitest'
import { askAgain, propose, tapeStands, type Book } from '../../src/measurements/book.ts'
import type { Estimate } from '../../src/measurements/estimate.ts'
import { uniteBooks } from '../../src/storage/unite.ts'
import { mm } from '../../src/units/length.ts'
import { device, loaded, opened, value } from './opened.ts'

const said = (length: number): Estimate => ({
  value: mm(length),
  pm90: mm(15),
  basis: 'back photo, invented',
})
/** Each length is a reading of photos of its own. */
const read = (book: Book, length: number, on: string): Book =>
  propose(book, 'napeToWaist', said(length), on, `photos of ${length}`)
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
  const kept = value(
    await right.saveBook(propose(before, 'bustGirth', said(900), '2026-11-25', 'of the right')),
  )
  expect(lengthOf(kept)).toBe(410)
  expect(kept.bustGirth?.proposal?.estimate.value).toBe(900)
})
test('of two books that know nothing of one another the later photographs count', () => {
  const [early, late] = [read({}, 400, '2026-11-20'), read({}, 410, '2026-11-25')]
  expect(lengthOf(uniteBooks(early, late))).toBe(410)
  expect(lengthOf(uniteBooks(late, early))).toBe(410)
})
test('a backup from before the clock was set back does not bring the old photographs back', () => {
  const backup = read({}, 400, '2026-11-25')
  const now = read(read(backup, 405, '2026-11-26'), 410, '2026-11-02')
  expect(lengthOf(uniteBooks(now, backup))).toBe(410)
  expect(lengthOf(uniteBooks(backup, now))).toBe(410)
  // Nor one that was saved in between, nor after it was read back once.
  const between = read(backup, 405, '2026-11-26')
  expect(lengthOf(uniteBooks(uniteBooks(now, backup), between))).toBe(410)
})
test('two windows that read photos at once come to the same, also when the clock was set back between', async () => {
  for (const [leftOn, rightOn] of [
    ['2026-11-25', '2026-11-25'],
    ['2026-11-25', '2026-11-20'],
  ] as const) {
    const on = device()
    const [left, right] = [await opened(on), await opened(on)]
    const before = value(await left.saveBook(read({}, 400, '2026-11-26')))
    await right.load()
    const mine = read(before, 410, leftOn)
    const theirs = read(before, 405, rightOn)
    value(await left.saveBook(mine))
    const kept = value(await right.saveBook(theirs))
    expect(kept).toEqual((await loaded(left)).book)
    expect(lengthOf(kept)).toBe(410)
    expect(lengthOf(uniteBooks(theirs, mine))).toBe(lengthOf(uniteBooks(mine, theirs)))
    // What was read after both stands, whatever the clock says, and whichever of them comes back.
    const after = read(kept, 415, '2026-11-01')
    for (const one of [mine, theirs, before]) expect(lengthOf(uniteBooks(one, after))).toBe(415)
  }
})
test('photos read under a name stand before those of a book from before names', () => {
  const old: Book = {
    napeToWaist: { tape: [], proposal: { estimate: said(400), on: '2026-11-25' } },
  }
  const now = read(old, 410, '2026-11-20')
  expect(lengthOf(uniteBooks(old, now))).toBe(410)
  expect(lengthOf(uniteBooks(now, old))).toBe(410)
})
test('that the tape is right stays said where a book from before meets it, and can be taken back', () => {
  const before = read({}, 400, '2026-11-25')
  const saidSo = tapeStands(before, 'napeToWaist', '2026-11-26')
  for (const met of [uniteBooks(before, saidSo), uniteBooks(saidSo, before)])
    expect(met.napeToWaist?.proposal?.tapeStandsOn).toBe('2026-11-26')
  const back = askAgain(saidSo, 'napeToWaist')
  expect(back).toEqual(before)
  expect(uniteBooks(back, saidSo, saidSo)).toEqual(before)
  expect(askAgain({}, 'napeToWaist')).toEqual({})
})
