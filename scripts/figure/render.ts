/**
 * Writes the pictures the tests photograph nobody with: an invented figure, front, side (camera
 * on her left) and back, and the exact truth about her. Run: npm run fixtures. One picture alone:
 * npm run fixtures -- front.
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { ARM_AWAY, ARM_FORWARD, figureWith, type Figure } from './body.ts'
import { dressed } from './blouse.ts'
import { cameraAt, dotted, seen, type Camera } from './camera.ts'
import { openCanvas } from './canvas.ts'
import { join, type Field } from './field.ts'
import { draw } from './scene.ts'
import { hang, type HungSheet } from './sheet.ts'
import { truthOf, type Truth } from './truth.ts'

const OUT = fileURLToPath(new URL('../../tests/photos/', import.meta.url))
const SIZE = { width: 1080, height: 1440, verticalFov: 66 }
const QUALITY = 0.86

interface View {
  readonly name: string
  readonly figure: Figure
  readonly sheet: HungSheet
  readonly camera: Camera
  /** Her left arm is lifted, so her left shoulder point is not where the tape found it. */
  readonly liftedArm?: true
  /** Cloth hangs over the landmarks. */
  readonly fitting?: true
}

const away = figureWith(ARM_AWAY, ARM_AWAY)
const sideways = figureWith(ARM_FORWARD, ARM_AWAY)

const torsoAndLegs = (figure: Figure): Field => join(40, figure.trunk, figure.legs)

const muslin = dressed(away)

/** The three measuring photos, and one of a fitting, of which only the camera is true. */
const VIEWS: readonly View[] = [
  {
    name: 'front',
    figure: away,
    sheet: hang(torsoAndLegs(away), [0, 0, 1], 0.04),
    camera: cameraAt(
      SIZE,
      { azimuth: 1.5, distance: 2250, height: 1120 },
      { pan: 0.6, pitch: -4.5, roll: 0.5 },
    ),
  },
  {
    name: 'side',
    figure: sideways,
    liftedArm: true,
    sheet: hang(torsoAndLegs(sideways), [1, 0, 0], 0.3),
    camera: cameraAt(
      SIZE,
      { azimuth: 91, distance: 2310, height: 1090 },
      { pan: -2.5, pitch: -4, roll: -0.4 },
    ),
  },
  {
    name: 'back',
    figure: away,
    sheet: hang(torsoAndLegs(away), [0, 0, -1], 0.3),
    camera: cameraAt(
      SIZE,
      { azimuth: 178.5, distance: 2230, height: 1150 },
      { pan: 0.5, pitch: -5, roll: 0.3 },
    ),
  },
  {
    name: 'muslin-front',
    figure: muslin,
    sheet: hang((x, y, z) => muslin.blouse?.(x, y, z) ?? Infinity, [0, 0, 1], 0),
    camera: cameraAt(
      SIZE,
      { azimuth: -1, distance: 2240, height: 1130 },
      { pan: 0.3, pitch: -4.6, roll: -0.3 },
    ),
    fitting: true,
  },
]

/** What is true of one picture. Left and right are hers. */
function viewTruth(view: View, landmarks: Truth['landmarks']): object {
  const { camera, sheet } = view
  const turned = camera.R.map((row) => dotted(row, camera.position))
  const spots = Object.entries(landmarks).filter(
    ([name]) => !(view.liftedArm && name === 'shoulderL'),
  )
  return {
    file: `figure-${view.name}.jpg`,
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

async function main(): Promise<void> {
  const canvas = await openCanvas()
  if (!canvas) throw new Error('figure: no Chromium found to write JPEG; set CHROMIUM to its path')
  const only = process.argv[2]
  mkdirSync(OUT, { recursive: true })
  const { landmarks, measures } = truthOf(away)
  const truth = {
    note: 'invented figure, rendered by scripts/figure; no person stood for it',
    units: 'mm, px',
    frame: 'origin on the floor, x to her left, y up, z forward',
    pixels: '(0, 0) is the top left corner of the top left pixel; no lens distortion',
    measures,
    landmarks,
    views: Object.fromEntries(
      VIEWS.filter((view) => !view.fitting).map((view) => [view.name, viewTruth(view, landmarks)]),
    ),
  }
  const text = JSON.stringify(truth, rounded, 1).replace(/\n\s+(?=[-\d\]])/g, ' ')
  writeFileSync(`${OUT}figure.json`, `${text}\n`)
  try {
    for (const [i, view] of VIEWS.entries()) {
      if (only && view.name !== only) continue
      const picture = draw(view.figure, view.sheet, view.camera, 20 + i)
      const jpeg = await canvas.encode(picture, QUALITY)
      writeFileSync(`${OUT}figure-${view.name}.jpg`, jpeg)
      console.log(`figure-${view.name}.jpg ${jpeg.length} bytes`)
    }
  } finally {
    await canvas.close()
  }
}

await main()
