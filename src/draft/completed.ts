/**
 * The draft made whole after its corrections: how she gets in, the halves opened for it, and the
 * pieces that finish its edges. Everything here is made anew from the corrected halves.
 */
import { crossings } from '../geometry/intersect.ts'
import { pathLength } from '../geometry/length.ts'
import { lengthTo, pathEnd, pathStart, placeAt, splitPath, type Path } from '../geometry/path.ts'
import { add, point } from '../geometry/point.ts'
import { project } from '../geometry/project.ts'
import { cubic, line } from '../geometry/segment.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'
import { choice, type Choices } from './choices.ts'
import { found, over } from '../units/amount.ts'
import { mm } from '../units/length.ts'
import { frontTip } from './blocks/blouse-numbers.ts'
import { served } from './dart-service.ts'
import { pieceOf, type Draft } from './draft.ts'
import {
  armholeStrip,
  buttonFacing,
  keyholeFacing,
  neckFacing,
  slitFacing,
  type Finishing,
} from './facing.ts'
import { neckStrip } from './neck-strip.ts'
import { bothRound, openings, type Opening } from './opening.ts'
import {
  edge,
  footEdge,
  PAIR,
  sewnLength,
  topEdge,
  withEdge,
  type InnerLine,
  type Piece,
} from './piece.ts'
import type { Step } from './step.ts'
import { vented } from './vent.ts'
import { FINISHING_WORDS as W } from './finishing.words.ts'

/** Openings alone: a block is tried on and never finished. */
export const opened = (d: Draft): Draft => whole(d, () => [])

export const completed = (d: Draft): Draft => whole(d, finishingOf)

function whole(d: Draft, finish: typeof finishingOf): Draft {
  const service = served(pieceOf(d, 'front'), d.choices, frontTip(d.body, d.choices))
  const [rawBack, rawFront] = [pieceOf(d, 'back'), service.front]
  const list = openings(rawBack, rawFront, d)
  const [openBack, openFront] = [rawBack, rawFront].map((p) =>
    openedPiece(p, rawBack, list, d.choices),
  )
  if (!openBack || !openFront) throw new Error('completed: a half is missing')
  // A bodice that ends at its waist has no hem to leave open; its skirt has.
  const hemmed = openBack.edges.some((e) => e.name === 'hem')
  const vents = hemmed ? vented([openBack, openFront], d.choices) : undefined
  const [back = openBack, front = openFront] = vents?.pieces ?? []
  const finishing = finish(back, front, list, d)
  return {
    ...d,
    pieces: [back, front, ...finishing.map(({ piece }) => piece)],
    openings: list,
    steps: [
      ...d.steps,
      ...service.steps,
      ...list.flatMap((o) =>
        o.kind === 'sideZip'
          ? [openStep(o, back), openStep(o, front)]
          : o.kind === 'keyhole'
            ? [keyholeStep(o, front, d.choices)]
            : [openStep(o, o.piece === 'back' ? back : front)],
      ),
      ...(vents?.steps ?? []),
      ...finishing.flatMap((f) => f.steps),
    ],
  }
}

/** The centre of a piece that is no fold: cut twice. */
export const cutTwice = (piece: Piece): Piece =>
  edge(piece, 'centre').role === 'fold' ? piece : { ...piece, cut: PAIR }

/** @param back as it is drawn: the levels of an opening are its levels */
function openedPiece(piece: Piece, back: Piece, list: readonly Opening[], choices: Choices): Piece {
  const own = list.filter((o) => o.piece === piece.id || o.kind === 'sideZip')
  return cutTwice(own.reduce((p, o) => openedFor(p, back, o, choices), piece))
}

