/** The tips of darts: they carry no letter of the construction, and are named by their dart. */
import type { Point } from '../geometry/point.ts'
import { partName, type Piece } from './piece.ts'
import { dartTipSaid } from './piece.words.ts'

export interface DartTip {
  /** `waistDart.upper`, `waistDart.lower`, `bustDart`. */
  readonly name: string
  readonly words: string
  readonly at: Point
}

export const dartTips = (piece: Piece): readonly DartTip[] => [
  ...piece.darts.flatMap((d): DartTip[] => [
    {
      name: `${partName(d)}.upper`,
      words: dartTipSaid(d.name, 'upper'),
      at: d.upperTip,
    },
    {
      name: `${partName(d)}.lower`,
      words: dartTipSaid(d.name, 'lower'),
      at: d.lowerTip,
    },
  ]),
  ...piece.edgeDarts.map((d): DartTip => ({
    name: partName(d),
    words: dartTipSaid(d.name),
    at: d.tip,
  })),
]
