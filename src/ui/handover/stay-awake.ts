/**
 * Keeps the screen from falling asleep while a code is shown or something goes over; a phone that
 * sleeps drops the connection. Source: W3C Screen Wake Lock, which lets go by itself when the page
 * is hidden. A browser without it sleeps as it always does.
 */
export function stayAwake(): () => void {
  let ended = false
  let held: WakeLockSentinel | undefined
  const letGo = (): void => void held?.release().catch(() => undefined)
  async function hold(): Promise<void> {
    // Absent in some browsers and where the page was not served safely, whatever the type says.
    const locks: WakeLock | undefined = navigator.wakeLock
    held = await locks?.request('screen').catch(() => undefined)
    if (ended) letGo()
  }
  const shownAgain = (): void => {
    if (document.visibilityState === 'visible') void hold()
  }
  document.addEventListener('visibilitychange', shownAgain)
  void hold()
  return () => {
    ended = true
    document.removeEventListener('visibilitychange', shownAgain)
    letGo()
  }
}
