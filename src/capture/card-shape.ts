/**
 * Four corners as a flat card: which way round it lies, how it is turned, and how many millimetres a
 * pixel is there. Picture px, card mm.
 */
import { cross, distance, subtract, type Point } from '../geometry/point.ts'
import type { CardSize } from './card.ts'
import type { Corners } from './card-marker.ts'
import { homographyOf, project, squeezeAt, type Homography } from './card-plane.ts'
import { mmPerPxByPose } from './card-pose.ts'
import { focalOf } from './focal.ts'
import type { Grey } from './picture.ts'

/** The card must face the camera: cos 40 degrees. Tilted further its short side says too little. */
export const LEAST_SQUEEZE = 0.766
/** Opposite edges differ by the card's depth over its distance; 1.25 is a sheet at 25 cm, tilted 30 degrees. */
export const MOST_TAPER = 1.25
/** Shortest edge that still gives a scale worth having: on rendered cards 1 % at 13 pixels. From trial. */
const SHORTEST_EDGE_PX = 13

/**
 * Millimetres a pixel at the card's middle. A tilt too small to tell from the unsteadiness of the
 * edges is taken as none, and the four edges are averaged.
 */
export function scaleOf(grey: Grey, corners: Corners, laid: Laid, residualPx: number): number {
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

export type Laid = CardSize & { homography: Homography; toPicture: Homography; squeeze: number }

/** The card laid along its first edge or across it, whichever needs less tilt to look as seen. */
export function lay(corners: Corners, size: CardSize): Laid | null {
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

export const edges = ([a, b, c, d]: Corners): [Point, Point][] => [
  [a, b],
  [b, c],
  [c, d],
  [d, a],
]

/** False when an edge is too short to give a scale. */
export const largeEnough = (corners: Corners): boolean => shortestEdge(corners) >= SHORTEST_EDGE_PX

const shortestEdge = (corners: Corners): number =>
  Math.min(...edges(corners).map(([a, b]) => distance(a, b)))

export function taper(corners: Corners): number {
  const [top = 1, right = 1, low = 1, left = 1] = edges(corners).map(([a, b]) => distance(a, b))
  return Math.max(top / low, low / top, left / right, right / left)
}

/** True for four corners in turn, clockwise on the page, none of them bent inward. */
export function clockwise(corners: Corners): boolean {
  const sides = edges(corners).map(([a, b]) => subtract(b, a))
  return sides.every((side, i) => cross(side, sides[(i + 1) % 4] ?? side) > 0)
}

/** Corners where each edge meets the next; null when one is missing or two run side by side. */
export function meeting(lines: readonly ({ from: Point; to: Point } | null)[]): Corners | null {
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

/** The middle of four corners, px. */
export const centreOf = (corners: readonly Point[]): Point => ({
  x: corners.reduce((sum, p) => sum + p.x, 0) / corners.length,
  y: corners.reduce((sum, p) => sum + p.y, 0) / corners.length,
})
