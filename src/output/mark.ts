/**
 * What is put on paper, as plain data in millimetres, x right and y down: a drawing is made once
 * as marks and written as SVG or PDF by a writer that decides nothing.
 */
import { point, rotate, add, type Point } from '../geometry/point.ts'
import { flatten, type Path } from '../geometry/path.ts'
import { moved, turned } from '../geometry/segment.ts'
import type { Box } from '../geometry/box.ts'
import type { EdgeName } from '../draft/piece.ts'
import type { LineName, Tone } from './line-style.ts'
import { withoutSoftHyphens } from './wrap.ts'

export interface PathMark {
  readonly kind: 'path'
  readonly id?: string
  readonly line: LineName
  /** One or more runs; a gap between two segments begins a new one. */
  readonly path: Path
}
export interface TextMark {
  readonly kind: 'text'
  readonly id?: string
  readonly text: string
  /** Foot of the text: its start, middle or end by `anchor`. */
  readonly at: Point
  /** Height of the type, mm. */
  readonly size: number
  /** Radians, growing clockwise on the page. */
  readonly angle: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly tone: Tone
  /** What of a piece it names, where a smaller drawing sets it otherwise. */
  readonly of?: { readonly point: string } | { readonly edge: EdgeName }
}
/** A rectangle filled black (or white, over black), or with `line` a drawn one. */
export interface RectMark {
  readonly kind: 'rect'
  readonly id?: string
  readonly box: Box
  readonly line?: LineName
  readonly fill?: 'black' | 'white'
}
export type Mark = PathMark | TextMark | RectMark

export const pathMark = (line: LineName, path: Path, id?: string): PathMark =>
  id === undefined ? { kind: 'path', line, path } : { kind: 'path', line, path, id }

export function textMark(
  text: string,
  at: Point,
  size: number,
  more: Partial<Pick<TextMark, 'angle' | 'anchor' | 'tone' | 'id' | 'of'>> = {},
): TextMark {
  const plain = withoutSoftHyphens(text)
  return { kind: 'text', text: plain, at, size, angle: 0, anchor: 'start', tone: 'ink', ...more }
}

/** Quarter turns clockwise on the page. */
export type Quarter = 0 | 1 | 2 | 3
/** Where a drawing lies on a larger sheet: turned about its origin, then moved. */
export interface Placing {
  readonly turn: Quarter
  readonly by: Point
}
const ORIGIN = point(0, 0)
const radiansOf = (turn: Quarter): number => (turn * Math.PI) / 2

export const placedPoint = (p: Point, { turn, by }: Placing): Point =>
  add(quarterTurned(p, turn), by)

/** Exact for whole quarters, so that an unturned piece keeps its numbers to the last digit. */
function quarterTurned(p: Point, turn: Quarter): Point {
  switch (turn) {
    case 0:
      return p
    case 1:
      return point(-p.y, p.x)
    case 2:
      return point(-p.x, -p.y)
    case 3:
      return point(p.y, -p.x)
  }
}

export function placedMark(mark: PathMark | TextMark, placing: Placing): PathMark | TextMark {
  if (mark.kind === 'text')
    return {
      ...mark,
      at: placedPoint(mark.at, placing),
      angle: upright(mark.angle + radiansOf(placing.turn)),
    }
  const path = mark.path.map((s) => {
    if (s.kind === 'line')
      return { ...s, from: placedPoint(s.from, placing), to: placedPoint(s.to, placing) }
    return moved(turned(s, ORIGIN, radiansOf(placing.turn)), placing.by)
  })
  return { ...mark, path }
}

const FULL = 2 * Math.PI
/** The same angle between −π and π. */
const upright = (angle: number): number => angle - FULL * Math.round(angle / FULL)

/** Width of one letter as a share of its height, wide enough for any sans face; for boxes only. */
const LETTER = 0.62

/** Points that surely hold the mark. */
export function reach(mark: PathMark | TextMark): Point[] {
  if (mark.kind === 'path') return mark.path.flatMap((s) => flatten([s], 0.2))
  const long = mark.text.length * mark.size * LETTER
  const left = mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? -long / 2 : -long
  return [
    point(left, -mark.size),
    point(left + long, -mark.size),
    point(left, mark.size * 0.3),
    point(left + long, mark.size * 0.3),
  ].map((p) => add(mark.at, rotate(p, ORIGIN, mark.angle)))
}
