/**
 * Fold reading against rendered folds of known place and direction.
 *
 *   npm run bench:folds -- [FOLDS_DIR] [--features OUT.json]
 *
 * FOLDS_DIR holds NN.jpg and the truth NN.json. A fold counts as found with one stroke within 15 mm
 * over half of its length; false lines are counted on the pictures without folds. The pictures are
 * also told in two halves, odd and even numbers: the judgement of a stroke was fitted on the odd
 * ones of the set beside the repository. --features writes every candidate with its features and
 * whether it lies on a fold, to fit it anew. Ends with RESULT {…}.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { findSheet } from '../../src/capture/card.ts'
import { clothOf } from '../../src/capture/folds/cloth.ts'
import { FOLD_PLACES, type FoldPlace } from '../../src/capture/folds/fold-places.ts'
import { gridOf } from '../../src/capture/folds/grid.ts'
import { readFolds, type Fold } from '../../src/capture/folds/read-folds.ts'
import { apart, candidates } from '../../src/capture/folds/strokes.ts'
import { trunkFrame } from '../../src/capture/folds/trunk-frame.ts'
import { distance, type Point } from '../../src/geometry/point.ts'
import { nodeDetector } from '../../tests/capture/node-detector.ts'
import { openCanvas } from '../figure/canvas.ts'

const USUAL = fileURLToPath(new URL('../../../shared/data/bodies/folds/dev/', import.meta.url))

interface TrueFold {
  readonly polylinePx: readonly (readonly [number, number])[]
  readonly directionDeg: number
}
interface Truth {
  readonly zone: string
  readonly view: 'front' | 'back'
  readonly folds: readonly TrueFold[]
}
/** What the truth calls the places. */
const ZONES: Readonly<Record<string, FoldPlace>> = {
  'between-apexes-horizontal': 'betweenApexes',
  'apex-to-side-waist-diagonal': 'apexToSideWaist',
  'neck-to-armpit-diagonal': 'neckToArmpit',
  'shoulder-tip-towards-centre': 'shoulderTipToCentre',
  'above-back-waist-horizontal': 'aboveBackWaist',
  'armhole-vertical': 'besideArmhole',
}
const NEAR_MM = 15

/** Even places along a fold. */
function samples(fold: TrueFold): Point[] {
  const points = fold.polylinePx.map(([x, y]) => ({ x, y }))
  return Array.from({ length: 60 }, (_, i) => {
    const t = (i / 59) * (points.length - 1)
    const k = Math.min(points.length - 2, Math.floor(t))
    const [a, b] = [points[k], points[k + 1]]
    if (!a || !b) throw new Error('folds bench: a fold of one point')
    return { x: a.x + (b.x - a.x) * (t - k), y: a.y + (b.y - a.y) * (t - k) }
  })
}

/** Distance from a place to a broken line, px. */
function toLine(p: Point, line: readonly Point[]): number {
  let least = Math.min(...line.map((q) => distance(p, q)))
  for (let k = 0; k + 1 < line.length; k++) {
    const [a, b] = [line[k], line[k + 1]]
    if (!a || !b) continue
    const long = distance(a, b) ** 2
    const t = long === 0 ? 0 : ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / long
    const on = Math.max(0, Math.min(1, t))
    least = Math.min(least, distance(p, { x: a.x + (b.x - a.x) * on, y: a.y + (b.y - a.y) * on }))
  }
  return least
}
const degrees = (radians: number): number => (radians * 180) / Math.PI
const truly = ({ directionDeg }: TrueFold): number => (directionDeg * Math.PI) / 180

interface Judged {
  readonly name: string
  readonly truth: Truth
  readonly strokes: number
  readonly refused?: string
  /** For every fold the direction error of the nearest-running stroke over it, or undefined. */
  readonly found: readonly (number | undefined)[]
  readonly zoneTop2?: boolean
  readonly ms: number
}

function judged(
  truth: Truth,
  folds: readonly Fold[],
  mmPerPx: number,
): readonly (number | undefined)[] {
  return truth.folds.map((fold) => {
    const places = samples(fold)
    const over = folds.filter(
      ({ line }) =>
        places.filter((p) => toLine(p, line) * mmPerPx < NEAR_MM).length >= places.length / 2,
    )
    const errors = over.map(({ angle }) => degrees(apart(angle, truly(fold))))
    return errors.length > 0 ? Math.min(...errors) : undefined
  })
}

const median = (list: readonly number[]): number =>
  [...list].sort((a, b) => a - b)[(list.length - 1) >> 1] ?? NaN
