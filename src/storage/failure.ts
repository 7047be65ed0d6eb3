/**
 * What can go wrong with the storage of a browser, each with a sentence that says what to do
 * next. A failure is a value, never a thrown error; what is thrown is our own mistake.
 */
export interface Failure {
  readonly ok: false
  readonly sentence: string
}
export type Kept<T> = { readonly ok: true; readonly value: T } | Failure

export const kept = <T>(value: T): Kept<T> => ({ ok: true, value })
export const failed = (sentence: string): Failure => ({ ok: false, sentence })

export const FULL =
  'There is no room left on this device, so the last change was not kept; everything before it is. Let a photo go or free some space, then do the last change again.'
export const DENIED =
  'This browser does not let the page keep anything. Leave the private window, or allow this page to store data in the browser settings, then reload.'
export const OVERTAKEN =
  'A newer version of this page is open in another window, so this one can no longer keep changes. Everything kept before is safe. Reload this page to go on.'
export const NEWER =
  'The work on this device was kept by a newer version of this page. Nothing was changed. Reload the page to get that version.'
export const BLOCKED =
  'Another window still has an older version of this page open. Nothing was changed. Close that window, then reload this one.'
export const CHANGED_ELSEWHERE =
  'This was changed in another window at the same time, so the last change here was not kept. What the other window kept is shown now; do yours again if you still want it.'
export const UNSURE =
  'The browser could not reach its storage, so the last change was not kept; everything before it is. Close other windows and reload this page.'

export const NOT_OPENED =
  'The browser does not open its storage for this page. Allow this page to keep data in the browser settings (cookies and site data), close other windows of it, then reload.'

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
