/**
 * Writes the pictures the tests photograph nobody with: an invented figure, front, side (camera
 * on her left) and back, and the exact truth about her. Run: npm run fixtures. One picture alone:
 * npm run fixtures -- front.
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { ARM_AWAY, ARM_FORWARD, figureWith, type Figure } from './body.ts'
import { dressed } from './blouse.ts'
import { cameraAt } from './camera.ts'
import { openCanvas } from './canvas.ts'
import { join, type Field } from './field.ts'
import { writeTruth, type View } from './photograph.ts'
import { draw } from './scene.ts'
import { hang } from './sheet.ts'
import { truthOf } from './truth.ts'

const OUT = fileURLToPath(new URL('../../tests/photos/', import.meta.url))
const SIZE = { width: 1080, height: 1440, verticalFov: 66 }
const QUALITY = 0.86

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

async function main(): Promise<void> {
  const canvas = await openCanvas()
  if (!canvas) throw new Error('figure: no Chromium found to write JPEG; set CHROMIUM to its path')
  const only = process.argv[2]
  mkdirSync(OUT, { recursive: true })
  const measuring = VIEWS.filter((view) => !view.fitting)
  writeTruth(`${OUT}figure.json`, 'figure', truthOf(away), measuring)
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
