/**
 * A piece as SVG in true millimetres: `width` and `height` carry mm, and one unit of the viewBox
 * is one millimetre (SVG 1.1, 7.2 and 7.10), so it prints in true scale wherever it is opened.
 * Names: `back.neck` for an edge, `front.waistDart`, `front.U` for a point. No writer decides
 * what is drawn; that is `piece-drawing.ts`.
 */
import { boxOfPoints, boxHeight, boxWidth, grown, type Box } from '../geometry/box.ts'
import { toDegrees, radians } from '../units/angle.ts'
import { distance, point, type Point } from '../geometry/point.ts'
import { endOf, startOf, type Segment } from '../geometry/segment.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'
import { outline, type Piece } from '../draft/piece.ts'
import type { Path } from '../geometry/path.ts'
import { boxOf } from '../geometry/box.ts'
import { LINES, TONES } from './line-style.ts'
import { reach, textMark, type PathMark, type TextMark } from './mark.ts'
import { pieceDrawing, type PieceWords, type Standing } from './piece-drawing.ts'
import { MARK_WORDS } from './sheet.words.ts'
import { NOT_CONFIRMED } from './standing.words.ts'

export interface SvgWords extends PieceWords {
  readonly standing: Standing
}

/** White round the drawing, mm, so that no line is cut by the edge of the picture. */
const MARGIN = 10
/** DejaVu Sans is the printed face; without it any sans will do. */
const FACE = "'DejaVu Sans', sans-serif"

/** The piece with everything drawn on it. Text is escaped; the same piece gives the same text. */
export function pieceSvg(piece: Piece, words: SvgWords): string {
  const drawing = pieceDrawing(piece, words)
  const stamps = words.standing === 'preview' ? stampMarks(piece) : []
  const refusal = drawing.refusal
    ? [textMark(drawing.refusal, point(0, boxOf([outline(piece)]).bottom + 8), 4)]
    : []
  const marks = [...stamps, ...drawing.marks, ...refusal]
  const box = grown(boxOfPoints(marks.flatMap(reach)), MARGIN)
  const [width, height] = [number(boxWidth(box)), number(boxHeight(box))]
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${viewBox(box)}" fill="none" stroke-linejoin="round">`,
    `<title>${escaped(titleOf(piece, words))}</title>`,
    `<g id="${escaped(piece.id)}">`,
    ...marks.map((m) => (m.kind === 'path' ? pathElement(m) : textElement(m))),
    '</g>',
    '</svg>',
    '',
  ].join('\n')
}

const titleOf = (piece: Piece, words: SvgWords): string =>
  MARK_WORDS.svgTitle(piece.words, words.round, words.standing === 'preview')

/** Across the piece three times, so that no part of it can be cut out without the words. */
function stampMarks(piece: Piece): TextMark[] {
  const box = boxOf([outline(piece)])
  const size = Math.min(22, boxWidth(box) / 14)
  return [0.22, 0.52, 0.82].map((share) =>
    textMark(
      NOT_CONFIRMED,
      point(box.left + boxWidth(box) * 0.06, box.top + boxHeight(box) * share + size),
      size,
      { angle: -Math.PI / 12, tone: 'stamp' },
    ),
  )
}

function pathElement(mark: PathMark): string {
  const style = LINES[mark.line]
  const dash = style.dash.length > 0 ? ` stroke-dasharray="${style.dash.join(' ')}"` : ''
  const ends = style.ends === 'round' ? ' stroke-linecap="round"' : ''
  return `<path${idOf(mark.id)} class="${mark.line}" d="${pathData(mark.path)}" stroke="${grey(style.grey)}" stroke-width="${style.width}"${dash}${ends}/>`
}

function textElement(mark: TextMark): string {
  const { x, y } = mark.at
  const turn =
    mark.angle === 0
      ? ''
      : ` transform="rotate(${number(toDegrees(radians(mark.angle)))} ${number(x)} ${number(y)})"`
  return `<text${idOf(mark.id)} class="${mark.tone}" x="${number(x)}" y="${number(y)}" font-family="${FACE}" font-size="${number(mark.size)}" text-anchor="${mark.anchor}" fill="${grey(TONES[mark.tone])}"${turn}>${escaped(mark.text)}</text>`
}

const idOf = (id: string | undefined): string => (id === undefined ? '' : ` id="${escaped(id)}"`)
const viewBox = (box: Box): string =>
  [box.left, box.top, boxWidth(box), boxHeight(box)].map(number).join(' ')

/** SVG path data (SVG 1.1, 8.3) of a path; a gap between two segments begins anew with M. */
export function pathData(path: Path): string {
  let pen: Point | undefined
  return path
    .map((s) => {
      const begins = pen && distance(pen, startOf(s)) < SAME_POINT * 100
      pen = endOf(s)
      return `${begins ? '' : `M${pair(startOf(s))} `}${command(s)}`
    })
    .join(' ')
}

function command(s: Segment): string {
  switch (s.kind) {
    case 'line':
      return `L${pair(s.to)}`
    case 'cubic':
      return `C${pair(s.c1)} ${pair(s.c2)} ${pair(s.to)}`
    case 'arc': {
      // Growing angles run clockwise on the page, which is the positive sweep of SVG.
      const large = Math.abs(s.sweep) > Math.PI ? 1 : 0
      return `A${number(s.radius)} ${number(s.radius)} 0 ${large} ${s.sweep > 0 ? 1 : 0} ${pair(endOf(s))}`
    }
  }
}

const pair = (p: Point): string => `${number(p.x)} ${number(p.y)}`
/** A tenth of a micrometre: far under anything a printer can draw. */
const number = (value: number): string => `${Math.round(value * 1e4) / 1e4 + 0}`

function grey(level: number): string {
  const step = Math.round(level * 255)
    .toString(16)
    .padStart(2, '0')
  return `#${step}${step}${step}`
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}
const escaped = (text: string): string =>
  [...text]
    .filter(isXmlCharacter)
    .join('')
    .replace(/[&<>"']/g, (c) => ESCAPES[c] ?? c)

/** XML 1.0, 2.2: control characters other than tab and line ends cannot be written at all. */
const isXmlCharacter = (c: string): boolean => c >= ' ' || c === '\t' || c === '\n'
