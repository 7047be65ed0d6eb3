/** The address under which a kept photo can be shown, for as long as the component that asked lives. */
import type { Session } from '../session.svelte.ts'

export class PhotoAddress {
  url = $state.raw<string | undefined>()
  /** The pixels are not in this browser: a backup was restored without them. */
  missing = $state.raw(false)

  /** @param sha256 which photo; called inside a component, it follows what it returns */
  constructor(session: Pick<Session, 'readPhoto'>, sha256: () => string | undefined) {
    $effect(() => {
      const name = sha256()
      let live = true
      let made: string | undefined
      this.url = undefined
      this.missing = false
      if (name !== undefined)
        void session.readPhoto(name).then((blob) => {
          if (!live) return
          if (blob) this.url = made = URL.createObjectURL(blob)
          else this.missing = true
        })
      return () => {
        live = false
        if (made !== undefined) URL.revokeObjectURL(made)
      }
    })
  }
}
