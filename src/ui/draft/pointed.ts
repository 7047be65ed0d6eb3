/** Where her own draft lies apart from this one, on the piece that is on the table. */
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { ownRows } from '../../draft/own-draft.ts'
import { sideOfId, type PieceId } from '../../draft/piece.ts'
import { pathLength } from '../../geometry/length.ts'
import { pointAtLength, type Path } from '../../geometry/path.ts'
import type { Point } from '../../geometry/point.ts'
import { formatChange, type UnitChoice } from '../../units/format.ts'
import type { Mm } from '../../units/length.ts'
import { isWidth, linesOf, pieceFor, placeOf } from './attention.ts'
import { OWN_WORK_WORDS } from './own-work.words.ts'

export interface Pointed {
  readonly path: Path
  /** Where the words stand, over the line or under it: lengths stand in the middle. */
  readonly at: Point
  readonly below: boolean
  /** "yours +0.8 cm" */
  readonly words: string
  /** Which line it is, for those who hear the drawing. */
  readonly line: string
}

/** @param lying the draft as it lies on the table, `mean` the one whose record she compares with */
export function pointedOn(
  lying: Draft,
  mean: Draft,
  piece: PieceId,
  drawn: Readonly<Record<string, Mm>>,
  units: UnitChoice,
): readonly Pointed[] {
  if (Object.keys(drawn).length === 0) return []
  return ownRows(mean, drawn).flatMap((r) => {
    if (r.apart === undefined || r.hers === undefined) return []
    if (pieceFor(lying, { on: 'line', place: r.name }) !== piece) return []
    const path = linesOf(pieceOf(lying, piece), placeOf(r.name).part, sideOfId(r.piece)).flat()
    if (path.length === 0) return []
    const width = isWidth(placeOf(r.name).part)
    const at = pointAtLength(path, pathLength(path) * (width ? 0.28 : 0.8))
    return [
      {
        path,
        at,
        below: width,
        words: OWN_WORK_WORDS.yoursBy(formatChange(r.tool, r.hers, units)),
        line: r.words,
      },
    ]
  })
}
