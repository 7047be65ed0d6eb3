/**
 * What the kind of cloth changes in the making, and the test that says whether it drapes.
 * Common practice of dressmaking handbooks unless a source stands beside it.
 */
import type { GarmentId } from '../draft/draft.ts'
import { mm, type Mm } from '../units/length.ts'
import type { EdgeName } from '../draft/piece.ts'
import { CLOTH_KIND_WORDS as W, CRISP_WARNING, DRAPE_WARNINGS } from './cloth-kind.words.ts'
import type { FinishId } from './finish.ts'

export type ClothKind = 'lightCotton' | 'crispCotton' | 'rayon' | 'silk' | 'linen'

export interface ClothAdvice {
  readonly name: string
  /** Finishes this cloth asks for, where the edge takes them. */
  readonly finishes: Partial<Readonly<Record<EdgeName, FinishId>>>
  /** Before cutting. */
  readonly prepare: string
  readonly mind: readonly string[]
}

const FINE: ClothAdvice['finishes'] = {
  overarm: 'frenchSeam',
  shoulder: 'frenchSeam',
  side: 'frenchSeam',
  frontSeam: 'frenchSeam',
  backSeam: 'frenchSeam',
  sleeveEdge: 'rolledEdge',
}

export const CLOTH_KINDS: Readonly<Record<ClothKind, ClothAdvice>> = {
  // Extension services: untreated cotton keeps 4 to 6 % to lose.
  lightCotton: { ...W.lightCotton, finishes: {} },
  crispCotton: { ...W.crispCotton, finishes: { side: 'flatFelled' } },
  // Extension services: rayon goes on shrinking over several washes, up to 10 %.
  rayon: { ...W.rayon, finishes: FINE },
  // A costume manual of 1922: French seams at shoulder, armhole and underarm for silk blouses.
  silk: { ...W.silk, finishes: FINE },
  // Extension services: about 4 %.
  linen: { ...W.linen, finishes: { side: 'flatFelled' } },
}

export const isClothKind = (name: string): name is ClothKind => Object.hasOwn(CLOTH_KINDS, name)

/** What was read on a pinned square of one cloth. */
export interface DrapeTest {
  /** Its lower corners, one from the other. */
  readonly apart: Mm
  /** The kind it was a square of: of another cloth it says nothing. */
  readonly of: ClothKind
}

/** What the sewing plan minds of her cloth. */
export interface ClothInHand {
  readonly kind: ClothKind
  readonly drape?: DrapeTest
}

/** The reading, where it is of the kind of cloth she has chosen. */
export const drapeRead = ({ kind, drape }: ClothInHand): Mm | undefined =>
  drape?.of === kind ? drape.apart : undefined

const DRAPED: readonly GarmentId[] = ['blouse']
/**
 * A warning where the cloth works against the garment; nothing otherwise. What her own square did
 * goes before what its kind usually does.
 */
export function clothWarning(cloth: ClothInHand, garment: GarmentId): string | undefined {
  if (!DRAPED.includes(garment)) return undefined
  const apart = drapeRead(cloth)
  if (apart !== undefined) return DRAPE_WARNINGS[drapes(apart)]
  return cloth.kind === 'crispCotton' ? CRISP_WARNING : undefined
}

/** Side of the square of the drape test. Common practice, no source. */
export const DRAPE_SQUARE: Mm = mm(300)
/** Nearer to each other they were not measured between the corners. Judgement. */
export const DRAPE_READINGS = { min: mm(5), max: DRAPE_SQUARE } as const
/**
 * The drape test on a pinned square: hung from the middle of one side, how far apart its lower
 * corners hang, as a share of its side. Bounds: common practice, no source.
 */
export function drapes(apart: Mm): 'falls' | 'between' | 'stands' {
  const share = apart / DRAPE_SQUARE
  return share <= 0.4 ? 'falls' : share <= 0.65 ? 'between' : 'stands'
}
