/**
 * One piece as it is drawn on paper: seam line, cutting line, fold, grain, levels, dart, points
 * with their letters, notches and words. Millimetres of the piece itself: x from the fold, y down.
 * Every writer (SVG, PDF) reads these marks and adds nothing.
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
import { add, between, point, quarterTurn, rotate, scale, type Point } from '../geometry/point.ts'
import { at, line } from '../geometry/segment.ts'
import { project } from '../geometry/project.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'
import { boxesMeet, boxHeight, boxOf, boxOfPoints, boxWidth, type Box } from '../geometry/box.ts'
import {
  outline,
  pairedId,
  partName,
  type Edge,
  type PairedId,
  type Piece,
} from '../draft/piece.ts'
import { cuttingSaid } from '../draft/piece.words.ts'
import type { UnitChoice } from '../units/format.ts'
import type { Mm } from '../units/length.ts'
import { allowanceOf, cuttingLine, type Allowances, type CuttingLine } from './allowance.ts'
import type { Stuff } from './finish.ts'
import { dartEndMarks, dartMarks } from './dart-marks.ts'
import { foldMarks, grainMarks } from './grain-marks.ts'
import { innerMarks, pointMarks, pointsNear } from './inner-marks.ts'
import { EDGE_GAP, levelMarks, nameOf, plumbMarks, SIZE } from './level-marks.ts'
import { isHalf } from './notch.ts'
import { pathMark, reach, textMark, type PathMark, type TextMark } from './mark.ts'
import { MARK_WORDS } from './sheet.words.ts'

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
  /** Finished depth of a hem that is turned twice. */
  readonly hemDepth?: Mm | undefined
  readonly round?: number
  /** Printed beside the round, so that paper for the muslin is not laid on cloth. */
  readonly stuff?: Stuff | undefined
  /** 'Draped-sleeve blouse': printed under the name of the piece. */
  readonly garmentName?: string
  /** Of lengths among the words on the piece; centimetres when left out. */
  readonly units?: UnitChoice
}

const CENTIMETRES: UnitChoice = { unit: 'cm', inchStep: 8 }

export function pieceDrawing(piece: Piece, words: PieceWords): PieceDrawing {
  const cutting = words.allowances && cuttingLine(piece, words.allowances, words.hemDepth)
  const cut = cutting?.ok ? cutting : undefined
  const points = pointsNear(piece, cut?.path ?? outline(piece)).flatMap(([name, at]) =>
    pointMarks(piece, name, at),
  )
  const covered = [
    ...points.filter((m) => m.kind === 'text'),
    ...piece.inner.flatMap((l) => (l.name === 'fold' ? [pathMark('inner', l.path)] : [])),
  ]
  const marks: PieceMark[] = [
    ...levelMarks(piece, cut),
    ...plumbMarks(piece, cut),
    ...piece.edges.map((e) =>
      pathMark(e.role === 'fold' ? 'fold' : 'seam', e.path, nameOf(piece, partName(e))),
    ),
    ...dartMarks(piece),
    ...piece.inner.flatMap((l) => innerMarks(piece, l, words.units ?? CENTIMETRES)),
    ...foldMarks(piece),
    ...grainMarks(piece),
    ...points,
    ...piece.edges
      .filter((e) => e.role !== 'fold')
      .flatMap((e) => edgeName(piece, e, words, covered)),
    ...nameMarks(piece, words),
  ]
  if (!cutting) return { piece, marks, cut: outline(piece) }
  if (!cutting.ok) return { piece, marks, cut: outline(piece), refusal: cutting.reason }
  return { piece, marks: [...marks, ...cutMarks(piece, cutting)], cut: cutting.path }
}

/** What lies beyond the seam line. Where the fold runs on, nothing is cut: there it is drawn on. */
function cutMarks(piece: Piece, cutting: Extract<CuttingLine, { ok: true }>): PieceMark[] {
  const cut = cutting.edges.flatMap((e) => (e.role === 'fold' ? [] : e.path))
  const folds = cutting.edges.flatMap((e) => {
    const beyond = e.role === 'fold' ? e.path.filter((s) => !onSeam(piece, at(s, 0.5))) : []
    return beyond.length > 0 ? [pathMark('fold', beyond, nameOf(piece, `${e.name}.allowance`))] : []
  })
  return [
    pathMark('cutting', cut, nameOf(piece, 'cutting')),
    ...folds,
    ...dartEndMarks(piece, cutting.darts),
    ...cutting.notches.map((n, i) =>
      pathMark('notch', [...n.mark, ...n.slit], nameOf(piece, `${n.edge}.notch${i + 1}`)),
    ),
    ...cutting.stays.map((s, i) =>
      pathMark('stayStitch', s.path, nameOf(piece, `${s.edge}.stayStitch${i + 1}`)),
    ),
    ...cutting.clips.map((c, i) =>
      pathMark('clip', c.path, nameOf(piece, `${c.edge}.clip${i + 1}`)),
    ),
  ]
}

