/** The pixels of a photo whose own record is here already: brought over without being kept anew. */
import { sha256Of } from './bytes.ts'
import { failed, kept, type Kept } from './failure.ts'
import { withoutMetadata } from './jpeg.ts'
import type { Store } from './store.ts'
import { STORE_WORDS } from './storage.words.ts'

/** A photo is known by the SHA-256 of its pixels, so these are its own or they are nobody's. */
export interface BroughtPhoto {
  readonly sha256: string
  readonly how: 'kept' | 'letGoBefore'
}

/** A photo that was let go here stays let go, as with a backup; where photos are closed it is closed too. */
export async function bringPixels(store: Store, jpeg: Blob): Promise<Kept<BroughtPhoto>> {
  const bytes = withoutMetadata(new Uint8Array(await jpeg.arrayBuffer()))
  if (!bytes) return failed(STORE_WORDS.noJpeg)
  const sha256 = await sha256Of(bytes)
  let gone = false
  const changed = await store.safe.change(
    sha256,
    (before) => {
      gone = before?.removedOn !== undefined
      return before && !gone ? kept(before) : failed(STORE_WORDS.unknownPhoto)
    },
    { v: 1, sha256, type: 'image/jpeg', bytes: bytes.buffer },
  )
  if (gone) return kept({ sha256, how: 'letGoBefore' })
  return changed.ok ? kept({ sha256, how: 'kept' }) : changed
}
