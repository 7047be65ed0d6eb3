/** A muslin on a body: the draft it was cut from held against what the body needs. */
import type { Choices } from '../../../src/draft/choices.ts'
import { pieceOf, type Draft, type GarmentId } from '../../../src/draft/draft.ts'
import { GARMENTS } from '../../../src/draft/garments.ts'
import { draft } from '../../../src/draft/make.ts'
import type { MeasurementId } from '../../../src/measurements/catalogue.ts'
import type { Confirmed } from '../../../src/measurements/confirmed.ts'
import { taped, type Numbers } from '../bodies/numbers.ts'
import { gape } from './gape.ts'
import { misfit, type Lengths } from './lengths.ts'
import { needed, shoulderOf } from './needed.ts'
import { sewn, type Halves } from './sewn.ts'
import type { Worn } from './signs.ts'

/** Left untaped: a wanted sleeve length is no number of the body. */
const UNTAPED: readonly MeasurementId[] = ['sideNeckToSleeveEdge']

export const confirmedOf = (body: Numbers, garment: GarmentId): Confirmed => {
  const { needs, uses } = GARMENTS[garment]
  return taped(
    body,
    needs,
    uses.filter((id) => !UNTAPED.includes(id)),
  )
}

export const draftOf = (body: Numbers, garment: GarmentId, intent: Choices): Draft =>
  draft(garment, confirmedOf(body, garment), intent)

export const halvesOf = (d: Draft): Halves => ({
  back: pieceOf(d, 'back'),
  front: pieceOf(d, 'front'),
})

/** A body, what the garment is meant to be on it, and how its piece from the true numbers measures. */
export interface Wearer {
  readonly body: Numbers
  readonly garment: GarmentId
  readonly intent: Choices
  readonly right: Lengths
}
export const wearer = (body: Numbers, garment: GarmentId, intent: Choices): Wearer => ({
  body,
  garment,
  intent,
  right: sewn(halvesOf(draftOf(body, garment, intent)), shoulderOf(body)),
})

export function worn(halves: Halves, { body, garment, intent, right }: Wearer): Worn {
  const own = sewn(halves, shoulderOf(body))
  const { armholeFront } = right
  const need: Lengths = {
    ...needed(body, garment, intent),
    ...(armholeFront === undefined ? {} : { armholeFront }),
  }
  const off = misfit(own, need)
  return {
    misfit: off,
    sewn: own,
    needed: need,
    body,
    intent,
    gape: gape(off),
  }
}
