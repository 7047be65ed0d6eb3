/**
 * The layouts as they are being made: a first one for every width at once, then the width that is
 * drawn for longer, then the others. Whatever is found is in sight at once; stopping keeps it.
 */
import type { Cloth } from '../../../layout/cloth.ts'
import { clothOf, type ClothWishes } from '../../../layout/cloth-wishes.ts'
import type { CutPart } from '../../../layout/cut-part.ts'
import type { ClothLayout } from '../../../layout/lay-out.ts'
import type { MannerTried } from '../../../layout/search-widths.ts'
import type { Mm } from '../../../units/length.ts'
import type { ClothMaker } from './cloth-maker.ts'

/** What was found on a width, with the pieces and the cloth it was found for. */
export interface OnWidth {
  readonly parts: readonly CutPart[]
  readonly cloth: Cloth
  readonly layout?: ClothLayout
  readonly manners: readonly MannerTried[]
}
interface Pass {
  readonly width: Mm
  readonly tries: number
  readonly seed: number
}

/** Places tried, about a million a second: a glance, the width drawn, the others, "look longer". */
const GLANCE = 40_000
const DRAWN = 6_000_000
const OTHERS = 800_000
const LONGER = 40_000_000

export class Laying {
  readonly #open: () => ClothMaker
  #maker: ClothMaker | undefined
  #newest = 0
  #order: { readonly parts: readonly CutPart[]; readonly wishes: ClothWishes } | undefined
  /** By width. */
  found = $state.raw<Readonly<Record<number, OnWidth>>>({})
  /** The width in hand and the share of its effort that is spent; undefined when nothing is. */
  now = $state.raw<{ readonly width: Mm; readonly share: number } | undefined>()
  /** She stopped it, or it broke. */
  stopped = $state.raw(false)
  broken = $state.raw(false)
  longer = $state.raw(false)

  constructor(open: () => ClothMaker) {
    this.#open = open
  }

  plan(parts: readonly CutPart[], wishes: ClothWishes): void {
    this.#order = { parts, wishes }
    this.found = {}
    this.longer = false
    const others = wishes.widths.filter((w) => w !== wishes.width)
    const each = [wishes.width, ...others]
    void this.#run([
      ...each.map((width) => ({ width, tries: GLANCE, seed: 1 })),
      { width: wishes.width, tries: DRAWN, seed: 1 },
      ...others.map((width) => ({ width, tries: OTHERS, seed: 1 })),
    ])
  }
  lookLonger = (): void => {
    if (!this.#order) return
    this.longer = true
    void this.#run([{ width: this.#order.wishes.width, tries: LONGER, seed: 2 }])
  }
  /** What was found stays. */
  stop = (): void => {
    this.close()
    this.stopped = true
  }
  close = (): void => {
    this.#newest += 1
    this.#maker?.close()
    this.#maker = undefined
    this.now = undefined
  }

  async #run(passes: readonly Pass[]): Promise<void> {
    this.close()
    const order = this.#order
    if (!order) return
    const mine = this.#newest
    const here = () => mine === this.#newest
    this.stopped = false
    this.broken = false
    const maker = this.#open()
    this.#maker = maker
    try {
      for (const { width, tries, seed } of passes) {
        this.now = { width, share: 0 }
        const cloth = clothOf(order.wishes, width)
        const { manners, best } = await maker.search(
          { parts: order.parts, cloth, manner: order.wishes.manner, seed, tries },
          (layout) =>
            here() && this.#better(width, { parts: order.parts, cloth, manners: [], layout }),
          (share) => {
            if (here()) this.now = { width, share }
          },
        )
        if (!here()) return
        this.#told(width, { parts: order.parts, cloth, manners, ...(best ? { layout: best } : {}) })
      }
      this.close()
    } catch {
      if (!here()) return
      this.close()
      this.broken = true
    }
  }

  #better(width: Mm, made: OnWidth & { readonly layout: ClothLayout }): void {
    const old = this.found[width]
    if (old?.layout && old.layout.length <= made.layout.length) return
    this.found = { ...this.found, [width]: { ...made, manners: old?.manners ?? [] } }
  }
  #told(width: Mm, made: OnWidth): void {
    const { layout } = made
    if (layout) this.#better(width, { ...made, layout })
    const old = this.found[width]
    const manners = made.manners.map((m) => {
      const before = old?.manners.find((o) => o.manner === m.manner)
      return before?.length !== undefined && m.length !== undefined && before.length < m.length
        ? before
        : m
    })
    this.found = { ...this.found, [width]: { ...made, ...old, manners } }
  }
}
