/** The letters of every printed sheet, from our own origin; undefined when they cannot be read. */
import fontUrl from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url'

export async function printedFace(): Promise<Uint8Array | undefined> {
  try {
    const response = await fetch(fontUrl)
    return response.ok ? new Uint8Array(await response.arrayBuffer()) : undefined
  } catch {
    return undefined // offline before the file was ever kept: the caller says so
  }
}
