/** Page one and the sheets as pages, stretched for one printer where she asked for it. */
import { point } from '../geometry/point.ts'
import { boxHeight, boxWidth } from '../geometry/box.ts'
import { COVER_BLOCK, coverMarks, coverPage, type CoverWords } from './cover-page.ts'
import { shiftedMark, type Page, type Stretch } from './page.ts'
import { acrossPaper, liesAcross, PRINT_MARGIN } from './paper.ts'
import type { PieceDrawing } from './piece-drawing.ts'
import { stretchOf } from './sheet-plan.ts'
import { placedDrawing, tilePage, type TileWords } from './tile-page.ts'
import { onSheet, sheetOf, type TilePlan } from './tiles.ts'
import type { Face } from './wrap.ts'

export interface Laid {
  readonly plan: TilePlan
  readonly drawings: readonly PieceDrawing[]
}

/** The sheets by rows. */
export function tilePages(
  { plan, drawings }: Laid,
  words: TileWords,
  face: Face,
  scale: Stretch | undefined,
): Page[] {
  const placed = plan.placed.map((p) => {
    const drawing = drawings.find((d) => d.piece.id === p.name)
    if (!drawing) throw new Error(`sheets: no drawing of ${p.name}`)
    return placedDrawing(drawing, p)
  })
  const by = scale && stretchOf(plan.paper, scale)
  return plan.tiles.map((tile) => stretched(tilePage(tile, plan, placed, words, face), by))
}

/** The sheets after page one; on a big sheet page one stands on the sheet that comes first. */
export function withPageOne(
  tiles: readonly Page[],
  plan: TilePlan,
  words: CoverWords,
  face: Face,
  scale: Stretch | undefined,
  margin: number = PRINT_MARGIN,
): Page[] {
  if (!plan.block) {
    const upright = liesAcross(plan.paper) ? acrossPaper(plan.paper) : plan.paper
    return [stretched(coverPage(plan, words, face, upright, margin), scale), ...tiles]
  }
  const { left, top } = plan.block
  const first = plan.tiles.findIndex(({ box }) => inside(box, left, top))
  const [tile, page] = [plan.tiles[first], tiles[first]]
  if (!tile || !page) throw new Error(`sheets: page one at ${left}, ${top} lies on no sheet`)
  const area = { left: 0, top: 0, right: COVER_BLOCK.width, bottom: COVER_BLOCK.height }
  const at = onSheet(point(left, top), tile, sheetOf(plan, tile).trim)
  const marks = coverMarks(plan, words, area, face).map((m) => shiftedMark(m, at))
  const one = { ...page, layers: [...page.layers, { marks }] }
  return [one, ...tiles.filter((_, i) => i !== first)]
}

const inside = (box: TilePlan['trim'], x: number, y: number): boolean =>
  x >= box.left && x < box.left + boxWidth(box) && y >= box.top && y < box.top + boxHeight(box)

/** A page made in true millimetres, drawn larger or smaller on the real sheet. */
function stretched(page: Page, scale: Stretch | undefined): Page {
  if (!scale) return page
  return { ...page, width: page.width * scale.x, height: page.height * scale.y, scale }
}
