/**
 * Pieces that finish an edge, cut from the corrected halves: shaped facings, the bias strip, the
 * facings of a slit and of a buttoned front. Source: facings 50 to 64 mm wide and a strip as long
 * as its edge and 50 mm more (public dressmaking lessons); the rest common practice, no source.
 */
import { boxOf } from '../geometry/box.ts'
import { crossings } from '../geometry/intersect.ts'
import { offsetPath } from '../geometry/offset.ts'
import {
  endTangent,
  pathEnd,
  pathStart,
  reversedPath,
  splitPath,
  startTangent,
  type Path,
} from '../geometry/path.ts'
import { add, distance, point, scale, subtract, unit } from '../geometry/point.ts'
import { selfIntersections } from '../geometry/self-intersection.ts'
import { line } from '../geometry/segment.ts'
import { choice, type Choices } from './choices.ts'
import { fixed, found, plus, type Amount } from '../units/amount.ts'
import { mm, type Mm } from '../units/length.ts'
import {
  edge,
  footEdge,
  isSkirt,
  overShoulder,
  topEdge,
  PAIR,
  type CutOut,
  type Edge,
  type FinishingId,
  type Piece,
} from './piece.ts'
import { pieceTitle } from './piece.words.ts'
import type { Act, Step } from './step.ts'
import { FINISHING_WORDS as W } from './finishing.words.ts'

export interface Finishing {
  readonly piece: Piece
  readonly steps: readonly Step[]
}

/** Longer than the edge it finishes by this, for joining and turning in, mm. */
export const STRIP_SPARE = mm(50)
/** A slit facing stands so far to either side and below the slit, mm. Common practice, no source. */
const SLIT_MARGIN = 40
/** How far a line is carried on to find its crossing, mm. */
const REACH = 400

export function neckFacing(half: Piece, choices: Choices): Finishing {
  const id = half.id === 'back' ? 'backNeckFacing' : 'frontNeckFacing'
  const [neck, overarm] = [edge(half, 'neck').path, overShoulder(half).path]
  const [fold, sideNeck] = [pathStart(neck), pathEnd(neck)]
  const beside = line(
    sideNeck,
    add(sideNeck, scale(unit(subtract(pathEnd(overarm), sideNeck)), REACH)),
  )
  const centre = line(point(fold.x, fold.y - REACH), point(fold.x, fold.y + REACH))
  const at = (width: number): Edge[] | undefined => {
    const far = cutBetween(parallel(neck, width), centre, beside)
    if (!far) return undefined
    const edges: Edge[] = [
      { name: 'neck', role: 'edge', path: neck },
      { name: overShoulder(half).name, role: 'seam', path: [line(sideNeck, pathEnd(far))] },
      { name: 'outer', role: 'edge', path: reversedPath(far) },
      { name: 'centre', role: edge(half, 'centre').role, path: [line(pathStart(far), fold)] },
    ]
    return selfIntersections(edges.flatMap((e) => e.path)).length === 0 ? edges : undefined
  }
  const { edges, width } = widest(at, choice(choices, 'facingWidth'))
  return made(id, edges, half.cut, [
    {
      verb: 'trace',
      of: half.id,
      edges: ['neck', overShoulder(half).name, 'centre'],
      why: W.takesTheNeck,
    },
    {
      verb: 'parallel',
      edge: 'outer',
      to: 'neck',
      by: width,
      why: W.neatenedFirst,
    },
  ])
}

/** As chosen, or the widest that a tight bend of the edge allows, by whole steps. */
function widest(
  at: (width: number) => Edge[] | undefined,
  chosen: Amount,
): { edges: Edge[]; width: Amount } {
  for (let width: number = chosen.mm; width >= NARROWEST.width; width -= NARROWEST.step) {
    const edges = at(width)
    if (edges)
      return {
        edges,
        width: width === chosen.mm ? chosen : found(W.asWideAsBendAllows, mm(width)),
      }
  }
  throw new Error('facing: its free edge misses the centre or the overarm')
}
/** Narrower than this a facing turns out again, mm. Common practice, no source. */
const NARROWEST = { width: 20, step: 5 } as const