function openedFor(piece: Piece, back: Piece, o: Opening, choices: Choices): Piece {
  switch (o.kind) {
    case 'sideZip': {
      // Both halves open, as far along the seam as it is sewn: a bust dart shifts the levels.
      const path = along(piece, back, o)
      return withInner(piece, { name: 'zip', words: W.zipLeftOnly, path })
    }
    case 'backZip': {
      const path = between(edge(piece, 'centre').path, o.from, o.to)
      const seam: Piece = {
        ...piece,
        edges: piece.edges.map((e) => (e.name === 'centre' ? { ...e, role: 'seam' } : e)),
      }
      return withInner(seam, { name: 'zip', words: W.zip, path })
    }
    case 'neckSlit': {
      const path = [line(point(0, o.from), point(0, o.to))]
      return withInner(piece, { name: 'slit', words: W.slitWithLoop, path })
    }
    case 'keyhole':
      return withInner(piece, {
        name: 'keyhole',
        words: W.keyholeWithLoop,
        path: keyholePath(o.from, o.to, choices.keyholeWidth),
      })
    case 'buttonedFront':
      return overlapped(piece, choices.buttonOverlap)
  }
}
/** Half a drop on the fold: narrow at the neck, widest low down, round at its foot. */
function keyholePath(top: number, foot: number, width: number): Path {
  const long = foot - top
  const wide = point(width / 2, top + long * KEYHOLE_WIDEST)
  return [
    cubic(
      point(0, top),
      point(width * 0.1, top + long * 0.3),
      point(wide.x, wide.y - long * 0.25),
      wide,
    ),
    cubic(
      wide,
      point(wide.x, wide.y + (foot - wide.y) * ROUND),
      point(wide.x * ROUND, foot),
      point(0, foot),
    ),
  ]
}
/** Share of its length at which a keyhole is widest. House choice. */
const KEYHOLE_WIDEST = 0.68
/** A quarter of a round as one cubic. */
const ROUND = 0.5523

export const withInner = (piece: Piece, inner: InnerLine): Piece => ({
  ...piece,
  inner: [...piece.inner, inner],
})

/** The front carried past its centre; the centre stays as a line, the neck runs on straight. */
export function overlapped(front: Piece, by: number): Piece {
  const [above, below] = [topEdge(front), footEdge(front)]
  const [top, low] = [pathStart(above.path), pathEnd(below.path)]
  const out = point(-by, 0)
  const wider = withEdge(
    withEdge(front, above.name, [line(add(top, out), top), ...above.path]),
    below.name,
    [...below.path, line(low, add(low, out))],
  )
  return {
    ...wider,
    edges: wider.edges.map((e) =>
      e.name === 'centre' ? { ...e, role: 'edge', path: [line(add(low, out), add(top, out))] } : e,
    ),
    inner: [
      ...front.inner,
      { name: 'centreFront', words: W.centreFrontButtons, path: [line(top, low)] },
    ],
  }
}

/** The stretch of a side seam that is sewn to the part of the back's between two levels. */
function along(piece: Piece, back: Piece, { from, to }: Opening): Path {
  const side = edge(back, 'side').path
  const stretch = between(side, from, to)
  if (piece.id === back.id) return stretch
  const start = lengthTo(side, project(side, pathStart(stretch)).place)
  const own = edge(piece, 'side').path
  const mouths = piece.edgeDarts
    .filter((d) => d.edge === 'side')
    .map((d) =>
      [d.upper, d.lower].map((p) => lengthTo(own, project(own, p).place)).sort((a, b) => a - b),
    )
    .sort(([a = 0], [b = 0]) => a - b)
  const runs: Path[] = []
  let [sewn, walked] = [0, 0]
  for (const [first = Infinity, second = Infinity] of [...mouths, []]) {
    const reach = Math.min(first, pathLength(own))
    // Of this run the part that the zip has, counted as it is sewn.
    const low = Math.max(start, sewn)
    const high = Math.min(start + pathLength(stretch), sewn + reach - walked)
    if (high - low > SAME_POINT) runs.push(part(own, walked + low - sewn, walked + high - sewn))
    sewn += reach - walked
    walked = second
  }
  return runs.flat()
}

