/** Which finish each edge gets, and the allowances that follow from it. */
import type { EdgeName, EdgeRole, Piece } from '../draft/piece.ts'
import { EDGE_WORDS } from '../draft/piece.words.ts'
import type { Mm } from '../units/length.ts'
import type { Allowances } from './allowance.ts'
import { edgeGroups, type ByEdge, type EdgeKey, type OpenRole } from './by-edge.ts'
import { finishOf, HEM_DEPTH, type FinishId, type Stuff } from './finish.ts'

export type Finishes = ByEdge<FinishId>
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
  sleeveEnd: 'muslinSeam',
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
  sleeveEnd: 'cuffSeam',
  sleeveEdge: 'rolledEdge',
  hem: 'doubleFoldHem',
  waist: 'plainSeam',
  styleSeam: 'plainSeam',
})

/**
 * The usual finish of an edge. One that has another role than usual takes one for that role: an
 * armhole that takes a sleeve, a buttoned centre that is faced.
 */
function usualFinish(stuff: Stuff, name: EdgeName, role: OpenRole): FinishId {
  const usual = (stuff === 'muslin' ? MUSLIN_FINISHES : CLOTH_FINISHES)[name]
  const suits: readonly EdgeRole[] = finishOf(usual).suits
  if (suits.includes(role)) return usual
  return (stuff === 'cloth' && role === 'seam' && SEWN[name]) || OTHER[stuff][role]
}

/** The usual finishes for these pieces. */
export const usualFinishes = (
  stuff: Stuff,
  pieces: readonly Pick<Piece, 'id' | 'edges' | 'cutAsDrawn'>[],
): Finishes => ({
  ...(stuff === 'muslin' ? MUSLIN_FINISHES : CLOTH_FINISHES),
  ...Object.fromEntries(
    edgeGroups(pieces).flatMap(({ name, role, keys }) =>
      keys.map((key): [EdgeKey, FinishId] => [key, usualFinish(stuff, name, role)]),
    ),
  ),
})
/** Edges that are usually finished by themselves, where they are sewn: to a sleeve, within a cuff. */
const SEWN: Partial<Readonly<Record<EdgeName, FinishId>>> = {
  armhole: 'armholeSeam',
  outer: 'cuffSeam',
  start: 'cuffSeam',
  end: 'cuffSeam',
}
const OTHER = {
  muslin: { seam: 'muslinSeam', edge: 'muslinEdge', hem: 'muslinHem' },
  cloth: { seam: 'plainSeam', edge: 'facing', hem: 'doubleFoldHem' },
} as const satisfies Readonly<Record<Stuff, Readonly<Record<OpenRole, FinishId>>>>

export const allowancesFor = (finishes: Finishes, hemDepth: Mm = HEM_DEPTH): Allowances =>
  Object.fromEntries(
    Object.entries(finishes).map(([key, id]) => [key, finishOf(id, hemDepth).allowance]),
  ) as Record<EdgeKey, Mm>

/** How deep the hem is turned twice; undefined where its finish turns it once. */
export const hemTurnedTwice = (finishes: Finishes, hemDepth: Mm = HEM_DEPTH): Mm | undefined =>
  finishes.hem === 'doubleFoldHem' ? hemDepth : undefined
