/**
 * The lengths that stand along the lines of a drawing: every edge, and the longest of the
 * measured lines where several lie on each other. A line being walked always has its length.
 * While a choice is in hand they are carried along where they stood, and only say what has become
 * of them: words that jump about are not read.
 */
import { pathLength } from '../../../geometry/length.ts'
import {
  pathEnd,
  pathStart,
  placeAt,
  pointAtPlace,
  tangentAtPlace,
  type Path,
} from '../../../geometry/path.ts'
import {
  add,
  between,
  distance,
  dot,
  quarterTurn,
  scale,
  subtract,
  unit,
  type Point,
} from '../../../geometry/point.ts'
import { at, line, tangent } from '../../../geometry/segment.ts'
import { mm, type Mm } from '../../../units/length.ts'
import { partName, type Piece } from '../../../draft/piece.ts'
import type { Step } from '../../../draft/step.ts'

export interface LineLength {
  readonly id: string
  readonly length: Mm
  readonly path: Path
  /** Foot of the words: the middle of the line, moved aside by `gap`. */
  readonly at: Point
  /** Radians; never upside down. */
  readonly angle: number
  /** Where along the line its words stand, 0 to 1; undefined where they have one place only. */
  readonly share?: number
}

const SAME = 0.01

/**
 * `gap` in mm: how far the words stand off the line; `room` in mm: how long they are; `taken` are
 * points where other words stand; `stood` are lengths whose places are kept, asked anew for nothing.
 */
export function lineLengths(
  piece: Piece,
  steps: readonly Step[],
  {
    gap,
    room,
    taken = [],
    stood,
  }: {
    gap: number
    room: number
    taken?: readonly Point[]
    stood?: readonly LineLength[] | undefined
  },
): readonly LineLength[] {
  const darts = piece.darts.map((d, i): LineLength => {
    const path = [line(d.inner, d.outer)]
    // Below the mouth, outside the dart: above it stands the length of the waist line. Of two
    // darts the inner one has its words on the side of the centre.
    const paired = i < piece.darts.length - 1
    const at = paired
      ? add(d.inner, { x: room * -0.5, y: gap * 1.1 })
      : add(d.outer, { x: room * 0.55, y: gap * 1.1 })
    return { id: `dart ${partName(d)}`, length: mm(distance(d.inner, d.outer)), path, at, angle: 0 }
  })
  const edgeDarts = piece.edgeDarts.map((d): LineLength => {
    const path = [line(d.upper, d.lower)]
    // Outside, before the mouth: inside lie the legs.
    const mouth = between(d.upper, d.lower, 0.5)
    const out = unit(subtract(mouth, d.tip))
    const at = add(mouth, { x: out.x * room * 0.6, y: out.y * gap * 1.5 })
    return { id: `dart ${partName(d)}`, length: mm(distance(d.upper, d.lower)), path, at, angle: 0 }
  })
  const ofDarts = [...darts, ...edgeDarts]
  const clear = stood ? [] : [...keptClear(piece), ...ofDarts.flatMap((l) => wordsOver(l, room))]
  const edges = piece.edges
    .filter((e) => e.role !== 'fold')
    .map((e) => {
      const id = `edge ${partName(e)}`
      return beside(id, e.path, { gap, room, clear }, placesOf(id, stood))
    })
  const standing = [...edges, ...ofDarts]
  if (stood) return [...standing, ...carriedAlong(piece, steps, stood, { gap, room, clear })]
  return measuredLengths(piece, steps, { gap, room, clear }).reduce<readonly LineLength[]>(
    // Where words stand already, a measured line goes without until it is walked.
    (kept, l) =>
      kept.some((k) => clash(wordsOver(k, room), l, room)) || clash(taken, l, room)
        ? kept
        : [...kept, l],
    standing,
  )
}

/** What no length is to lie on: letters, darts, corners. */
const keptClear = (piece: Piece): Point[] => [
  ...Object.values(piece.points),
  ...piece.darts.flatMap((d) => along(d.upperTip, d.lowerTip)),
  ...piece.edgeDarts.flatMap((d) => along(d.tip, between(d.upper, d.lower, 0.5))),
  ...piece.edges.flatMap((e) => corners(e.path)),
]

/** Do the words of a length lie on other words? */
const clash = (taken: readonly Point[], l: LineLength, room: number): boolean =>
  wordsOver(l, room).some((at) => taken.some((p) => distance(at, p) < room * LINE_APART))
/** Two lines of words nearer than this share of their length run into each other. */
const LINE_APART = 0.28

/** Measured lines, longest first; one that lies on a longer one is left out. */
function measuredLengths(
  piece: Piece,
  steps: readonly Step[],
  words: Words,
): readonly LineLength[] {
  /** The front edge tells the length of the centre front beside it. */
  const told = [
    ...piece.edges.filter((e) => e.role !== 'fold'),
    ...piece.inner.filter((i) => i.name === 'centreFront'),
  ].map(({ path }) => path)
  const kept: LineLength[] = []
  const drawn = measuredLines(piece, steps).map((l) => ({ ...l, length: pathLength(l.path) }))
  for (const { id, path, length } of drawn.sort((a, b) => b.length - a.length)) {
    const onEdge = told.some((line) => liesOn(path, line))
    if (length < words.room || onEdge || kept.some((k) => liesOn(path, k.path))) continue
    const placed = beside(id, path, words)
    if (placed.covers <= CROWDED) kept.push(placed)
  }
  return kept
}

