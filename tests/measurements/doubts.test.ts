/** What a muslin tells of a number: it waits in the book, dated, and only the tape answers it. */
import { describe, expect, it } from 'vitest'
import { standardFor } from '../../src/draft/garments.ts'
import { fitMuslin } from '../../src/fitting/fit-muslin.ts'
import {
  addTape,
  agreedValue,
  answeredByTape,
  doubtAll,
  emptyBook,
  openDoubts,
  standing,
  type Book,
} from '../../src/measurements/book.ts'
import { parseBook } from '../../src/measurements/stored.ts'
import { uniteBooks } from '../../src/storage/unite.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

const [SEWN, LATER] = ['2026-11-25', '2026-11-27']
const taped = (...values: number[]): Book =>
  values.reduce((book, value) => addTape(book, 'napeToWaist', mm(value), '2026-11-20'), emptyBook())
const doubted = (book: Book): Book =>
  doubtAll(book, [{ measurement: 'napeToWaist', by: mm(-20), complaint: 'W2', on: SEWN }])
const open = (book: Book) => openDoubts(book.napeToWaist, 'napeToWaist')

describe('a number that a muslin doubts', () => {
  it('drives nothing: readings and agreement stay as they were', () => {
    const book = doubted(taped(420, 421))
    expect(open(book)).toEqual([{ by: -20, complaint: 'W2', on: SEWN, readings: 2 }])
    expect(agreedValue(book.napeToWaist, 'napeToWaist')).toBe(420.5)
    expect(standing(book.napeToWaist, 'napeToWaist')).toBe('agreed')
    expect(answeredByTape(book)).toEqual([])
  })
  it('is answered by the next reading, of the same day too, and open again when that is withdrawn', () => {
    const book = addTape(doubted(taped(420, 421)), 'napeToWaist', mm(401), SEWN)
    expect(open(book)).toEqual([])
    expect(answeredByTape(book)).toEqual(['napeToWaist'])
    const again = doubtAll(book, [{ measurement: 'napeToWaist', complaint: 'W1', on: LATER }])
    expect(open(again).map(({ complaint }) => complaint)).toEqual(['W1'])
  })
  it('told twice of one muslin it is kept once', () => {
    expect(open(doubted(doubted(taped(420))))).toHaveLength(1)
  })
  it('comes back from storage as it was; what is no doubt is refused', () => {
    const book = doubted(taped(420, 421))
    expect(parseBook(JSON.parse(JSON.stringify(book)))).toEqual({ ok: true, value: book })
    for (const bad of [{}, [{ on: SEWN }], [{ complaint: 'W2', on: 'today', readings: 1 }]])
      expect(parseBook({ napeToWaist: { tape: [], doubts: bad } }).ok).toBe(false)
  })
  it('two books made one keep it, open unless either has taped since', () => {
    const here = doubted(taped(420, 421))
    expect(open(uniteBooks(here, taped(420, 421)))).toHaveLength(1)
    expect(open(uniteBooks(taped(420, 421), here))).toHaveLength(1)
    const answered = addTape(here, 'napeToWaist', mm(401), LATER)
    expect(open(uniteBooks(here, answered))).toEqual([])
    expect(open(uniteBooks(answered, here))).toEqual([])
  })
})

describe('from a muslin to the book', () => {
  // Folds all round: 20 too long by the pins, so nape to waist and bust to waist are each 20 less.
  it('folds all round speak against nape to waist and waist to bust level', () => {
    const { proposals } = fitMuslin({
      garment: 'blouse',
      body: body(),
      choices: standardFor('blouse'),
      corrections: [],
      complaints: [
        {
          id: 'W2',
          answers: { '1': true },
          pin: { where: 'allRound', how: 'pinch', side: 'both', value: mm(20) },
        },
      ],
      round: 1,
      on: SEWN,
    })
    const book = doubtAll(taped(420, 421), proposals)
    expect(open(book)).toEqual([{ by: -20, complaint: 'W2', on: SEWN, readings: 2 }])
    expect(openDoubts(book.waistToBustLevel, 'waistToBustLevel')).toHaveLength(1)
  })
})
