/**
 * Two photographs of one body in different stances, cameras and card places, brought over each
 * other as two rounds are: how far the true places of the torso still lie apart.
 *
 *   npm run bench:rounds -- [PAIRS_DIR]
 *
 * PAIRS_DIR holds NN-a.jpg, NN-b.jpg and the truth NN.json. The best any one scale, turn and shift
 * could do stands beside it: the rest is her turning between the two photos. Ends with RESULT {…}.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { findSheet } from '../../src/capture/card.ts'
import type { Detector } from '../../src/capture/detector.ts'
import { partAround } from '../../src/capture/person.ts'
import { matchPhotos, type PhotoMatch } from '../../src/capture/photo-match.ts'
import { placePoints } from '../../src/capture/place-points.ts'
import type { ViewReading } from '../../src/capture/reading.ts'
import { carried, onto, solved, type Similarity } from '../../src/capture/similarity.ts'
import { distance, type Point } from '../../src/geometry/point.ts'
import { nodeDetector } from '../../tests/capture/node-detector.ts'
import { openCanvas, type Canvas } from '../figure/canvas.ts'

const USUAL = fileURLToPath(new URL('../../../shared/data/bodies/pairs/dev/', import.meta.url))
/** Places of the torso that a front view shows. */
const TORSO = [
  'apexL',
  'apexR',
  'shoulderL',
  'shoulderR',
  'sideNeckL',
  'sideNeckR',
  'neckPit',
  'waistMidFront',
  'waistL',
  'waistR',
  'bustL',
  'bustR',
  'hipL',
  'hipR',
  'hipMidFront',
] as const

interface TrueView {
  readonly intrinsics: { readonly fx: number }
  readonly pixels: Readonly<
    Record<string, { readonly px: readonly [number, number]; readonly depthMm: number }>
  >
}
type Truth = Readonly<Record<'a' | 'b', TrueView>>

interface Place {
  readonly earlier: Point
  readonly later: Point
  /** Millimetres a pixel of the earlier picture, at this place. */
  readonly mmPerPx: number
}

function placesOf({ a, b }: Truth): Place[] {
  return TORSO.map((name) => {
    const [p, q] = [a.pixels[name], b.pixels[name]]
    if (!p || !q) throw new Error(`rounds bench: the truth lacks ${name}`)
    return {
      earlier: { x: p.px[0], y: p.px[1] },
      later: { x: q.px[0], y: q.px[1] },
      mmPerPx: p.depthMm / a.intrinsics.fx,
    }
  })
}

const residuals = (places: readonly Place[], by: Similarity): number[] =>
  places.map(({ earlier, later, mmPerPx }) => distance(carried(by, later), earlier) * mmPerPx)
const median = (list: readonly number[]): number => {
  const sorted = [...list].sort((x, y) => x - y)
  return ((sorted[(sorted.length - 1) >> 1] ?? NaN) + (sorted[sorted.length >> 1] ?? NaN)) / 2
}
const tenth = (value: number): number => Math.round(value * 10) / 10

async function read(canvas: Canvas, model: Detector, path: string): Promise<ViewReading> {
  const picture = await canvas.decode(path)
  const person = await model.find(picture)
  const card = findSheet(picture, person && partAround(person, picture))
  return placePoints('front', picture, person, card)
}

/** What she is told of a pair, beside what is true. */
const told = ({ apart, card, cardsDisagree }: PhotoMatch) => ({
  toldShoulders: apart && tenth(apart.shoulders),
  toldHips: apart && tenth(apart.hips),
  card,
  cardsDisagreePercent: cardsDisagree && tenth(100 * (cardsDisagree - 1)),
})

async function main(): Promise<void> {
  const folder = resolve(process.argv[2] ?? USUAL)
  const nothing = (why: string): void => {
    console.log(`rounds bench: ${why}, nothing measured`)
    console.log(`RESULT ${JSON.stringify({ skipped: why })}`)
  }
  if (!existsSync(folder)) return nothing(`no pairs in "${folder}"`)
  const names = readdirSync(folder).flatMap((file) => /^(\d+)\.json$/.exec(file)?.[1] ?? [])
  if (names.length === 0) return nothing(`no pairs in "${folder}"`)
  const canvas = await openCanvas()
  if (!canvas) return nothing('no Chromium on this machine to decode JPEG')
  const model = await nodeDetector()
  const [all, best]: [number[], number[]] = [[], []]
  const refused: string[] = []
  const rows: Record<string, unknown> = {}
  try {
    for (const name of names.sort()) {
      const truth = JSON.parse(readFileSync(join(folder, `${name}.json`), 'utf8')) as {
        readonly views: Truth
      }
      const earlier = await read(canvas, model, join(folder, `${name}-a.jpg`))
      const later = await read(canvas, model, join(folder, `${name}-b.jpg`))
      const outcome = matchPhotos(earlier, later)
      if (!outcome.ok) {
        refused.push(name)
        console.log(`${name} refused: ${outcome.reason}`)
        continue
      }
      const places = placesOf(truth.views)
      const ideal = solved(places.flatMap((p) => onto(p.later, p.earlier, 1)))
      const own = residuals(places, outcome.match.onto)
      const least = ideal ? residuals(places, ideal) : []
      all.push(...own)
      best.push(...least)
      const figures = { median: tenth(median(own)), worst: tenth(Math.max(...own)) }
      const at = (part: string): number =>
        tenth(median(own.filter((_, k) => TORSO[k]?.startsWith(part))))
      const truly = { trueShoulders: at('shoulder'), trueHips: at('hip') }
      rows[name] = {
        ...figures,
        ...truly,
        bestMedian: tenth(median(least)),
        ...told(outcome.match),
      }
    }
  } finally {
    model.close()
    await canvas.close()
  }
  console.table(rows)
  const result = {
    residualMedianMm: tenth(median(all)),
    residualWorstMm: tenth(Math.max(...all)),
    n: all.length,
    pairs: names.length - refused.length,
    refused,
    bestMedianMm: tenth(median(best)),
  }
  console.log(`RESULT ${JSON.stringify(result)}`)
}

await main()
