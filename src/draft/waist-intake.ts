/**
 * What a closed bust dart opens at the waist: the waist dart of a bodice grows by it; on a piece
 * that runs on below the waist the part outside the dart has turned, so the dart grows and the hem
 * gains width under it and is drawn anew, square at both ends.
 */
import { endTangent, pathEnd, type Path } from '../geometry/path.ts'
import {
  add,
  distance,
  point,
  quarterTurn,
  rotate,
  scale,
  subtract,
  unit,
  type Point,
} from '../geometry/point.ts'
import { cubic, line } from '../geometry/segment.ts'
import { dartTo } from './intake.ts'
import { edge, withEdge, type Dart, type Piece } from './piece.ts'

/** @param opened ends of the mouth on waist or hem, outline order; @param turn of the outer part */
export function intoWaist(
  piece: Piece,
  pivot: Point,
  opened: readonly [Point, Point],
  turn: number,
  short: number,
): Piece {
  return piece.edges.some((e) => e.name === 'waist')
    ? atSeam(piece, pivot, opened, short)
    : throughHem(piece, pivot, opened, turn)
}

function atSeam(
  piece: Piece,
  pivot: Point,
  [outer, before]: readonly [Point, Point],
  short: number,
): Piece {
  const own = piece.edgeDarts.find((d) => d.name === 'waistDart')
  const inner = own ? own.lower : before
  const { path } = edge(piece, 'waist')
  const ends = [outer, inner] as const
  // Two mouths side by side are one: what opened, and what was the dart.
  const joined = path.flatMap((s): Path => {
    if (s.kind !== 'line') return [s]
    const [fromOuter, toInner] = [distance(s.from, outer) < ONE, distance(s.to, inner) < ONE]
    if (fromOuter) return [line(outer, inner)]
    return toInner && distance(s.from, before) < ONE && own ? [] : [s]
  })
  const dart = dartTo(pivot, 'waistDart', 'waist', ends, short)
  return {
    ...withEdge(piece, 'waist', joined),
    edgeDarts: [...piece.edgeDarts.filter((d) => d !== own), dart],
  }
}
const ONE = 1e-6

function throughHem(
  piece: Piece,
  pivot: Point,
  [, slit]: readonly [Point, Point],
  turn: number,
): Piece {
  const side = edge(piece, 'side').path
  const fold = pathEnd(edge(piece, 'hem').path)
  const foot = pathEnd(side)
  const handle = distance(foot, slit) / 3
  const towards = unit(subtract(fold, slit))
  const hem = [
    cubic(
      foot,
      add(foot, scale(quarterTurn(endTangent(side)), handle)),
      add(slit, scale(towards, -handle)),
      slit,
    ),
    line(slit, fold),
  ]
  const [first, ...others] = piece.darts
  const whole = (p: Point): Point => rotate(p, pivot, turn)
  const half = (p: Point): Point => rotate(p, pivot, turn / 2)
  const grown: Dart[] = first
    ? [
        {
          ...first,
          outer: whole(first.outer),
          upperTip: half(first.upperTip),
          lowerTip: half(first.lowerTip),
        },
      ]
    : []
  const turnedDarts = others.map((d) => ({
    ...d,
    upperTip: whole(d.upperTip),
    inner: whole(d.inner),
    outer: whole(d.outer),
    lowerTip: whole(d.lowerTip),
  }))
  const m = grown[0]
  return {
    ...withEdge(piece, 'hem', hem),
    darts: [...grown, ...turnedDarts],
    points: {
      ...piece.points,
      ...(m ? { M: point((m.inner.x + m.outer.x) / 2, (m.inner.y + m.outer.y) / 2) } : {}),
    },
  }
}
