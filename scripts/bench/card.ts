/**
 * How well card corners are found in rendered pictures with known corners.
 * Run: npx tsx scripts/bench/card.ts — says so and stops when the pictures are not there.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { findSheet, ID1, refineTaps, type CardOutcome } from '../../src/capture/card.ts'
import { distance, type Point } from '../../src/geometry/point.ts'
import { openCanvas } from '../figure/canvas.ts'

const FOLDER = fileURLToPath(new URL('../../../shared/data/bodies/dev/', import.meta.url))
const VIEWS = ['front', 'side', 'back'] as const

interface Row {
  readonly name: string
  readonly outcome: CardOutcome
  readonly meanPx: number
  readonly maxPx: number
  readonly scaleError: number
  readonly ms: number
}

interface Truth {
  readonly views: Record<
    string,
    {
      readonly intrinsics: { readonly fx: number }
      readonly extrinsics: { readonly R: number[][]; readonly t: number[] }
      readonly card: {
        readonly cornersPx: number[][]
        readonly markerCornersPx?: number[][]
        readonly center3d: number[]
        readonly markerCenter3d?: number[]
      }
    }
  >
}

const points = (pairs: readonly number[][]): [Point, Point, Point, Point] => {
  const [a, b, c, d] = pairs.map(([x = NaN, y = NaN]) => ({ x, y }))
  if (!a || !b || !c || !d) throw new Error(`card bench: ${pairs.length} corners`)
  return [a, b, c, d]
}

/** Depth of the card's middle over the focal length: millimetres a pixel there, however it is tilted. */
function trueMmPerPx({ intrinsics, extrinsics, card }: Truth['views'][string]): number {
  const { R, t } = extrinsics
  const middle = card.markerCenter3d ?? card.center3d
  const depth = middle.reduce((sum, v, k) => sum + v * (R[2]?.[k] ?? NaN), t[2] ?? NaN)
  return depth / intrinsics.fx
}
const NOWHERE: Point = { x: NaN, y: NaN }

function row(
  name: string,
  outcome: CardOutcome,
  truth: readonly Point[],
  ms: number,
  mmPerPx: number,
): Row {
  if (!outcome.ok) return { name, outcome, meanPx: NaN, maxPx: NaN, scaleError: NaN, ms }
  const off = outcome.card.corners.map((p, i) => distance(p, truth[i] ?? NOWHERE))
  const scaleError = 100 * (outcome.card.mmPerPx / mmPerPx - 1)
  const meanPx = off.reduce((a, b) => a + b, 0) / 4
  return { name, outcome, meanPx, maxPx: Math.max(...off), scaleError, ms }
}

interface CardFigures {
  readonly n: number
  readonly accepted: number
  readonly cornerMeanPx: number
  readonly cornerWorstPx: number
  readonly scaleMeanPercent: number
  readonly scaleMedianAbsPercent: number
  readonly scaleMaxAbsPercent: number
  readonly msPerPicture: number
}

/** Prints what stands out and gives the figures of one kind of card. */
function figures(label: string, rows: readonly Row[]): CardFigures {
  const found = rows.filter((r) => r.outcome.ok)
  for (const r of rows) {
    if (!r.outcome.ok) console.log(`  ${r.name} refused: ${r.outcome.reason.slice(0, 60)}`)
    else if (r.maxPx > 0.5 || Math.abs(r.scaleError) > 1)
      console.log(`  ${r.name} max ${r.maxPx.toFixed(2)} px, scale ${r.scaleError.toFixed(2)} %`)
  }
  const mean = (list: readonly Row[], f: (r: Row) => number): number =>
    rounded(list.reduce((sum, r) => sum + f(r), 0) / list.length)
  const sorted = found.map((r) => Math.abs(r.scaleError)).sort((a, b) => a - b)
  const made: CardFigures = {
    n: rows.length,
    accepted: found.length,
    cornerMeanPx: mean(found, (r) => r.meanPx),
    cornerWorstPx: rounded(Math.max(...found.map((r) => r.maxPx))),
    scaleMeanPercent: mean(found, (r) => r.scaleError),
    scaleMedianAbsPercent: rounded(sorted[sorted.length >> 1] ?? NaN),
    scaleMaxAbsPercent: rounded(sorted.at(-1) ?? NaN),
    msPerPicture: mean(rows, (r) => r.ms),
  }
  console.log(
    `${label}: ${made.accepted} of ${made.n} accepted, corners ${made.cornerMeanPx} px off in the mean`,
  )
  return made
}
const rounded = (value: number): number => Math.round(value * 1000) / 1000

async function main(): Promise<void> {
  if (!existsSync(FOLDER)) return console.log('card bench: no pictures beside the repository')
  const canvas = await openCanvas()
  if (!canvas) return console.log('card bench: no Chromium on this machine to decode JPEG')
  const [sheets, cards]: [Row[], Row[]] = [[], []]
  const bodies = readdirSync(FOLDER).flatMap((name) => /^(\d+)\.json$/.exec(name)?.[1] ?? [])
  try {
    for (const body of bodies.sort()) {
      const read = <T>(name: string): T =>
        JSON.parse(readFileSync(`${FOLDER}${body}${name}`, 'utf8')) as T
      const truth = read<Truth>('.json')
      const taps = read<Record<string, number[][]>>('-taps.json')
      for (const view of VIEWS) {
        const sheet = await canvas.decode(`${FOLDER}${body}-${view}.jpg`)
        let start = performance.now()
        const found = findSheet(sheet)
        let ms = performance.now() - start
        const [own, other] = [truth.views[view], truth.views[`${view}-id1`]]
        if (!own || !other) continue
        const square = points(own.card.markerCornersPx ?? [])
        sheets.push(row(`${body}-${view}`, found, square, ms, trueMmPerPx(own)))
        const photo = await canvas.decode(`${FOLDER}${body}-${view}-id1.jpg`)
        start = performance.now()
        const tapped = refineTaps(photo, points(taps[view] ?? []), ID1)
        ms = performance.now() - start
        const rim = points(other.card.cornersPx)
        cards.push(row(`${body}-${view}-id1`, tapped, rim, ms, trueMmPerPx(other)))
      }
    }
  } finally {
    await canvas.close()
  }
  const [sheet, id1] = [figures('printed sheet', sheets), figures('ID-1, taps', cards)]
  console.log(`RESULT ${JSON.stringify({ sheet, id1 })}`)
}

await main()
