/**
 * The hand before the work: what she did stands on the screen first, and what follows from it is
 * worked out when that picture has been painted.
 */

/** A page out of sight paints nothing, and its work must not wait for that, ms. Judgement. */
const AT_THE_LATEST_MS = 200

/** When the next picture stands on the screen. */
export const painted = (): Promise<void> =>
  new Promise((done) => {
    const late = setTimeout(done, AT_THE_LATEST_MS)
    requestAnimationFrame(() => {
      clearTimeout(late)
      setTimeout(done)
    })
  })

export interface AfterPaint<T> {
  readonly next: (value: T) => void
  /** What still waits, at once. */
  readonly flush: () => void
}

/** Moves of a hand come faster than pictures: of all that come until one is painted the last is worked out. */
export function afterPaint<T>(work: (value: T) => void): AfterPaint<T> {
  let waiting: { readonly value: T } | undefined
  const flush = () => {
    const last = waiting
    waiting = undefined
    if (last) work(last.value)
  }
  return {
    next: (value) => {
      if (!waiting) void painted().then(flush)
      waiting = { value }
    },
    flush,
  }
}
