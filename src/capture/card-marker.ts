/**
 * The one file that knows js-aruco2: where the marker lies to a few pixels, and which of its
 * cells are white. Source of the pattern: dictionary ARUCO_MIP_36h12, 6 x 6 cells and a black
 * border one cell wide (Garrido-Jurado, Muñoz-Salinas, Madrid-Cuevas, Medina-Carnicer:
 * Generation of fiducial marker dictionaries using mixed integer linear programming, 2016).
 */
import aruco from 'js-aruco2'
import { distance, type Point } from '../geometry/point.ts'
import { partOf, shrink, type Part, type Picture } from './picture.ts'

const DICTIONARY = 'ARUCO_MIP_36h12'
/** The one marker that is on our sheet. */
export const MARKER_ID = 7
/** Cells across the black square: 6 of the code and 1 of border on each side. */
export const MARKER_CELLS = 8
/**
 * Wrong cells allowed of 36. The dictionary keeps 12 between any two codes; at the library's
 * own limit of 11 chance patterns pass, at 3 none was seen in 142 rendered rooms.
 */
const MAX_WRONG_CELLS = 3
export type Corners = readonly [Point, Point, Point, Point]

/**
 * Our markers in a copy of the picture at 1/`shrinkBy` of its size: corners clockwise from the
 * marker's own top left, in pixels of the picture, right to about two pixels of the copy. A
 * marker large in the picture is missed by the detector's small window; the copy shows it.
 */
export function sightMarker(
  picture: Picture,
  shrinkBy: number,
  part: Part = { left: 0, top: 0, right: picture.width, bottom: picture.height },
): readonly Corners[] {
  const config = { dictionaryName: DICTIONARY, maxHammingDistance: MAX_WRONG_CELLS + 1 }
  const copy = shrink(partOf(picture, part), shrinkBy)
  // A new detector each time: it keeps buffers of the size it saw first.
  const detector = new aruco.AR.Detector(config)
  giveRoom(detector, copy)
  const found = detector.detect(copy)
  return found.flatMap((marker) => {
    const [a, b, c, d] = marker.corners
    if (marker.id !== MARKER_ID || !a || !b || !c || !d) return []
    // The detector's whole numbers name pixels; the middle of a pixel is half a pixel on.
    const place = (p: Point): Point => ({
      x: part.left + (p.x + 0.5) * shrinkBy,
      y: part.top + (p.y + 0.5) * shrinkBy,
    })
    return [[place(a), place(b), place(c), place(d)] as const]
  })
}

/**
 * The detector fills lists that grow by one number at a time. Given whole ones of the right type it
 * writes the same numbers in a fraction of the time: grey and threshold are bytes, and the picture
 * of the borders, one pixel wider on every side, holds the number of each border, above or below 0.
 */
function giveRoom(
  detector: InstanceType<typeof aruco.AR.Detector>,
  { width, height }: Picture,
): void {
  detector.grey.data = new Uint8Array(width * height)
  detector.thres.data = new Uint8Array(width * height)
  detector.binary = new Int32Array((width + 2) * (height + 2))
}

/** True when both sightings can be of one printed marker: their middles lie within half a side. */
export function sameMarker(a: Corners, b: Corners): boolean {
  return distance(middle(a), middle(b)) < distance(a[0], a[1]) / 2
}

function middle(corners: Corners): Point {
  return {
    x: corners.reduce((sum, p) => sum + p.x, 0) / 4,
    y: corners.reduce((sum, p) => sum + p.y, 0) / 4,
  }
}

/** The code of our marker: 6 rows of 6 cells from the top, true = white. */
export function markerCells(): readonly (readonly boolean[])[] {
  const code = new aruco.AR.Dictionary(DICTIONARY).codeList[MARKER_ID]
  if (code?.length !== 36) throw new Error(`marker ${MARKER_ID} has code ${code}`)
  return Array.from({ length: 6 }, (_, row) =>
    Array.from({ length: 6 }, (_, column) => code[row * 6 + column] === '1'),
  )
}
