/**
 * The end of a set-in sleeve made whole: its slit and what is drawn up marked on it, the cuff, and
 * the binding of the slit. Source of the binding: a straight strip as long as both edges of the
 * slit and 25 mm more, in one piece round it; common practice, no source.
 */
import { pathLength } from '../geometry/length.ts'
import { point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import { fixed, found, plus } from '../units/amount.ts'
import { mm } from '../units/length.ts'
import { drawCuff } from './blocks/cuff.ts'
import { CUFF_WORDS as W } from './blocks/cuff.words.ts'
import type { SleeveEnd } from './blocks/sleeve-end.ts'
import type { Choices } from './choices.ts'
import { gatherMark } from './dart-service.ts'
import { rectangle, type Finishing } from './facing.ts'
import { finished } from './finished.ts'
import { edge, namedPoint, PAIR, type Edge, type Piece } from './piece.ts'
import { pieceTitle } from './piece.words.ts'
import type { Sheet } from './sheet.ts'
import type { Step } from './step.ts'

export interface EndFinished {
  /** The sleeve first. */
  readonly pieces: readonly Piece[]
  readonly steps: readonly Step[]
  readonly sheets: readonly Sheet[]
}

/** The edge a sleeve ends in, hem or cuff seam. */
export const endOf = (sleeve: Piece): Edge =>
  sleeve.edges.find((e) => e.name === 'sleeveEnd') ?? edge(sleeve, 'hem')

export function finishedEnd(
  sleeve: Piece,
  sheet: Sheet,
  end: SleeveEnd,
  choices: Choices,
): EndFinished {
  const slit = end.slit > 0 ? slitLine(sleeve) : undefined
  const takes = end.round - end.closed
  const gathers =
    takes > 0
      ? {
          gathers: [{ edge: 'sleeveEnd', takes } as const],
          inner: [gatherMark(endOf(sleeve).path, end.closed)],
        }
      : { inner: [] }
  const marked: Piece = { ...sleeve, ...gathers, inner: [...gathers.inner, ...(slit?.inner ?? [])] }
  const cuff =
    choices.sleeveEnd === 'cuff'
      ? drawCuff(end, choices, [...sheet.restsOf('D'), ...sheet.restsOf('E'), 'sleeveEnd'])
      : undefined
  const binding = end.slit > 0 ? sleeveBinding(end.slit) : undefined
  return {
    pieces: [marked, ...(cuff ? [cuffPiece(cuff)] : []), ...(binding ? [binding.piece] : [])],
    steps: [...(slit?.steps ?? []), ...(cuff?.steps ?? []), ...(binding?.steps ?? [])],
    sheets: cuff ? [cuff] : [],
  }
}

function slitLine(sleeve: Piece): Pick<Piece, 'inner'> & { steps: readonly Step[] } {
  const path = [line(namedPoint(sleeve, 'M'), namedPoint(sleeve, 'N'))]
  return {
    inner: [{ name: 'slit', words: W.slitBound, path }],
    steps: [
      {
        verb: 'open',
        piece: 'sleeve',
        words: W.slitFromMToN,
        long: found('', mm(pathLength(path))),
        why: W.boundBeforeSeam,
        lights: [path],
      },
    ],
  }
}

/** The thread runs round the arm, where a cuff must not give. Common practice, no source. */
function cuffPiece(sheet: Sheet): Piece {
  const piece = finished({ sheet, words: pieceTitle('cuff'), cut: PAIR })
  const [from, to] = [namedPoint(piece, 'F'), namedPoint(piece, 'G')]
  const y = from.y * INSIDE
  return {
    ...piece,
    inner: [{ name: 'fold', words: W.foldOfCuff, path: [line(from, to)] }],
    grain: { from: point(to.x * 0.7, y), to: point(to.x * 0.3, y) },
  }
}
/** Down the inside of a cuff, in heights of it from the sleeve. */
const INSIDE = 1.55

/** Turned under and sewn at 6 mm on both edges, it stands out by 10. Common practice, no source. */
const BINDING_WIDE = mm(32)
const BINDING_SPARE = mm(25)

/** @param slit its length, mm */
export function sleeveBinding(slit: number): Finishing {
  const long = plus(found(W.bothEdgesOfSlit, mm(2 * slit)), fixed(BINDING_SPARE))
  const { piece, steps } = rectangle(
    'sleeveBinding',
    long,
    fixed(BINDING_WIDE),
    { count: 2, how: 'single' },
    W.bindingOnGrain,
  )
  const y = BINDING_WIDE / 2
  return {
    piece: {
      ...piece,
      edges: piece.edges.map((e) => (e.name === 'neck' ? { ...e, name: 'sewnOn' } : e)),
      grain: { from: point(long.mm * 0.25, y), to: point(long.mm * 0.05, y) },
    },
    steps,
  }
}