/** @param armhole length of one whole armhole */
export function armholeStrip(armhole: Mm, choices: Choices): Finishing {
  const long = plus(found(W.wholeArmhole, armhole), fixed(STRIP_SPARE))
  return rectangle(
    'armholeStrip',
    long,
    choice(choices, 'stripWidth'),
    { count: 2, how: 'trueBias' },
    W.stripForEachArmhole,
  )
}

/** @param keyhole its length, mm; as wide as it is and a margin to either side */
export function keyholeFacing(keyhole: Mm, choices: Choices): Finishing {
  return rectangle(
    'keyholeFacing',
    plus(found(W.theKeyhole, keyhole), fixed(mm(SLIT_MARGIN))),
    plus(choice(choices, 'keyholeWidth'), fixed(mm(2 * SLIT_MARGIN))),
    { count: 1, how: 'single' },
    W.keyholeOnItsMiddle,
  )
}

/** @param slit its length, mm */
export function slitFacing(slit: Mm): Finishing {
  return rectangle(
    'slitFacing',
    plus(found(W.theSlit, slit), fixed(mm(SLIT_MARGIN))),
    fixed(mm(2 * SLIT_MARGIN)),
    { count: 1, how: 'single' },
    W.slitDownItsMiddle,
  )
}

/** From the folded edge of a buttoned front inward; as high as the neck, as low as the hem. */
export function buttonFacing(front: Piece, choices: Choices): Finishing {
  const [centre, neck, hem] = [edge(front, 'centre'), topEdge(front), footEdge(front)]
  const width = buttonFacingWidth(neck.path, choices)
  const x = pathEnd(centre.path).x + width.mm
  const cut = line(point(x, -REACH), point(x, pathEnd(hem.path).y + REACH))
  const up = crossings(neck.path, cut)[0]
  if (!up) throw new Error(`front facing: the neck is narrower than ${width.mm} mm`)
  const [top] = splitPath(neck.path, up.place)
  const low = point(x, pathEnd(hem.path).y)
  const edges: Edge[] = [
    { name: neck.name, role: neck.role, path: top },
    { name: 'outer', role: 'edge', path: [line(pathEnd(top), low)] },
    { name: hem.name, role: hem.role, path: [line(low, pathEnd(hem.path))] },
    { name: 'centre', role: 'edge', path: centre.path },
  ]
  return made(isSkirt(front.id) ? 'skirtButtonFacing' : 'buttonFacing', edges, PAIR, [
    {
      verb: 'trace',
      of: front.id,
      edges: ['centre', neck.name, hem.name],
      why: W.takesTheFrontEdge,
    },
    {
      verb: 'parallel',
      edge: 'outer',
      to: 'centre',
      by: width,
      why: W.neatenedFirst,
    },
  ])
}

/** As chosen, or as wide as the neck allows: it ends on the neck edge. */
function buttonFacingWidth(neck: Path, choices: Choices): Amount {
  const chosen = plus(choice(choices, 'facingWidth'), choice(choices, 'buttonOverlap'))
  const most = choices.buttonOverlap + pathEnd(neck).x - BESIDE_SHOULDER
  return chosen.mm <= most ? chosen : found(W.asWideAsNeckAllows, mm(most))
}
/** A front facing stays this far from the shoulder seam, mm. Judgement. */
const BESIDE_SHOULDER = 5

/** Every segment moved inward, neighbours carried on until they meet. */
export function parallel(path: Path, by: number): Path {
  return path
    .map((s) => offsetPath([s], -by))
    .reduce((done, next) => {
      if (done.length === 0) return next
      if (distance(pathEnd(done), pathStart(next)) < RUNS_ON) return [...done, ...next]
      const [on, back] = [onward(done), reversedPath(onward(reversedPath(next)))]
      const met = back.flatMap((s, index) =>
        crossings(on, s).map((c) => ({ on: c.place, back: { index, t: c.u } })),
      )[0]
      if (!met) return [...done, line(pathEnd(done), pathStart(next)), ...next]
      return [...splitPath(on, met.on)[0], ...splitPath(back, met.back)[1]]
    }, [])
}
/** Moved neighbours nearer than this run on into one another, mm. */
const RUNS_ON = 1e-6
const onward = (path: Path): Path => {
  const end = pathEnd(path)
  return [...path, line(end, add(end, scale(endTangent(path), REACH)))]
}
/** The part of a path between the centre line and the overarm, carried on where it is short. */
export function cutBetween(
  path: Path,
  first: ReturnType<typeof line>,
  last: ReturnType<typeof line>,
): Path | undefined {
  const start = pathStart(path)
  const before = line(add(start, scale(startTangent(path), -REACH)), start)
  const whole = [before, ...onward(path)]
  const from = crossings(whole, first)[0]
  const kept = from ? splitPath(whole, from.place)[1] : whole
  const to = crossings(kept, last)[0]
  return from && to ? splitPath(kept, to.place)[0] : undefined
}

