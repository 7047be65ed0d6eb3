/**
 * A garment laid out on cloth: every section of a lay packed, the effort shared among them, the
 * best so far told as a whole.
 */
import type { Cloth } from './cloth.ts'
import type { CutPart } from './cut-part.ts'
import { mm, type Mm } from '../units/length.ts'
import { lay, sectionLength, type Lay, type Manner, type Section } from './lay.ts'
import { pack, type PackOptions } from './pack.ts'
import type { Layout } from './strip.ts'

export interface LaidSection {
  readonly section: Section
  readonly layout: Layout
}
export interface ClothLayout {
  readonly manner: Manner
  /** Cloth used, mm: both layers of a crosswise fold counted. */
  readonly length: number
  readonly sections: readonly LaidSection[]
}

export type LaidOut =
  | { readonly ok: true; readonly layout: ClothLayout }
  | { readonly ok: false; readonly reason: string }

export interface LayOutOptions {
  readonly seed: number
  /** Share of the effort spent, 1 or more to stop; told the places tried so far. */
  readonly spent: (tries: number) => number
  readonly onBetter?: (layout: ClothLayout) => void
}

export function layOut(
  parts: readonly CutPart[],
  cloth: Cloth,
  manner: Manner,
  options: LayOutOptions,
): LaidOut {
  const how = lay(parts, cloth, manner)
  return how.ok ? { ok: true, layout: packed(how, options) } : how
}

export function packed(how: Lay & { readonly ok: true }, options: LayOutOptions): ClothLayout {
  const { manner, sections } = how
  const first = (section: Section): Layout =>
    pack(section.strip, { seed: options.seed, spent: () => 1 })
  const laid: LaidSection[] = sections.map((section) => ({ section, layout: first(section) }))
  const now = (): ClothLayout => ({ manner, length: lengthOf(laid), sections: [...laid] })
  options.onBetter?.(now())
  const pieces = sections.reduce((sum, s) => sum + s.strip.pieces.length, 0)
  let [begun, tried] = [0, 0]
  for (const [i, section] of sections.entries()) {
    const share = section.strip.pieces.length / pieces
    let own = 0
    const inner: PackOptions = {
      seed: options.seed,
      spent: (tries) => (options.spent(tried + (own = tries)) - begun) / share,
      onBetter: (layout) => {
        if (layout.length >= laid[i]!.layout.length) return
        laid[i] = { section, layout }
        options.onBetter?.(now())
      },
    }
    pack(section.strip, inner)
    begun += share
    tried += own
  }
  return now()
}

const lengthOf = (laid: readonly LaidSection[]): number =>
  laid.reduce(
    (sum, { section, layout }) => sum + layout.length * (section.layers === 'foldedAcross' ? 2 : 1),
    0,
  )

/** What the layout takes once the cloth is folded where its stripes let it be folded. */
export const clothUsed = ({ sections }: ClothLayout): Mm =>
  mm(
    sections.reduce(
      (sum, { section, layout }) =>
        sum + sectionLength(section, layout.length) * (section.layers === 'foldedAcross' ? 2 : 1),
      0,
    ),
  )
