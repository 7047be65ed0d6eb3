/**
 * How far a cutting line strays from an offset made by another library and by chords: in the
 * middle of each edge, and where it comes nearer to its seam line than it may.
 */
import { edge, type Piece } from '../../src/draft/piece.ts'
import { allowanceOf, cuttingLine, type Allowances } from '../../src/output/allowance.ts'
import type { Mm } from '../../src/units/length.ts'
import { chainLength, chordsOf, nearestOn, type Spot } from './reference-offset.ts'

export interface EdgeErrors {
  /** Largest error in the middle of an edge, mm. */
  readonly middle: number
  /** By how much the cutting line comes nearer to its seam line than it may, mm. */
  readonly short: number
}

/** Chords place the foot of a spot on the seam line to about this, mm. */
const END = 0.1

export function edgeErrors(piece: Piece, allowances: Allowances, hemDepth?: Mm): EdgeErrors {
  const cut = cuttingLine(piece, allowances, hemDepth)
  if (!cut.ok) throw new Error(`${piece.id}: ${cut.reason}`)
  let [middle, short] = [0, 0]
  for (const { name, role, path } of cut.edges) {
    if (role === 'fold') continue
    const own = edge(piece, name)
    const by = allowanceOf(piece, own, allowances)
    const seam = chordsOf(own.path)
    const total = chainLength(seam)
    const mouths = mouthSpots(piece, name)
    for (const p of chordsOf(path, 24)) {
      const near = nearestOn(seam, p)
      // Past an end of the edge the corner decides, and at a dart its cap.
      if (near.along < END || near.along > total - END) continue
      if (mouths.some((m) => Math.hypot(m.x - near.at.x, m.y - near.at.y) < 30)) continue
      short = Math.max(short, by - near.distance)
      if (near.along > total * 0.3 && near.along < total * 0.7)
        middle = Math.max(middle, Math.abs(by - near.distance))
    }
  }
  return { middle, short }
}
function mouthSpots(piece: Piece, name: string): Spot[] {
  return [
    ...piece.edgeDarts
      .filter((d) => d.edge === name)
      .flatMap((d) => [
        d.upper,
        { x: (d.upper.x + d.lower.x) / 2, y: (d.upper.y + d.lower.y) / 2 },
        d.lower,
      ]),
    ...(name === 'hem'
      ? piece.darts.flatMap((d) => (d.open ? [d.open.inner, d.open.outer] : []))
      : []),
  ]
}
