/**
 * From four rough corners to the card: its edges are placed on the light of the full-size picture,
 * and the corners are where the edges meet, so rounded corners do no harm. What comes out must
 * look like a flat card of that size seen nearly from the front, or it is refused.
 */
import { cross, distance, subtract, type Point } from '../geometry/point.ts'
import type { CardOutcome, CardSize } from './card.ts'
import { placeEdge, seekEdge, type EdgeFit } from './card-edge.ts'
import type { Corners } from './card-marker.ts'
import { homographyOf, project, squeezeAt, type Homography } from './card-plane.ts'
import { mmPerPxByPose } from './card-pose.ts'
import { CORNER_TOO_FAR, EDGE_UNSEEN, TOO_SMALL, WRONG_SHAPE } from './card-words.ts'
import { focalOf } from './focal.ts'
import type { Grey } from './picture.ts'

/** The card must face the camera: cos 40 degrees. Tilted further its short side says too little. */
const LEAST_SQUEEZE = 0.766
/** Opposite edges differ by the card's depth over its distance; 1.25 is a sheet at 25 cm, tilted 30 degrees. */
const MOST_TAPER = 1.25
/** An edge whose stations stray further than this is no straight edge. From trial. */
const MOST_RESIDUAL_PX = 0.6
/** Shortest edge that still gives a scale worth having: on rendered cards 1 % at 13 pixels. From trial. */
const SHORTEST_EDGE_PX = 13

/** @param reach how far an edge may lie from the rough corners, pixels */
export function refineCorners(
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
    return refuse(CORNER_TOO_FAR)
  if (!clockwise(refined)) return refuse(CORNER_TOO_FAR)
  if (!largeEnough(refined)) return refuse(TOO_SMALL)
  const laid = lay(refined, size)
  if (!laid || laid.squeeze < LEAST_SQUEEZE || taper(refined) > MOST_TAPER)
    return refuse(WRONG_SHAPE)
  const { widthMm, heightMm, homography } = laid
  const mmPerPx = scaleOf(grey, refined, laid, residualPx)
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

/**
 * Millimetres a pixel at the card's middle. A tilt too small to tell from the unsteadiness of the
 * edges is taken as none, and the four edges are averaged.
 */
function scaleOf(grey: Grey, corners: Corners, laid: Laid, residualPx: number): number {
  const { widthMm, heightMm } = laid
  const ways = edges(corners).map(
    ([a, b], i) => (i % 2 === 0 ? widthMm : heightMm) / distance(a, b),
  )
  const mean = ways.reduce((sum, way) => sum + way, 0) / ways.length
  const unsteady = Math.max(EDGE_UNSTEADY_PX, residualPx) / shortestEdge(corners)
  if (1 - laid.squeeze < TILT_SURE * unsteady) return mean
  const axis = { x: grey.width / 2, y: grey.height / 2 }
  const middle = { x: widthMm / 2, y: heightMm / 2 }
  const posed = mmPerPxByPose(laid.toPicture, middle, axis, focalOf(grey, grey.focalPx).px)
  return posed !== undefined && Math.abs(posed / mean - 1) < 1 - LEAST_SQUEEZE ? posed : mean
}
/** A refined edge is steady to this at best, px (scripts/bench/card.ts); a tilt must exceed it so many times. */
const [EDGE_UNSTEADY_PX, TILT_SURE] = [0.1, 3]

type Laid = CardSize & { homography: Homography; toPicture: Homography; squeeze: number }

/** The card laid along its first edge or across it, whichever needs less tilt to look as seen. */
function lay(corners: Corners, size: CardSize): Laid | null {
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
      const squeeze = squeezeAt(homography, centre)
      return [{ widthMm, heightMm, homography, toPicture: back, squeeze }]
    })
    .reduce<Laid | null>((best, way) => (!best || way.squeeze > best.squeeze ? way : best), null)
}

const edges = ([a, b, c, d]: Corners): [Point, Point][] => [
  [a, b],
  [b, c],
  [c, d],
  [d, a],
]

/** False when an edge is too short to give a scale. */
export const largeEnough = (corners: Corners): boolean => shortestEdge(corners) >= SHORTEST_EDGE_PX

const shortestEdge = (corners: Corners): number =>
  Math.min(...edges(corners).map(([a, b]) => distance(a, b)))

function taper(corners: Corners): number {
  const [top = 1, right = 1, low = 1, left = 1] = edges(corners).map(([a, b]) => distance(a, b))
  return Math.max(top / low, low / top, left / right, right / left)
}

/** True for four corners in turn, clockwise on the page, none of them bent inward. */
export function clockwise(corners: Corners): boolean {
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
