/**
 * The parts of the rail that draw. They bring every construction along, so they come only where a
 * garment hangs: before the rail is first shown, else the drawings would drop in behind the page.
 */
import type CarryOver from './CarryOver.svelte'
import type HungGarment from './HungGarment.svelte'

interface Parts {
  readonly Garment: typeof HungGarment
  readonly Carried: typeof CarryOver
}

class HungParts {
  here = $state.raw<Parts>()
  /** They did not come: no net, and not kept on this device yet. */
  missing = $state.raw(false)

  fetch = async (): Promise<void> => {
    if (this.here) return
    try {
      const [garment, carried] = await Promise.all([
        import('./HungGarment.svelte'),
        import('./CarryOver.svelte'),
      ])
      this.here = { Garment: garment.default, Carried: carried.default }
    } catch {
      this.missing = true
    }
  }
}

/** One for the page: what was fetched once stays. */
export const hungParts = new HungParts()
