/** Which fit the eases make. */
import type { GarmentId } from '../../draft/draft.ts'
import { standardFor } from '../../draft/garments.ts'
import { CHOICE_IDS, FITS, withFit, type Choices, type Fit } from '../../draft/choices.ts'

export const FIT_IDS = Object.keys(FITS) as readonly Fit[]

/** Undefined where she turned an ease by itself. */
export const fitOf = (choices: Choices): Fit | undefined =>
  FIT_IDS.find((fit) => {
    const set = withFit(choices, fit)
    return CHOICE_IDS.every((id) => set[id] === choices[id])
  })

/** A block or a sleeveless body has eases of its own; the two fits are for a blouse. */
export const hasFits = (garment: GarmentId): boolean => fitOf(standardFor(garment)) !== undefined