const thousandth = (value: number): number => Math.round(value * 1000) / 1000

function figures(rows: readonly Judged[]) {
  const folds = rows.flatMap(({ found }) => found)
  const errors = folds.flatMap((error) => error ?? [])
  const smooth = rows.filter(({ truth }) => truth.folds.length === 0)
  const zoned = rows.flatMap(({ zoneTop2 }) => zoneTop2 ?? [])
  const sum = (list: readonly number[]): number => list.reduce((all, n) => all + n, 0)
  return {
    found: thousandth(errors.length / folds.length),
    falsePerSmooth: thousandth(sum(smooth.map((r) => r.strokes)) / smooth.length),
    directionMedianDeg: thousandth(median(errors)),
    zoneTop2: thousandth(zoned.filter(Boolean).length / zoned.length),
    n: folds.length,
    pictures: rows.length,
  }
}

async function main(): Promise<void> {
  const [first, ...rest] = process.argv.slice(2)
  const folder = resolve(first && !first.startsWith('--') ? first : USUAL)
  const out = [first, ...rest].find((_, k, all) => all[k - 1] === '--features')
  const nothing = (why: string): void => {
    console.log(`folds bench: ${why}, nothing measured`)
    console.log(`RESULT ${JSON.stringify({ skipped: why })}`)
  }
  if (!existsSync(folder)) return nothing(`no pictures in "${folder}"`)
  const names = readdirSync(folder).flatMap((file) => /^(\d+)\.json$/.exec(file)?.[1] ?? [])
  if (names.length === 0) return nothing(`no pictures in "${folder}"`)
  const canvas = await openCanvas()
  if (!canvas) return nothing('no Chromium on this machine to decode JPEG')
  const model = await nodeDetector()
  const rows: Judged[] = []
  const features: object[] = []
  try {
    for (const name of names.sort()) {
      const truth = JSON.parse(readFileSync(join(folder, `${name}.json`), 'utf8')) as Truth
      const picture = await canvas.decode(join(folder, `${name}.jpg`))
      const [person, card] = [await model.find(picture), findSheet(picture)]
      const start = performance.now()
      const outcome = readFolds(truth.view, picture, person, card)
      const ms = Math.round(performance.now() - start)
      const mmPerPx = card.ok ? card.card.mmPerPx : NaN
      const folds = outcome.ok ? outcome.folds : []
      const wanted = ZONES[truth.zone]
      const row: Judged = {
        name,
        truth,
        strokes: folds.length,
        ...(outcome.ok ? {} : { refused: outcome.reason }),
        found: judged(truth, folds, mmPerPx),
        ...(wanted ? { zoneTop2: outcome.ok && outcome.places.slice(0, 2).includes(wanted) } : {}),
        ms,
      }
      rows.push(row)
      const hits = row.found.filter((error) => error !== undefined).length
      console.log(
        `${name} ${truth.zone}: ${folds.length} strokes, ${hits} of ${truth.folds.length} folds, places ${outcome.ok ? outcome.places.slice(0, 2).join(', ') : 'none'}, ${ms} ms`,
      )
      if (out && person && card.ok) {
        const grid = gridOf(picture, person.mask, mmPerPx)
        const frame = trunkFrame(person, grid.px)
        const cloth = frame && clothOf(grid, frame, card.card)
        for (const one of cloth ? candidates(cloth.relief, cloth.inside) : []) {
          const at = (c: number): Point => ({
            x: ((c % grid.width) + 0.5) * grid.px,
            y: (Math.floor(c / grid.width) + 0.5) * grid.px,
          })
          const hit = truth.folds.some((fold) => {
            const line = samples(fold)
            const near = one.cells.filter((c) => toLine(at(c), line) * mmPerPx < 12)
            return near.length > 0.6 * one.cells.length && apart(one.angle, truly(fold)) < 0.35
          })
          features.push({ name, hit, features: one.features })
        }
      }
    }
  } finally {
    model.close()
    await canvas.close()
  }
  if (out) writeFileSync(out, JSON.stringify(features))
  const odd = (row: Judged): boolean => Number(row.name) % 2 === 1
  console.table({
    odd: figures(rows.filter(odd)),
    even: figures(rows.filter((row) => !odd(row))),
  })
  const places = Object.fromEntries(
    FOLD_PLACES.map((place) => [
      place,
      rows.filter((r) => ZONES[r.truth.zone] === place && r.zoneTop2).length,
    ]),
  )
  console.log('zone among the first two, pictures:', places)
  console.log(`RESULT ${JSON.stringify(figures(rows))}`)
}

await main()
