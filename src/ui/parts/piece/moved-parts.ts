/**
 * What of a piece lies elsewhere than before: only that is drawn twice, the rest stands once.
 * Asked run by run, so an edge of which one end moved turns violet at that end only.
 */
import { distance, type Point } from '../../../geometry/point.ts'
import { part, at, type Segment } from '../../../geometry/segment.ts'
import { pathLength } from '../../../geometry/length.ts'
import { flatten, pointAtLength, type Path } from '../../../geometry/path.ts'
import { partName, type Dart, type Piece } from '../../../draft/piece.ts'
import { edgeDartLegs } from '../../../draft/sheet.ts'

/** Less than this is not to be seen beside a pencil line 0.5 mm wide. Judgement. */
const SEEN_FROM = 0.25
/** Each segment is asked in so many runs. */
const RUNS = 12

export interface MovedParts {
  /** Lines that were not there before, by the name of their edge, edge dart or opening. */
  readonly lines: readonly { readonly name: string; readonly path: Path }[]
  readonly darts: readonly Dart[]
}

/**
 * The lines of `piece` that do not lie on lines of `other`; called both ways for old and new.
 * @param coarse segment by segment, not run by run: enough while the hand moves
 */
export function movedParts(piece: Piece, other: Piece, coarse = false): MovedParts {
  const there = namedLines(other)
  const lines = namedLines(piece).flatMap(({ name, path }) => {
    const old = there.find((o) => o.name === name)
    if (old && old.path === path) return []
    const runs = old ? (coarse ? fresh : strayed)(path, old.path) : [path]
    return runs.map((run) => ({ name, path: run }))
  })
  const darts = piece.darts.filter((d) => !other.darts.some((o) => sameDart(d, o)))
  return { lines, darts }
}

/** Whether any line of the piece lies elsewhere, or is new. */
export function hasMoved(piece: Piece, before: Piece): boolean {
  const { lines, darts } = movedParts(piece, before)
  return lines.length + darts.length > 0
}

/** Edges, the legs of darts on an edge, openings: each a path of its own. */
const namedLines = (piece: Piece): readonly { readonly name: string; readonly path: Path }[] => [
  ...piece.edges.map((e) => ({ name: partName(e), path: e.path })),
  ...piece.edgeDarts.flatMap((d) =>
    edgeDartLegs(d).map((leg, i) => ({ name: `${partName(d)} ${i}`, path: [leg] })),
  ),
  ...piece.inner.map((i) => ({ name: partName(i), path: i.path })),
]

/** Segments of `path` that are none of `from`. */
const fresh = (path: Path, from: Path): Path[] =>
  path.filter((s) => !from.some((o) => sameSegment(s, o))).map((s) => [s])

/** Runs of `path` of which some part lies off `from`; neighbours are joined. */
export function strayed(path: Path, from: Path): Path[] {
  // Asked against chords: a choice in hand asks this in every frame.
  const chords = flatten(from, CHORD_ERROR)
  const off = (s: Segment, t: number): boolean => !near(at(s, t), chords)
  const runs: Path[] = []
  let open: Segment[] = []
  const close = () => {
    if (open.length > 0) runs.push(open)
    open = []
  }
  for (const s of path) {
    // Most lines stand where they stood.
    if (from.some((o) => sameSegment(s, o))) {
      close()
      continue
    }
    // Two questions a run, its ends shared with its neighbours.
    const asked = Array.from({ length: 2 * RUNS + 1 }, (_, i) => off(s, i / (2 * RUNS)))
    let begun: number | undefined
    for (let i = 0; i < RUNS; i++) {
      const t0 = i / RUNS
      if (asked[2 * i] || asked[2 * i + 1] || asked[2 * i + 2]) begun ??= t0
      else {
        if (begun !== undefined) open.push(part(s, begun, t0))
        begun = undefined
        close()
      }
    }
    if (begun !== undefined) open.push(part(s, begun, 1))
  }
  close()
  return runs
}
/** The very line or curve that was there. */
const sameSegment = (a: Segment, b: Segment): boolean => {
  const same = (p: Point, q: Point): boolean => Math.abs(p.x - q.x) + Math.abs(p.y - q.y) < 1e-6
  if (a.kind === 'line') return b.kind === 'line' && same(a.from, b.from) && same(a.to, b.to)
  return (
    a.kind === 'cubic' &&
    b.kind === 'cubic' &&
    same(a.from, b.from) &&
    same(a.to, b.to) &&
    same(a.c1, b.c1) &&
    same(a.c2, b.c2)
  )
}
/** Far under what is seen, and few enough chords for a frame. */
const CHORD_ERROR = 0.05

function near(p: Point, chords: readonly Point[]): boolean {
  return chords.some((b, i) => {
    const a = chords[i - 1] ?? b
    const [dx, dy] = [b.x - a.x, b.y - a.y]
    const square = dx * dx + dy * dy
    const t = square === 0 ? 0 : ((p.x - a.x) * dx + (p.y - a.y) * dy) / square
    const u = Math.min(1, Math.max(0, t))
    return (a.x + u * dx - p.x) ** 2 + (a.y + u * dy - p.y) ** 2 <= SEEN_FROM ** 2
  })
}

/** The middle of the longest moved line: where its flag is planted. */
export function flagPlace(piece: Piece, before: Piece): Point | undefined {
  const { lines, darts } = movedParts(piece, before)
  const longest = lines.map((l) => l.path).sort((a, b) => pathLength(b) - pathLength(a))[0]
  return longest ? pointAtLength(longest, pathLength(longest) / 2) : darts[0]?.outer
}

const sameDart = (a: Dart, b: Dart): boolean =>
  distance(a.upperTip, b.upperTip) < SEEN_FROM &&
  distance(a.inner, b.inner) < SEEN_FROM &&
  distance(a.outer, b.outer) < SEEN_FROM &&
  distance(a.lowerTip, b.lowerTip) < SEEN_FROM &&
  sameOpen(a.open, b.open)
const sameOpen = (a: Dart['open'], b: Dart['open']): boolean =>
  a && b
    ? distance(a.inner, b.inner) < SEEN_FROM && distance(a.outer, b.outer) < SEEN_FROM
    : a === b
