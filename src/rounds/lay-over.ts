/**
 * Two drawings of one piece laid over each other on a point they share, as tracing paper is
 * pinned: the older one is moved until its anchor lies on the anchor of the newer. Nothing turns.
 */
import { movedPath } from '../geometry/path.ts'
import { add, subtract, type Point } from '../geometry/point.ts'
import { isHalf, type HalfId, type Piece } from '../draft/piece.ts'

export type Anchor = 'sideNeck' | 'apex' | 'waistFold' | 'nape'

/** The lettered point of the construction that each anchor is. */
const LETTER: Readonly<Record<Anchor, string>> = {
  sideNeck: 'S',
  apex: 'apex',
  waistFold: 'C',
  nape: 'A',
}
export const ANCHOR_WORDS: Readonly<Record<Anchor, string>> = {
  sideNeck: 'side neck',
  apex: 'bust tip',
  waistFold: 'waist',
  nape: 'nape',
}
/** What a piece can be laid over on; the first is where most changes show least shifted. */
export const ANCHORS: Readonly<Record<HalfId, readonly Anchor[]>> = {
  front: ['apex', 'sideNeck', 'waistFold'],
  back: ['nape', 'sideNeck', 'waistFold'],
}

/** Only the anchors that both drawings have: without a dart there is no bust tip. */
export const sharedAnchors = (before: Piece, after: Piece): readonly Anchor[] =>
  (isHalf(after.id) ? ANCHORS[after.id] : []).filter(
    (a) => before.points[LETTER[a]] && after.points[LETTER[a]],
  )

/** Where the anchor lies on a piece; asking for one it lacks is our own mistake. */
export function anchorOn(piece: Piece, anchor: Anchor): Point {
  const at = piece.points[LETTER[anchor]]
  if (!at) throw new Error(`lay-over: ${piece.id} has no point for ${anchor}`)
  return at
}

/** The older piece, moved so that its anchor lies on the newer one's. */
export const layOver = (before: Piece, after: Piece, anchor: Anchor): Piece =>
  movedPiece(before, subtract(anchorOn(after, anchor), anchorOn(before, anchor)))

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
