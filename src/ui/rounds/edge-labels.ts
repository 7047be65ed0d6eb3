/** The change of each changed line or moved point, and where its words stand on the drawing. */
import { pathLength } from '../../geometry/length.ts'
import { placeAt, pointAtPlace, tangentAtPlace } from '../../geometry/path.ts'
import { between, distance, quarterTurn, type Point } from '../../geometry/point.ts'
import type { AnyDart, Piece } from '../../draft/piece.ts'
import { formatChange, formatLength, printedMm, type UnitChoice } from '../../units/format.ts'
import { mm, type Mm } from '../../units/length.ts'
import type { ChangedLines } from '../../rounds/changed-edges.ts'
import type { MovedPoint } from '../../rounds/lay-over.ts'

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
  { edges }: ChangedLines,
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
  return [...lines, ...dartLabels(before, after, units)]
}

/** Beside every dart that prints another width; of two darts the inner one has its words inside. */
function dartLabels(before: Piece, after: Piece, units: UnitChoice): EdgeLabel[] {
  const old = mouths(before)
  return mouths(after).flatMap(({ name, wide, at, side }) => {
    const was = old.find((m) => m.name === name)?.wide ?? mm(0)
    if (same(was, wide, units)) return []
    return [{ name, words: formatChange(was, wide, units), at, inwards: { x: side, y: 0 } }]
  })
}

interface Mouth {
  readonly name: AnyDart
  readonly wide: Mm
  readonly at: Point
  /** Which way its words run from there. */
  readonly side: 1 | -1
}
/** Below the mouth by this share of the lower leg: at the waist stand the words of the side. */
const BELOW = 0.5

const mouths = (piece: Piece): readonly Mouth[] => [
  ...piece.darts.map((d, i): Mouth => {
    const paired = i < piece.darts.length - 1
    return {
      name: d.name,
      wide: mm(distance(d.inner, d.outer)),
      at: between(paired ? d.inner : d.outer, d.open?.outer ?? d.lowerTip, BELOW),
      side: paired ? -1 : 1,
    }
  }),
  ...piece.edgeDarts.map((d): Mouth => ({
    name: d.name,
    wide: mm(distance(d.upper, d.lower)),
    at: between(d.upper, d.lower, 0.5),
    side: 1,
  })),
]
const same = (a: Mm, b: Mm, units: UnitChoice): boolean =>
  printedMm(a, units) === printedMm(b, units)

export interface PointLabel extends MovedPoint {
  /** How far it moved, as printed. */
  readonly moved: string
  /** Left end of its words, on the foot of the letters. */
  readonly stands: Point
}
/** Room that words take, px: about nine letters of 15 px. */
const [WIDE, HIGH] = [84, 17] as const

/** How far each point moved, its words pushed down until they cover no others. */
export function pointLabels(
  moved: readonly MovedPoint[],
  px: number,
  units: UnitChoice,
): readonly PointLabel[] {
  const set: PointLabel[] = []
  for (const one of [...moved].sort((a, b) => a.at.y - b.at.y)) {
    const x = one.at.x + 8 * px
    const covers = (y: number): PointLabel | undefined =>
      set.find(
        ({ stands }) => Math.abs(stands.x - x) < WIDE * px && Math.abs(stands.y - y) < HIGH * px,
      )
    let y = one.at.y - 7 * px
    for (let other = covers(y); other; other = covers(y)) y = other.stands.y + HIGH * px * 1.001
    set.push({ ...one, moved: formatLength(one.far, units), stands: { x, y } })
  }
  return set
}
