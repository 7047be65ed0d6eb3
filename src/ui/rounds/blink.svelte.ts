/**
 * Two photos in turn while a key is held. Each stays for 700 ms: seven changes in five seconds at
 * the most, far under the three flashes a second that can harm (WCAG 2.2, 2.3.1). Where movement is
 * not wanted the key swaps them once.
 */
export const BLINK_MS = 700

export class Blink {
  /** Whether the later photo is in sight. */
  later = $state.raw(true)
  held = $state.raw(false)
  readonly #still: () => boolean
  #timer: ReturnType<typeof setInterval> | undefined

  constructor(still: () => boolean) {
    this.#still = still
  }

  start = (): void => {
    if (this.held) return
    this.held = true
    this.later = !this.later
    if (!this.#still()) this.#timer = setInterval(() => (this.later = !this.later), BLINK_MS)
  }
  stop = (): void => {
    if (!this.held) return
    this.held = false
    clearInterval(this.#timer)
    if (!this.#still()) this.later = true
  }
}

/** She asked her device for less movement. */
export const lessMovement = (): boolean =>
  window.matchMedia('(prefers-reduced-motion: reduce)').matches
