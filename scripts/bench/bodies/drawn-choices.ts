/**
 * Choices drawn evenly from the whole of their ranges, on the step of each, and every word of an
 * option as often as another: what no hand would turn together is drawn together too.
 */
import { CHOICES, type Choices } from '../../../src/draft/choices.ts'
import type { GarmentId } from '../../../src/draft/draft.ts'
import { GARMENTS, standardFor } from '../../../src/draft/garments.ts'
import { OPTIONS } from '../../../src/draft/options.ts'
import { whole } from './chance.ts'

/** One set of choices after the other, the same for the same seed. */
export function choiceDrawer(garment: GarmentId, seed: number): () => Choices {
  const next = whole(seed)
  const share = (): number => next() / 2 ** 32
  const { choices, options } = GARMENTS[garment]
  return () => {
    const amounts = choices.map((id) => {
      const { min, max, step } = CHOICES[id]
      const steps = Math.floor((max - min) / step)
      return [id, min + step * Math.floor(share() * (steps + 1))] as const
    })
    const words = options.map((id) => {
      const all = Object.keys(OPTIONS[id].words)
      return [id, all[Math.floor(share() * all.length)]] as const
    })
    return { ...standardFor(garment), ...Object.fromEntries([...amounts, ...words]) }
  }
}
