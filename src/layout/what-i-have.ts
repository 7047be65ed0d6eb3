/**
 * "I have 2.30 m of 115": does the garment fit on it, and if not, what would have to give. Every
 * answer is a layout made, not an estimate: the manners the cloth allows, then each way out by
 * itself on the best of them.
 */
import { pairedId, type PieceId } from '../draft/piece.ts'
import type { Mm } from '../units/length.ts'
import { lengthLeft } from './amount.ts'
import { usableWidth, type Cloth } from './cloth.ts'
import { WAY_OUT_WORDS as W } from './cloth.words.ts'
import { BIAS_SEAM } from './notions.ts'
import { extentOf, outlineOf, turnedOutline, type Outline } from './outline.ts'
import { areaCut, type CutPart } from './cut-part.ts'
import { clothUsed, layOut, type ClothLayout } from './lay-out.ts'
import { lay, unfolded, type Manner } from './lay.ts'

/** What she might give up of the cloth; a shorter draft is made by the caller. */
const WAYS_OUT = ['crosswise', 'pieced', 'otherCloth', 'centreBackSeam'] as const
type WayOut = (typeof WAYS_OUT)[number]

export type Answer =
  | { readonly fits: true; readonly layout: ClothLayout; readonly left: number }
  | {
      readonly fits: false
      /** The shortest layout found, and how far it goes beyond the cloth; none is too wide. */
      readonly layout?: ClothLayout
      readonly over?: number
      /** What would do, each proved by a layout; empty when nothing asked here does. */
      readonly ways: readonly { readonly words: string; readonly layout: ClothLayout }[]
    }

export interface Given {
  readonly words: string
  readonly parts: readonly CutPart[]
}

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
  readonly others?: readonly (readonly Given[])[]
}

