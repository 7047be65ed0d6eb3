/**
 * The pieces where left and right are not alike: what would lie on the fold is drawn whole, left
 * and right in one; what is cut in two halves has a piece for each side, named as worn and lying
 * with its right side up. What is alike stays one piece for both sides.
 */
import { pathLength } from '../geometry/length.ts'
import { pathEnd, pathStart, pointAtLength, type Path } from '../geometry/path.ts'
import { distance, point, type Point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'
import type { Draft } from './draft.ts'
import {
  pairedId,
  sidedId,
  SIDES,
  type Edge,
  type InnerLine,
  type PairedId,
  type Piece,
  type PieceId,
  type Side,
} from './piece.ts'
import { inOneTitle, sideTitle, WITHIN_STYLE_SEAM } from './piece.words.ts'
import { SEAM_EQUAL } from './proof.ts'
import type { Step } from './step.ts'
import { stroked, strokedStep, turnedOver, turnedStep } from './turned-over.ts'
import { FINISHING_WORDS as W } from './finishing.words.ts'

type Sides = Readonly<Record<Side, Draft>>

/** The draft with the pieces as they are worn; the same draft where both sides are alike. */
export function asWorn(draft: Draft): Draft {
  const { sides, ...mean } = draft
  return sides ? { ...mean, ...worn(sides, draft) } : draft
}

/** Seen from outside, her left is the right of a front and the left of everything else. */
const FRONT: readonly PieceId[] = [
  'front',
  'sideFront',
  'skirtFront',
  'frontNeckFacing',
  'buttonFacing',
  'skirtButtonFacing',
  'frontWaistFacing',
]
const asDrawn = (id: PieceId): Side => (FRONT.includes(id) ? 'left' : 'right')
const other = (side: Side): Side => (side === 'left' ? 'right' : 'left')

/** Pieces drawn from two sets of numbers count as one below this, mm: rounding of the arithmetic. */
const ONE_PIECE = 1e-3

export function worn(sides: Sides, mean: Draft): Pick<Draft, 'pieces' | 'steps' | 'restsOn'> {
  const ids = [...new Set(SIDES.flatMap((s) => sides[s].pieces.map((p) => p.id)))]
  const made = ids.map((id) => madeOf(id, sides))
  const drawnFor = (draft: Draft, id: PieceId): Step[] => draft.steps.filter((s) => s.piece === id)
  return {
    pieces: made.flatMap((m) => m.pieces),
    steps: made.flatMap((m) => m.steps(drawnFor)),
    restsOn: {
      ...mean.restsOn,
      ...Object.fromEntries(made.flatMap((m) => m.pieces).flatMap((p) => sidedRests(p.id, sides))),
    },
  }
}

interface Made {
  readonly pieces: readonly Piece[]
  readonly steps: (of: (draft: Draft, id: PieceId) => Step[]) => readonly Step[]
}

function madeOf(id: PieceId, sides: Sides): Made {
  const of = (side: Side): Piece | undefined => sides[side].pieces.find((p) => p.id === id)
  const [drawn, turned] = [asDrawn(id), other(asDrawn(id))]
  const [a, b] = [of(drawn), of(turned)]
  if (a && b && alike(a, b)) return { pieces: [a], steps: (steps) => steps(sides[drawn], id) }
  if (a && b && onFold(a) && onFold(b)) return inOne(a, b, drawn, sides)
  // One strip for the whole neck: the longer is cut, and cut off where it meets itself.
  if (a && b && a.cutAsDrawn && a.cut.count === 1) {
    const [longer, side] = reach(b) > reach(a) ? [b, turned] : [a, drawn]
    return { pieces: [longer], steps: (steps) => steps(sides[side], id) }
  }
  const single = SIDES.flatMap((side) => {
    const piece = of(side)
    return piece ? [{ side, piece: oneSide(piece, side) }] : []
  })
  return {
    pieces: single.map((s) => s.piece),
    steps: (steps) =>
      single.flatMap(({ side, piece }) => {
        const own = steps(sides[side], id).map((s): Step => ({ ...s, piece: piece.id }))
        if (side === drawn || piece.cutAsDrawn) return own
        return [...own.map(turnedStep), said(piece.id, side, 'over', W.leftAndRightDiffer)]
      }),
  }
}

const reach = (p: Piece): number => Math.max(...p.edges.map((e) => pathLength(e.path)))
const onFold = (p: Piece): boolean => centreOf(p)?.role === 'fold'
const centreOf = (p: Piece): Edge | undefined => p.edges.find((e) => e.name === 'centre')

const said = (piece: PieceId, side: Side, how: 'first' | 'other' | 'over', why: string): Step => ({
  verb: 'asWorn',
  piece,
  side,
  how,
  why,
  lights: [],
})

/** One piece of a pair, turned so that it lies as worn. */
function oneSide(piece: Piece, side: Side): Piece {
  const id = pairedId(piece.id)
  const lying = side === asDrawn(id) || piece.cutAsDrawn ? piece : turnedOver(piece)
  return {
    ...lying,
    id: sidedId(id, side),
    words: piece.within ? WITHIN_STYLE_SEAM[side] : sideTitle(id, side),
    cut: { count: 1, how: piece.cut.how === 'turnedOver' ? 'single' : piece.cut.how },
    edges: lying.edges.map((e): Edge => (e.role === 'fold' ? { ...e, role: 'seam' } : e)),
    inner: lying.inner.filter((i) => onThisSide(i, side)),
  }
}

/** A zip in the side seam is in the left one only. */
const onThisSide = (i: InnerLine, side: Side): boolean => side === 'left' || i.name !== 'zip'

/** Both halves joined at the centre, the other one turned over. */
function inOne(a: Piece, b: Piece, drawn: Side, sides: Sides): Made {
  const id = pairedId(a.id)
  const turned = other(drawn)
  const [near, far] = [a, turnedOver(b)]
  const named = <T extends { readonly side?: Side }>(list: readonly T[], side: Side): T[] =>
    list.map((x) => ({ ...x, side }))
  const piece: Piece = {
    ...near,
    words: a.within ? WITHIN_STYLE_SEAM.inOne : inOneTitle(id),
    cut: { count: 1, how: 'whole' },
    edges: joined(near.edges, far.edges, drawn),
    darts: [...named(near.darts, drawn), ...named(far.darts, turned)],
    edgeDarts: [...named(near.edgeDarts, drawn), ...named(far.edgeDarts, turned)],
    ...(near.gathers || far.gathers
      ? { gathers: [...(near.gathers ?? []), ...(far.gathers ?? [])] }
      : {}),
    inner: [
      ...named(near.inner, drawn).filter((i) => onThisSide(i, drawn)),
      ...named(far.inner, turned).filter(
        (i) =>
          onThisSide(i, turned) && !(atCentre(i.path) && near.inner.some((n) => n.name === i.name)),
      ),
    ],
    points: {
      ...near.points,
      // On the centre the letters of the first half serve both.
      ...Object.fromEntries(
        Object.entries(far.points).flatMap(([n, p]) => {
          const twin = near.points[n]
          return twin && distance(twin, p) < SEAM_EQUAL ? [] : [[stroked(n), p]]
        }),
      ),
    },
    levels: near.levels.map((l) => {
      const there = far.levels.find((f) => f.name === l.name)
      return { ...l, from: there?.to ?? l.from }
    }),
    // The centre stands in the middle of the cloth now and hangs with the grain.
    grain: {
      from: point(0, near.grain.from.y),
      to: point(0, near.grain.to.y),
    },
  }
  const why = W.drawnWhole
  return {
    pieces: [piece],
    steps: (of) => {
      const [own, there] = [of(sides[drawn], a.id), of(sides[turned], a.id)]
      return [
        said(id, drawn, 'first', why),
        ...own,
        said(id, turned, 'other', W.halvesMeetAtCentre),
        ...there.map((s) => strokedStep(turnedStep(s))),
      ]
    },
  }
}

const atCentre = (path: Path): boolean =>
  [pathStart(path), pathEnd(path)].every((p) => Math.abs(p.x) < 1)

/**
 * Two outlines that both end or begin with the centre as one, without it: first and last edge of
 * a half run on over the centre. Where the halves do not meet there, a step is left and proved.
 */
function joined(near: readonly Edge[], far: readonly Edge[], drawn: Side): readonly Edge[] {
  const open = (list: readonly Edge[]): readonly Edge[] => {
    const at = list.findIndex((e) => e.name === 'centre')
    return [...list.slice(at + 1), ...list.slice(0, at)]
  }
  const [a, b] = [open(near), open(far)]
  const [first, last] = [a[0], a.at(-1)]
  const [before, after] = [b.at(-1), b[0]]
  if (!first || !last || !before || !after || a.length < 2)
    throw new Error('as worn: a half on the fold has fewer than two open edges')
  const inner = (list: readonly Edge[], side: Side): Edge[] =>
    list.slice(1, -1).map((e) => ({ ...e, side }))
  return [
    { ...first, path: over(before.path, first.path) },
    ...inner(a, drawn),
    { ...last, path: over(last.path, after.path) },
    ...inner(b, other(drawn)),
  ]
}

function over(one: Path, next: Path): Path {
  const [end, start] = [pathEnd(one), pathStart(next)]
  return distance(end, start) < SAME_POINT ? [...one, ...next] : [...one, line(end, start), ...next]
}

/** Edges of one length through the same places, and the darts where they were. */
export function alike(a: Piece, b: Piece, within: number = ONE_PIECE): boolean {
  const near = (p: { x: number; y: number }, q: { x: number; y: number }): boolean =>
    Math.hypot(p.x - q.x, p.y - q.y) <= within
  const samePath = (p: Path, q: Path): boolean => {
    if (!near(pathStart(p), pathStart(q)) || !near(pathEnd(p), pathEnd(q))) return false
    if (drawnAlike(p, q, near)) return true
    const [long, there] = [pathLength(p), pathLength(q)]
    return (
      Math.abs(long - there) <= within &&
      [0.25, 0.5, 0.75].every((t) => near(pointAtLength(p, long * t), pointAtLength(q, there * t)))
    )
  }
  return (
    a.edges.length === b.edges.length &&
    a.darts.length === b.darts.length &&
    a.edgeDarts.length === b.edgeDarts.length &&
    a.edges.every((e, i) => e.role === b.edges[i]?.role && samePath(e.path, b.edges[i].path)) &&
    a.darts.every((d, i) => {
      const e = b.darts[i]
      return e && near(d.inner, e.inner) && near(d.outer, e.outer) && near(d.upperTip, e.upperTip)
    }) &&
    a.edgeDarts.every((d, i) => {
      const e = b.edgeDarts[i]
      return e && near(d.tip, e.tip) && near(d.upper, e.upper) && near(d.lower, e.lower)
    })
  )
}

/** The same lines and curves, corner by corner: most pieces of a pair are, and no length is measured. */
const drawnAlike = (p: Path, q: Path, near: (a: Point, b: Point) => boolean): boolean =>
  p.length === q.length &&
  p.every((s, i) => {
    const t = q[i]
    if (s.kind === 'line' && t?.kind === 'line') return near(s.from, t.from) && near(s.to, t.to)
    return (
      s.kind === 'cubic' &&
      t?.kind === 'cubic' &&
      near(s.from, t.from) &&
      near(s.c1, t.c1) &&
      near(s.c2, t.c2) &&
      near(s.to, t.to)
    )
  })

function sidedRests(id: PieceId, sides: Sides): [string, readonly string[]][] {
  const paired = pairedId(id)
  const own = (side: Side, name: (letter: string) => string): [string, readonly string[]][] =>
    Object.entries(sides[side].restsOn).flatMap(([place, rests]) => {
      const [piece, letter = ''] = place.split('.')
      return piece === paired ? [[name(letter), rests]] : []
    })
  const drawn = asDrawn(paired)
  if (id === paired)
    return [...own(drawn, (l) => `${id}.${l}`), ...own(other(drawn), (l) => `${id}.${stroked(l)}`)]
  const side = id === sidedId(paired, 'left') ? 'left' : 'right'
  return own(side, (l) => `${id}.${l}`)
}

/** What a side is proved to be beyond its own proof: both halves of a whole piece end at one place. */
export function centresApart(sides: Sides): readonly { piece: PairedId; by: number }[] {
  return sides.left.pieces.flatMap((l) => {
    const r = sides.right.pieces.find((p) => p.id === l.id)
    const [a, b] = [centreOf(l), r && centreOf(r)]
    if (!r || !a || !b || a.role !== 'fold' || b.role !== 'fold') return []
    const by = Math.max(
      distance(pathStart(a.path), pathStart(b.path)),
      distance(pathEnd(a.path), pathEnd(b.path)),
    )
    return by > SEAM_EQUAL ? [{ piece: pairedId(l.id), by }] : []
  })
}
