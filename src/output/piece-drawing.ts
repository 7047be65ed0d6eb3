/**
 * One piece as it is drawn on paper: seam line, cutting line, fold, grain, levels, dart, points
 * with their letters, notches and words. Millimetres of the piece itself: x from the fold, y down.
 * Every writer (SVG, PDF) reads these marks and adds nothing.
 * Over 200 lines: one drawing is one list of marks, and parted it would have to be read twice.
 */
import { crossings } from '../geometry/intersect.ts'
import { pathLength } from '../geometry/length.ts'
import {
  pointAtLength,
  placeAt,
  tangentAtPlace,
  pathEnd,
  pathStart,
  type Path,
} from '../geometry/path.ts'
import {
  add,
  between,
  point,
  quarterTurn,
  scale,
  subtract,
  unit,
  type Point,
} from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import { boxOf } from '../geometry/box.ts'
import {
  EDGE_WORDS,
  outline,
  type Dart,
  type Edge,
  type EdgeName,
  type Piece,
} from '../draft/piece.ts'
import { dartLegs } from '../draft/sheet.ts'
import { cuttingLine, type Allowances } from './allowance.ts'
import { pathMark, textMark, type PathMark, type TextMark } from './mark.ts'

export type Standing = 'confirmed' | 'preview'
export type PieceMark = PathMark | TextMark

export interface PieceDrawing {
  readonly piece: Piece
  readonly marks: readonly PieceMark[]
  /** What the scissors follow: the cutting line, or the seam line where there are no allowances. */
  readonly cut: Path
  /** Why there is no cutting line although allowances were given. */
  readonly refusal?: string
}

export interface PieceWords {
  readonly allowances?: Allowances
  readonly round?: number
  /** 'Draped-sleeve blouse': printed under the name of the piece. */
  readonly garmentName?: string
}

/** Type sizes on paper, mm: read at arm's length while cutting. House choice. */
const SIZE = { name: 8, words: 4.5, letter: 5, small: 3.5 } as const
/** Half the arm of a point's crossing. */
const CROSS = 2.5
/** How far the fold bracket stands from the fold. */
const BRACKET = 12
/** White between an edge and its name. */
const EDGE_GAP = 3
const ARROW = { long: 5, wide: 1.6 } as const

export function pieceDrawing(piece: Piece, words: PieceWords): PieceDrawing {
  const cutting = words.allowances && cuttingLine(piece, words.allowances)
  const marks: PieceMark[] = [
    ...piece.levels.flatMap((l) => levelMarks(piece, l.name, l.from.y)),
    ...piece.edges.map((e) =>
      pathMark(e.role === 'fold' ? 'fold' : 'seam', e.path, nameOf(piece, e.name)),
    ),
    ...piece.darts.flatMap((d) => dartMarks(piece, d)),
    ...foldMarks(piece),
    ...grainMarks(piece),
    ...Object.entries(piece.points).flatMap(([name, at]) => pointMarks(piece, name, at)),
    ...piece.edges.filter((e) => e.role !== 'fold').map((e) => edgeName(piece, e, words)),
    ...nameMarks(piece, words),
  ]
  if (!cutting) return { piece, marks, cut: outline(piece) }
  if (!cutting.ok) return { piece, marks, cut: outline(piece), refusal: cutting.reason }
  const nicks = cutting.notches.flatMap((n, i) => [
    pathMark('notch', [...n.mark, ...n.slit], `${piece.id}.${n.edge}.notch${i + 1}`),
  ])
  // At the fold nothing is cut: there the fold line itself runs on through the allowance.
  const cut = pathMark(
    'cutting',
    cutting.edges.flatMap((e) => (isFold(piece, e.name) ? [] : e.path)),
    nameOf(piece, 'cutting'),
  )
  const foldOn = cutting.edges.flatMap((e) => (isFold(piece, e.name) ? e.path.slice(0, -1) : []))
  const onward =
    foldOn.length > 0 ? [pathMark('fold', foldOn, nameOf(piece, 'centre.allowance'))] : []
  return { piece, marks: [...marks, cut, ...onward, ...nicks], cut: cutting.path }
}

const isFold = (piece: Piece, name: EdgeName): boolean =>
  piece.edges.some((e) => e.name === name && e.role === 'fold')
const nameOf = (piece: Piece, part: string): string => `${piece.id}.${part}`

/** A level ends where the piece ends: past it a dotted line would only cost paper. */
function levelMarks(piece: Piece, name: string, y: number): PieceMark[] {
  const box = boxOf(piece.edges.map((e) => e.path))
  const met = crossings(outline(piece), line(point(-1, y), point(box.right + 1, y)))
  const right = Math.max(...met.map((c) => c.at.x))
  if (!(right > 0)) return []
  const id = nameOf(piece, camel(name))
  return [
    pathMark('level', [line(point(0, y), point(right, y))], id),
    textMark(name, point(BRACKET + 4, y - 1.5), SIZE.small, { tone: 'soft' }),
  ]
}
const camel = (words: string): string => words.replace(/ (\w)/g, (_, c: string) => c.toUpperCase())

