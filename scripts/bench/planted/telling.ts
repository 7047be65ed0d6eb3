/**
 * How a muslin is told: the weightiest sign first, pins read with the scatter of a hand and a
 * tape, now and then a second complaint that misleads, now and then a question left open.
 */
import type { Chance } from '../bodies/chance.ts'
import { misleading, type Nothing } from './beside.ts'
import type { Lengths } from './lengths.ts'
import type { Sign } from './sign.ts'

/** Standard deviations of a reading, mm. */
export interface Scatter {
  readonly pin: number
  readonly level: number
}
/** ± holds nine readings in ten, as everywhere in this program: 1.645 standard deviations. */
const NINE_IN_TEN = 1.645
/** ±3 mm on a pin, ±5 mm on a level line. */
export const SCATTER: Scatter = { pin: 3 / NINE_IN_TEN, level: 5 / NINE_IN_TEN }
/** The same figures taken for standard deviations, which is harder. */
export const WIDER: Scatter = { pin: 3, level: 5 }

/** The waist line against the cord, mm, positive where the line lies too low. */
export interface LevelLines {
  readonly cf: number
  readonly side: number
  readonly cb: number
}

export interface Told {
  /** As told: pins with their scatter, causes the true ones. */
  readonly signs: readonly Sign[]
  readonly levels: LevelLines
  /** How much longer each edge was found than drafted, mm. */
  readonly stretched: Readonly<Record<string, number>>
}

export const NOTHING_TOLD: Told = { signs: [], levels: { cf: 0, side: 0, cb: 0 }, stretched: {} }

/**
 * Cloth that is pinned away is pinned too close: of such a pin 85 to 90 in a hundred are wanted
 * (common practice), so she pins the wanted amount over that, each woman by a share of her own.
 * A slit opens by what is missing, and a line is marked where it belongs.
 */
const WANTED = { mean: 0.875, spread: 0.025 / NINE_IN_TEN } as const
const PINNED_AWAY = (s: Sign): boolean =>
  s.pin.how === 'pinch' || s.pin.how === 'fold' || (s.id === 'SH1' && s.pin.how === 'newLine')

export function read(sign: Sign, scatter: Scatter, chance: Chance): Sign {
  const { pin } = sign
  const off = chance() * (pin.how === 'level' ? scatter.level : scatter.pin)
  const close = PINNED_AWAY(sign) ? 1 / (WANTED.mean + chance() * WANTED.spread) : 1
  const value = pin.value * close + off
  // A reading of a gap or a fold is never under nought; only a way up or down has a sign.
  return { ...sign, pin: { ...pin, value: pin.where === 'dart' ? value : Math.max(0, value) } }
}

export function levelLines(misfit: Lengths, scatter: Scatter, chance: Chance): LevelLines {
  const line = (true_: number | undefined): number => (true_ ?? 0) + chance() * scatter.level
  return {
    cf: line(misfit.frontLength),
    side: line(misfit.sideLength),
    cb: line(misfit.backLength),
  }
}

/**
 * plain: the weightiest sign. misled: a misleading one as well. roundabout: she has only seen what
 * the fault does elsewhere, where a cause beside the first is the true one.
 */
export type Telling = 'plain' | 'misled' | 'roundabout'

/** @param looked complaints she was asked to look at again: told beside what weighs most */
export function tell(
  found: readonly Sign[],
  misfit: Lengths,
  telling: Telling,
  scatter: Scatter,
  chance: Chance,
  looked: readonly string[] = [],
): Told {
  const [first] = found
  const beside = first && telling !== 'plain' ? misleading(first) : []
  const caused = beside.filter((s) => s.causes.length > 0)
  const list = telling === 'roundabout' ? caused : beside
  const second = list[pick(list.length, chance)]
  const alone = telling === 'roundabout' && second !== undefined
  const asked = found.filter(
    ({ id }) => looked.includes(id) && id !== first?.id && id !== second?.id,
  )
  const signs = [...(first && !alone ? [first] : []), ...(second ? [second] : []), ...asked]
  return {
    signs: signs.map((s) => read(s, scatter, chance)),
    levels: levelLines(misfit, scatter, chance),
    stretched: {},
  }
}

export function tellNothing(sight: Nothing, scatter: Scatter, chance: Chance): Told {
  const { stretched, ...sign } = sight
  const none: Lengths = { frontLength: 0, sideLength: 0, backLength: 0 }
  return {
    signs: [read(sign, scatter, chance)],
    levels: levelLines(none, scatter, chance),
    stretched: stretched ? { [stretched.edge]: stretched.by } : {},
  }
}

/** A place in a list of so many, from a normal deviate: near enough to even. */
export const pick = (count: number, chance: Chance): number =>
  count === 0 ? 0 : Math.floor(Math.abs(chance()) * 1000) % count