const onSeam = (piece: Piece, p: Point): boolean =>
  project(outline(piece), p).distance < SAME_POINT * 100

/** Where the name of an edge may stand: share of its length, and how much farther in. */
const NAME_PLACES = [
  { share: 0.62, farther: 0 },
  { share: 0.38, farther: 0 },
  { share: 0.75, farther: SIZE.letter },
  { share: 0.25, farther: SIZE.letter },
] as const

/**
 * Along the edge and inside it, where it covers least of letters and folds, never upside down; not
 * where the edge is shorter than its name.
 */
function edgeName(
  piece: Piece,
  e: Edge,
  words: PieceWords,
  others: readonly PieceMark[],
): TextMark[] {
  const cutHere =
    words.allowances !== undefined &&
    !piece.cutAsDrawn &&
    allowanceOf(piece, e, words.allowances) === 0
  const text = MARK_WORDS.edge(e.name, e.side, cutHere)
  const length = pathLength(e.path)
  const names = NAME_PLACES.map(({ share, farther }) => nameAlong(e, text, length * share, farther))
  const room = names.map((name) => roomAlong(name, name))
  if (boxWidth(room[0]!) > length) return []
  const covers = names.map(
    (name, i) => others.filter((o) => boxesMeet(room[i]!, roomAlong(o, name))).length,
  )
  return [names[covers.indexOf(Math.min(...covers))]!]
}

function nameAlong(e: Edge, text: string, along: number, farther: number): TextMark {
  const way = tangentAtPlace(e.path, placeAt(e.path, along))
  const flipped = way.x < -1e-9 || (Math.abs(way.x) <= 1e-9 && way.y < 0)
  const read = flipped ? scale(way, -1) : way
  // The foot of the type is away from the edge where the words hang under it.
  const gap = farther + (flipped ? EDGE_GAP : EDGE_GAP + SIZE.small * 0.75)
  const at = add(pointAtLength(e.path, along), scale(quarterTurn(way), gap))
  return textMark(text, at, SIZE.small, {
    angle: Math.atan2(read.y, read.x),
    anchor: 'middle',
    tone: 'soft',
    of: { edge: e.name },
  })
}

/** The room of a mark along and across a text. */
const roomAlong = (mark: PieceMark, text: TextMark): Box =>
  boxOfPoints(reach(mark).map((p) => rotate(p, text.at, -text.angle)))

/** In the open cloth of a body or sleeve; in a facing half way across it. */
function nameMarks(piece: Piece, words: PieceWords): PieceMark[] {
  const at = openPlace(piece)
  // A facing is narrow: its name is no larger than the other words.
  const [name, small] =
    isHalf(piece) || pairedId(piece.id) === 'sleeve'
      ? [SIZE.name, SIZE.words]
      : [SIZE.words, SIZE.small]
  const lines = [
    cuttingSaid(piece.cut),
    ...(words.garmentName ? [words.garmentName] : []),
    ...(words.round === undefined ? [] : [MARK_WORDS.round(words.round, words.stuff)]),
  ]
  return [
    textMark(piece.words, at, name, { anchor: 'middle', id: nameOf(piece, 'name') }),
    ...lines.map((text, i) =>
      textMark(text, add(at, point(0, (i + 1) * small * 1.6)), small, {
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
  const underarm = piece.points['U']
  if (side && underarm) {
    // Without a sleeve of its own: above the darts, between the fold and the plumb line.
    const x = (piece.darts[0]?.upperTip.x ?? underarm.x) / 2
    const top = crossings(outline(piece), line(point(x, -REACH), point(x, underarm.y))).map(
      (c) => c.at.y,
    )
    return point(x, (Math.max(...top, 0) + underarm.y) / 2)
  }
  const [neck, outer] = ['neck', 'outer'].map((n) => piece.edges.find((e) => e.name === n)?.path)
  if (neck && outer)
    return between(
      pointAtLength(neck, pathLength(neck) * NAME_ALONG),
      pointAtLength(outer, pathLength(outer) * (1 - NAME_ALONG)),
      0.5,
    )
  const box = boxOf(piece.edges.map((e) => e.path))
  // A sleeve has grain and width in its middle, a slit facing its grain, a cuff its fold: the name
  // stands clear.
  const [across, down] = NAME_AT[pairedId(piece.id)] ?? [0.5, 0.5]
  return point(box.left + boxWidth(box) * across, box.top + boxHeight(box) * down)
}
/** Further up than any piece reaches, mm. */
const REACH = 500
const NAME_AT: Partial<Readonly<Record<PairedId, readonly [number, number]>>> = {
  sleeve: [0.72, 0.65],
  slitFacing: [0.76, 0.4],
  cuff: [0.3, 0.12],
  sleeveBinding: [0.75, 0.42],
}
/** Share of a facing from its fold, clear of the grain line in its middle. */
const NAME_ALONG = 0.3
