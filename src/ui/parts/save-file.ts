/** How a file leaves the page by her own act: the browser’s saving, or the share sheet of the device. */

/** Hands a file to the browser's own saving; nothing goes over any net. */
export function saveFile(file: File): void {
  const address = URL.createObjectURL(file)
  const link = document.createElement('a')
  link.href = address
  link.download = file.name
  link.click()
  // The browser reads the blob after the click returns; a minute is long enough (common practice).
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}

export const pdfFile = (bytes: Uint8Array, name: string): File =>
  new File([new Uint8Array(bytes)], name, { type: 'application/pdf' })

/** Whether this browser hands files such as this one to the share sheet of the device. */
export const canShare = (file: File): boolean =>
  'canShare' in navigator && navigator.canShare({ files: [passedOn(file)] })

/** leftIt: she closed the share sheet; pressAgain: the browser wants a newer press of hers. */
export type Shared = 'handedOn' | 'leftIt' | 'pressAgain' | 'refused'

/** Opens the share sheet with these files. Never throws. */
export async function shareFiles(files: readonly File[]): Promise<Shared> {
  // Opened from a press of hers only, and a press is too old after some seconds
  // (W3C Web Share: transient activation).
  if ('userActivation' in navigator && !navigator.userActivation.isActive) return 'pressAgain'
  try {
    await navigator.share({ files: files.map(passedOn) })
    return 'handedOn'
  } catch (fault) {
    return fault instanceof DOMException && fault.name === 'AbortError' ? 'leftIt' : 'refused'
  }
}

/**
 * Chromium passes on only kinds it knows, and JSON is none of them (MDN, “Shareable file types” of
 * `Navigator.share`): such a file goes as the plain text it is, under a name that says so.
 */
function passedOn(file: File): File {
  return file.type === 'application/json'
    ? new File([file], `${file.name}.txt`, { type: 'text/plain' })
    : file
}
