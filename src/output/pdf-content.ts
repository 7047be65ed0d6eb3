/**
 * A page as the operators of a PDF content stream (ISO 32000-1, 8 and 9): plain points from the
 * lower-left corner, no matrix, so that any reader of the file can measure it. One millimetre is
 * 72/25.4 points (8.3.2.3: the default unit is 1/72 in), times the stretch of a corrected file.
 */
import { boxHeight, boxWidth, type Box } from '../geometry/box.ts'
import { distance, point, type Point } from '../geometry/point.ts'
import { endOf, startOf, type Arc, type Cubic, type Segment } from '../geometry/segment.ts'
import type { Path } from '../geometry/path.ts'
import { SAME_POINT } from '../geometry/tolerance.ts'
import { MM_PER_INCH } from '../units/length.ts'
import { LINES, TONES, type LineStyle } from './line-style.ts'
import type { Mark, TextMark } from './mark.ts'
import type { Page, Stretch } from './page.ts'
import { layerOf, PDF_LAYER_IDS, type PdfLayer } from './pdf-layers.ts'
import type { Face } from './wrap.ts'

export const POINTS_PER_MM = 72 / MM_PER_INCH

export interface PdfFace extends Face {
  /** The text as a hex string of the embedded face, brackets included. */
  readonly encoded: (text: string) => string
  /** Name of the face in the page's resources. */
  readonly key: string
}

/** Names of the layers in the page's resources; a page that uses none needs none. */
export interface PageContent {
  readonly operators: string
  readonly layers: readonly PdfLayer[]
}

/** Name of a photograph in the page's resources, by its place among them. */
export const pictureKey = (k: number): string => `Im${k + 1}`

export function pageContent(page: Page, face: PdfFace): PageContent {
  const { x, y } = page.scale ?? { x: 1, y: 1 }
  const high = page.height
  const at = (p: Point): string => `${pt(p.x * x)} ${pt(high - p.y * y)}`
  const rect = (b: Box): string =>
    `${at(point(b.left, b.bottom))} ${pt(boxWidth(b) * x)} ${pt(boxHeight(b) * y)} re`
  const drawn = (mark: Mark): string => {
    switch (mark.kind) {
      case 'path':
        return `${styled(LINES[mark.line])}\n${pathOperators(mark.path, at)}\nS`
      case 'rect':
        return mark.line === undefined
          ? `${mark.fill === 'white' ? 1 : 0} g\n${rect(mark.box)}\nf`
          : `${styled(LINES[mark.line])}\n${rect(mark.box)}\nS`
      case 'text':
        return textOperators(mark, face, at, { x, y })
    }
  }
  const used = new Set<PdfLayer>()
  const operators = page.layers
    .map((layer) => {
      const parts = [undefined, ...PDF_LAYER_IDS].flatMap((id) => {
        const own = layer.marks.filter((m) => layerOf(m, layer.part) === id)
        if (own.length === 0) return []
        const marks = own.map(drawn).join('\n')
        if (id === undefined) return [marks]
        used.add(id)
        return [`/OC /${id} BDC\n${marks}\nEMC`]
      })
      const marks = parts.join('\n')
      return layer.window ? `q\n${rect(layer.window)} W n\n${marks}\nQ` : marks
    })
    .join('\n')
  const pictures = (page.pictures ?? []).map(({ box }, k) => {
    const [wide, tall] = [pt(boxWidth(box) * x), pt(boxHeight(box) * y)]
    // An image fills the unit square (8.9.5).
    return `q\n${wide} 0 0 ${tall} ${at(point(box.left, box.bottom))} cm\n/${pictureKey(k)} Do\nQ\n`
  })
  return {
    operators: `${pictures.join('')}${operators}`,
    layers: PDF_LAYER_IDS.filter((id) => used.has(id)),
  }
}

/** Joins are round, so that a sharp corner of a dart does not grow a spike. */
function styled(style: LineStyle): string {
  const dash = `[${style.dash.map(pt).join(' ')}] 0 d`
  const cap = style.ends === 'round' ? 1 : 0
  return `${number(style.grey)} G ${pt(style.width)} w ${cap} J 1 j ${dash}`
}

function pathOperators(path: Path, at: (p: Point) => string): string {
  let pen: Point | undefined
  return path
    .map((s) => {
      const begins = pen && distance(pen, startOf(s)) < SAME_POINT * 100
      pen = endOf(s)
      return `${begins ? '' : `${at(startOf(s))} m\n`}${segmentOperators(s, at)}`
    })
    .join('\n')
}

function segmentOperators(s: Segment, at: (p: Point) => string): string {
  switch (s.kind) {
    case 'line':
      return `${at(s.to)} l`
    case 'cubic':
      return cubicOperators(s, at)
    case 'arc':
      return arcCubics(s)
        .map((c) => cubicOperators(c, at))
        .join('\n')
  }
}
const cubicOperators = (c: Omit<Cubic, 'kind' | 'from'>, at: (p: Point) => string): string =>
  `${at(c.c1)} ${at(c.c2)} ${at(c.to)} c`

/**
 * PDF has no arcs. A cubic for an arc of angle a strays by about r·(2/27)·sin⁶(a/4)/cos²(a/4):
 * at 15° and a radius of 500 mm that is under a hundred-thousandth of a millimetre.
 */
const ARC_PART = Math.PI / 12

export function arcCubics(a: Arc): Omit<Cubic, 'kind' | 'from'>[] {
  const count = Math.max(1, Math.ceil(Math.abs(a.sweep) / ARC_PART))
  const step = a.sweep / count
  const handle = (4 / 3) * Math.tan(step / 4) * a.radius
  const on = (angle: number): Point =>
    point(a.centre.x + a.radius * Math.cos(angle), a.centre.y + a.radius * Math.sin(angle))
  const along = (p: Point, angle: number, by: number): Point =>
    point(p.x - by * Math.sin(angle), p.y + by * Math.cos(angle))
  return Array.from({ length: count }, (_, i) => {
    const [from, to] = [a.start + step * i, a.start + step * (i + 1)]
    return {
      c1: along(on(from), from, handle),
      c2: along(on(to), to, -handle),
      to: on(to),
    }
  })
}

/** Turned text: the page's y runs up, so a clockwise angle on the sheet turns the other way here. */
function textOperators(
  mark: TextMark,
  face: PdfFace,
  at: (p: Point) => string,
  { x, y }: Stretch,
): string {
  if (mark.text === '') return ''
  const share = mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? 0.5 : 1
  const back = share === 0 ? 0 : face.width(mark.text, mark.size) * share
  const [c, s] = [Math.cos(mark.angle), Math.sin(mark.angle)]
  const foot = point(mark.at.x - back * c, mark.at.y - back * s)
  return [
    `BT ${number(TONES[mark.tone])} g /${face.key} ${pt(mark.size)} Tf`,
    `${number(c * x)} ${number(-s * y)} ${number(s * x)} ${number(c * y)} ${at(foot)} Tm`,
    `${face.encoded(mark.text)} Tj ET`,
  ].join('\n')
}

const pt = (millimetres: number): string => number(millimetres * POINTS_PER_MM)
/** Four decimals of a point are 0.00004 mm; exponents are not allowed in a PDF. */
function number(value: number): string {
  const rounded = Math.round(value * 1e4) / 1e4 + 0
  if (!Number.isFinite(rounded) || Math.abs(rounded) > 1e6)
    throw new Error(`pdf: ${value} cannot stand on a page`)
  return Math.abs(rounded) < 1e-3 && rounded !== 0 ? rounded.toFixed(4) : `${rounded}`
}
