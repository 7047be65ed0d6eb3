/**
 * What can go wrong with the storage of a browser, each with a sentence that says what to do
 * next. A failure is a value, never a thrown error; what is thrown is our own mistake.
 */
import { DENIED, FULL, NEWER, OVERTAKEN, UNSURE } from './storage.words.ts'

export interface Failure {
  readonly ok: false
  readonly sentence: string
}
export type Kept<T> = { readonly ok: true; readonly value: T } | Failure

export const kept = <T>(value: T): Kept<T> => ({ ok: true, value })
export const failed = (sentence: string): Failure => ({ ok: false, sentence })

const SENTENCES: Readonly<Record<string, string>> = {
  QuotaExceededError: FULL,
  DatabaseClosedError: OVERTAKEN,
  VersionChangeError: OVERTAKEN,
  VersionError: NEWER,
  MissingAPIError: DENIED,
  MissingApiError: DENIED,
  SecurityError: DENIED,
  // Some browsers answer so in a private window.
  InvalidStateError: DENIED,
  OpenFailedError: DENIED,
  UnknownError: UNSURE,
  TimeoutError: UNSURE,
  AbortError: UNSURE,
}

/** The failure behind an error of the browser; an error of our own is thrown on. */
export function failureOf(error: unknown): Failure {
  for (const name of namesOf(error)) {
    const sentence = SENTENCES[name]
    if (sentence !== undefined) return failed(sentence)
  }
  throw error
}

/** Names from the innermost error outwards: the cause says more than the wrapper. */
function namesOf(error: unknown): readonly string[] {
  if (typeof error !== 'object' || error === null) return []
  const inner = 'inner' in error ? namesOf(error.inner) : []
  return 'name' in error && typeof error.name === 'string' ? [...inner, error.name] : inner
}
