/**
 * The published instances (EURO working group on cutting and packing, ESICUP, data sets page)
 * against the best published densities. RESULT {INSTANCE: {density, ratio, seconds90}}: density in
 * %, its ratio to the best published one, and the seconds until 90 % of that was reached.
 */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pack } from '../../../src/layout/pack.ts'
import { outlineArea, outlineOf, turnedOutline } from '../../../src/layout/outline.ts'
import type { Layout, Strip, StripPiece } from '../../../src/layout/strip.ts'
import { areaOffCloth, commonArea } from '../../../tests/layout/common-area.ts'

/**
 * Best densities known, %: Gardeyn, Vanden Berghe and Wauters 2025, "An open-source heuristic to
 * reboot 2D nesting research", arXiv 2509.13329, its published best layouts measured anew, area of
 * the pieces over length times width.
 */
const BEST: Readonly<Record<string, number>> = {
  albano: 89.82,
  blaz1: 86.22,
  dagli: 90.17,
  fu: 92.39,
  jakobs1: 89.24,
  jakobs2: 87.72,
  mao: 86.87,
  marques: 92.01,
  shapes0: 69.98,
  shapes1: 76.72,
  shirts: 90.92,
  swim: 79.83,
  trousers: 92.61,
}

interface Instance {
  readonly strip_height: number
  readonly items: readonly {
    readonly id: number
    readonly demand: number
    readonly allowed_orientations: readonly number[]
    readonly shape: { readonly data: readonly (readonly [number, number])[] }
  }[]
}

export interface PublishedOptions {
  readonly folder: string
  readonly seconds: number
  readonly only: readonly string[]
  readonly seed: number
}

export function published({ folder, seconds, only, seed }: PublishedOptions): void {
  const result: Record<string, object> = {}
  for (const name of only.length > 0 ? only : Object.keys(BEST)) {
    const [file, best] = [join(folder, `${name}.json`), BEST[name]]
    if (!existsSync(file) || best === undefined) {
      console.log(`${name}: no such instance here, left out`)
      continue
    }
    const strip = stripOf(JSON.parse(readFileSync(file, 'utf8')) as Instance)
    result[name] = told(name, strip, best, seconds, seed)
  }
  console.log(`RESULT ${JSON.stringify(result)}`)
}

function told(name: string, strip: Strip, best: number, seconds: number, seed: number): object {
  const area = strip.pieces.reduce((sum, p) => sum + outlineArea(p.poses[0]!.outline), 0)
  const density = (l: Layout): number => (100 * area) / (l.length * strip.width)
  const [used, began] = [coreSeconds(), performance.now()]
  let [seconds90, first] = [NaN, NaN]
  const layout = pack(strip, {
    seed,
    spent: () => used() / seconds,
    onBetter: (l) => {
      if (Number.isNaN(first)) first = density(l)
      if (Number.isNaN(seconds90) && density(l) >= 0.9 * best) seconds90 = used()
    },
  })
  const [core, passed] = [used(), (performance.now() - began) / 1000]
  const shared = commonArea(strip, layout)
  const off = areaOffCloth(strip, layout)
  const d = density(layout)
  console.log(
    `${name}: ${d.toFixed(2)} % of ${best} % (ratio ${(d / best).toFixed(4)}), length ${layout.length.toFixed(3)}, ` +
      `first layout ${first.toFixed(2)} %, 90 % of the best after ${seconds90.toFixed(2)} s; ` +
      `${core.toFixed(1)} s of one core, ${passed.toFixed(1)} s passed; ` +
      `shared area ${shared}, off the cloth ${off.toExponential(1)}`,
  )
  const round = (v: number, digits: number): number => Number(v.toFixed(digits))
  return { density: round(d, 2), ratio: round(d / best, 4), seconds90: round(seconds90, 2) }
}

/** Seconds of processor time since now. */
export function coreSeconds(): () => number {
  const from = process.cpuUsage()
  return () => {
    const { user, system } = process.cpuUsage(from)
    return (user + system) / 1e6
  }
}

function stripOf(instance: Instance): Strip {
  const pieces = instance.items.flatMap((item): StripPiece[] => {
    const outline = outlineOf(item.shape.data)
    const poses = item.allowed_orientations.map((o) => ({ outline: turnedOutline(outline, o) }))
    return Array.from({ length: item.demand }, (_, k) => ({ id: `${item.id}.${k + 1}`, poses }))
  })
  return { width: instance.strip_height, pieces, gap: 0 }
}
