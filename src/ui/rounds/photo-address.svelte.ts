/** The address under which a kept photo can be shown, for as long as the component that asked lives. */
import type { Session } from '../session.svelte.ts'

export interface PixelSize {
  readonly width: number
  readonly height: number
}

export class PhotoAddress {
  url = $state.raw<string | undefined>()
  /** In px, once the browser has looked at it. */
  size = $state.raw<PixelSize | undefined>()
  /** Locked, or not in this browser: a backup was restored without them. */
  missing = $state.raw(false)

  /** @param sha256 which photo; called inside a component, it follows what it returns */
  constructor(session: Pick<Session, 'readPhoto' | 'photosAre'>, sha256: () => string | undefined) {
    $effect(() => {
      const name = sha256()
      // Asked once more when the photos were opened, or locked.
      void session.photosAre
      let live = true
      let made: string | undefined
      this.url = undefined
      this.size = undefined
      this.missing = false
      if (name !== undefined)
        void session.readPhoto(name).then(async (blob) => {
          if (!live) return
          if (!blob) {
            this.missing = true
            return
          }
          this.url = made = URL.createObjectURL(blob)
          const size = await sizeOf(made)
          if (live) this.size = size
        })
      return () => {
        live = false
        if (made !== undefined) URL.revokeObjectURL(made)
      }
    })
  }
}

/** How large a photo is, or undefined where it cannot be decoded. */
export async function sizeOf(url: string): Promise<PixelSize | undefined> {
  const image = new Image()
  image.src = url
  // A photo that cannot be decoded is shown as the browser shows it; only its size stays unknown.
  await image.decode().catch(() => undefined)
  return image.naturalWidth > 0
    ? { width: image.naturalWidth, height: image.naturalHeight }
    : undefined
}