export function whatIHave(
  parts: readonly CutPart[],
  cloth: Cloth,
  bought: Mm,
  options: HaveOptions,
): Answer {
  const room = lengthLeft(bought, cloth)
  const layout = shortest(parts, cloth, room, options)
  const used = layout && clothUsed(layout)
  if (layout && used !== undefined && used <= room) return { fits: true, layout, left: room - used }
  const tried: readonly (readonly Given[])[] = [
    ...WAYS_OUT.map((way) => givenUp(parts, way, options.seam)),
    ...(options.others ?? []),
  ]
  const ways = tried.flatMap((list) => {
    for (const { words, parts: given } of list) {
      // More cloth than there is, however it lies.
      if (areaCut(given) > room * usableWidth(cloth)) continue
      const found = shortest(given, cloth, room, options)
      if (found && clothUsed(found) <= room) return [{ words, layout: found }]
    }
    return []
  })
  return {
    fits: false,
    ...(layout && used !== undefined ? { layout, over: used - room } : {}),
    ways,
  }
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

/** Facings and strips: they show little, and their grain matters least. Sleeves and cuffs show. */
const small = (p: CutPart): boolean => !p.match && !SHOWN.includes(pairedId(p.id))
const SHOWN: readonly PieceId[] = ['sleeve', 'cuff']

function givenUp(parts: readonly CutPart[], way: WayOut, seam: Mm): readonly Given[] {
  switch (way) {
    case 'crosswise': {
      const turned = parts.map((p) => (small(p) && p.kind !== 'bias' ? crosswise(p) : p))
      const any = parts.some((p) => small(p) && p.kind !== 'bias')
      return any ? [{ words: W.crosswiseFacings, parts: turned }] : []
    }
    case 'pieced':
      return STRIP_LENGTHS.flatMap((lengths) => pieced(parts, lengths, seam))
    case 'otherCloth': {
      const rest = parts.filter((p) => !small(p))
      const any = rest.length < parts.length && rest.length > 0
      return any ? [{ words: W.otherClothFacings, parts: rest }] : []
    }
    case 'centreBackSeam': {
      const back = parts.find((p) => p.id === 'back')
      if (back?.kind !== 'onFold') return []
      const halved = parts.map((p) => (p === back ? seamed(p, seam) : p))
      return [{ words: W.centreBackSeam, parts: halved }]
    }
  }
}

/** Of so many lengths a strip is joined. With more it is patchwork: judgement. */
const STRIP_LENGTHS = [2, 3] as const
/** No length reaches less far across the cloth, mm: judgement. */
const LEAST_LENGTH = 150

/**
 * A piece is never tilted to save cloth but pieced (a bulletin of the US Department of Agriculture
 * on fitting dresses, 1946): strips joined, facings with a seam.
 */
function pieced(parts: readonly CutPart[], lengths: 2 | 3, seam: Mm): readonly Given[] {
  const strips = parts.filter((p) => small(p) && p.kind === 'bias' && isLong(p, lengths))
  const facings = parts.filter((p) => small(p) && p.kind === 'onFold')
  // Without a strip there is nothing to join of more lengths.
  if (strips.length === 0 && (facings.length === 0 || lengths > 2)) return []
  const made = parts.flatMap((p) =>
    strips.includes(p) ? joined(p, lengths) : facings.includes(p) ? [seamed(p, seam)] : [p],
  )
  return [{ words: W.pieced(strips.length > 0 ? lengths : 0, facings.length > 0), parts: made }]
}

const isLong = (p: CutPart, lengths: number): boolean => {
  const { low, high } = extentOf(p.exact)
  return high - low >= lengths * LEAST_LENGTH
}

/** Cut along a thread, each length longer by its seam: the strip lies aslant, so the joins do too. */
function joined(p: CutPart, lengths: number): readonly CutPart[] {
  const { low, high } = extentOf(p.exact)
  const at = (k: number): number => low + (k * (high - low)) / lengths
  return Array.from({ length: lengths }, (_, k): CutPart => {
    const between = (ring: Outline, by: number): Outline =>
      cutOff(
        cutOff(ring, k === 0 ? -Infinity : at(k) - by, 1),
        k === lengths - 1 ? Infinity : at(k + 1) + by,
        -1,
      )
    return {
      ...p,
      outline: between(p.outline, BIAS_SEAM),
      exact: between(p.exact, BIAS_SEAM),
      seam: between(p.seam, 0),
    }
  })
}

/** What of a strip lies beyond a level across the cloth: above it, or below it where `side` is −1. */
function cutOff(ring: Outline, level: number, side: 1 | -1): Outline {
  if (!Number.isFinite(level)) return ring
  const corners = Array.from({ length: ring.length / 2 }, (_, i): [number, number] => [
    ring[2 * i]!,
    ring[2 * i + 1]!,
  ])
  return outlineOf(
    corners.flatMap(([x, y], i): [number, number][] => {
      const [px, py] = corners.at(i - 1)!
      const [here, before] = [side * (y - level), side * (py - level)]
      const share = before / (before - here)
      const crossing: [number, number][] = here * before < 0 ? [[px + share * (x - px), level]] : []
      return here >= 0 ? [...crossing, [x, y]] : crossing
    }),
  )
}

/** On the other grain; a half is opened out first, for its fold no longer lies along the cloth. */
function crosswise(p: CutPart): CutPart {
  const turned = (ring: Float64Array): Float64Array =>
    turnedOutline(p.kind === 'onFold' ? unfolded(ring) : ring, 90)
  return {
    ...p,
    kind: p.kind === 'onFold' ? 'single' : p.kind,
    outline: turned(p.outline),
    exact: turned(p.exact),
    seam: turned(p.seam),
  }
}

/** The half cut twice with an allowance at its centre. */
function seamed(p: CutPart, by: Mm): CutPart {
  const wider = (ring: Float64Array): Float64Array => {
    const on = Array.from({ length: ring.length / 2 }, (_, i): [number, number] => [
      ring[2 * i]!,
      ring[2 * i + 1]! === 0 ? -by : ring[2 * i + 1]!,
    ])
    // Straight out from the ends of the fold: corners there keep their level.
    const start = on.findIndex(([, y], i) => y === -by && on.at(i - 1)![1] !== -by)
    const end = on.findIndex(([, y], i) => y === -by && on[(i + 1) % on.length]![1] !== -by)
    const out = on.flatMap((q, i): [number, number][] =>
      i === start && start !== end ? [[q[0], 0], q] : i === end ? [q, [q[0], 0]] : [q],
    )
    return outlineOf(out)
  }
  return {
    ...p,
    kind: 'pair',
    count: 2 * p.count,
    outline: wider(p.outline),
    exact: wider(p.exact),
    // Its centre is a seam now, and is sewn where the fold was.
    seam: p.seam,
  }
}
