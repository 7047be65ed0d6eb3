/**
 * The finishes an edge can have: how much cloth each wants beyond the seam line and what is done
 * with it, in order. Over 200 lines: one table, read whole.
 */
import type { EdgeName, EdgeRole } from '../draft/piece.ts'
import { mm, type Mm } from '../units/length.ts'
import { FINISH_NAMES as NAMED, FINISH_PASSES as DONE } from './finish.words.ts'
import type { Pass } from './pass.ts'
import type { Thread } from './plan-step.ts'

export type Stuff = 'cloth' | 'muslin'

export interface Width {
  readonly least: Mm
  readonly most: Mm
}

export interface Finish {
  readonly words: string
  /** From the seam line to the cutting line. */
  readonly allowance: Mm
  /** What of it is turned over in the end; on a curve this much grows longer or shorter. */
  readonly turned: Mm
  readonly passes: readonly Pass[]
  readonly thread: Thread
  /** Its passes say which way it is pressed: it is not told another. */
  readonly pressed?: true
  readonly suits: readonly EdgeRole[]
  /** Where it makes sense only there. */
  readonly only?: readonly EdgeName[]
  readonly stuff: readonly Stuff[]
  /** Any allowance between these goes; without it the passes fix the width. */
  readonly width?: Width
  /** On a curve of this radius or less the finish is given up. */
  readonly leastRadius?: Mm
}

const EIGHTH = mm(3)
const [NONE, TURN, TEN, SEAM] = [mm(0), mm(6), mm(10), mm(16)]
/** A blouse hem as it is usually seen: 1 1/2 in. Common practice, no source. */
export const HEM_DEPTH = mm(38)

/** Narrower no seam can be sewn, wider none is wanted. Common practice, no source. */
const SEAM_WIDTH = { least: TURN, most: mm(50) }
/** More than this is no seam allowance: a deep hem is 100 mm. Common practice, no source. */
export const WIDEST_ALLOWANCE = mm(100)
/** Under this a fold cannot be made by hand. Common practice, no source. */
export const NARROWEST_FOLD = mm(5)

/** Univ. of Kentucky Extension FCS2-304, Seams and Seam Finishes; 5/8 in from memory. */
const plainSeam = (by: Mm): Finish => ({
  words: NAMED.plainSeam,
  allowance: by,
  turned: NONE,
  passes: DONE.plainSeam(by),
  thread: { rows: 1, overcast: 2 },
  pressed: true,
  suits: ['seam'],
  stuff: ['cloth'],
  width: SEAM_WIDTH,
})

/** 16 to 25 mm: 4-H sewing helper 11.135, Staystitching (1/4 in row); allowance from memory. */
const zip = (by: Mm): Finish => ({
  words: NAMED.zip,
  allowance: by,
  turned: NONE,
  passes: DONE.zip(TURN, by),
  thread: { rows: 2, overcast: 0 },
  pressed: true,
  suits: ['seam'],
  only: ['centre', 'side'],
  stuff: ['cloth'],
  width: { least: SEAM, most: mm(25) },
})

/** A hem turned twice by its own depth; straight edges only. Common practice, no source. */
const doubleFold = (depth: Mm): Finish => ({
  words: NAMED.doubleFoldHem,
  allowance: mm(2 * depth),
  turned: mm(2 * depth),
  passes: DONE.doubleFoldHem(depth),
  thread: { rows: 1, overcast: 0 },
  pressed: true,
  suits: ['hem', 'edge'],
  stuff: ['cloth'],
  width: { least: mm(2 * NARROWEST_FOLD), most: WIDEST_ALLOWANCE },
})

/** Clothing for Women (1916), pattern testing: 1 in at shoulder and underarm. */
const muslinSeam = (by: Mm): Finish => ({
  words: NAMED.muslinSeam,
  allowance: by,
  turned: NONE,
  passes: DONE.muslinSeam,
  thread: { rows: 1, overcast: 0 },
  pressed: true,
  suits: ['seam'],
  stuff: ['muslin'],
  width: SEAM_WIDTH,
})

/** Common practice, no source; so is the hem. */
const muslinEdge = (by: Mm): Finish => ({
  words: NAMED.muslinEdge,
  allowance: by,
  turned: NONE,
  passes: DONE.muslinEdge,
  thread: { rows: 1, overcast: 0 },
  suits: ['edge', 'seam'],
  stuff: ['muslin'],
  width: SEAM_WIDTH,
})

const muslinHem = (by: Mm): Finish => ({
  words: NAMED.muslinHem,
  allowance: by,
  turned: NONE,
  passes: DONE.muslinHem(by),
  thread: { rows: 0, overcast: 0 },
  suits: ['hem'],
  stuff: ['muslin'],
  width: { least: TEN, most: WIDEST_ALLOWANCE },
})

