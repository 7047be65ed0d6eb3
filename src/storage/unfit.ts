/** What could not be read back is not written: it would be put aside when the page opens next. */
import { failed, type Failure } from './failure.ts'
import type { Parsed } from './schema/parsed.ts'

export const unfitFor = (read: Parsed<unknown>): Failure | undefined =>
  read.ok ? undefined : failed(`This could not be kept. ${read.reason} Change it and try again.`)
