/** Hands a file to the browser's own saving; nothing goes over any net. */
export function saveFile(file: Blob, name: string): void {
  const address = URL.createObjectURL(file)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // The browser reads the blob after the click returns; a minute is long enough (common practice).
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
