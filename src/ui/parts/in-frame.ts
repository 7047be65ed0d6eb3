/** Moves of the pointer come faster than pictures: of all that fall into one frame the last is drawn. */
export interface InFrame<T> {
  readonly next: (value: T) => void
  /** What still waits, at once: she has let go. */
  readonly flush: () => void
}

export function inFrame<T>(draw: (value: T) => void): InFrame<T> {
  let waiting: { readonly value: T } | undefined
  let frame = 0
  const flush = () => {
    cancelAnimationFrame(frame)
    const last = waiting
    waiting = undefined
    if (last) draw(last.value)
  }
  return {
    next: (value) => {
      if (!waiting) frame = requestAnimationFrame(flush)
      waiting = { value }
    },
    flush,
  }
}
