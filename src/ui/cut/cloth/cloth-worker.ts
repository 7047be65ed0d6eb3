/**
 * Layouts off the main thread. Cutting lines come in as plain data and layouts go back, the best
 * so far as they are found; the same order gives the same layout.
 */
import { expose } from 'comlink'
import type { Cloth } from '../../../layout/cloth.ts'
import type { CutPart } from '../../../layout/cut-part.ts'
import type { ClothLayout } from '../../../layout/lay-out.ts'
import type { Manner } from '../../../layout/lay.ts'
import { searchWidth, type WidthFound } from '../../../layout/search-widths.ts'
import { whatIHave, type Answer, type HaveOptions } from '../../../layout/what-i-have.ts'
import type { Mm } from '../../../units/length.ts'

export interface SearchOrder {
  readonly parts: readonly CutPart[]
  readonly cloth: Cloth
  readonly manner: Manner | 'shortest'
  readonly seed: number
  readonly tries: number
}
export interface HaveOrder {
  readonly parts: readonly CutPart[]
  readonly cloth: Cloth
  readonly bought: Mm
  readonly options: HaveOptions
}

/** Progress is told in whole hundredths. */
const STEPS = 100

const road = {
  search(
    { parts, cloth, manner, seed, tries }: SearchOrder,
    onBetter: (layout: ClothLayout) => void,
    onSpent: (share: number) => void,
  ): WidthFound {
    let told = 0
    return searchWidth(parts, cloth, manner, {
      seed,
      tries,
      onBetter,
      onSpent: (share) => {
        if (share < told + 1 / STEPS && share < 1) return
        told = share
        onSpent(share)
      },
    })
  },
  have({ parts, cloth, bought, options }: HaveOrder, onSpent: (share: number) => void): Answer {
    return whatIHave(parts, cloth, bought, options, onSpent)
  },
}
export type ClothRoad = typeof road
expose(road)
