/** Ctrl or Cmd with Z takes back; with Shift as well, or Ctrl with Y, does it again. */
export function stepFor(
  event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>,
): 'back' | 'again' | undefined {
  if (event.altKey || !(event.ctrlKey || event.metaKey)) return undefined
  const key = event.key.toLowerCase()
  if (key === 'z') return event.shiftKey ? 'again' : 'back'
  return key === 'y' && event.ctrlKey && !event.shiftKey ? 'again' : undefined
}
