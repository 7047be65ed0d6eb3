/**
 * Photos as a screen shows them, without their pixels: read out of the store when the screen opens,
 * read again whenever one may have changed, and let go with the screen. So only what is looked at
 * lies in the page's memory.
 */
import type { PhotoHere, WhichPhotos } from '../../storage/load.ts'
import type { Session } from '../session.svelte.ts'

export class PhotosShown {
  /** Undefined until they are read. */
  list = $state.raw<readonly PhotoHere[] | undefined>()

  /** @param which called inside a component, it follows what it returns; undefined for none */
  constructor(
    session: Pick<Session, 'keptPhotos' | 'photosShown'>,
    which: () => WhichPhotos | undefined,
  ) {
    $effect(() => {
      const asked = which()
      let latest = 0
      const read = async () => {
        const own = (latest += 1)
        const list = asked && (await session.keptPhotos(asked))
        if (own === latest) this.list = list
      }
      session.photosShown = [...session.photosShown, read]
      void read()
      return () => {
        latest = 0
        session.photosShown = session.photosShown.filter((other) => other !== read)
      }
    })
  }

  named = (sha256: string | undefined): PhotoHere | undefined =>
    this.list?.find((photo) => photo.sha256 === sha256)
}
