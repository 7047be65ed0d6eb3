/** What she does with photographs. */
import type { MuslinSight } from '../../capture/muslin-sight.ts'
import type { ViewReading } from '../../capture/reading.ts'
import { withPhoto, type Round } from '../../rounds/round.ts'
import type { Zone } from '../../rounds/zones.ts'
import type { BroughtPhoto } from '../../storage/bring-pixels.ts'
import type { Kept } from '../../storage/failure.ts'
import type { PhotoHere, WhichPhotos } from '../../storage/load.ts'
import type { PhotoView } from '../../storage/schema/photo.ts'
import type { Keeping } from './keeping.ts'
import type { Work } from './work.svelte.ts'

export class PhotoActs {
  readonly #keeping: Keeping
  readonly #work: Work

  constructor(keeping: Keeping) {
    this.#keeping = keeping
    this.#work = keeping.work
  }

  /** Keeps a measuring photo with what was read from it; gives its name, or undefined when it was not kept. */
  keepPhoto = (
    jpeg: Blob,
    photo: { view: PhotoView; reading?: ViewReading },
  ): Promise<string | undefined> =>
    this.#keeping.inTurn(async () => {
      const about = { garmentId: null, roundId: null, takenOn: this.#work.today(), ...photo }
      const kept = await this.#keeping.kept(this.#keeping.store.savePhoto(jpeg, about))
      if (!kept) return undefined
      await this.#work.showPhotosAnew()
      return kept.value.sha256
    })
  /** Keeps a photo of a muslin with its round, both or neither; gives its name as above. */
  addPhoto = (
    jpeg: Blob,
    round: Round,
    { view, zone }: { view: PhotoView; zone?: Zone },
  ): Promise<string | undefined> =>
    this.#keeping.inTurn(async () => {
      const now = this.#work.rounds.find(({ id }) => id === round.id) ?? round
      const { id: roundId, garmentId } = now
      const on = this.#work.today()
      const saving = this.#keeping.store.savePhotoOf(
        jpeg,
        { view, garmentId, roundId, takenOn: on },
        (sha256) => withPhoto(now, { view, sha256, ...(zone && { zone }), addedOn: on }),
      )
      const kept = await this.#keeping.kept(saving)
      if (!kept) return undefined
      this.#keeping.showRound(kept.value.round)
      await this.#work.showPhotosAnew()
      return kept.value.photo.sha256
    })
  /** What was read from a photo of a muslin, or traced on it, is kept with the photo. */
  noteRead = async (
    sha256: string,
    read: { readonly reading?: ViewReading; readonly muslin?: MuslinSight },
  ): Promise<boolean> => {
    const kept = await this.#keeping.kept(this.#keeping.store.noteRead(sha256, read))
    if (!kept) return false
    await this.#work.showPhotosAnew()
    return true
  }
  /** Pixels that came over from another device, for a photo whose record is here. */
  bringPixels = (jpeg: Blob): Promise<Kept<BroughtPhoto>> =>
    this.#keeping.inTurn(async () => {
      // Rarely needed, so it is no part of the first load.
      const { bringPixels } = await import('../../storage/bring-pixels.ts')
      const brought = await bringPixels(this.#keeping.store, jpeg)
      await this.#work.showPhotosAnew()
      return brought
    })
  /** Photos as they lie in the store, without their pixels. */
  keptPhotos = async (which: WhichPhotos): Promise<readonly PhotoHere[]> => {
    const read = await this.#keeping.store.keptPhotos(which)
    if (!read.ok) {
      this.#work.problem = read.sentence
      return []
    }
    const { photos, aside } = read.value
    // One that cannot be read is put aside when it is first asked for.
    if (aside.length !== this.#work.aside.length) this.#work.aside = aside
    return photos
  }
  readPhoto = async (sha256: string): Promise<Blob | undefined> => {
    const read = await this.#keeping.store.readPhoto(sha256)
    return read.ok ? read.value : undefined
  }
  /** "Keep the numbers, let the photo go." */
  letPhotoGo = (sha256: string): Promise<boolean> =>
    this.#keeping.inTurn(async () => {
      const removedOn = this.#work.today()
      const kept = await this.#keeping.kept(this.#keeping.store.letPhotoGo(sha256, removedOn))
      return kept !== undefined && this.#shown(kept.value)
    })
  /** What was read from a photo, and the same picture with the head covered in the place of its pixels. */
  keepCovered = (
    sha256: string,
    jpeg: Blob,
    read: { readonly reading: ViewReading; readonly muslin: MuslinSight },
  ): Promise<boolean> =>
    this.#keeping.inTurn(async () => {
      const { store } = this.#keeping
      const on = this.#work.today()
      const kept = await this.#keeping.kept(store.exchangePhoto(sha256, jpeg, read, on))
      return kept !== undefined && this.#shown(kept.value)
    })

  async #shown(changed: readonly Round[]): Promise<true> {
    this.#work.rounds = this.#work.rounds.map((r) => changed.find(({ id }) => id === r.id) ?? r)
    await this.#work.showPhotosAnew()
    return true
  }
}
