/**
 * What the camera bench takes from the truth beside the photographs: which bodies wear a cord or
 * dots, to report them apart, and where the corners of a bank-size card are, for simulated taps.
 */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { VIEWS, type View } from '../../../src/capture/reading.ts'
import { BadInput, type BodyPhotos } from '../../estimate/folder.ts'

export const GROUPS = ['cord', 'noCord', 'dots'] as const
export type Group = (typeof GROUPS)[number]

/** A finger lands within this of the corner it means, px of the photo. */
const TAP_ERROR_PX = 6

interface TruthFile {
  readonly dots?: unknown
  readonly appearance?: { readonly waistBand?: boolean }
  readonly views?: Readonly<
    Record<string, { readonly card?: { readonly cornersPx?: readonly (readonly number[])[] } }>
  >
}

export function truthFile(folder: string, { name }: BodyPhotos): TruthFile {
  const path = join(folder, `${name}.json`)
  if (!existsSync(path)) throw new BadInput(`"${path}" is missing: the bench needs the truth.`)
  return JSON.parse(readFileSync(path, 'utf8')) as TruthFile
}

export function groupOf(truth: TruthFile): Group {
  if (truth.dots !== undefined) return 'dots'
  return truth.appearance?.waistBand === true ? 'cord' : 'noCord'
}

/** The body with four taps per view: the true corners, each strayed by a seeded error. */
export function withTaps(body: BodyPhotos, truth: TruthFile): BodyPhotos {
  const taps: Partial<Record<View, { x: number; y: number }[]>> = {}
  VIEWS.forEach((view, k) => {
    const corners = truth.views?.[`${view}-id1`]?.card?.cornersPx
    if (!corners) return
    const chance = seeded(seedOf(body.name) * VIEWS.length + k)
    taps[view] = corners.map(([x = NaN, y = NaN]) => {
      const [turn, away] = [2 * Math.PI * chance(), TAP_ERROR_PX * chance()]
      return { x: x + away * Math.cos(turn), y: y + away * Math.sin(turn) }
    })
  })
  return { ...body, taps }
}

const seedOf = (name: string): number =>
  [...name].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) >>> 0, 7)

/** Numbers from 0 to 1 that are the same in every run: a 32-bit counter, mixed (mulberry32). */
function seeded(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}
