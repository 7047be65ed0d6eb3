/**
 * "I have 2.30 m of 115": does the garment fit on it, and if not, what would have to give. Every
 * answer is a layout made, not an estimate: the manners the cloth allows, then each way out by
 * itself on the best of them.
 */
import { pairedId, type PieceId } from '../draft/piece.ts'
import type { Mm } from '../units/length.ts'
import { lengthLeft } from './amount.ts'
import type { Cloth } from './cloth.ts'
import { WAY_OUT_WORDS } from './cloth.words.ts'
import { outlineOf, turnedOutline } from './outline.ts'
import type { CutPart } from './cut-part.ts'
import { layOut, type ClothLayout } from './lay-out.ts'
import { lay, unfolded, type Manner } from './lay.ts'

/** What she might give up, and what it costs her. */
export type WayOut = 'crosswiseFacings' | 'otherClothFacings' | 'centreBackSeam'

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
  /** From the seam line of a new centre-back seam to its cutting line, mm. */
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
  if (layout && layout.length <= room) return { fits: true, layout, left: room - layout.length }
  const tried: readonly (readonly Given[])[] = [
    ...(['crosswiseFacings', 'otherClothFacings', 'centreBackSeam'] as const).flatMap((way) => {
      const given = givenUp(parts, way, options.seam)
      return given ? [[{ words: WAY_OUT_WORDS[way], parts: given }]] : []
    }),
    ...(options.others ?? []),
  ]
  const ways = tried.flatMap((list) => {
    for (const { words, parts: given } of list) {
      const found = shortest(given, cloth, room, options)
      if (found && found.length <= room) return [{ words, layout: found }]
    }
    return []
  })
  return {
    fits: false,
    ...(layout ? { layout, over: layout.length - room } : {}),
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
      onBetter: (l) => (fits = l.length <= room),
    })
    if (out.ok && (!best || out.layout.length < best.length)) best = out.layout
    if (best && best.length <= room) return best
  }
  return best
}

/** Facings and strips: they show little, and their grain matters least. Sleeves and cuffs show. */
const small = (p: CutPart): boolean => !p.match && !SHOWN.includes(pairedId(p.id))
const SHOWN: readonly PieceId[] = ['sleeve', 'cuff']

function givenUp(parts: readonly CutPart[], way: WayOut, seam: Mm): readonly CutPart[] | undefined {
  switch (way) {
    case 'crosswiseFacings': {
      const turned = parts.map((p) => (small(p) && p.kind !== 'bias' ? crosswise(p) : p))
      return parts.some((p) => small(p) && p.kind !== 'bias') ? turned : undefined
    }
    case 'otherClothFacings': {
      const rest = parts.filter((p) => !small(p))
      return rest.length < parts.length && rest.length > 0 ? rest : undefined
    }
    case 'centreBackSeam': {
      const back = parts.find((p) => p.id === 'back')
      if (back?.kind !== 'onFold') return undefined
      return parts.map((p) => (p === back ? seamed(p, seam) : p))
    }
  }
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
