/** Keeps the screen from going dark while both hands are on the cloth. */

/** Returns what lets the screen sleep again. A device without wake lock, or that refuses, sleeps. */
export function keepLit(): () => void {
  let lock: WakeLockSentinel | undefined
  let over = false
  const held = 'wakeLock' in navigator ? navigator.wakeLock.request('screen') : undefined
  held?.then(
    (got) => {
      lock = got
      if (over) void got.release()
    },
    () => undefined,
  )
  return () => {
    over = true
    void lock?.release()
  }
}
