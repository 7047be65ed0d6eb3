/** Which finish each edge gets, and the allowances that follow from it. */
import { EDGE_WORDS, type EdgeName, type EdgeRole, type Piece } from '../draft/piece.ts'
import type { Mm } from '../units/length.ts'
import type { Allowances } from './allowance.ts'
import { finishOf, HEM_DEPTH, type FinishId, type Stuff } from './finish.ts'

export type Finishes = Readonly<Record<EdgeName, FinishId>>
const EDGES = Object.keys(EDGE_WORDS) as readonly EdgeName[]
/** Edges of finishing pieces that are not named are cut on their line. */
const finishesWith = (given: Partial<Record<EdgeName, FinishId>>): Finishes =>
  Object.fromEntries(EDGES.map((name) => [name, given[name] ?? 'cutOnLine'])) as Record<
    EdgeName,
    FinishId
  >

/** A muslin is left wide where it is let out and cut on the line at the neck. */
export const MUSLIN_FINISHES = finishesWith({
  centre: 'muslinSeam',
  overarm: 'muslinSeam',
  shoulder: 'muslinSeam',
  side: 'muslinSeam',
  frontSeam: 'muslinSeam',
  backSeam: 'muslinSeam',
  sleeveEdge: 'muslinEdge',
  armhole: 'muslinEdge',
  cap: 'muslinEdge',
  hem: 'muslinHem',
  waist: 'muslinSeam',
  styleSeam: 'muslinSeam',
})
/** For a light woven cloth. */
export const CLOTH_FINISHES = finishesWith({
  centre: 'plainSeam',
  neck: 'biasStrip',
  overarm: 'frenchSeam',
  shoulder: 'frenchSeam',
  side: 'frenchSeam',
  frontSeam: 'frenchSeam',
  backSeam: 'frenchSeam',
  armhole: 'biasStrip',
  cap: 'armholeSeam',
  sleeveEdge: 'rolledEdge',
  hem: 'doubleFoldHem',
  waist: 'plainSeam',
  styleSeam: 'plainSeam',
})

/**
 * The usual finishes for these pieces. An edge that has another role than usual takes one for that
 * role: an armhole that takes a sleeve, a buttoned centre that is faced.
 */
export function usualFinishes(stuff: Stuff, pieces: readonly Pick<Piece, 'edges'>[]): Finishes {
  const usual = stuff === 'muslin' ? MUSLIN_FINISHES : CLOTH_FINISHES
  const edges = pieces.flatMap((p) => p.edges)
  const taken = EDGES.map((name): readonly [EdgeName, FinishId] => {
    const suits: readonly EdgeRole[] = finishOf(usual[name]).suits
    const odd = edges.find((e) => e.name === name && e.role !== 'fold' && !suits.includes(e.role))
    if (!odd || odd.role === 'fold') return [name, usual[name]]
    return [name, stuff === 'cloth' && name === 'armhole' ? 'armholeSeam' : OTHER[stuff][odd.role]]
  })
  return finishesWith(Object.fromEntries(taken))
}
const OTHER = {
  muslin: { seam: 'muslinSeam', edge: 'muslinEdge', hem: 'muslinHem' },
  cloth: { seam: 'plainSeam', edge: 'facing', hem: 'doubleFoldHem' },
} as const satisfies Readonly<Record<Stuff, Readonly<Record<Exclude<EdgeRole, 'fold'>, FinishId>>>>

export const allowancesFor = (finishes: Finishes, hemDepth: Mm = HEM_DEPTH): Allowances =>
  Object.fromEntries(
    EDGES.map((name) => [name, finishOf(finishes[name], hemDepth).allowance]),
  ) as Record<EdgeName, Mm>

/** How deep the hem is turned twice; undefined where its finish turns it once. */
export const hemTurnedTwice = (finishes: Finishes, hemDepth: Mm = HEM_DEPTH): Mm | undefined =>
  finishes.hem === 'doubleFoldHem' ? hemDepth : undefined
