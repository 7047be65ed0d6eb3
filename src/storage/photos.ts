/** Photos on this device: kept by what they are (SHA-256), without metadata, until let go. */
import type { MuslinSight } from '../capture/muslin-sight.ts'
import type { ViewReading } from '../capture/reading.ts'
import { sha256Of } from './bytes.ts'
import type { Tables } from './db.ts'
import { withoutMetadata } from './jpeg.ts'
import { packedPhoto } from './packed-photo.ts'
import { parsePhotoRow, parseRoundRow, type PixelsRow, type RoundRow } from './rows.ts'
import type { KeptPhoto, PhotoView } from './schema/photo.ts'

export interface AboutPhoto {
  readonly view: PhotoView
  /** null for a measuring photo. */
  readonly garmentId: string | null
  readonly roundId: string | null
  readonly takenOn: string
  readonly reading?: ViewReading
  readonly muslin?: MuslinSight
}

export interface PreparedPhoto {
  readonly row: KeptPhoto
  readonly pixels: PixelsRow
}

/** The rows of a photo; anything but a readable JPEG is our own mistake, for photos are decoded first. */
export async function preparePhoto(photo: Blob, about: AboutPhoto): Promise<PreparedPhoto> {
  const bytes = withoutMetadata(new Uint8Array(await photo.arrayBuffer()))
  if (!bytes)
    throw new Error(
      `savePhoto: ${photo.size} bytes of "${photo.type}" are no JPEG; decode it first`,
    )
  const sha256 = await sha256Of(bytes)
  return {
    row: { v: 1, sha256, ...about },
    pixels: { v: 1, sha256, type: 'image/jpeg', bytes: bytes.buffer },
  }
}

/**
 * A photo chosen a second time, for another muslin or after it was let go: it stays what it first
 * was, with all that was read from it or traced on it, and its pixels are here again.
 */
export function chosenAgain(before: KeptPhoto, again: KeptPhoto): KeptPhoto {
  const { removedOn: _back, ...stays } = before
  const { reading, muslin } = again
  return { ...stays, ...(reading && { reading }), ...(muslin && { muslin }) }
}

/**
 * Deletes the pixels and marks the photo, in its own row and in every round; gives those rounds.
 * @param by the photo that is shown in its place from now on, if there is one
 */
export async function letGo(
  db: Tables,
  sha256: string,
  on: string,
  by?: string,
): Promise<readonly RoundRow[]> {
  await db.pixels.delete(sha256)
  const photo = parsePhotoRow(await db.photos.get(sha256))
  if (photo.ok) {
    const { removedOn = on } = photo.value
    await db.photos.put(packedPhoto({ ...photo.value, removedOn }))
  }
  const changed: RoundRow[] = []
  for (const stored of await db.rounds.toArray()) {
    const row = parseRoundRow(stored)
    if (!row.ok) continue
    const { round, savedTimes } = row.value
    if (!round.photos.some((p) => p.sha256 === sha256 && p.removedOn === undefined)) continue
    const photos = round.photos.flatMap((ref) => {
      if (ref.sha256 !== sha256) return [ref]
      const { removedOn = on, ...shown } = ref
      // The old one stays in the list, so that an earlier backup still is the same round.
      return [{ ...shown, removedOn }, ...(by === undefined ? [] : [{ ...shown, sha256: by }])]
    })
    const next = { ...row.value, savedTimes: savedTimes + 1, round: { ...round, photos } }
    await db.rounds.put(next)
    changed.push(next)
  }
  return changed
}
