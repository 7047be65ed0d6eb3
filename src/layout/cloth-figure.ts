/**
 * The cloth on paper as it stands: across the page from the fold or the selvedge, down the page
 * along the cloth; cutting lines, seam lines, grain, numbers and names, and both dimensions.
 */
import {
  add,
  distance,
  point,
  quarterTurn,
  scale,
  subtract,
  unit,
  type Point,
} from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import type { Path } from '../geometry/path.ts'
import { pathMark, textMark, type PathMark, type TextMark } from '../output/mark.ts'
import type { Figure } from '../output/scaled-drawing.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm } from '../units/length.ts'
import { PLACE_WORDS } from './cloth.words.ts'
import type { LyingPiece, LyingSection } from './lying.ts'
import type { Outline } from './outline.ts'
import { centreLine, grainLine, stripNumberPlace } from './run-inside.ts'

/** Type, and the room for dimensions at the left and the foot, mm. */
const TYPE = 3.4
const ROOM = { left: 8, foot: 8 }
/** Ticks of a selvedge stand so far apart on the paper, mm. */
const TICK = { apart: 4, long: 2 }
/** Cloth longer than this many times its width would be drawn as a thread: judgement. */
const LEAST_SCALE = 1 / 60

export function clothFigure(
  s: LyingSection,
  room: { readonly width: number; readonly height: number },
  units: UnitChoice,
): Figure {
  const both = s.layers === 'single' || s.layers === 'foldedAcross'
  const [low, high] = [both ? -s.selvedge : 0, s.width + s.selvedge]
  const across = high - low
  const small = Math.max(
    LEAST_SCALE,
    Math.min((room.width - ROOM.left) / across, (room.height - ROOM.foot) / s.length),
  )
  const at = (x: number, y: number): Point => point(ROOM.left + (y - low) * small, x * small)
  const run = (x0: number, y0: number, x1: number, y1: number) => line(at(x0, y0), at(x1, y1))
  const [wide, tall] = [across * small, s.length * small]
  const marks: (PathMark | TextMark)[] = [
    pathMark('map', [run(0, low, 0, high)]),
    pathMark(s.layers === 'foldedAcross' ? 'fold' : 'map', [run(s.length, low, s.length, high)]),
    pathMark('map', [run(0, high, s.length, high)]),
    pathMark(both ? 'map' : 'fold', [run(0, low, s.length, low)]),
    pathMark('hair', ticks(at, high, -1, s.length, small)),
    ...(both ? [pathMark('hair', ticks(at, low, 1, s.length, small))] : []),
    ...(s.border === undefined ? [] : [pathMark('inner', [run(0, s.border, s.length, s.border)])]),
    ...(s.double === undefined ? [] : [pathMark('inner', [run(0, s.double, s.length, s.double)])]),
    ...s.pieces.flatMap((p) => pieceMarks(p, at)),
    textMark(formatLength(mm(s.length), units), point(ROOM.left - 3, tall / 2), TYPE, {
      angle: -Math.PI / 2,
      anchor: 'middle',
    }),
    textMark(
      PLACE_WORDS.figure(formatLength(mm(across), units), both),
      point(ROOM.left, tall + 5.5),
      TYPE,
    ),
  ]
  return { width: ROOM.left + wide, height: tall + ROOM.foot, marks }
}

type At = (x: number, y: number) => Point

function ticks(at: At, y: number, way: number, length: number, small: number): Path {
  const step = TICK.apart / small
  return Array.from({ length: Math.floor(length / step) }, (_, i) => {
    const foot = at((i + 0.5) * step, y)
    return line(foot, point(foot.x + way * TICK.long, foot.y))
  })
}

function pieceMarks(p: LyingPiece, at: At): (PathMark | TextMark)[] {
  const ring = (o: Outline): Path =>
    Array.from({ length: o.length / 2 }, (_, i) => {
      const k = (2 * i + 2) % o.length
      return line(at(o[2 * i]!, o[2 * i + 1]!), at(o[k]!, o[k + 1]!))
    })
  const { from, to } = grainLine(p.cut, p.across)
  const [a, b] = [at(...from), at(...to)]
  const long = distance(a, b)
  const middle = point((a.x + b.x) / 2, (a.y + b.y) / 2)
  const centre = centreLine(p.at, p.across)
  const name = `${p.number} ${p.words}`
  const isStrip = p.kind === 'bias'
  // Beside its arrow and, of a piece opened out, clear of its centre too; over an arrow that runs
  // across the page.
  const foot = ((): Point => {
    if (isStrip) return at(...stripNumberPlace(p.cut, p.number))
    if (p.across) return point(Math.min(a.x, b.x), middle.y - TYPE)
    const [start, end] = [at(...centre.from), at(...centre.to)]
    return point(p.whole ? Math.max(middle.x, start.x, end.x) : middle.x, middle.y)
  })()
  // Where the letters have room: each about half as wide as it is high.
  const room = at(0, p.at.high).x - foot.x
  const fits = !isStrip && name.length * TYPE * 0.55 < room
  /** Two short lines of an arrow head, back along its shaft. */
  const head = (tip: Point, foot: Point): Path => {
    const way = unit(subtract(foot, tip))
    const aside = quarterTurn(way)
    const back = add(tip, scale(way, 2))
    return [line(add(back, aside), tip), line(subtract(back, aside), tip)]
  }
  return [
    pathMark('map', ring(p.cut)),
    pathMark('hair', ring(p.seam)),
    ...(p.whole ? [pathMark('dartMiddle', [line(at(...centre.from), at(...centre.to))])] : []),
    ...(long > 10 ? [pathMark('grain', [line(a, b), ...head(a, b), ...head(b, a)])] : []),
    textMark(fits ? name : `${p.number}`, point(foot.x + 1.5, foot.y + TYPE * 0.36), TYPE),
  ]
}
