/**
 * Renders a few other invented bodies into a folder, laid out as the camera bench reads it: other
 * builds and proportions than the figure of tests/photos, other cameras, the sheet hung at the
 * waist, side photo with the arm lifted.
 *
 *   npm run fixtures:others -- DIR [NAME|all [truth]]
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { ARM_AWAY, ARM_FORWARD, figureWith, type Figure } from './body.ts'
import { cameraAt } from './camera.ts'
import { openCanvas } from './canvas.ts'
import { join, type Field } from './field.ts'
import { writeTruth, type View } from './photograph.ts'
import { draw } from './scene.ts'
import { shaped, warpOf, type Shape } from './shape.ts'
import { hang } from './sheet.ts'
import { WAIST_LEVEL } from './torso.ts'
import { truthOf } from './truth.ts'

const QUALITY = 0.86
interface Other {
  readonly shape: Shape
  readonly verticalFov: number
  readonly distance: number
  readonly height: number
  /** Degrees: how far the camera looks up or down in front, side, back. */
  readonly pitch: readonly [number, number, number]
  /** Degrees she stands turned in front, side, back. */
  readonly turned: readonly [number, number, number]
}

const EVEN = [[0, 1]] as const
/** Invented; chosen before anything was measured on them, and not changed since. */
const OTHERS: Readonly<Record<string, Other>> = {
  'slim-tall': {
    shape: {
      wide: [
        [700, 0.9],
        [1400, 0.92],
        [1500, 1],
      ],
      deep: [
        [700, 0.92],
        [1400, 0.92],
        [1500, 1],
      ],
      tall: [
        [0, 1.06],
        [1000, 1.05],
        [1500, 1.03],
      ],
    },
    verticalFov: 70,
    distance: 2450,
    height: 1150,
    pitch: [-1, -2, 0.5],
    turned: [-2, 2, 1],
  },
  'full-short': {
    shape: {
      wide: [
        [500, 1.12],
        [850, 1.16],
        [1350, 1.14],
        [1460, 1.05],
        [1560, 1],
      ],
      deep: [
        [500, 1.12],
        [850, 1.24],
        [1300, 1.25],
        [1460, 1.08],
        [1560, 1],
      ],
      tall: [
        [0, 0.94],
        [1500, 0.97],
      ],
    },
    verticalFov: 63,
    distance: 2600,
    height: 1050,
    pitch: [1.5, -1, 2],
    turned: [1, -3, -1],
  },
  'wide-hips': {
    shape: {
      wide: [
        [500, 1.05],
        [850, 1.13],
        [1040, 0.98],
        [1350, 0.95],
        [1480, 1],
      ],
      deep: [
        [500, 1.05],
        [850, 1.1],
        [1040, 1.05],
        [1350, 0.95],
        [1480, 1],
      ],
      tall: [
        [0, 0.98],
        [900, 0.98],
        [1000, 1.06],
        [1350, 1.04],
        [1450, 1],
      ],
    },
    verticalFov: 66,
    distance: 2350,
    height: 1200,
    pitch: [-3, -2.5, -3],
    turned: [3, 1, -3],
  },
  'short-waist': {
    shape: {
      wide: [
        [500, 1],
        [850, 0.98],
        [1040, 1.12],
        [1350, 1.06],
        [1480, 1],
      ],
      deep: [
        [500, 1],
        [850, 1],
        [1040, 1.18],
        [1250, 1.12],
        [1400, 1.06],
        [1480, 1],
      ],
      tall: [
        [0, 1.04],
        [900, 1.03],
        [1000, 0.92],
        [1350, 0.94],
        [1450, 1],
      ],
    },
    verticalFov: 72,
    distance: 2250,
    height: 1100,
    pitch: [2, 1, -1.5],
    turned: [-3, 0, 2],
  },
  even: {
    shape: { wide: EVEN, deep: EVEN, tall: EVEN },
    verticalFov: 68,
    distance: 2700,
    height: 1000,
    pitch: [0, 1, -0.5],
    turned: [0, -1.5, 0.5],
  },
}

const torsoAndLegs = (figure: Figure): Field => join(40, figure.trunk, figure.legs)

function viewsOf({ shape, ...other }: Other): { views: View[]; truth: ReturnType<typeof truthOf> } {
  const warp = warpOf(shape)
  const away = shaped(figureWith(ARM_AWAY, ARM_AWAY), warp)
  const sideways = shaped(figureWith(ARM_FORWARD, ARM_AWAY), warp)
  const waist = warp.outer([0, WAIST_LEVEL, 0])[1]
  const size = { width: 1080, height: 1440, verticalFov: other.verticalFov }
  const camera = (azimuth: number, k: 0 | 1 | 2) =>
    cameraAt(
      size,
      { azimuth: azimuth + other.turned[k], distance: other.distance, height: other.height },
      { pan: 0.4 * other.turned[k], pitch: other.pitch[k], roll: 0.3 * other.turned[k] },
    )
  const views: View[] = [
    {
      name: 'front',
      figure: away,
      sheet: hang(torsoAndLegs(away), [0, 0, 1], 0.04, waist),
      camera: camera(0, 0),
    },
    {
      name: 'side',
      figure: sideways,
      liftedArm: true,
      sheet: hang(torsoAndLegs(sideways), [1, 0, 0], 0.2, waist),
      camera: camera(90, 1),
    },
    {
      name: 'back',
      figure: away,
      sheet: hang(torsoAndLegs(away), [0, 0, -1], 0.1, waist),
      camera: camera(180, 2),
    },
  ]
  return { views, truth: truthOf(away, warp.outer) }
}

async function main(): Promise<void> {
  const [folder, only, what] = process.argv.slice(2)
  if (!folder) throw new Error('Use: npm run fixtures:others -- DIR [NAME|all [truth]]')
  const canvas = await openCanvas()
  if (!canvas) throw new Error('figure: no Chromium found to write JPEG; set CHROMIUM to its path')
  const out = resolve(folder)
  mkdirSync(out, { recursive: true })
  try {
    for (const [k, [name, other]] of Object.entries(OTHERS).entries()) {
      if (only && only !== 'all' && only !== name) continue
      const { views, truth } = viewsOf(other)
      writeTruth(`${out}/${name}.json`, name, truth, views)
      if (what === 'truth') continue
      for (const [i, view] of views.entries()) {
        const picture = draw(view.figure, view.sheet, view.camera, 100 + 10 * k + i)
        writeFileSync(`${out}/${name}-${view.name}.jpg`, await canvas.encode(picture, QUALITY))
        console.log(`${name}-${view.name}.jpg`)
      }
    }
  } finally {
    await canvas.close()
  }
}

await main()