const part = (path: Path, from: number, to: number): Path => {
  const [upTo] = splitPath(path, placeAt(path, to))
  return from > SAME_POINT ? splitPath(upTo, placeAt(upTo, from))[1] : upTo
}

/** The part of an edge between two levels; where it ends before one of them, up to its end. */
export function between(path: Path, from: number, to: number): Path {
  const wide = (y: number) => line(point(-2000, y), point(4000, y))
  const ys = [pathStart(path).y, pathEnd(path).y]
  const [high, low] = [Math.min(...ys), Math.max(...ys)]
  const at = [Math.max(from, high), Math.min(to, low)]
    .flatMap((y) => crossings(path, wide(y)).slice(0, 1))
    .sort((a, b) => lengthTo(path, a.place) - lengthTo(path, b.place))
  const [first, last] = at
  if (!first || !last) return path
  const [upTo] = splitPath(path, last.place)
  return splitPath(upTo, first.place)[1]
}

function finishingOf(
  back: Piece,
  front: Piece,
  list: readonly Opening[],
  d: Draft,
): readonly Finishing[] {
  const { choices } = d
  const buttons = list.some(({ kind }) => kind === 'buttonedFront')
  const openInFront = list.some((o) => o.piece === 'front' && o.edge === 'centre')
  // The strip goes from centre to centre: what laps over is finished by its facing.
  const neck =
    // A facing cannot be traced from an edge that is drawn up or folded; a strip takes any.
    choices.neckFinish === 'facing' && neckIsPlain(front)
      ? [neckFacing(back, choices), neckFacing(front, choices)]
      : [
          neckStrip(
            (d.together ?? bothRound([[pieceOf(d, 'back'), pieceOf(d, 'front')]])).neck,
            pieceOf(d, 'front'),
            openInFront,
            choices,
          ),
        ]
  const armhole = [back, front].flatMap((p) => p.edges.filter((e) => e.name === 'armhole'))
  const round =
    armhole.length === 0 ? 0 : sewnLength(back, 'armhole') + sewnLength(front, 'armhole')
  const slit = list.find(({ kind }) => kind === 'neckSlit')
  const keyhole = list.find(({ kind }) => kind === 'keyhole')
  return [
    ...neck,
    ...(round > 0 ? [armholeStrip(mm(round), choices)] : []),
    ...(keyhole ? [keyholeFacing(mm(keyhole.to - keyhole.from), choices)] : []),
    ...(slit ? [slitFacing(mm(slit.to - slit.from))] : []),
    ...(buttons ? [buttonFacing(front, choices)] : []),
  ]
}

const neckIsPlain = (front: Piece): boolean =>
  ![...front.edgeDarts, ...(front.gathers ?? [])].some((d) => d.edge === 'neck')

const OPEN_LINE = {
  sideZip: 'zip',
  backZip: 'zip',
  buttonedFront: 'centreFront',
  neckSlit: 'slit',
} as const

function keyholeStep(o: Opening, front: Piece, choices: Choices): Step {
  const long = o.to - o.from
  return {
    verb: 'keyhole',
    piece: front.id,
    from: 'F',
    long: choice(choices, 'keyholeLength'),
    half: over(choice(choices, 'keyholeWidth'), 2),
    down: found('', mm(long * KEYHOLE_WIDEST)),
    why: W.keyholeFaced,
    lights: front.inner.filter((i) => i.name === 'keyhole').map((i) => i.path),
  }
}

function openStep(o: Opening, piece: Piece): Step {
  if (o.kind === 'keyhole') throw new Error('completed: a keyhole has a step of its own')
  const { words, why } = W.opened[o.kind]
  const name = OPEN_LINE[o.kind]
  const path = piece.inner.find((i) => i.name === name)?.path ?? edge(piece, o.edge).path
  return {
    verb: 'open',
    piece: piece.id,
    words,
    long: found('', mm(pathLength(path))),
    why,
    lights: [path],
  }
}
