/**
 * The reference card that gives a photograph its scale: our printed sheet, found by its marker,
 * or a card of ISO/IEC 7810 size whose corners she taps. Both end in the same refined corners.
 * Picture points are pixels as in picture.ts; the card's own plane is millimetres from its top
 * left corner, x along its first edge, y down.
 * Not for lens distortion, and says nothing about how far the card lies in front of the body.
 */
import { cross, distance, subtract, type Point } from '../geometry/point.ts'
import { mm, type Mm } from '../units/length.ts'
import { placeEdge, seekEdge, type EdgeFit } from './card-edge.ts'
import { sameMarker, sightMarker, MARKER_CELLS, type Corners } from './card-marker.ts'
import { homographyOf, project, squeezeAt, type Homography } from './card-plane.ts'
import { linearGrey, mirrored, type Grey, type Picture } from './picture.ts'

export interface Card {
  readonly kind: 'sheet' | 'id1'
  /** Picture pixels, clockwise from the card's own top left. For the sheet: of its black square. */
  readonly corners: Corners
  readonly widthMm: Mm
  readonly heightMm: Mm
  /** 3 x 3, row by row: picture pixels to millimetres in the card's plane. */
  readonly homography: Homography
  /** Mean over the four refined edges of millimetres per pixel. */
  readonly mmPerPx: number
  /** Root mean square distance of the seen edges from straight lines, pixels. */
  readonly residualPx: number
}

export type CardOutcome =
  { readonly ok: true; readonly card: Card } | { readonly ok: false; readonly reason: string }

export interface CardSize {
  readonly widthMm: Mm
  readonly heightMm: Mm
}

/** ISO/IEC 7810:2019, ID-1: a bank card, a library card. */
export const ID1: CardSize = { widthMm: mm(85.6), heightMm: mm(53.98) }
/** The black square of our printed sheet (marker-sheet.ts). */
export const BLACK_SQUARE: CardSize = { widthMm: mm(100), heightMm: mm(100) }

/** How far a true corner may lie from a tap, pixels. Beyond it a neighbouring edge is taken too often. */
export const TAP_REACH_PX = 6
/** The card must face the camera: cos 40 degrees. Tilted further its short side says too little. */
const LEAST_SQUEEZE = 0.766
/** Opposite edges differ by the card's depth over its distance; 1.25 is a sheet at 25 cm, tilted 30 degrees. */
const MOST_TAPER = 1.25
/** An edge whose stations stray further than this is no straight edge. From trial. */
const MOST_RESIDUAL_PX = 0.6
/** Shortest edge that still gives a scale worth having, pixels: 1/4 px in 20 is 1.3 %. */
const SHORTEST_EDGE_PX = 13

/** Finds the printed sheet and refines the corners of its black square. */
export function findSheet(picture: Picture): CardOutcome {
  const sightings = sightMarker(picture)
  const first = sightings[0]
  if (!first) {
    if (sightMarker(mirrored(picture)).length > 0) return refuse(MIRRORED)
    return refuse(NO_CARD)
  }
  if (sightings.some((s) => !sameMarker(s.corners, first.corners))) return refuse(TWO_CARDS)
  const grey = linearGrey(picture)
  let last: CardOutcome = refuse(NO_CARD)
  for (const { corners, grainPx } of sightings) {
    // The corners stray by up to two pixels of the copy; a cell further in the code begins.
    const cell = distance(corners[0], corners[2]) / Math.SQRT2 / MARKER_CELLS
    const reach = Math.min(Math.max(2.5, 2 * grainPx), 0.8 * cell)
    last = refine(grey, corners, BLACK_SQUARE, reach, 'lighter')
    if (last.ok) return last
  }
  return last
}

/**
 * Refines four tapped corners, clockwise from the card's top left as she sees it.
 * A card may hang upright or lie across: its width is the edge that fits better.
 * @param size ID1, or BLACK_SQUARE for a sheet whose code cannot be read
 */
export function refineTaps(picture: Picture, taps: Corners, size: CardSize): CardOutcome {
  if (!clockwise(taps)) return refuse(OUT_OF_ORDER)
  if (shortestEdge(taps) < SHORTEST_EDGE_PX) return refuse(TOO_SMALL)
  return refine(linearGrey(picture), taps, size, TAP_REACH_PX, 'either')
}

