/**
 * Writes the pictures the tests photograph nobody with: an invented figure, front, side (camera
 * on her left) and back, and the exact truth about her. Run: npm run fixtures.
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { ARM_AWAY, ARM_FORWARD, figureWith, type Figure } from './body.ts'
import { cameraAt, type Camera } from './camera.ts'
import { openCanvas } from './canvas.ts'
import { join, type Field } from './field.ts'
import { draw } from './scene.ts'
import { hang, type HungSheet } from './sheet.ts'

const OUT = fileURLToPath(new URL('../../tests/photos/', import.meta.url))
const SIZE = { width: 1080, height: 1440, verticalFov: 66 }
const QUALITY = 0.86

interface View {
  readonly name: string
  readonly figure: Figure
  readonly sheet: HungSheet
  readonly camera: Camera
}

const away = figureWith(ARM_AWAY, ARM_AWAY)
const sideways = figureWith(ARM_FORWARD, ARM_AWAY)

const torsoAndLegs = (figure: Figure): Field => join(40, figure.trunk, figure.legs)

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
]

async function main(): Promise<void> {
  const canvas = await openCanvas()
  if (!canvas) throw new Error('figure: no Chromium found to write JPEG; set CHROMIUM to its path')
  mkdirSync(OUT, { recursive: true })
  try {
    for (const [i, view] of VIEWS.entries()) {
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
