/**
 * Windows of one browser that show the same work tell each other when something was kept. Only
 * that it happened is told, never what: each window reads the store itself.
 */
export interface Windows {
  readonly tell: () => void
  readonly close: () => void
}

/** @param heard called when another window has kept something; never for this window's own */
export function otherWindows(database: string, heard: () => void): Windows | undefined {
  if (typeof BroadcastChannel === 'undefined') return undefined
  const channel = new BroadcastChannel(`${database}: kept`)
  channel.onmessage = heard
  return { tell: () => channel.postMessage(undefined), close: () => channel.close() }
}