function refine(
  grey: Grey,
  start: Corners,
  size: CardSize,
  reach: number,
  outside: 'lighter' | 'either',
): CardOutcome {
  const sought = edges(start).map(([a, b]) => seekEdge(grey, a, b, reach, outside))
  let corners = meeting(sought)
  if (!corners) return refuse(EDGE_UNSEEN)
  let fits: (EdgeFit | null)[] = []
  for (let turn = 0; turn < 2; turn++) {
    fits = edges(corners).map(([a, b]) => placeEdge(grey, a, b))
    corners = meeting(fits)
    if (!corners) return refuse(EDGE_UNSEEN)
  }
  const refined = corners
  const residualPx = Math.sqrt(
    fits.reduce((sum, fit) => sum + (fit?.residualPx ?? Infinity) ** 2, 0) / fits.length,
  )
  if (!(residualPx < MOST_RESIDUAL_PX)) return refuse(EDGE_UNSEEN)
  // Across by `reach` on both edges moves their corner by that times the square root of 2.
  if (refined.some((p, i) => distance(p, start[i] ?? p) > reach * Math.SQRT2))
    return refuse(TOO_FAR)
  if (!clockwise(refined)) return refuse(TOO_FAR)
  if (shortestEdge(refined) < SHORTEST_EDGE_PX) return refuse(TOO_SMALL)
  const laid = lay(refined, size)
  if (!laid || laid.squeeze < LEAST_SQUEEZE || taper(refined) > MOST_TAPER)
    return refuse(WRONG_SHAPE)
  const { widthMm, heightMm, homography } = laid
  const mmPerPx =
    edges(refined).reduce(
      (sum, [a, b], i) => sum + (i % 2 === 0 ? widthMm : heightMm) / distance(a, b),
      0,
    ) / 4
  const kind = size.widthMm === size.heightMm ? 'sheet' : 'id1'
  const card = {
    kind,
    corners: refined,
    widthMm,
    heightMm,
    homography,
    mmPerPx,
    residualPx,
  } as const
  return { ok: true, card }
}

/** The card laid along its first edge or across it, whichever needs less tilt to look as seen. */
function lay(
  corners: Corners,
  size: CardSize,
): (CardSize & { homography: Homography; squeeze: number }) | null {
  const ways = [size, { widthMm: size.heightMm, heightMm: size.widthMm }]
  return ways
    .flatMap(({ widthMm, heightMm }) => {
      const plane: Corners = [
        { x: 0, y: 0 },
        { x: widthMm, y: 0 },
        { x: widthMm, y: heightMm },
        { x: 0, y: heightMm },
      ]
      const homography = homographyOf(corners, plane)
      const back = homographyOf(plane, corners)
      if (!homography || !back) return []
      const centre = project(back, { x: widthMm / 2, y: heightMm / 2 })
      return [{ widthMm, heightMm, homography, squeeze: squeezeAt(homography, centre) }]
    })
    .reduce<ReturnType<typeof lay>>(
      (best, way) => (!best || way.squeeze > best.squeeze ? way : best),
      null,
    )
}

const edges = ([a, b, c, d]: Corners): [Point, Point][] => [
  [a, b],
  [b, c],
  [c, d],
  [d, a],
]

const shortestEdge = (corners: Corners): number =>
  Math.min(...edges(corners).map(([a, b]) => distance(a, b)))

function taper(corners: Corners): number {
  const [top = 1, right = 1, low = 1, left = 1] = edges(corners).map(([a, b]) => distance(a, b))
  return Math.max(top / low, low / top, left / right, right / left)
}

function clockwise(corners: Corners): boolean {
  const sides = edges(corners).map(([a, b]) => subtract(b, a))
  return sides.every((side, i) => cross(side, sides[(i + 1) % 4] ?? side) > 0)
}

/** Corners where each edge meets the next; null when one is missing or two run side by side. */
function meeting(lines: readonly ({ from: Point; to: Point } | null)[]): Corners | null {
  const corners = lines.map((line, i) => {
    const before = lines[(i + 3) % 4]
    if (!line || !before) return null
    const [u, v] = [subtract(before.to, before.from), subtract(line.to, line.from)]
    const turn = cross(u, v)
    if (turn === 0) return null
    const t = cross(subtract(line.from, before.from), v) / turn
    return { x: before.from.x + u.x * t, y: before.from.y + u.y * t }
  })
  const [a, b, c, d] = corners
  return a && b && c && d ? [a, b, c, d] : null
}

const refuse = (reason: string): CardOutcome => ({ ok: false, reason })

const NO_CARD =
  'No card in this photo. Without it the picture has no scale. Hang the printed sheet flat ' +
  'against the body with the whole black square in view, or tap the four corners of a bank-size card.'
const MIRRORED =
  'This photo is mirrored, so left and right are exchanged. Turn off mirroring in the camera ' +
  'settings, or use the back camera, and take it again.'
const TWO_CARDS =
  'More than one printed sheet is in this photo. Leave only the one that hangs against the body ' +
  'and take it again.'
const OUT_OF_ORDER =
  'The four taps cross over. Tap the corners in turn round the card, clockwise, from its top left.'
const TOO_SMALL =
  'The card is too small in this photo to give a scale. Come nearer, use a photo with more ' +
  'pixels, or use the printed sheet.'
const EDGE_UNSEEN =
  'An edge of the card does not stand out. Hold it by the rim in even light, on cloth of another ' +
  'shade, and keep the camera still.'
const TOO_FAR =
  'The card has no corner near one of the taps. Enlarge the photo and tap the four corners again, ' +
  'clockwise from the top left.'
const WRONG_SHAPE =
  'These corners do not have the shape of the card seen from the front. Check the four corners, ' +
  'or turn the card flat to the camera and take the photo again.'
