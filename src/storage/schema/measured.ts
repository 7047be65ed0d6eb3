/**
 * The tape book and the confirmed numbers. Both have parsers of their own in the measurements
 * room; here those are given the form of a schema, so that rounds can hold them.
 */
import * as v from 'valibot'
import type { Book } from '../../measurements/book.ts'
import { parseConfirmed, type Confirmed } from '../../measurements/confirmed.ts'
import { parseBook } from '../../measurements/stored.ts'

/** Made again from its tape readings; a number they do not give is refused. */
export const ConfirmedSchema = v.pipe(
  v.unknown(),
  v.rawTransform<unknown, Confirmed>(({ dataset, addIssue, NEVER }) => {
    const made = parseConfirmed(dataset.value)
    if (made.ok) return made.body
    addIssue({ message: made.reason })
    return NEVER
  }),
)

export const BookSchema = v.pipe(
  v.unknown(),
  v.rawTransform<unknown, Book>(({ dataset, addIssue, NEVER }) => {
    const made = parseBook(dataset.value)
    if (made.ok) return made.value
    addIssue({ message: made.reason })
    return NEVER
  }),
)
