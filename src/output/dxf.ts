/**
 * A draft as DXF, for plotters and cutting tables: one block a piece, as the standard for pattern
 * data has it, so that a piece keeps its name and can be moved as one; each block is inserted
 * once, beside the last. Millimetres, the fold on x = 0, y up (the drawing is turned over).
 * Layers by ASTM D6673 (layer table, from memory and as public pages give it): 1 boundary,
 * 4 notches, 6 mirror line, 7 grain, 8 internal lines, 14 sew lines, 15 annotation.
 */
import { boxOf, boxWidth } from '../geometry/box.ts'
import { flatten, pathEnd, pathStart, type Path } from '../geometry/path.ts'
import { distance, point, type Point } from '../geometry/point.ts'
import { endOf, startOf } from '../geometry/segment.ts'
import { FLATTEN_ERROR, SAME_POINT } from '../geometry/tolerance.ts'
import { radians, toDegrees } from '../units/angle.ts'
import type { Draft } from '../draft/draft.ts'
import { outline, type Piece } from '../draft/piece.ts'
import { cuttingLine } from './allowance.ts'
import {
  dxfFile,
  dxfLine,
  dxfPoint,
  dxfPolyline,
  dxfText,
  METRIC,
  type DxfBlock,
  type DxfLayer,
} from './dxf-writer.ts'
import type { LineName } from './line-style.ts'
import type { PathMark, TextMark } from './mark.ts'
import type { Notch } from './notch.ts'
import { pieceDrawing, type PieceWords } from './piece-drawing.ts'
import { MARK_WORDS } from './sheet.words.ts'
import { STANDING_WORDS } from './standing.words.ts'

/** Curves are written as chords no farther from them than this, mm: with four decimals of a
 * coordinate a reader has them within a hundredth. */
export const DXF_CHORD = FLATTEN_ERROR / 2

export const DXF_LAYERS = {
  boundary: { name: '1', colour: 7 },
  notch: { name: '4', colour: 1 },
  mirror: { name: '6', colour: 6 },
  grain: { name: '7', colour: 3 },
  internal: { name: '8', colour: 8 },
  sew: { name: '14', colour: 5 },
  text: { name: '15', colour: 8 },
} as const satisfies Readonly<Record<string, DxfLayer>>
const L = DXF_LAYERS

/** Without allowances the boundary is the seam line. */
export type DxfWords = PieceWords

/** White between two pieces, mm. House choice. */
const APART = 50
/** Lines that lie inside the piece. */
const INTERNAL: readonly LineName[] = [
  'level',
  'plumb',
  'dart',
  'dartMiddle',
  'inner',
  'clip',
  'stayStitch',
]

/**
 * The file as text. A piece whose cutting line is refused has no boundary, and the reason stands
 * on it; a draft that no tape confirmed says so on every piece.
 */
export function draftDxf(draft: Draft, words: DxfWords): string {
  let [across, bottom, top] = [0, 0, 0]
  const blocks = draft.pieces.map((piece): DxfBlock => {
    const { entities, extent } = drawn(piece, words, draft.body.standing === 'preview')
    const box = boxOf([extent])
    const at = point(across - box.left, 0)
    across += boxWidth(box) + APART
    ;[bottom, top] = [Math.min(bottom, -box.bottom), Math.max(top, -box.top)]
    return { name: piece.id.toUpperCase(), entities, at }
  })
  const note = (text: string, row: number): string =>
    dxfText(row === 0 ? L.boundary.name : L.text.name, {
      text,
      at: point(0, top + APART - row * 10),
      size: 6,
      angle: 0,
      anchor: 'start',
    })
  const title = MARK_WORDS.dxfTitle(words.garmentName, words.round)
  return dxfFile(
    [{ name: '0', colour: 7 }, ...Object.values(L)],
    blocks,
    // The standard says the unit as a text on layer 1 (from memory).
    [note(METRIC, 0), note(title, 1)],
    { min: point(0, bottom), max: point(Math.max(0, across - APART), top + APART) },
  )
}

function drawn(
  piece: Piece,
  words: DxfWords,
  preview: boolean,
): { entities: readonly string[]; extent: Path } {
  const cutting = words.allowances && cuttingLine(piece, words.allowances, words.hemDepth)
  const boundary = cutting === undefined ? outline(piece) : cutting.ok ? cutting.path : undefined
  const { marks } = pieceDrawing(piece, words)
  const lines = marks.filter((m): m is PathMark => m.kind === 'path')
  const texts = marks.filter((m): m is TextMark => m.kind === 'text')
  const inner = lines.filter((m) => INTERNAL.includes(m.line) || m.id === `${piece.id}.apex`)
  const warnings = [
    ...(preview ? [STANDING_WORDS.notConfirmed] : []),
    ...(cutting && !cutting.ok ? [cutting.reason] : []),
  ]
  const { from, to } = piece.grain
  const low = boxOf([outline(piece)]).bottom
  return {
    extent: boundary ?? outline(piece),
    entities: [
      ...(boundary ? [dxfPolyline(L.boundary.name, opened(boundary), true)] : []),
      ...piece.edges.map((e) =>
        dxfPolyline(e.role === 'fold' ? L.mirror.name : L.sew.name, flat(e.path), false),
      ),
      ...(cutting?.ok ? cutting.notches.flatMap(notch) : []),
      dxfLine(L.grain.name, up(from), up(to)),
      ...inner.flatMap((m) =>
        runs(m.path).map((r) => dxfPolyline(L.internal.name, flat(r), false)),
      ),
      ...texts.map(text),
      ...warnings.map((said, i) =>
        dxfText(L.text.name, {
          text: said,
          at: up(point(0, low - (warnings.length - i) * 12)),
          size: 8,
          angle: 0,
          anchor: 'start',
        }),
      ),
    ],
  }
}

const up = (p: Point): Point => point(p.x, -p.y)
const flat = (path: Path): Point[] => flatten(path, DXF_CHORD).map(up)
/** A closed polyline does not say its first point again. */
function opened(path: Path): Point[] {
  const points = flat(path)
  const closes = distance(pathEnd(path), pathStart(path)) < SAME_POINT * 100
  return closes ? points.slice(0, -1) : points
}

/** A path with gaps as paths without. */
const runs = (path: Path): readonly Path[] =>
  path.reduce<readonly Path[]>((done, s) => {
    const last = done.at(-1)
    const end = last?.at(-1)
    return last && end && distance(endOf(end), startOf(s)) < SAME_POINT * 100
      ? [...done.slice(0, -1), [...last, s]]
      : [...done, [s]]
  }, [])

/** A point where the cutting line is snipped, and the snip. */
function notch({ at, slit }: Notch): string[] {
  if (slit.length === 0) return [dxfPoint(L.notch.name, up(at))]
  const [a, b] = [up(pathStart(slit)), up(pathEnd(slit))]
  return [dxfPoint(L.notch.name, a), dxfLine(L.notch.name, a, b)]
}

const text = (mark: TextMark): string =>
  dxfText(L.text.name, {
    text: mark.text,
    at: up(mark.at),
    size: mark.size,
    angle: -toDegrees(radians(mark.angle)) + 0,
    anchor: mark.anchor,
  })
