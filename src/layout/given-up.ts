/**
 * What she might give up where the cloth does not suffice, one by one or two together: the pieces as
 * they would be cut then. Whether they fit is another question (what-i-have.ts).
 */
import { pairedId, type PieceId } from '../draft/piece.ts'
import type { Mm } from '../units/length.ts'
import { PAIR_WORDS, WAY_OUT_WORDS as W } from './cloth.words.ts'
import type { CutPart } from './cut-part.ts'
import { unfolded } from './lay.ts'
import { BIAS_SEAM } from './notions.ts'
import { extentOf, outlineOf, turnedOutline, type Outline } from './outline.ts'

export interface Given {
  readonly words: string
  readonly parts: readonly CutPart[]
}
export interface OneGiven extends Given {
  /** The same as part of a longer sentence: "lay the facings crosswise". */
  readonly clause: string
}
/** One way with more and more of it given up; of them only the first that fits is told. */
export type Ladder = readonly Given[]

/** Facings and strips show little; a seam down the back shows. A shorter draft is made by the caller. */
const SMALL_WAYS = ['crosswise', 'pieced', 'otherCloth'] as const
type WayOut = (typeof SMALL_WAYS)[number] | 'centreBackSeam'

export const alone = (parts: readonly CutPart[], seam: Mm): readonly Ladder[] =>
  [...SMALL_WAYS, 'centreBackSeam' as const].map((way) => givenUp(parts, way, seam))

/**
 * Two at once, what costs her least first: facings and strips with a shorter draft, then a seam down
 * the back with either.
 * @param others shorter drafts, one list each
 */
export function together(
  parts: readonly CutPart[],
  seam: Mm,
  others: readonly (readonly OneGiven[])[],
): readonly Ladder[] {
  const withShorter = SMALL_WAYS.flatMap((way) =>
    others.map((list) =>
      list.flatMap((other) => givenUp(other.parts, way, seam).map((g) => pair(g, other, g.parts))),
    ),
  )
  const withSeam = [...SMALL_WAYS.map((way) => givenUp(parts, way, seam)), ...others].map((list) =>
    list.flatMap((one) =>
      givenUp(one.parts, 'centreBackSeam', seam).map((g) => pair(one, g, g.parts)),
    ),
  )
  return [...withShorter, ...withSeam]
}

const pair = (one: OneGiven, other: OneGiven, parts: readonly CutPart[]): Given => ({
  words: PAIR_WORDS.both(one.clause, other.clause),
  parts,
})

/** Facings and strips: they show little, and their grain matters least. Sleeves and cuffs show. */
const small = (p: CutPart): boolean => !p.match && !SHOWN.includes(pairedId(p.id))
const SHOWN: readonly PieceId[] = ['sleeve', 'cuff']

/**
 * The pieces with that given up, as often as there is a choice of how much.
 * @param seam from the seam line of a new seam down a centre to its cutting line, mm
 */
function givenUp(parts: readonly CutPart[], way: WayOut, seam: Mm): readonly OneGiven[] {
  switch (way) {
    case 'crosswise': {
      const turned = parts.map((p) => (small(p) && p.kind !== 'bias' ? crosswise(p) : p))
      const any = parts.some((p) => small(p) && p.kind !== 'bias')
      return any ? [{ ...W.crosswiseFacings, parts: turned }] : []
    }
    case 'pieced':
      return STRIP_LENGTHS.flatMap((lengths) => pieced(parts, lengths, seam))
    case 'otherCloth': {
      const rest = parts.filter((p) => !small(p))
      const any = rest.length < parts.length && rest.length > 0
      return any ? [{ ...W.otherClothFacings, parts: rest }] : []
    }
    case 'centreBackSeam': {
      const back = parts.find((p) => p.id === 'back')
      if (back?.kind !== 'onFold') return []
      const halved = parts.map((p) => (p === back ? seamed(p, seam) : p))
      return [{ ...W.centreBackSeam, parts: halved }]
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
function pieced(parts: readonly CutPart[], lengths: 2 | 3, seam: Mm): readonly OneGiven[] {
  const strips = parts.filter((p) => small(p) && p.kind === 'bias' && isLong(p, lengths))
  const facings = parts.filter((p) => small(p) && p.kind === 'onFold')
  // Without a strip there is nothing to join of more lengths.
  if (strips.length === 0 && (facings.length === 0 || lengths > 2)) return []
  const made = parts.flatMap((p) =>
    strips.includes(p) ? joined(p, lengths) : facings.includes(p) ? [seamed(p, seam)] : [p],
  )
  return [{ ...W.pieced(strips.length > 0 ? lengths : 0, facings.length > 0), parts: made }]
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
