/**
 * Whether the page also works without a net, and whether a newer version lies ready. A newer
 * version is offered, never taken by itself: it reloads the page, and what she is in the middle of
 * saying in Fit is not yet kept.
 */

/** Registers the service worker; answers with what takes the newer version (`virtual:pwa-register`). */
export type Register = (told: {
  onOfflineReady: () => void
  onNeedRefresh: () => void
}) => (reload?: boolean) => Promise<void>

export class Offline {
  /** Everything the page needs is kept on this device. */
  ready = $state.raw(false)
  /** A newer version is fetched and waits. */
  newer = $state.raw(false)
  #take: (reload: boolean) => Promise<void>

  constructor(register: Register) {
    this.#take = register({
      onOfflineReady: () => (this.ready = true),
      onNeedRefresh: () => (this.newer = true),
    })
  }

  /** Reloads the page with the newer version. */
  take(): Promise<void> {
    return this.#take(true)
  }
}
