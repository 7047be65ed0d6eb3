/**
 * "I have 2.30 m of 115": does the garment fit on it, and if not, what would have to give. Every
 * answer is a layout made, not an estimate: the manners the cloth allows, then each way out by
 * itself on the best of them, and where none does two of them together.
 */
import type { Mm } from '../units/length.ts'
import { lengthLeft } from './amount.ts'
import { usableWidth, type Cloth } from './cloth.ts'
import { areaCut, type CutPart } from './cut-part.ts'
import { alone, together, type Given, type Ladder, type OneGiven } from './given-up.ts'
import { clothUsed, layOut, type ClothLayout } from './lay-out.ts'
import { lay, type Manner } from './lay.ts'

/** A way out, proved by its layout. */
interface Way {
  readonly words: string
  readonly layout: ClothLayout
}
export type Answer =
  | { readonly fits: true; readonly layout: ClothLayout; readonly left: number }
  | {
      readonly fits: false
      /** The shortest layout found, and how far it goes beyond the cloth; none is too wide. */
      readonly layout?: ClothLayout
      readonly over?: number
      /** What would do by itself; empty when nothing asked here does. */
      readonly ways: readonly Way[]
      /** Two that would do together, asked only where none does alone. */
      readonly pairs: readonly Way[]
    }

/** More pairs are no help: she takes the first that she can bear. Judgement. */
const MOST_PAIRS = 3

export interface HaveOptions {
  readonly seed: number
  readonly manners: readonly Manner[]
  /** Places tried for every layout made on the way. */
  readonly tries: number
  /** From the seam line of a new seam down a centre to its cutting line, mm. */
  readonly seam: Mm
  /**
   * Drafts with something given up, a shorter sleeve or hem: made by the caller, tried here. Each
   * list begins with what costs least; of it only the first that fits is told.
   */
  readonly others?: readonly (readonly OneGiven[])[]
  /** Drafts with two such things given up, tried after all other pairs. */
  readonly othersTogether?: Ladder
}

/** @param onSpent told the share of the ways that are tried; it may end before all are */
export function whatIHave(
  parts: readonly CutPart[],
  cloth: Cloth,
  bought: Mm,
  options: HaveOptions,
  onSpent: (share: number) => void = () => undefined,
): Answer {
  const room = lengthLeft(bought, cloth)
  const layout = shortest(parts, cloth, room, options)
  const used = layout && clothUsed(layout)
  if (layout && used !== undefined && used <= room) return { fits: true, layout, left: room - used }
  const { seam, others = [], othersTogether = [] } = options
  const one = [...alone(parts, seam), ...others]
  const two = [...together(parts, seam, others), othersTogether]
  let tried = 0
  const proved = (ladder: Ladder): readonly Way[] => {
    const way = leastThatFits(ladder, ({ words, parts: given }) => {
      // More cloth than there is, however it lies.
      if (areaCut(given) > room * usableWidth(cloth)) return undefined
      const found = shortest(given, cloth, room, options)
      return found && clothUsed(found) <= room ? { words, layout: found } : undefined
    })
    onSpent((tried += 1) / (one.length + two.length))
    return way ? [way] : []
  }
  const ways = one.flatMap(proved)
  const pairs: Way[] = []
  if (ways.length === 0)
    for (const ladder of two) if (pairs.length < MOST_PAIRS) pairs.push(...proved(ladder))
  return {
    fits: false,
    ...(layout && used !== undefined ? { layout, over: used - room } : {}),
    ways,
    pairs,
  }
}

/**
 * The first of a list that fits. Of a long one the last is tried before: where the most that may be
 * given does not do, less is not tried at all, so that a phone is done in a minute.
 */
function leastThatFits(
  ladder: Ladder,
  fitting: (given: Given) => Way | undefined,
): Way | undefined {
  const most = ladder.length > 2 ? ladder.at(-1) : undefined
  const last = most && fitting(most)
  if (most && !last) return undefined
  for (const given of last ? ladder.slice(0, -1) : ladder) {
    const way = fitting(given)
    if (way) return way
  }
  return last
}

/** The best of all manners; ends with the first that fits. */
function shortest(
  parts: readonly CutPart[],
  cloth: Cloth,
  room: number,
  { seed, manners, tries }: HaveOptions,
): ClothLayout | undefined {
  let best: ClothLayout | undefined
  for (const manner of manners) {
    if (!lay(parts, cloth, manner).ok) continue
    let fits = false
    const out = layOut(parts, cloth, manner, {
      seed,
      spent: (done) => (fits ? 1 : done / tries),
      onBetter: (l) => (fits = clothUsed(l) <= room),
    })
    if (out.ok && (!best || clothUsed(out.layout) < clothUsed(best))) best = out.layout
    if (best && clothUsed(best) <= room) return best
  }
  return best
}
