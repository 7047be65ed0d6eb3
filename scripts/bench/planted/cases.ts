/**
 * The cases of the bench: every kind of planted error on so many bodies. In each kind one case in
 * ten has no error (the muslin is right and something else is seen), one in five of the others a
 * misleading second complaint, one in five a question that she cannot answer; exact shares, drawn
 * by a seed.
 */
import type { Choices } from '../../../src/draft/choices.ts'
import type { GarmentId } from '../../../src/draft/draft.ts'
import type { Numbers } from '../bodies/numbers.ts'
import type { Survey } from '../bodies/survey-file.ts'
import { whole, type Chance } from '../bodies/chance.ts'
import { NOTHINGS, type Nothing } from './beside.ts'
import { candidates } from './bodies.ts'
import { intentOf, type Kind } from './kinds.ts'
import { lengthOf } from './lengths.ts'
import { draftOf, halvesOf, wearer, worn } from './muslin.ts'
import { signs } from './signs.ts'

export interface Case {
  readonly kind: Kind
  readonly garment: GarmentId
  /** True numbers, and what the garment is meant to be. */
  readonly body: Numbers
  readonly intent: Choices
  /** What the muslin was drafted from. */
  readonly wrong: Numbers
  readonly drafted: Choices
  readonly nothing: Nothing | undefined
  readonly misled: boolean
  readonly unanswered: boolean
  readonly seed: number
}

export interface Cases {
  readonly cases: readonly Case[]
  /** Bodies looked at, and those on whom the error did not show or the muslin would not fit anyway. */
  readonly looked: number
  readonly passedOver: number
}

export const NOTHING_EVERY = 10
export const FIFTH = 5

export function casesOf(
  survey: Survey,
  kinds: readonly Kind[],
  perKind: number,
  seed: number,
): Cases {
  let [looked, passedOver] = [0, 0]
  const row = candidates(survey, perKind, seed)
  const cases = kinds.flatMap((kind, k) => {
    const chance = whole(seed + 7919 * (k + 1))
    const nothing = drawnShare(perKind, NOTHING_EVERY, chance)
    const misled = drawnShare(perKind, FIFTH, chance)
    const unanswered = drawnShare(perKind, FIFTH, chance)
    const seeds = row.map(() => chance())
    return row.flatMap((part, i) => {
      const garment = kind.garments[i % kind.garments.length]
      if (!garment) return []
      const body = part.find((b) => {
        looked++
        const good = suits(b, kind, garment)
        if (!good) passedOver++
        return good
      })
      if (!body) return []
      const sight = NOTHINGS[garment][(i + k) % NOTHINGS[garment].length]
      return [
        caseOf(kind, garment, body, {
          nothing: nothing.has(i) ? sight : undefined,
          misled: misled.has(i),
          unanswered: unanswered.has(i),
          seed: seeds[i] ?? 1,
        }),
      ]
    })
  })
  return { cases, looked, passedOver }
}

function caseOf(
  kind: Kind,
  garment: GarmentId,
  body: Numbers,
  drawn: Pick<Case, 'nothing' | 'misled' | 'unanswered' | 'seed'>,
): Case {
  const intent = intentOf(garment, kind)
  const right = drawn.nothing !== undefined
  return {
    kind,
    garment,
    body,
    intent,
    wrong: right ? body : kind.plant(body),
    drafted: right ? intent : (kind.plantChoice?.(intent) ?? intent),
    ...drawn,
  }
}

/** A muslin from the true numbers is within this of what the body needs, mm. */
const FITS_WITHIN = 3

/** The true numbers give a muslin that fits, and the planted error is what shows first. */
function suits(body: Numbers, kind: Kind, garment: GarmentId): boolean {
  const { intent, wrong, drafted } = caseOf(kind, garment, body, NO_DRAW)
  try {
    const own = wearer(body, garment, intent)
    const right = worn(halvesOf(draftOf(body, garment, intent)), own)
    if (Object.values(right.misfit).some((off) => Math.abs(off) > FITS_WITHIN)) return false
    const planted = worn(halvesOf(draftOf(wrong, garment, drafted)), own)
    const error = Math.abs(lengthOf(planted.misfit, kind.counted))
    return error >= kind.size * LEAST_SHARE && signs(planted)[0]?.id === kind.shows
  } catch {
    // Numbers that cannot be drawn together: no muslin, nothing to tell.
    return false
  }
}
const NO_DRAW = { nothing: undefined, misled: false, unanswered: false, seed: 1 }
/** A small shoulder or a small dart may show a little less than the kind says. */
const LEAST_SHARE = 0.7

/** So many in `count`, exactly one in `every`, drawn without putting back. */
function drawnShare(count: number, every: number, chance: Chance): ReadonlySet<number> {
  const places = Array.from({ length: count }, (_, i) => i)
  for (let i = places.length - 1; i > 0; i--) {
    const j = chance() % (i + 1)
    const [a, b] = [places[i] ?? 0, places[j] ?? 0]
    places[i] = b
    places[j] = a
  }
  return new Set(places.slice(0, Math.round(count / every)))
}
