/** Files the page hands to the browser's saving, caught before they reach the disk. */
import type { VitestUtils } from 'vitest'

export interface CaughtFile {
  readonly name: string
  readonly blob: Promise<ArrayBuffer>
}

export function caughtFiles(vi: VitestUtils): CaughtFile[] {
  const files: CaughtFile[] = []
  const blobs = new Map<string, Blob>()
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    blobs.set(`blob:${blobs.size}`, blob as Blob)
    return `blob:${blobs.size - 1}`
  })
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
    this: HTMLAnchorElement,
  ) {
    const blob = blobs.get(this.href)
    if (blob) files.push({ name: this.download, blob: blob.arrayBuffer() })
  })
  return files
}
