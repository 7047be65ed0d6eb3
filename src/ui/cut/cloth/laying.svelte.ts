/**
 * The layouts as they are being made: those kept with the garment at once, else a first one for
 * every width, then the width that is drawn for longer, then the others. Whatever is found is in
 * sight at once; it is handed on to be kept when a width is done, when she stops, and when she leaves.
 */
import type { Cloth } from '../../../layout/cloth.ts'
import { clothOf, type ClothWishes } from '../../../layout/cloth-wishes.ts'
import type { CutPart } from '../../../layout/cut-part.ts'
import { isOf, keptOf, laidAgain, layMark, type KeptLayout } from '../../../layout/kept.ts'
import { pictureOf } from '../../../layout/kept-picture.ts'
import type { ClothLayout } from '../../../layout/lay-out.ts'
import { lying } from '../../../layout/lying.ts'
import type { MannerTried } from '../../../layout/search-widths.ts'
import type { Mm } from '../../../units/length.ts'
import type { ClothMaker } from './cloth-maker.ts'

/** What was found on a width, with the pieces and the cloth it was found for. */
export interface OnWidth {
  readonly parts: readonly CutPart[]
  readonly cloth: Cloth
  readonly layout?: ClothLayout
  readonly manners: readonly MannerTried[]
  /** The day it was found, of one that was kept; it may be looked for longer all the same. */
  readonly keptOn?: string
}
interface Pass {
  readonly width: Mm
  readonly tries: number
  readonly seed: number
}
/** Where layouts are kept: those of the garment, and what is to be kept of them now. */
export interface Keep {
  readonly today: () => string
  readonly kept: () => readonly KeptLayout[]
  readonly keep: (layouts: readonly KeptLayout[]) => void
}

/**
 * Places tried, about a million a second: a glance, the width drawn, the others, "look longer". With
 * 800,000 for the others a dress on 140 cm was laid folded on 1.23 m where a single layer takes 1.10 m.
 */
const GLANCE = 40_000
const DRAWN = 6_000_000
const OTHERS = 3_000_000
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
  /** A layout of the drawn width that was kept for other pieces or another cloth. */
  stale = $state.raw<KeptLayout | undefined>()
  readonly #keep: Keep
  /** Places tried by width. */
  #tried: Readonly<Record<number, number>> = {}

  constructor(open: () => ClothMaker, keep: Keep) {
    this.#open = open
    this.#keep = keep
  }

  plan(parts: readonly CutPart[], wishes: ClothWishes): void {
    this.#order = { parts, wishes }
    this.longer = false
    this.#tried = {}
    const each = [wishes.width, ...wishes.widths.filter((w) => w !== wishes.width)]
    this.found = Object.fromEntries(each.flatMap((width) => this.#again(width)))
    const old = this.#keep.kept().find((k) => k.width === wishes.width)
    // Of the same pieces, only laid another way than she wishes now, it is not out of date.
    this.stale = old && !isOf(old, parts, clothOf(wishes)) ? old : undefined
    const wanted = each.map((width) => ({
      width,
      tries: width === wishes.width ? DRAWN : OTHERS,
      seed: 1,
    }))
    const todo = wanted.filter(({ width, tries }) => (this.#tried[width] ?? 0) < tries)
    void this.#run([
      ...todo.filter(({ width }) => !this.found[width]).map((p) => ({ ...p, tries: GLANCE })),
      ...todo,
    ])
  }
  /** What was kept of a width, where it still holds. */
  #again(width: Mm): readonly (readonly [Mm, OnWidth])[] {
    const order = this.#order
    const kept = this.#keep.kept().find((k) => k.width === width)
    if (!order || !kept) return []
    const { parts, wishes } = order
    const cloth = clothOf(wishes, width)
    if (kept.mark !== layMark(parts, cloth, wishes.manner)) return []
    const again = laidAgain(kept, parts, cloth, wishes.manner)
    if (!again) return []
    this.#tried = { ...this.#tried, [width]: kept.tries }
    return [[width, { parts, cloth, ...again, keptOn: kept.on }]]
  }
  /** Hands on what is found now; what was kept for widths she no longer wishes for goes. */
  #handOn(): void {
    const order = this.#order
    if (!order) return
    const { wishes } = order
    const old = this.#keep.kept()
    const layouts = wishes.widths.flatMap((width): KeptLayout[] => {
      const { layout, parts, cloth, manners, keptOn } = this.found[width] ?? {}
      if (!layout || !parts || !cloth || !manners) return old.filter((k) => k.width === width)
      const mark = layMark(parts, cloth, wishes.manner)
      const on = keptOn ?? this.#keep.today()
      const drawn = pictureOf(lying(parts, cloth, layout))
      const about = { width, mark, on, tries: this.#tried[width] ?? 0 }
      return [keptOf(layout, about, manners, drawn)]
    })
    if (JSON.stringify(layouts) !== JSON.stringify(old)) this.#keep.keep(layouts)
  }
  /** After she stopped it before anything was found, or it broke. */
  again = (): void => {
    if (this.#order) this.plan(this.#order.parts, this.#order.wishes)
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
    // She has seen enough of the width that is drawn.
    const width = this.#order?.wishes.width
    if (width !== undefined) this.#enough(width, DRAWN)
    this.#handOn()
  }
  #enough(width: Mm, tries: number): void {
    this.#tried = { ...this.#tried, [width]: Math.max(tries, this.#tried[width] ?? 0) }
  }
  leave = (): void => {
    this.close()
    this.#handOn()
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
    if (!order || passes.length === 0) return
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
        if (tries <= GLANCE) continue
        this.#enough(width, tries)
        this.#handOn()
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
