/** What could not be read back is not written: it would be put aside when the page opens next. */
import { failed, type Failure } from './failure.ts'
import type { Parsed } from './schema/parsed.ts'
import { STORE_WORDS } from './storage.words.ts'

export const unfitFor = (read: Parsed<unknown>): Failure | undefined =>
  read.ok ? undefined : failed(STORE_WORDS.unfit(read.reason))