export const FINISHES = {
  plainSeam: plainSeam(SEAM),
  // Oklahoma State Univ. Extension, 4-H construction card 810 (3/8 in and 1/4 in); radius: common
  // practice.
  frenchSeam: {
    words: NAMED.frenchSeam,
    allowance: SEAM,
    turned: NONE,
    passes: DONE.frenchSeam(TEN, EIGHTH, TURN),
    thread: { rows: 2, overcast: 0 },
    pressed: true,
    suits: ['seam'],
    stuff: ['cloth'],
    leastRadius: mm(60),
  },
  // A dressmaking book, 5/8 in, finished 5/16 in; from memory which.
  flatFelled: {
    words: NAMED.flatFelled,
    allowance: SEAM,
    turned: NONE,
    passes: DONE.flatFelled(SEAM, EIGHTH),
    thread: { rows: 2, overcast: 0 },
    suits: ['seam'],
    stuff: ['cloth'],
  },
  // 10 to 16 mm, under the arm trimmed to 1/4 in with a double row: a page of garment standards.
  armholeSeam: {
    words: NAMED.armholeSeam,
    allowance: SEAM,
    turned: NONE,
    passes: DONE.armholeSeam(SEAM, EIGHTH, TURN),
    thread: { rows: 2, overcast: 1 },
    suits: ['seam'],
    only: ['armhole', 'cap'],
    stuff: ['cloth'],
  },
  // Enclosed as in a facing: 10 mm, common practice, no source.
  cuffSeam: {
    words: NAMED.cuffSeam,
    allowance: TEN,
    turned: NONE,
    passes: DONE.cuffSeam(TEN, TURN),
    thread: { rows: 1, overcast: 0 },
    pressed: true,
    suits: ['seam'],
    only: ['sleeveEnd', 'outer', 'start', 'end'],
    stuff: ['cloth'],
  },
  zip: zip(mm(20)),
  // A sewing magazine, "Sew a baby hem" (2020): 5/8 in, first row at 1/2 in, finished 1/8 in.
  rolledEdge: {
    words: NAMED.rolledEdge,
    allowance: SEAM,
    turned: TURN,
    passes: DONE.rolledEdge(mm(13), EIGHTH),
    thread: { rows: 3, overcast: 0 },
    suits: ['edge', 'hem'],
    stuff: ['cloth'],
  },
  // Twice the finished depth: common practice, no source.
  doubleFoldHem: doubleFold(HEM_DEPTH),
  // Strip 25 to 32 mm, edge 6 mm: an old school textbook on dressmaking.
  biasStrip: {
    words: NAMED.biasStrip,
    allowance: TURN,
    turned: NONE,
    passes: DONE.biasStrip(mm(32), mm(50), TURN),
    thread: { rows: 2, overcast: 0 },
    suits: ['edge'],
    stuff: ['cloth'],
  },
  // 6 to 10 mm (1/4 to 3/8 in), from memory.
  facing: {
    words: NAMED.facing,
    allowance: TEN,
    turned: NONE,
    passes: DONE.facing(TEN, TURN, EIGHTH),
    thread: { rows: 2, overcast: 0 },
    suits: ['edge'],
    stuff: ['cloth'],
  },
  muslinSeam: muslinSeam(mm(25)),
  muslinEdge: muslinEdge(TEN),
  muslinHem: muslinHem(mm(40)),
  // A muslin neck with allowance cannot lie flat when it is fitted: common practice, no source.
  cutOnLine: {
    words: NAMED.cutOnLine,
    allowance: NONE,
    turned: NONE,
    passes: [],
    thread: { rows: 0, overcast: 0 },
    suits: ['fold', 'edge'],
    stuff: ['cloth', 'muslin'],
  },
} as const satisfies Readonly<Record<string, Finish>>

export type FinishId = keyof typeof FINISHES
export const FINISH_IDS = Object.keys(FINISHES) as readonly FinishId[]
export const isFinishId = (name: string): name is FinishId => Object.hasOwn(FINISHES, name)

/** The finish, its hem as deep as she wants it. */
export const finishOf = (id: FinishId, hemDepth: Mm = HEM_DEPTH): Finish =>
  id === 'doubleFoldHem' ? doubleFold(hemDepth) : FINISHES[id]

const BY_WIDTH: Partial<Readonly<Record<FinishId, (by: Mm) => Finish>>> = {
  plainSeam,
  zip,
  muslinSeam,
  muslinEdge,
  muslinHem,
  doubleFoldHem: (by) => doubleFold(mm(by / 2)),
}

/** The finish with the allowance she wants, kept within its width; fixed ones stay as they are. */
export function finishAs(id: FinishId, wanted: Mm | undefined): Finish {
  const usual = FINISHES[id] as Finish
  const made = BY_WIDTH[id]
  if (wanted === undefined || !made || !usual.width) return usual
  return made(mm(Math.min(Math.max(wanted, usual.width.least), usual.width.most)))
}
