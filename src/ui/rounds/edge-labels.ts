/** The change of each changed line, and where its words stand: inside the piece, beside the line. */
import { pathLength } from '../../geometry/length.ts'
import { placeAt, pointAtPlace, tangentAtPlace } from '../../geometry/path.ts'
import { distance, quarterTurn, type Point } from '../../geometry/point.ts'
import type { Piece } from '../../draft/piece.ts'
import { formatChange, printedMm, type UnitChoice } from '../../units/format.ts'
import { mm, type Mm } from '../../units/length.ts'
import type { ChangedLines } from '../../rounds/changed-edges.ts'

export interface EdgeLabel {
  readonly name: string
  readonly words: string
  readonly at: Point
  /** Towards the inside of the piece, length 1. */
  readonly inwards: Point
}

/** Only what prints another length is labelled: a seam that only turned keeps its number. */
export function edgeLabels(
  before: Piece,
  after: Piece,
  { edges, dart }: ChangedLines,
  units: UnitChoice,
): readonly EdgeLabel[] {
  const lines = after.edges.flatMap((e): EdgeLabel[] => {
    const old = before.edges.find((o) => o.name === e.name)
    if (!old || !edges.includes(e.name) || e.role === 'fold') return []
    const [was, is] = [mm(pathLength(old.path)), mm(pathLength(e.path))]
    if (same(was, is, units)) return []
    const place = placeAt(e.path, is / 2)
    // The outline runs clockwise on the page, so its right side is inside.
    const inwards = quarterTurn(tangentAtPlace(e.path, place))
    return [
      {
        name: e.name,
        words: formatChange(was, is, units),
        at: pointAtPlace(e.path, place),
        inwards,
      },
    ]
  })
  const [a, b] = [before.darts[0], after.darts[0]]
  if (!dart || !a || !b) return lines
  const [was, is] = [mm(distance(a.inner, a.outer)), mm(distance(b.inner, b.outer))]
  return same(was, is, units)
    ? lines
    : [
        ...lines,
        {
          name: 'waistDart',
          words: formatChange(was, is, units),
          at: b.outer,
          inwards: { x: 1, y: 0 },
        },
      ]
}
const same = (a: Mm, b: Mm, units: UnitChoice): boolean =>
  printedMm(a, units) === printedMm(b, units)
