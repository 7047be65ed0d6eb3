/**
 * What the kind of cloth changes in the making, and the test that says whether it drapes.
 * Common practice of dressmaking handbooks unless a source stands beside it.
 */
import type { GarmentId } from '../draft/draft.ts'
import { mm, type Mm } from '../units/length.ts'
import type { EdgeName } from '../draft/piece.ts'
import type { FinishId } from './finish.ts'

export type ClothKind = 'lightCotton' | 'crispCotton' | 'rayon' | 'silk' | 'linen'

export interface ClothAdvice {
  readonly words: string
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
  lightCotton: {
    words: 'light soft cotton',
    finishes: {},
    // Extension services: untreated cotton keeps 4 to 6 % to lose.
    prepare: 'Wash and dry it twice as the garment will be washed: cotton keeps shrinking.',
    mind: [],
  },
  crispCotton: {
    words: 'crisp cotton',
    finishes: { side: 'flatFelled' },
    prepare: 'Wash and dry it twice as the garment will be washed: cotton keeps shrinking.',
    mind: [],
  },
  rayon: {
    words: 'rayon or viscose',
    finishes: FINE,
    // Extension services: rayon goes on shrinking over several washes, up to 10 %.
    prepare: 'Wash and dry it twice: rayon goes on shrinking over several washes.',
    mind: ['It slips: pin every hand’s width and cut on a table, never over its edge.'],
  },
  silk: {
    words: 'silk',
    // A costume manual of 1922: French seams at shoulder, armhole and underarm for silk blouses.
    finishes: FINE,
    prepare: 'Wash or steam it as the garment will be treated. Water may mark it: try a corner.',
    mind: ['Fine new needle and pins: a blunt one draws threads.', 'Press from the wrong side.'],
  },
  linen: {
    words: 'linen',
    finishes: { side: 'flatFelled' },
    // Extension services: about 4 %.
    prepare: 'Wash and dry it as the garment will be washed, and press it damp.',
    mind: ['It frays: finish each edge before the next seam crosses it.'],
  },
}

export const isClothKind = (name: string): name is ClothKind => Object.hasOwn(CLOTH_KINDS, name)

const DRAPED: readonly GarmentId[] = ['blouse']
/** A warning where the cloth works against the garment; nothing otherwise. */
export const clothWarning = (kind: ClothKind, garment: GarmentId): string | undefined =>
  kind === 'crispCotton' && DRAPED.includes(garment)
    ? 'Crisp cotton stands away from a draped sleeve instead of falling. Try the drape test first.'
    : undefined

/** Side of the square of the drape test. Common practice, no source. */
export const DRAPE_SQUARE: Mm = mm(300)
/**
 * The drape test on a pinned square: hung from the middle of one side, how far apart its lower
 * corners hang, as a share of its side. Bounds: common practice, no source.
 */
export function drapes(apart: Mm): 'falls' | 'between' | 'stands' {
  const share = apart / DRAPE_SQUARE
  return share <= 0.4 ? 'falls' : share <= 0.65 ? 'between' : 'stands'
}
export const DRAPE_WORDS: Readonly<Record<ReturnType<typeof drapes>, string>> = {
  falls: 'It falls in soft folds: right for a draped sleeve.',
  between: 'It falls in wide folds: the sleeve will stand out a little.',
  stands: 'It stands: take a softer cloth for a draped sleeve.',
}
