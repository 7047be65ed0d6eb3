/** The head in a photo of a muslin, covered in the pixels that are kept. */
import type { Darkroom } from '../../capture/darkroom.ts'
import type { ViewReading } from '../../capture/reading.ts'
import type { Photo } from '../measure/photos/live-desk.svelte.ts'
import { headPatch } from '../measure/photos/patch.ts'

/**
 * The photo as it is where nobody was found, for a guess at the head would lie over the neck of the
 * muslin; undefined where it could not be covered.
 */
export function headCovered(
  darkroom: Pick<Darkroom, 'patch'>,
  { picture, jpeg }: Pick<Photo, 'picture' | 'jpeg'>,
  reading: ViewReading,
): Promise<Blob | undefined> {
  if (!reading.person.ok) return Promise.resolve(jpeg)
  return darkroom.patch(jpeg, headPatch(picture, reading)).catch(() => undefined)
}
