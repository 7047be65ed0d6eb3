/** The map on page one: how the sheets lie together, and the pieces on them. */
import type { UnitChoice } from '../units/format.ts'
import { boxOfPoints, boxHeight, boxWidth, type Box } from '../geometry/box.ts'
import { point, type Point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import { pathMark, textMark, type Mark } from './mark.ts'
import { paperWords } from './paper.ts'
import { COVER_WORDS } from './sheet.words.ts'
import type { TilePlan } from './tiles.ts'

/** Type over the map, mm. */
const CAPTION = 3.4

/** All sheets small, with the pieces on them; a place without a sheet stays empty. */
export function mapMarks(plan: TilePlan, room: Box, units: UnitChoice): Mark[] {
  const all = boxOfPoints(
    plan.tiles.flatMap(({ box }) => [point(box.left, box.top), point(box.right, box.bottom)]),
  )
  const small = Math.min(boxWidth(room) / boxWidth(all), boxHeight(room) / boxHeight(all))
  const shrink = (p: Point): Point =>
    point(room.left + (p.x - all.left) * small, room.top + (p.y - all.top) * small)
  const cells = plan.tiles.flatMap((t): Mark[] => {
    const [a, b] = [point(t.box.left, t.box.top), point(t.box.right, t.box.bottom)].map(shrink)
    if (!a || !b) return []
    const size = Math.min(5, (b.y - a.y) * 0.3)
    return [
      { kind: 'rect', box: { left: a.x, top: a.y, right: b.x, bottom: b.y }, line: 'hair' },
      textMark(t.name, point((a.x + b.x) / 2, (a.y + b.y) / 2 + size * 0.36), size, {
        anchor: 'middle',
        tone: 'soft',
      }),
    ]
  })
  const rings = plan.placed.map(({ ring }) => {
    const points = ring.map(shrink)
    return pathMark(
      'map',
      points.map((p, i) => line(p, points[(i + 1) % points.length] ?? p)),
    )
  })
  const caption = textMark(
    COVER_WORDS.map(plan.tiles.length, paperWords(plan.paper, units)),
    point(room.left - 1, room.top - 4),
    CAPTION,
  )
  return [caption, ...cells, ...rings]
}
