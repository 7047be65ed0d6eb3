/**
 * Where the letter of a point stands: of eight places round it, or farther off, the one that
 * covers least of the lines, the lengths and the letters already set. On the fold the left side is tried first.
 */
import type { Piece } from '../../../draft/piece.ts'
import { boxOf, boxOfPoints, grown } from '../../../geometry/box.ts'
import { pathEnd, pathStart, type Path } from '../../../geometry/path.ts'
import { add, distance, subtract, type Point } from '../../../geometry/point.ts'
import { sampled } from './drawn-lines.ts'

export interface Letter {
  readonly name: string
  readonly point: Point
  /** From the point to the middle of the letter. */
  readonly off: Point
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
/** Worst is to cover a letter, then to leave the paper, then to stand nearer to another point, then to cover lines. */
const COST = { letter: 40, outside: 30, line: 1, later: 0.4, far: 4, stray: 12 } as const
/** So far round the piece there is paper, mm; beyond it a letter might be cut off. */
const PAPER = 46
/** Where points lie close together a letter may stand farther off, twice. */
const RINGS = [1, 2.1, 3.3] as const
const FARTHEST = Math.max(...RINGS)

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
  const others = Object.values(points)
  const piece = boxOfPoints([...others, ...dots])
  const paper = grown(piece, PAPER)
  const set: Letter[] = []
  const words = [...taken]
  // Points on the way (V1, O1) stand aside for those the piece is known by.
  const inTurn = Object.entries(points).sort(([a], [b]) => a.length - b.length)
  for (const [name, point] of inTurn) {
    const onFold = Math.abs(point.x - piece.left) < 0.01
    const ways = onFold ? AROUND.toSorted((a, b) => a.x - b.x) : AROUND
    const wide = size * (0.35 + 0.22 * name.length)
    const half = size * 0.28 * name.length
    const outside = ({ x, y }: Point): boolean =>
      x - half < paper.left ||
      x + half > paper.right ||
      y - size / 3 < paper.top ||
      y + size / 3 > paper.bottom
    let best: { at: Point; cost: number } | undefined
    const places = RINGS.flatMap((ring, far) => ways.map((way) => ({ way, ring, far })))
    // Nothing farther off than the outermost place covers can matter here.
    const [across, down] = [
      size * 0.45 + wide * (FARTHEST + 1) + size * 0.6,
      size * (0.85 * FARTHEST + 1),
    ]
    const close = (p: Point): boolean =>
      Math.abs(p.x - point.x) < across && Math.abs(p.y - point.y) < down
    const [dotsHere, wordsHere] = [dots.filter(close), words.filter(close)]
    for (const [i, { way, ring, far }] of places.entries()) {
      const least = COST.later * (i % ways.length) + COST.far * far
      if (best && best.cost <= least) continue
      const at = {
        x: point.x + way.x * (size * 0.45 + wide * ring),
        y: point.y + way.y * size * 0.85 * ring,
      }
      const near = (p: Point, dx: number, dy: number) =>
        Math.abs(p.x - at.x) < wide + dx && Math.abs(p.y - at.y) < size * 0.5 + dy
      const own = distance(at, point)
      const strays = others.filter((p) => p !== point && distance(p, at) < own).length
      const cost =
        COST.stray * strays +
        least +
        (outside(at) ? COST.outside : 0) +
        COST.line * dotsHere.filter((p) => near(p, 0, 0)).length +
        COST.letter * wordsHere.filter((p) => near(p, size * 0.6, size * 0.35)).length
      if (!best || cost < best.cost) best = { at, cost }
    }
    if (!best) throw new Error(`letters: no place round ${name}`)
    set.push({ name, point, off: subtract(best.at, point), at: best.at })
    words.push(best.at)
  }
  return set
}

/**
 * The letters on their points as these lie now, each on the side where it stood: while a choice is
 * in hand. Undefined where a letter has come that stood nowhere.
 */
export function carriedLetters(
  points: Readonly<Record<string, Point>>,
  stood: readonly Letter[],
): readonly Letter[] | undefined {
  const now = stood.flatMap(({ name, off }): Letter[] => {
    const point = points[name]
    return point ? [{ name, point, off, at: add(point, off) }] : []
  })
  return now.length === Object.keys(points).length ? now : undefined
}

/** The middle of the longest stretch of the centre without a point or an opening: words there meet no letter. */
export function centreWordsAt(piece: Piece): Point | undefined {
  const centre = piece.edges.find((e) => e.name === 'centre')
  if (!centre) return undefined
  const [a, b] = [pathStart(centre.path), pathEnd(centre.path)]
  const { right } = boxOf([centre.path])
  const [top, foot] = [Math.min(a.y, b.y), Math.max(a.y, b.y)]
  const marks = piece.inner.flatMap(({ path }) => [pathStart(path), pathEnd(path)])
  const stops = [...Object.values(piece.points), ...marks]
    .filter((p) => Math.abs(p.x - a.x) < 0.01 && p.y > top && p.y < foot)
    .map((p) => p.y)
  let best = { y: (top + foot) / 2, long: 0 }
  let before = top
  for (const y of [...stops, foot].sort((p, q) => p - q)) {
    if (y - before > best.long) best = { y: (y + before) / 2, long: y - before }
    before = y
  }
  return { x: right, y: best.y }
}
