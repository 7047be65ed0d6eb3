/** A drawn sheet as a piece: its edges in order, its grain, its levels run across. */
import { boxOf } from '../geometry/box.ts'
import { point } from '../geometry/point.ts'
import type { DrawnPiece } from './garment.ts'
import type { EdgeName, Piece } from './piece.ts'

/** The outline is closed clockwise in this order, whatever the order of the steps. */
const ORDER: readonly EdgeName[] = [
  'cap',
  'frontSeam',
  'waist',
  'neck',
  'overarm',
  'shoulder',
  'sleeveEdge',
  'armhole',
  'side',
  'hem',
  'sleeveEnd',
  'end',
  'outer',
  'start',
  'backSeam',
  'centre',
]

export function finished({ sheet, words, cut }: DrawnPiece): Piece {
  const edges = [...sheet.edges].sort((a, b) => ORDER.indexOf(a.name) - ORDER.indexOf(b.name))
  const box = boxOf(edges.map((e) => e.path))
  const x = box.left < 0 ? 0 : box.right * GRAIN_ACROSS
  return {
    id: sheet.piece,
    words,
    cut,
    edges,
    darts: sheet.darts,
    edgeDarts: sheet.edgeDarts,
    inner: [],
    points: sheet.points,
    levels: sheet.levels(box.right),
    grain: { from: point(x, box.bottom * 0.35), to: point(x, box.bottom * 0.75) },
  }
}
/** The grain line stands between the fold and the dart, where nothing else is drawn. */
const GRAIN_ACROSS = 0.12
