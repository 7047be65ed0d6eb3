/**
 * Two drawings of one piece laid over each other on a point they share, as tracing paper is
 * pinned: the older one is moved until its anchor lies on the anchor of the newer. Nothing turns.
 */
import { movedPath } from '../geometry/path.ts'
import { add, distance, subtract, type Point } from '../geometry/point.ts'
import { dartTips } from '../draft/dart-tips.ts'
import { isHalf, pairedId, type HalfId, type Piece } from '../draft/piece.ts'
import { mm, type Mm } from '../units/length.ts'
import { PENCIL } from './changed-edges.ts'

type Lettered = 'sideNeck' | 'apex' | 'waistFold' | 'nape'
/** `grain`: the upper end of the grain line, for pieces that carry none of the others. */
export type Anchor = Lettered | 'grain'

/** The lettered point of the construction that each anchor is. */
const LETTER: Readonly<Record<Lettered, string>> = {
  sideNeck: 'S',
  apex: 'apex',
  waistFold: 'C',
  nape: 'A',
}
/** What a piece can be laid over on; the first is where most changes show least shifted. */
export const ANCHORS: Readonly<Record<HalfId, readonly Lettered[]>> = {
  front: ['apex', 'sideNeck', 'waistFold'],
  back: ['nape', 'sideNeck', 'waistFold'],
}

/** Only the anchors that both drawings have: without a dart there is no bust tip. */
export const sharedAnchors = (before: Piece, after: Piece): readonly Anchor[] =>
  anchorsOf(after).filter(
    (a) => a === 'grain' || (before.points[LETTER[a]] && after.points[LETTER[a]]),
  )
const anchorsOf = ({ id }: Piece): readonly Anchor[] => {
  const paired = pairedId(id)
  return isHalf(paired) ? ANCHORS[paired] : ['grain']
}

/** Where the anchor lies on a piece; asking for one it lacks is our own mistake. */
export function anchorOn(piece: Piece, anchor: Anchor): Point {
  const at = anchor === 'grain' ? piece.grain.from : piece.points[LETTER[anchor]]
  if (!at) throw new Error(`lay-over: ${piece.id} has no point for ${anchor}`)
  return at
}

/** The older piece, moved so that its anchor lies on the newer one's. */
export const layOver = (before: Piece, after: Piece, anchor: Anchor): Piece =>
  movedPiece(before, subtract(anchorOn(after, anchor), anchorOn(before, anchor)))

export interface MovedPoint {
  /** A letter of the construction, or a tip by its dart: `waistDart.upper`. */
  readonly name: string
  /** A tip in words; letters speak for themselves. */
  readonly words?: string
  /** Where it lies on the newer piece. */
  readonly at: Point
  /** To the right and down the paper, mm. */
  readonly across: Mm
  readonly down: Mm
  readonly far: Mm
}

/** Points and dart tips of the newer piece that lie elsewhere than on the older one under it, farthest first. */
export const movedPoints = (laid: Piece, after: Piece): readonly MovedPoint[] => {
  const old = new Map(named(laid).map(({ name, at }) => [name, at]))
  return named(after)
    .flatMap((point): MovedPoint[] => {
      const was = old.get(point.name)
      if (!was || distance(was, point.at) <= PENCIL) return []
      const [across, down] = [mm(point.at.x - was.x), mm(point.at.y - was.y)]
      return [{ ...point, across, down, far: mm(distance(was, point.at)) }]
    })
    .sort((a, b) => b.far - a.far)
}
const named = (piece: Piece): readonly Pick<MovedPoint, 'name' | 'words' | 'at'>[] => [
  ...Object.entries(piece.points).map(([name, at]) => ({ name, at })),
  ...dartTips(piece),
]

function movedPiece(piece: Piece, by: Point): Piece {
  const go = (p: Point): Point => add(p, by)
  return {
    ...piece,
    edges: piece.edges.map((e) => ({ ...e, path: movedPath(e.path, by) })),
    darts: piece.darts.map((d) => ({
      ...d,
      upperTip: go(d.upperTip),
      inner: go(d.inner),
      outer: go(d.outer),
      lowerTip: go(d.lowerTip),
      ...(d.open ? { open: { inner: go(d.open.inner), outer: go(d.open.outer) } } : {}),
    })),
    edgeDarts: piece.edgeDarts.map((d) => ({
      ...d,
      tip: go(d.tip),
      upper: go(d.upper),
      lower: go(d.lower),
    })),
    inner: piece.inner.map((i) => ({ ...i, path: movedPath(i.path, by) })),
    points: Object.fromEntries(Object.entries(piece.points).map(([name, p]) => [name, go(p)])),
    levels: piece.levels.map((l) => ({ ...l, from: go(l.from), to: go(l.to) })),
    grain: { from: go(piece.grain.from), to: go(piece.grain.to) },
  }
}
