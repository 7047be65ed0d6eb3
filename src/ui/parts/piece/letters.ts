/**
 * Where the letter of a point stands: of eight places round it the one that covers least of the
 * lines, the lengths and the letters already set. On the fold the left side is tried first.
 */
import type { Piece } from '../../../draft/piece.ts'
import { flatten, pathEnd, pathStart, type Path } from '../../../geometry/path.ts'
import { between, distance, type Point } from '../../../geometry/point.ts'

export interface Letter {
  readonly name: string
  readonly point: Point
  /** Middle of the letter. */
  readonly at: Point
}

/** Right, left, above and below, then the corners: a letter beside its point reads best. */
const AROUND: readonly Point[] = [
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0.85, y: -0.85 },
  { x: 0.85, y: 0.85 },
  { x: -0.85, y: -0.85 },
  { x: -0.85, y: 0.85 },
  { x: 0, y: -1 },
  { x: 0, y: 1 },
]
/** Covering another letter is worse than covering a line, and both are worse than a second choice. */
const COST = { letter: 40, line: 1, later: 0.4 } as const

/**
 * @param points the lettered points; `taken` are middles of words that must not be covered
 * @param size height of a letter in mm of the drawing
 */
export function placeLetters(
  points: Readonly<Record<string, Point>>,
  lines: readonly Path[],
  taken: readonly Point[],
  size: number,
): readonly Letter[] {
  const dots = lines.flatMap((path) => sampled(path, size / 2))
  const set: Letter[] = []
  const words = [...taken]
  for (const [name, point] of Object.entries(points)) {
    const onFold = Math.abs(point.x) < 0.01
    const ways = onFold ? AROUND.toSorted((a, b) => a.x - b.x) : AROUND
    const wide = size * (0.35 + 0.22 * name.length)
    let best: { at: Point; cost: number } | undefined
    for (const [i, way] of ways.entries()) {
      const at = {
        x: point.x + way.x * (size * 0.45 + wide),
        y: point.y + way.y * size * 0.85,
      }
      const near = (p: Point, by: number) =>
        Math.abs(p.x - at.x) < wide + by && Math.abs(p.y - at.y) < size * 0.5 + by
      const cost =
        COST.later * i +
        COST.line * dots.filter((p) => near(p, 0)).length +
        COST.letter * words.filter((p) => near(p, size * 0.6)).length
      if (!best || cost < best.cost) best = { at, cost }
    }
    if (!best) throw new Error(`letters: no place round ${name}`)
    set.push({ name, point, at: best.at })
    words.push(best.at)
  }
  return set
}

/** The middle of the longest stretch of the fold without a point: words there meet no letter. */
export function foldWordsAt(piece: Piece): Point | undefined {
  const fold = piece.edges.find((e) => e.role === 'fold')
  if (!fold) return undefined
  const [a, b] = [pathStart(fold.path), pathEnd(fold.path)]
  const [top, foot] = [Math.min(a.y, b.y), Math.max(a.y, b.y)]
  const stops = Object.values(piece.points)
    .filter((p) => Math.abs(p.x - a.x) < 0.01 && p.y > top && p.y < foot)
    .map((p) => p.y)
  let best = { y: (top + foot) / 2, long: 0 }
  let before = top
  for (const y of [...stops, foot].sort((p, q) => p - q)) {
    if (y - before > best.long) best = { y: (y + before) / 2, long: y - before }
    before = y
  }
  return { x: a.x, y: best.y }
}

/** Points no farther apart than `every`; chords half a millimetre off are near enough for words. */
function sampled(path: Path, every: number): Point[] {
  const chords = flatten(path, 0.5)
  return chords.flatMap((b, i) => {
    const a = chords[i - 1]
    if (!a) return [b]
    const count = Math.max(1, Math.ceil(distance(a, b) / every))
    return Array.from({ length: count }, (_, k) => between(a, b, (k + 1) / count))
  })
}