function dartMarks(piece: Piece, d: Dart): PieceMark[] {
  const id = nameOf(piece, d.name)
  const middle = between(d.inner, d.outer, 0.5)
  const up = unit(subtract(d.upperTip, middle))
  return [
    pathMark('dart', dartLegs(d), id),
    pathMark('dartMiddle', [line(d.upperTip, middle), line(middle, d.lowerTip)], `${id}.middle`),
    textMark('waist dart', add(d.upperTip, scale(up, 6)), SIZE.small, { anchor: 'middle' }),
  ]
}

/** A bracket whose two arrows end on the fold: lay this line on the fold of the cloth. */
function foldMarks(piece: Piece): PieceMark[] {
  return piece.edges
    .filter((e) => e.role === 'fold')
    .flatMap((e) => {
      const length = pathLength(e.path)
      const [a, b] = [pointAtLength(e.path, length * 0.08), pointAtLength(e.path, length * 0.92)]
      const inward = point(BRACKET, 0)
      const [ia, ib] = [add(a, inward), add(b, inward)]
      const arms = [line(a, ia), line(ia, ib), line(ib, b)]
      const words = between(ia, ib, 0.5)
      return [
        pathMark(
          'bracket',
          [...arms, ...arrow(ia, a), ...arrow(ib, b)],
          nameOf(piece, 'foldBracket'),
        ),
        textMark('on the fold', add(words, point(-2, 0)), SIZE.words, {
          angle: -Math.PI / 2,
          anchor: 'middle',
        }),
      ]
    })
}

function grainMarks(piece: Piece): PieceMark[] {
  const { from, to } = piece.grain
  const words = add(between(from, to, 0.5), point(-2, 0))
  return [
    pathMark(
      'grain',
      [line(from, to), ...arrow(from, to), ...arrow(to, from)],
      nameOf(piece, 'grain'),
    ),
    textMark('grain', words, SIZE.words, { angle: -Math.PI / 2, anchor: 'middle' }),
  ]
}

/** An open arrow head at `tip`, pointing away from `from`. */
function arrow(from: Point, tip: Point): Path {
  const way = unit(subtract(tip, from))
  const foot = add(tip, scale(way, -ARROW.long))
  const aside = scale(quarterTurn(way), ARROW.wide)
  return [line(add(foot, aside), tip), line(tip, subtract(foot, aside))]
}

/** A point is where two lines cross. */
function pointMarks(piece: Piece, name: string, at: Point): PieceMark[] {
  const across = line(add(at, point(-CROSS, 0)), add(at, point(CROSS, 0)))
  const down = line(add(at, point(0, -CROSS)), add(at, point(0, CROSS)))
  return [
    pathMark('point', [across, down], nameOf(piece, name)),
    textMark(name, add(at, point(CROSS - 0.5, -CROSS + 0.5)), SIZE.letter),
  ]
}

/** Along the edge and inside it, never upside down. */
function edgeName(piece: Piece, e: Edge, words: PieceWords): TextMark {
  const path = e.path
  const length = pathLength(path)
  const place = placeAt(path, length * 0.62)
  const way = tangentAtPlace(path, place)
  const at = pointAtLength(path, length * 0.62)
  const inward = quarterTurn(way)
  const flipped = way.x < -1e-9 || (Math.abs(way.x) <= 1e-9 && way.y < 0)
  const read = flipped ? scale(way, -1) : way
  // The foot of the type is away from the edge where the words hang under it.
  const gap = flipped ? EDGE_GAP : EDGE_GAP + SIZE.small * 0.75
  const cutHere = words.allowances !== undefined && words.allowances[e.name] === 0
  return textMark(
    cutHere ? `${EDGE_WORDS[e.name]}, cut on this line` : EDGE_WORDS[e.name],
    add(at, scale(inward, gap)),
    SIZE.small,
    { angle: Math.atan2(read.y, read.x), anchor: 'middle', tone: 'soft' },
  )
}

/** In the open cloth between neck, overarm and underarm; else in the middle of the piece. */
function nameMarks(piece: Piece, words: PieceWords): PieceMark[] {
  const at = openPlace(piece)
  const lines = [
    piece.cutting,
    ...(words.garmentName ? [words.garmentName] : []),
    ...(words.round === undefined ? [] : [`Round ${words.round}`]),
  ]
  return [
    textMark(piece.words, at, SIZE.name, { anchor: 'middle', id: nameOf(piece, 'name') }),
    ...lines.map((text, i) =>
      textMark(text, add(at, point(0, (i + 1) * SIZE.words * 1.6)), SIZE.words, {
        anchor: 'middle',
      }),
    ),
  ]
}

export function openPlace(piece: Piece): Point {
  const overarm = piece.edges.find((e) => e.name === 'overarm')
  const side = piece.edges.find((e) => e.name === 'side')
  if (overarm && side) {
    const ends = [pathStart(overarm.path), pathEnd(overarm.path), pathStart(side.path)]
    return scale(ends.reduce(add), 1 / ends.length)
  }
  const box = boxOf(piece.edges.map((e) => e.path))
  return point((box.left + box.right) / 2, (box.top + box.bottom) / 2)
}
