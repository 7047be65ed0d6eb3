/** Which sheets a draft takes, without making them: for the map on the screen, and for the pages. */
import { flatten } from '../geometry/path.ts'
import type { Point } from '../geometry/point.ts'
import { mm } from '../units/length.ts'
import type { Draft } from '../draft/draft.ts'
import { GARMENTS } from '../draft/garments.ts'
import { MUSLIN_ALLOWANCES } from './allowance.ts'
import { COVER_BLOCK } from './cover-page.ts'
import { reach } from './mark.ts'
import type { Stretch } from './page.ts'
import { liesAcross, paperOf, waysToLie, type PaperSize } from './paper.ts'
import {
  pieceDrawing,
  type PieceDrawing,
  type PieceMark,
  type PieceWords,
} from './piece-drawing.ts'
import { scaledDrawing } from './scaled-drawing.ts'
import type { SheetWords } from './sheet-words.ts'
import type { TileInput } from './tile-raster.ts'
import { planTiles, type TilePlan } from './tiles.ts'

export type SheetPlan =
  | {
      readonly ok: true
      readonly plan: TilePlan
      readonly drawings: readonly PieceDrawing[]
    }
  | { readonly ok: false; readonly reason: string }

export type PlanWords = Pick<
  SheetWords,
  'paper' | 'allowances' | 'hemDepth' | 'stuff' | 'round' | 'garmentName' | 'margin' | 'scale'
> &
  Pick<PieceWords, 'units'>

/** `small` of 2 lays the pieces out at a half, without a block for page one. */
export function sheetPlan(draft: Draft, words: PlanWords, small = 1): SheetPlan {
  const drawings = draft.pieces.map((piece) =>
    pieceDrawing(piece, {
      allowances: words.allowances ?? MUSLIN_ALLOWANCES,
      hemDepth: words.hemDepth,
      stuff: words.stuff,
      garmentName: words.garmentName ?? GARMENTS[draft.garment].name,
      ...(words.units ? { units: words.units } : {}),
      ...(words.round === undefined ? {} : { round: words.round }),
    }),
  )
  const refusal = drawings.find((d) => d.refusal !== undefined)?.refusal
  if (refusal !== undefined) return { ok: false, reason: refusal }
  const drawn = drawings.map((d) => scaledDrawing(d, small))
  const inputs = drawn.map(tileInput)
  const paper = paperOf(words.paper)
  const options = {
    ...(words.margin === undefined ? {} : { margin: words.margin }),
    ...(paper.big && small === 1 ? { block: COVER_BLOCK } : {}),
  }
  const { scale } = words
  if (!scale) return { ok: true, plan: planTiles(inputs, paper, options), drawings: drawn }
  // A big sheet was measured as it lay, so it must lie that way again.
  const ways = paper.big ? [planTiles(inputs, paper, options).paper] : waysToLie(paper)
  const plan = planTiles(
    inputs,
    paper,
    options,
    ways.map((way) => seenBy(way, scale)),
  )
  return { ok: true, plan, drawings: drawn }
}

/** The stretch as this sheet lies: page one is upright, a sheet across has its sides exchanged. */
export const stretchOf = (paper: PaperSize, { x, y }: Stretch): Stretch =>
  liesAcross(paper) && !paper.big ? { x: y, y: x } : { x, y }

/** A file drawn larger has room for less: the paper in true millimetres of the pieces. */
function seenBy(paper: PaperSize, scale: Stretch): PaperSize {
  const { x, y } = stretchOf(paper, scale)
  return { ...paper, width: mm(paper.width / x), height: mm(paper.height / y) }
}

/** The ring only says which sheets are touched; the drawing itself is exact. */
const RING_ERROR = 0.2

const tileInput = ({ piece, cut, marks }: PieceDrawing): TileInput => ({
  name: piece.id,
  ring: flatten(cut, RING_ERROR),
  ink: marks.flatMap(inkOf),
})

/** Every line of a mark by itself, and the frame round a word. */
function inkOf(mark: PieceMark): (readonly Point[])[] {
  if (mark.kind === 'path') return mark.path.map((s) => flatten([s], RING_ERROR))
  const [a, b, c, d] = reach(mark)
  return a && b && c && d ? [[a, b, d, c, a]] : []
}
