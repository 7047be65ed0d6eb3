/** The two halves of making a draft: drawn, then whole and proved. */
import type { Body } from '../measurements/confirmed.ts'
import { CannotDraw, type Undrawable } from './cannot-draw.ts'
import type { Choices } from './choices.ts'
import type { Draft, GarmentId } from './draft.ts'
import { finished } from './finished.ts'
import type { Making } from './garment.ts'
import { BLOUSE } from './garments/blouse.ts'
import { BLOCK, SLEEVELESS } from './garments/bodice.ts'
import { DRESS } from './garments/dress.ts'
import { SLEEVED } from './garments/sleeved.ts'
import type { Sheet } from './sheet.ts'

const MAKING: Readonly<Record<GarmentId, Making>> = {
  blouse: BLOUSE,
  block: BLOCK,
  sleeveless: SLEEVELESS,
  sleeve: SLEEVED,
  dress: DRESS,
}

export const draft = (garment: GarmentId, body: Body, choices: Choices): Draft =>
  proved(drawn(garment, body, choices))

export type Attempt =
  { readonly ok: true; readonly draft: Draft } | { readonly ok: false; readonly why: Undrawable }

/** A draft, or the reason why these numbers cannot be drawn together. Never throws for numbers. */
export function attempted(garment: GarmentId, body: Body, choices: Choices): Attempt {
  return whyNot(() => draft(garment, body, choices))
}

/** The same for any making of a draft, with corrections for instance. */
export function whyNot(make: () => Draft): Attempt {
  try {
    return { ok: true, draft: make() }
  } catch (error) {
    if (error instanceof CannotDraw) return { ok: false, why: error.why }
    throw error
  }
}

/** The pieces as constructed, not yet proved: for corrections, which prove once at the end. */
export function drawn(garment: GarmentId, body: Body, choices: Choices): Draft {
  const list = MAKING[garment].draw(body, choices)
  return {
    garment,
    body,
    choices,
    pieces: list.map(finished),
    openings: [],
    steps: list.flatMap(({ sheet }) => sheet.steps),
    restsOn: Object.fromEntries(list.flatMap(({ sheet }) => provenance(sheet))),
    findings: [],
  }
}

/**
 * The same draft made whole: openings and finishing pieces, all from the halves as they stand.
 * Once, after the last correction.
 */
export const madeWhole = (d: Draft): Draft => MAKING[d.garment].complete(d)

/** Made whole and proved. */
export function proved(d: Draft): Draft {
  const whole = madeWhole(d)
  return { ...whole, findings: MAKING[d.garment].prove(whole) }
}

const provenance = (sheet: Sheet): [string, readonly string[]][] =>
  Object.entries(sheet.provenance).map(([name, list]) => [`${sheet.piece}.${name}`, list])
