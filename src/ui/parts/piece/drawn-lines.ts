/** The lines of a piece that words keep clear of, and points along them. */
import type { Piece } from '../../../draft/piece.ts'
import { dartLegs, edgeDartLegs } from '../../../draft/sheet.ts'
import { flatten, type Path } from '../../../geometry/path.ts'
import { between, distance, type Point } from '../../../geometry/point.ts'

/** The outline and the legs of all darts. */
export const drawnLines = (piece: Piece): readonly Path[] => [
  ...piece.edges.map((e) => e.path),
  ...piece.darts.flatMap((d) => dartLegs(d).map((leg) => [leg])),
  ...piece.edgeDarts.flatMap((d) => edgeDartLegs(d).map((leg) => [leg])),
]

/** Points no farther apart than `every`; chords half a millimetre off are near enough for words. */
export function sampled(path: Path, every: number): Point[] {
  const chords = flatten(path, 0.5)
  return chords.flatMap((b, i) => {
    const a = chords[i - 1]
    if (!a) return [b]
    const count = Math.max(1, Math.ceil(distance(a, b) / every))
    return Array.from({ length: count }, (_, k) => between(a, b, (k + 1) / count))
  })
}
