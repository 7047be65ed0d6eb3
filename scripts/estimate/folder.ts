/** What lies in a folder of photographs: NN-front.jpg, NN-side.jpg, NN-back.jpg, taps, truth. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { VIEWS, type View } from '../../src/capture/reading.ts'

export type CardKind = 'sheet' | 'id1'
export interface BodyPhotos {
  readonly name: string
  readonly files: Readonly<Partial<Record<View, string>>>
  readonly taps: Readonly<Partial<Record<View, readonly { x: number; y: number }[]>>>
  /** Tape measurements beside the photographs, mm, where there are any. */
  readonly truth: Readonly<Record<string, number>> | undefined
}
/** A sentence for the person at the command line; exit code 2. */
export class BadInput extends Error {}

const PHOTO = /^(.+?)-(front|side|back)(-id1)?\.(jpe?g|png)$/i

export function bodiesIn(folder: string, card: CardKind): BodyPhotos[] {
  if (!existsSync(folder) || !statSync(folder).isDirectory())
    throw new BadInput(`There is no folder "${folder}".`)
  const bodies = new Map<string, Partial<Record<View, string>>>()
  for (const file of readdirSync(folder).sort()) {
    const [, name, view, id1] = PHOTO.exec(file) ?? []
    const known = VIEWS.find((v) => v === view?.toLowerCase())
    if (!name || !known || (id1 !== undefined) !== (card === 'id1')) continue
    const files = bodies.get(name) ?? {}
    files[known] = file
    bodies.set(name, files)
  }
  if (bodies.size === 0) {
    const wanted = card === 'id1' ? 'NN-front-id1.jpg' : 'NN-front.jpg'
    throw new BadInput(`No photo named like ${wanted} lies in "${folder}".`)
  }
  return [...bodies].map(([name, files]) => ({
    name,
    files,
    taps: card === 'id1' ? tapsOf(join(folder, `${name}-taps.json`)) : {},
    truth: truthOf(join(folder, `${name}.json`)),
  }))
}

function readJson(path: string): unknown {
  try {
    return JSON.parse(readFileSync(path, 'utf8'))
  } catch {
    throw new BadInput(`"${path}" is not readable JSON.`)
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

function tapsOf(path: string): BodyPhotos['taps'] {
  if (!existsSync(path)) return {}
  const json = readJson(path)
  const taps: Partial<Record<View, { x: number; y: number }[]>> = {}
  for (const view of VIEWS) {
    const value = isRecord(json) ? json[view] : undefined
    if (value === undefined) continue
    const pairs = Array.isArray(value) ? value.map((pair) => pointOf(pair)) : []
    if (pairs.length !== 4 || pairs.includes(undefined))
      throw new BadInput(`"${path}" must give four taps [x, y] for ${view}.`)
    taps[view] = pairs.flatMap((pair) => pair ?? [])
  }
  return taps
}

function pointOf(pair: unknown): { x: number; y: number } | undefined {
  if (!Array.isArray(pair)) return undefined
  const [x, y]: unknown[] = pair
  return typeof x === 'number' && typeof y === 'number' ? { x, y } : undefined
}

function truthOf(path: string): BodyPhotos['truth'] {
  if (!existsSync(path)) return undefined
  const json = readJson(path)
  const measures = isRecord(json) ? json.measures : undefined
  if (!isRecord(measures)) return undefined
  const numbers = Object.entries(measures).flatMap(([key, value]) =>
    typeof value === 'number' ? [[key, value] as const] : [],
  )
  return Object.fromEntries(numbers)
}
