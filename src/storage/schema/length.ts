/** Millimetres, dates and names as they lie in a record; every one is looked at before it is Mm. */
import * as v from 'valibot'
import { isIsoDate } from '../../measurements/book.ts'
import { mm } from '../../units/length.ts'
import { shown } from './parsed.ts'
import { SCHEMA_WORDS, THINGS } from './schema.words.ts'

/** Nothing in this work is further apart; beyond it a number is a mistake. Common practice, no source. */
export const FURTHEST = 10_000
/** A name, an id or a cause longer than this was not written by this program. */
const LONGEST_NAME = 200
/** Room for many pages of notes. */
const LONGEST_TEXT = 100_000

const said = (what: string) => (issue: v.BaseIssue<unknown>) =>
  SCHEMA_WORDS.isNot(shown(issue.input), what)

export const MmSchema = v.pipe(
  v.number(said(THINGS.millimetres)),
  v.minValue(-FURTHEST, said(THINGS.length)),
  v.maxValue(FURTHEST, said(THINGS.length)),
  v.transform(mm),
)

/** A finite plain number: pixels, shares, scores. */
export const FiniteSchema = v.pipe(v.number(said(THINGS.number)), v.finite(said(THINGS.finite)))

export const DateSchema = v.pipe(
  v.string(said(THINGS.date)),
  v.check(isIsoDate, said(THINGS.isoDate)),
)

export const IdSchema = v.pipe(
  v.string(said(THINGS.id)),
  v.minLength(1, said(THINGS.id)),
  v.maxLength(LONGEST_NAME, SCHEMA_WORDS.idTooLong),
)

export const NameSchema = v.pipe(
  v.string(said(THINGS.name)),
  v.maxLength(LONGEST_NAME, SCHEMA_WORDS.nameTooLong(LONGEST_NAME)),
)

export const TextSchema = v.pipe(
  v.string(said(THINGS.text)),
  v.maxLength(LONGEST_TEXT, SCHEMA_WORDS.textTooLong(LONGEST_TEXT)),
)

/** SHA-256 of a file, sixty-four hexadecimal digits (FIPS 180-4). */
export const ShaSchema = v.pipe(
  v.string(said(THINGS.fileMark)),
  v.regex(/^[0-9a-f]{64}$/, said(THINGS.fileMark)),
)

/** A whole number counted from 1. */
export const CountSchema = v.pipe(
  v.number(said(THINGS.whole)),
  v.integer(said(THINGS.whole)),
  v.minValue(1, said(THINGS.counted)),
)
