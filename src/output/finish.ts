/**
 * The finishes an edge can have: how much cloth each wants beyond the seam line and what is done
 * with it, in order. Lengths in the sentences are numbers, so that they are said in her units.
 * Over 200 lines: one table, read whole.
 */
import type { EdgeName, EdgeRole } from '../draft/piece.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'

/** A sentence with its lengths standing apart. */
export type Pass = readonly (string | Mm)[]
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
  readonly suits: readonly EdgeRole[]
  /** Where it makes sense only there. */
  readonly only?: readonly EdgeName[]
  readonly stuff: readonly Stuff[]
  /** Any allowance between these goes; without it the passes fix the width. */
  readonly width?: Width
  /** On a curve of this radius or less the finish is given up. */
  readonly leastRadius?: Mm
  readonly source: string
}

const pass = (texts: TemplateStringsArray, ...lengths: readonly Mm[]): Pass =>
  texts.flatMap((text, i) => [text, ...(lengths[i] === undefined ? [] : [lengths[i]])])

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

const plainSeam = (by: Mm): Finish => ({
  words: 'plain seam, pressed open',
  allowance: by,
  turned: NONE,
  passes: [
    pass`Right sides together, sew ${by} from the edge.`,
    pass`Overcast each edge by itself.`,
    pass`Press the seam open.`,
  ],
  suits: ['seam'],
  stuff: ['cloth'],
  width: SEAM_WIDTH,
  source: 'Univ. of Kentucky Extension FCS2-304, Seams and Seam Finishes; 5/8 in from memory',
})

const zip = (by: Mm): Finish => ({
  words: 'seam with a zip',
  allowance: by,
  turned: NONE,
  passes: [
    pass`Sew a row ${TURN} from the edge along the opening, so that it does not stretch.`,
    pass`Sew the seam below the opening, ${by} from the edge.`,
    pass`Press the allowance under along the opening and set the zip.`,
  ],
  suits: ['seam'],
  only: ['centre', 'side'],
  stuff: ['cloth'],
  width: { least: SEAM, most: mm(25) },
  source:
    '16 to 25 mm: 4-H sewing helper 11.135, Staystitching (1/4 in row); allowance from memory',
})

/** A hem turned twice by its own depth; straight edges only. Common practice, no source. */
const doubleFold = (depth: Mm): Finish => ({
  words: 'double-fold hem',
  allowance: mm(2 * depth),
  turned: mm(2 * depth),
  passes: [
    pass`Press the edge to the wrong side, ${depth} deep.`,
    pass`Turn it again on the hem line, ${depth} deep, and press.`,
    pass`Sew along the inner fold.`,
  ],
  suits: ['hem', 'edge'],
  stuff: ['cloth'],
  width: { least: mm(2 * NARROWEST_FOLD), most: WIDEST_ALLOWANCE },
  source: 'twice the finished depth: common practice, no source',
})

const muslinSeam = (by: Mm): Finish => ({
  words: 'muslin seam, left wide to let out',
  allowance: by,
  turned: NONE,
  passes: [pass`Sew on the marked line with the longest stitch.`, pass`Press open.`],
  suits: ['seam'],
  stuff: ['muslin'],
  width: SEAM_WIDTH,
  source: 'Clothing for Women (1916), pattern testing: 1 in at shoulder and underarm',
})

const muslinEdge = (by: Mm): Finish => ({
  words: 'muslin edge',
  allowance: by,
  turned: NONE,
  passes: [pass`Sew a row on the marked line, so that it keeps its length. Leave the edge flat.`],
  suits: ['edge', 'seam'],
  stuff: ['muslin'],
  width: SEAM_WIDTH,
  source: 'common practice, no source',
})

const muslinHem = (by: Mm): Finish => ({
  words: 'muslin hem, left deep to let down',
  allowance: by,
  turned: NONE,
  passes: [pass`Leave it flat, or turn up ${by} on the marked line and tack.`],
  suits: ['hem'],
  stuff: ['muslin'],
  width: { least: TEN, most: WIDEST_ALLOWANCE },
  source: 'common practice, no source',
})

