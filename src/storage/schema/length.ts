/** Millimetres, dates and names as they lie in a record; every one is looked at before it is Mm. */
import * as v from 'valibot'
import { isIsoDate } from '../../measurements/book.ts'
import { mm } from '../../units/length.ts'
import { shown } from './parsed.ts'

/** Nothing in this work is further apart; beyond it a number is a mistake. Common practice, no source. */
export const FURTHEST = 10_000
/** A name, an id or a cause longer than this was not written by this program. */
const LONGEST_NAME = 200
/** Room for many pages of notes. */
const LONGEST_TEXT = 100_000

const said = (what: string) => (issue: v.BaseIssue<unknown>) =>
  `${shown(issue.input)} is not ${what}.`

export const MmSchema = v.pipe(
  v.number(said('a number of millimetres')),
  v.minValue(-FURTHEST, said('a length of this work')),
  v.maxValue(FURTHEST, said('a length of this work')),
  v.transform(mm),
)

/** A finite plain number: pixels, shares, scores. */
export const FiniteSchema = v.pipe(v.number(said('a number')), v.finite(said('a finite number')))

export const DateSchema = v.pipe(
  v.string(said('a date')),
  v.check(isIsoDate, said('a date such as 2026-11-25')),
)

export const IdSchema = v.pipe(
  v.string(said('an id')),
  v.minLength(1, said('an id')),
  v.maxLength(LONGEST_NAME, 'An id is longer than any of ours.'),
)

export const NameSchema = v.pipe(
  v.string(said('a name')),
  v.maxLength(LONGEST_NAME, `A name is longer than ${LONGEST_NAME} letters.`),
)

export const TextSchema = v.pipe(
  v.string(said('a text')),
  v.maxLength(LONGEST_TEXT, `A text is longer than ${LONGEST_TEXT} letters.`),
)

/** SHA-256 of a file, sixty-four hexadecimal digits (FIPS 180-4). */
export const ShaSchema = v.pipe(
  v.string(said('a file mark')),
  v.regex(/^[0-9a-f]{64}$/, said('a file mark')),
)

/** A whole number counted from 1. */
export const CountSchema = v.pipe(
  v.number(said('a whole number')),
  v.integer(said('a whole number')),
  v.minValue(1, said('a whole number from 1')),
)
