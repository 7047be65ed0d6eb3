/** What is marked inside a piece: openings and centres, its lettered points and the apex. */
import { boxOf, grown } from '../geometry/box.ts'
import { pathLength } from '../geometry/length.ts'
import {
  endTangent,
  pathEnd,
  pathStart,
  placeAt,
  pointAtPlace,
  startTangent,
  tangentAtPlace,
  type Path,
} from '../geometry/path.ts'
import { add, point, quarterTurn, scale, type Point } from '../geometry/point.ts'
import { arc, line } from '../geometry/segment.ts'
import { partName, type InnerLine, type Piece } from '../draft/piece.ts'
import type { UnitChoice } from '../units/format.ts'
import { lengthsIn } from '../units/lengths-in.ts'
import { EDGE_GAP, nameOf, SIZE } from './level-marks.ts'
import { pathMark, textMark, type PathMark, type TextMark } from './mark.ts'
import { MARK_WORDS } from './sheet.words.ts'

/** Half the arm of a point's crossing. */
const CROSS = 2.5
const APEX = { arm: 6, ring: 4 } as const

/** An opening, a centre or a fold on the outline or inside it, its ends ticked, its words along it. */
export function innerMarks(
  piece: Piece,
  inner: InnerLine,
  units: UnitChoice,
): (PathMark | TextMark)[] {
  // Gathers lie along an edge, whose middle may carry a letter.
  const share = inner.name === 'gathers' ? 0.3 : 0.5
  const place = placeAt(inner.path, pathLength(inner.path) * share)
  const way = tangentAtPlace(inner.path, place)
  const read = way.x < -1e-9 || (Math.abs(way.x) <= 1e-9 && way.y > 0) ? scale(way, -1) : way
  const at = add(pointAtPlace(inner.path, place), scale(quarterTurn(read), -EDGE_GAP))
  const tick = (end: Point, along: Point): Path => {
    const aside = scale(quarterTurn(along), CROSS)
    return [line(add(end, aside), add(end, scale(aside, -1)))]
  }
  const ticks = [
    ...tick(pathStart(inner.path), startTangent(inner.path)),
    ...tick(pathEnd(inner.path), endTangent(inner.path)),
  ]
  return [
    pathMark('inner', inner.path, nameOf(piece, partName(inner))),
    pathMark('notch', ticks, nameOf(piece, `${partName(inner)}.ends`)),
    textMark(lengthsIn(inner.words, units), at, SIZE.small, {
      angle: Math.atan2(read.y, read.x),
      anchor: 'middle',
    }),
  ]
}

/** Construction points that lie past the cloth, as the hip below a short hem, would only cost paper. */
export function pointsNear(piece: Piece, cut: Path): [string, Point][] {
  const { left, right, top, bottom } = grown(boxOf([cut]), CROSS)
  return Object.entries(piece.points).filter(
    ([, { x, y }]) => x >= left && x <= right && y >= top && y <= bottom,
  )
}

/** A point is where two lines cross; the apex is ringed, as the fullest point is (common practice). */
export function pointMarks(piece: Piece, name: string, at: Point): (PathMark | TextMark)[] {
  const isApex = /^apex/.test(name)
  const arm = isApex ? APEX.arm : CROSS
  const across = line(add(at, point(-arm, 0)), add(at, point(arm, 0)))
  const down = line(add(at, point(0, -arm)), add(at, point(0, arm)))
  // Two halves: a writer may draw nothing for an arc that ends where it begins.
  const halves = [0, Math.PI].map((start) => arc(at, APEX.ring, start, Math.PI))
  const ring = isApex ? halves : []
  return [
    pathMark('point', [across, down, ...ring], nameOf(piece, name)),
    textMark(MARK_WORDS.point(name), add(at, point(arm - 0.5, -CROSS + 0.5)), SIZE.letter, {
      of: { point: name },
    }),
  ]
}
