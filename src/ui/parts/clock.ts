/** The moment as screens show it: read again each minute, and when the page is shown again. */
import { createSubscriber } from 'svelte/reactivity'

const MINUTE_MS = 60_000

export class Clock {
  readonly #now: () => Date
  readonly #watched: () => void

  constructor(now: () => Date) {
    this.#now = now
    this.#watched = createSubscriber((update) => {
      const timer = setInterval(update, MINUTE_MS)
      document.addEventListener('visibilitychange', update)
      return () => {
        clearInterval(timer)
        document.removeEventListener('visibilitychange', update)
      }
    })
  }

  get now(): Date {
    this.#watched()
    return this.#now()
  }
}
