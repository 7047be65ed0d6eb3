/** One picture of a figure and what is true of it, as written beside the photographs. */
import { writeFileSync } from 'node:fs'
import type { Figure } from './body.ts'
import { dotted, seen, type Camera } from './camera.ts'
import type { HungSheet } from './sheet.ts'
import type { Truth } from './truth.ts'

export interface View {
  readonly name: string
  readonly figure: Figure
  readonly sheet: HungSheet
  readonly camera: Camera
  /** Her left arm is lifted, so her left shoulder point is not where the tape found it. */
  readonly liftedArm?: true
  /** Cloth hangs over the landmarks. */
  readonly fitting?: true
}

/** What is true of one picture. Left and right are hers. */
function viewTruth(view: View, landmarks: Truth['landmarks'], named: string): object {
  const { camera, sheet } = view
  const turned = camera.R.map((row) => dotted(row, camera.position))
  const spots = Object.entries(landmarks).filter(
    ([name]) => !(view.liftedArm && name === 'shoulderL'),
  )
  return {
    file: `${named}-${view.name}.jpg`,
    width: camera.width,
    height: camera.height,
    intrinsics: { fx: camera.f, fy: camera.f, cx: camera.width / 2, cy: camera.height / 2 },
    extrinsics: { R: camera.R, t: turned.map((v) => -v) },
    card: {
      kind: 'folded A4 sheet 210 x 148.5 mm with ARUCO_MIP_36h12 id 7, black square 100 mm',
      mode: 'waist',
      widthMm: sheet.widthMm,
      heightMm: sheet.heightMm,
      corners3d: sheet.corners,
      cornersPx: sheet.corners.map((p) => seen(camera, p).px),
      markerSideMm: sheet.squareMm,
      markerCorners3d: sheet.squareCorners,
      markerCornersPx: sheet.squareCorners.map((p) => seen(camera, p).px),
    },
    cardDepthMm: seen(camera, sheet.middle).depthMm,
    pixels: Object.fromEntries(spots.map(([name, p]) => [name, seen(camera, p)])),
  }
}

/** Hundredths of a millimetre or pixel are enough, and keep the file readable. */
const rounded = (_: string, value: unknown): unknown =>
  typeof value === 'number' ? Number(value.toFixed(Math.abs(value) <= 1 ? 8 : 3)) : value

/** Writes the truth about a figure and its pictures; `named` begins the names of the files. */
export function writeTruth(
  path: string,
  named: string,
  { landmarks, measures }: Truth,
  views: readonly View[],
): void {
  const truth = {
    note: 'invented figure, rendered by scripts/figure; no person stood for it',
    units: 'mm, px',
    frame: 'origin on the floor, x to her left, y up, z forward',
    pixels: '(0, 0) is the top left corner of the top left pixel; no lens distortion',
    appearance: { waistBand: true },
    measures,
    landmarks,
    views: Object.fromEntries(views.map((view) => [view.name, viewTruth(view, landmarks, named)])),
  }
  const text = JSON.stringify(truth, rounded, 1).replace(/\n\s+(?=[-\d\]])/g, ' ')
  writeFileSync(path, `${text}\n`)
}