/** The measured lines among those that stood, each where it stood. */
const carriedAlong = (
  piece: Piece,
  steps: readonly Step[],
  stood: readonly LineLength[],
  words: Words,
): readonly LineLength[] =>
  measuredLines(piece, steps)
    .filter(({ id }) => stood.some((l) => l.id === id))
    .map(({ id, path }) => beside(id, path, words, placesOf(id, stood)))

/** In the order of the steps, so that a line keeps its name while the draft moves. */
const measuredLines = (
  piece: Piece,
  steps: readonly Step[],
): readonly { readonly id: string; readonly path: Path }[] =>
  ownSteps(piece, steps)
    .flatMap((s) => (s.verb === 'measure' ? s.lights : []))
    .map((path, i) => ({ id: `line ${i}`, path }))

/** A line whose words would lie over more points than this goes without them until it is walked. */
const CROWDED = 2

/** Points the words of a length lie over, from end to end, for what must keep clear of them. */
export const wordsOver = ({ at, angle }: LineLength, room: number): Point[] =>
  [-0.4, -0.2, 0, 0.2, 0.4].map((k) => ({
    x: at.x + Math.cos(angle) * room * k,
    y: at.y + Math.sin(angle) * room * k,
  }))

/** The length of a line that is lit and has no words of its own yet; it stands on the other side. */
export function litLength(
  lit: readonly Path[],
  standing: readonly LineLength[],
  gap: number,
): LineLength | undefined {
  const [path] = lit
  if (!path || lit.length > 1 || standing.some((l) => sameLine(l.path, path))) return undefined
  const length = pathLength(path)
  return length < SAME ? undefined : beside('lit', path, { gap: -gap, room: 0, clear: [] })
}

export const sameLine = (a: Path, b: Path): boolean =>
  (distance(pathStart(a), pathStart(b)) < SAME && distance(pathEnd(a), pathEnd(b)) < SAME) ||
  (distance(pathStart(a), pathEnd(b)) < SAME && distance(pathEnd(a), pathStart(b)) < SAME)

export const ownSteps = (piece: Piece, steps: readonly Step[]): readonly Step[] =>
  steps.filter((s) => s.piece === piece.id)

interface Placed extends LineLength {
  /** How many points its words lie over. */
  readonly covers: number
}
interface Words {
  readonly gap: number
  readonly room: number
  /** What the words must not lie on: points with their letters, darts. */
  readonly clear: readonly Point[]
}
/** Along the line, the middle first. */
const PLACES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78, 0.14, 0.86]
/** Where the words of a line may stand: anywhere, or only where they stood. */
function placesOf(id: string, stood: readonly LineLength[] | undefined): readonly number[] {
  const share = stood?.find((l) => l.id === id)?.share
  return share === undefined ? PLACES : [share]
}
/** A line this near to upright is read from its foot upwards, whichever way it was drawn. */
const UPRIGHT = 0.3

/** The outline runs clockwise, so its left side is outside; a measured line is read from below. */
function beside(
  id: string,
  path: Path,
  { gap, room, clear }: Words,
  shares: readonly number[] = PLACES,
): Placed {
  const length = pathLength(path)
  let best: { at: Point; angle: number; share: number; covers: number } | undefined
  for (const share of shares) {
    if (best?.covers === 0) break
    const place = placeAt(path, length * share)
    const way = tangentAtPlace(path, place)
    const flipped = way.x < -UPRIGHT || (Math.abs(way.x) <= UPRIGHT && way.y > 0)
    const read = flipped ? scale(way, -1) : way
    const outward = scale(quarterTurn(id.startsWith('edge') ? way : read), -1)
    const at = add(pointAtPlace(path, place), scale(outward, gap))
    const covers = clear.filter((p) => distance(p, at) < room * 0.62).length
    if (!best || covers < best.covers)
      best = { at, angle: Math.atan2(read.y, read.x), share, covers }
  }
  if (!best) throw new Error(`${id}: no place for its length`)
  return { id, length: mm(length), path, ...best }
}

/** Where a line turns sharply within itself: words across a corner belong to neither side. */
const corners = (path: Path): Point[] => {
  // An offset may leave a segment without length, which has no direction.
  const long = path.filter((s) => pathLength([s]) > SAME)
  return long.slice(1).flatMap((next, i) => {
    const before = long[i]
    return before && dot(tangent(before, 1), tangent(next, 0)) < SHARP ? [at(next, 0)] : []
  })
}
/** Cosine of the angle from which a turn is a corner, 20°. */
const SHARP = 0.94

/** Points from end to end of a dart, close enough that no words fit between. */
const along = (from: Point, to: Point): Point[] =>
  Array.from({ length: 9 }, (_, i) => between(from, to, i / 8))

/** Two straight lines of which the first shares more than its end with the second. */
function liesOn(a: Path, b: Path): boolean {
  const [p, q] = [a[0], b[0]]
  if (p?.kind !== 'line' || q?.kind !== 'line' || b.length !== 1) return false
  const upright = Math.abs(p.from.x - p.to.x) < SAME
  const same = upright
    ? Math.abs(q.from.x - q.to.x) < SAME && Math.abs(p.from.x - q.from.x) < SAME
    : Math.abs(q.from.y - q.to.y) < SAME && Math.abs(p.from.y - q.from.y) < SAME
  const axis = upright ? 'y' : 'x'
  const low = Math.max(Math.min(p.from[axis], p.to[axis]), Math.min(q.from[axis], q.to[axis]))
  const high = Math.min(Math.max(p.from[axis], p.to[axis]), Math.max(q.from[axis], q.to[axis]))
  return same && high - low > SAME
}
