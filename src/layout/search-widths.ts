/**
 * The shortest layout of a garment on one width: every manner of folding for a little while, then
 * the best of them for the rest of the effort. Effort is counted in places tried, so that the same
 * seed gives the same layout on every machine.
 */
import type { Cloth } from './cloth.ts'
import type { CutPart } from './cut-part.ts'
import { layOut, type ClothLayout } from './lay-out.ts'
import { MANNERS, type Manner } from './lay.ts'

export interface MannerTried {
  readonly manner: Manner
  /** Cloth used, mm; or why it cannot lie so. */
  readonly length?: number
  readonly reason?: string
}
export interface WidthFound {
  readonly best?: ClothLayout
  readonly manners: readonly MannerTried[]
}
/** Why nothing goes: a single layer is the widest the cloth can lie, so its reason says most. */
export const whyNone = (manners: readonly MannerTried[]): string | undefined =>
  (manners.find((m) => m.manner === 'single') ?? manners[0])?.reason

export interface SearchOptions {
  readonly seed: number
  /** Places tried with the best manner; each is first tried for `FIRST_SHARE` of them. */
  readonly tries: number
  readonly onBetter?: (layout: ClothLayout) => void
  /** Share of the whole effort that is spent. */
  readonly onSpent?: (share: number) => void
}
/** About a second of eight; measured on our garments. */
const FIRST_SHARE = 0.04

export function searchWidth(
  parts: readonly CutPart[],
  cloth: Cloth,
  wanted: Manner | 'shortest',
  { seed, tries, onBetter, onSpent }: SearchOptions,
): WidthFound {
  const manners = wanted === 'shortest' ? MANNERS : [wanted]
  const quick = tries * FIRST_SHARE
  const whole = tries + manners.length * quick
  let best: ClothLayout | undefined
  const better = (l: ClothLayout): void => {
    if (best && l.length >= best.length) return
    best = l
    onBetter?.(l)
  }
  const effort = (from: number, most: number) => ({
    seed,
    spent: (done: number): number => {
      onSpent?.((from + Math.min(done, most)) / whole)
      return done / most
    },
    onBetter: better,
  })
  const tried = manners.map((manner, i): MannerTried => {
    const out = layOut(parts, cloth, manner, effort(i * quick, quick))
    return out.ok ? { manner, length: out.layout.length } : { manner, reason: out.reason }
  })
  if (best) {
    const { manner } = best
    layOut(parts, cloth, manner, effort(manners.length * quick, tries))
    onSpent?.(1)
    const { length } = best
    return { best, manners: tried.map((t) => (t.manner === manner ? { manner, length } : t)) }
  }
  return { manners: tried }
}