export function rectangle(
  id: FinishingId,
  long: Amount,
  wide: Amount,
  cut: CutOut,
  why: string,
): Finishing {
  const [l, w] = [long.mm, wide.mm]
  const corners = [point(0, 0), point(l, 0), point(l, w), point(0, w)] as const
  const names = ['neck', 'end', 'outer', 'start'] as const
  const edges = names.map((name, i): Edge => ({
    name,
    role: 'edge',
    path: [line(corners[i]!, corners[(i + 1) % 4]!)],
  }))
  return made(id, edges, cut, [{ verb: 'rectangle', long, wide, why }])
}

/** Upright where the cloth of the piece is longest that way, so that none of it lies outside. */
function grainIn(edges: readonly Edge[], bias: boolean): Piece['grain'] {
  const outline = edges.flatMap((e) => e.path)
  const { left, right, top, bottom } = boxOf([outline])
  const middle = (left + right) / 2
  if (bias) {
    const half = GRAIN_SHARE * (bottom - top)
    const y = (top + bottom) / 2
    return { from: point(middle - half, y - half), to: point(middle + half, y + half) }
  }
  const spans = Array.from({ length: GRAIN_PLACES }, (_, i) => {
    const x = left + ((right - left) * (i + 0.5)) / GRAIN_PLACES
    const ys = crossings(outline, line(point(x, top - REACH), point(x, bottom + REACH)))
      .map(({ at }) => at.y)
      .sort((a, b) => a - b)
    // In and out by turns: the first of each pair goes in.
    return ys.flatMap((y, n) => (n % 2 === 0 ? [{ x, from: y, to: ys[n + 1] ?? y }] : []))
  }).flat()
  const long = (s: { from: number; to: number }): number => s.to - s.from
  const most = Math.max(...spans.map(long))
  const [best] = spans
    .filter((s) => long(s) > most - ALIKE)
    .sort((a, b) => Math.abs(a.x - middle) - Math.abs(b.x - middle))
  if (!best) throw new Error('facing: no place for its grain')
  const [y, half] = [(best.from + best.to) / 2, GRAIN_SHARE * long(best)]
  return { from: point(best.x, y - half), to: point(best.x, y + half) }
}
/** Half a grain line as a share of the cloth it lies on; of that, the middle place is taken. */
const GRAIN_SHARE = 0.3
const GRAIN_PLACES = 41
/** Spans that differ by less are alike, mm. */
const ALIKE = 0.5

const CUT_AS_DRAWN: readonly FinishingId[] = [
  'neckStrip',
  'armholeStrip',
  'slitFacing',
  'keyholeFacing',
  'sleeveBinding',
]

export function made(
  id: FinishingId,
  edges: readonly Edge[],
  cut: CutOut,
  acts: readonly Act[],
): Finishing {
  const bias = id === 'neckStrip' || id === 'armholeStrip'
  return {
    piece: {
      id,
      words: pieceTitle(id),
      cut,
      ...(CUT_AS_DRAWN.includes(id) ? { cutAsDrawn: true } : {}),
      edges,
      darts: [],
      edgeDarts: [],
      inner: [],
      points: {},
      levels: [],
      grain: grainIn(edges, bias),
    },
    steps: acts.map((act) => ({
      ...act,
      piece: id,
      lights: edges.filter((e) => act.verb !== 'parallel' || e.name === 'outer').map((e) => e.path),
    })),
  }
}
