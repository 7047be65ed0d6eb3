/** Photos she picked to send: opened, turned upright, without metadata, each with what it shows. */
import type { Darkroom } from '../../capture/darkroom.ts'
import { VIEWS, type View } from '../../capture/reading.ts'
import type { Outgoing } from '../../handover/sending.ts'

export interface PickedPhoto {
  readonly name: string
  readonly jpeg: Blob
  /** An address of this page for the small picture. */
  readonly url: string
  readonly view: View | undefined
}

export class Picked {
  photos = $state.raw<readonly PickedPhoto[]>([])
  /** What could not be opened, and why. */
  refused = $state.raw<readonly string[]>([])
  opening = $state.raw(false)
  readonly #darkroom: Darkroom

  constructor(darkroom: Darkroom) {
    this.#darkroom = darkroom
  }

  async add(files: readonly File[]): Promise<void> {
    this.opening = true
    this.refused = []
    for (const file of files) {
      const outcome = await this.#darkroom.decode(file)
      if (!outcome.ok) {
        this.refused = [...this.refused, `${file.name}: ${outcome.reason}`]
        continue
      }
      const { jpeg } = outcome
      const photo = {
        name: file.name,
        jpeg,
        url: URL.createObjectURL(jpeg),
        view: this.#nextView(),
      }
      this.photos = [...this.photos, photo]
    }
    this.opening = false
  }
  /** Says what a photo shows; another one that was said to show it shows nothing of that then. */
  shows(photo: PickedPhoto, view: View | undefined): void {
    this.photos = this.photos.map((p) => {
      if (p.url === photo.url) return { ...p, view }
      return view !== undefined && p.view === view ? { ...p, view: undefined } : p
    })
  }
  drop(photo: PickedPhoto): void {
    URL.revokeObjectURL(photo.url)
    this.photos = this.photos.filter(({ url }) => url !== photo.url)
  }
  clear(): void {
    for (const photo of this.photos) this.drop(photo)
  }
  leave(): void {
    this.clear()
    this.#darkroom.close()
  }

  toSend(): readonly Outgoing[] {
    return this.photos.map(({ name, jpeg, view }) => ({
      kind: 'photo',
      name,
      ...(view && { view }),
      file: () => Promise.resolve(jpeg),
    }))
  }

  #nextView = (): View | undefined =>
    VIEWS.find((view) => !this.photos.some((photo) => photo.view === view))
}