export const FINISHES = {
  plainSeam: plainSeam(SEAM),
  frenchSeam: {
    words: 'French seam',
    allowance: SEAM,
    turned: NONE,
    passes: [
      pass`Wrong sides together, sew ${TEN} from the edge.`,
      pass`Trim to ${EIGHTH} and press to one side.`,
      pass`Right sides together, the first seam on the fold, sew ${TURN} from the fold.`,
      pass`Press towards the back.`,
    ],
    suits: ['seam'],
    stuff: ['cloth'],
    leastRadius: mm(60),
    source:
      'Oklahoma State Univ. Extension, 4-H construction card 810 (3/8 in and 1/4 in); radius: common practice',
  },
  flatFelled: {
    words: 'flat-felled seam',
    allowance: SEAM,
    turned: NONE,
    passes: [
      pass`Wrong sides together, sew ${SEAM} from the edge.`,
      pass`Trim the back layer to ${EIGHTH}.`,
      pass`Fold the front layer in half over it and press flat.`,
      pass`Topstitch along the fold.`,
    ],
    suits: ['seam'],
    stuff: ['cloth'],
    source: 'a dressmaking book, 5/8 in, finished 5/16 in; from memory which',
  },
  armholeSeam: {
    words: 'armhole seam',
    allowance: SEAM,
    turned: NONE,
    passes: [
      pass`Sleeve and armhole right sides together, sew ${SEAM} from the edge.`,
      pass`Sew a second row ${EIGHTH} inside the first under the arm and trim to ${TURN} there.`,
      pass`Overcast both edges together and press into the sleeve.`,
    ],
    suits: ['seam'],
    only: ['armhole', 'cap'],
    stuff: ['cloth'],
    source:
      '10 to 16 mm, under the arm trimmed to 1/4 in with a double row: a page of garment standards',
  },
  zip: zip(mm(20)),
  rolledEdge: {
    words: 'narrow rolled edge',
    allowance: SEAM,
    turned: TURN,
    passes: [
      pass`Sew ${mm(13)} from the edge, fold on that row to the wrong side and press.`,
      pass`Sew close to the fold and trim the rest away beside the row.`,
      pass`Fold once more, ${EIGHTH} deep, and sew on the second row.`,
    ],
    suits: ['edge', 'hem'],
    stuff: ['cloth'],
    source:
      'a sewing magazine, "Sew a baby hem" (2020): 5/8 in, first row at 1/2 in, finished 1/8 in',
  },
  doubleFoldHem: doubleFold(HEM_DEPTH),
  biasStrip: {
    words: 'bias strip',
    allowance: TURN,
    turned: NONE,
    passes: [
      pass`Cut a strip on the true bias, ${mm(32)} wide and ${mm(50)} longer than the edge.`,
      pass`Right sides together, sew ${TURN} from the edge. Clip where it is hollow.`,
      pass`Turn the strip to the wrong side, its own edge under by ${TURN}, and sew it down.`,
    ],
    suits: ['edge'],
    stuff: ['cloth'],
    source: 'strip 25 to 32 mm, edge 6 mm: an old school textbook on dressmaking',
  },
  facing: {
    words: 'shaped facing',
    allowance: TEN,
    turned: NONE,
    passes: [
      pass`Right sides together, sew ${TEN} from the edge.`,
      pass`Trim one layer to ${TURN} and the other to ${EIGHTH}. Clip where it is hollow.`,
      pass`Sew the allowance to the facing close to the seam, turn and press.`,
    ],
    suits: ['edge'],
    stuff: ['cloth'],
    source: '6 to 10 mm (1/4 to 3/8 in), from memory',
  },
  muslinSeam: muslinSeam(mm(25)),
  muslinEdge: muslinEdge(TEN),
  muslinHem: muslinHem(mm(40)),
  cutOnLine: {
    words: 'cut on the line',
    allowance: NONE,
    turned: NONE,
    passes: [],
    suits: ['fold', 'edge'],
    stuff: ['cloth', 'muslin'],
    source:
      'a muslin neck with allowance cannot lie flat when it is fitted: common practice, no source',
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

export const passSentence = (pass: Pass, units: UnitChoice): string =>
  pass.map((part) => (typeof part === 'string' ? part : formatLength(part, units))).join('')
