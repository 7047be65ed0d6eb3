/**
 * One measurement or choice moves only the points that say they rest on it, on every garment: the
 * draft's own account of itself is held to two drafts that differ in one number.
 */
import { describe, expect, test } from 'vitest'
import { CHOICES, type Choices } from '../../src/draft/choices.ts'
import { movedBy, type Draft } from '../../src/draft/draft.ts'
import { GARMENT_IDS, GARMENTS, standardFor } from '../../src/draft/garments.ts'
import { attempted } from '../../src/draft/make.ts'
import { record } from '../../src/draft/record.ts'
import { mm } from '../../src/units/length.ts'
import { body, MIDDLE, type InventedNumbers } from '../bodies.ts'

const BODIES: readonly InventedNumbers[] = [
  MIDDLE,
  { ...MIDDLE, sideNeckOverApexToWaist: 470, waistGirth: 640 },
]
const drawn = (
  garment: (typeof GARMENT_IDS)[number],
  numbers: InventedNumbers,
  choices: Choices,
): Draft | undefined => {
  const made = attempted(garment, body({}, numbers), choices)
  return made.ok ? made.draft : undefined
}
/** Points that lie elsewhere by more than the record rounds. */
const away = (d: Draft, other: Draft): string[] => {
  const [a, b] = [record(d).points, record(other).points]
  return Object.keys(a).filter((name) => {
    const [p, q] = [a[name]!, b[name]]
    return q !== undefined && Math.hypot(p[0] - q[0], p[1] - q[1]) > 0.02
  })
}
const unsaid = (before: Draft, after: Draft, name: string): string[] => {
  const allowed = new Set([...movedBy(before, name), ...movedBy(after, name)])
  return away(before, after).filter((n) => !allowed.has(n))
}

describe.each(GARMENT_IDS)('%s', (garment) => {
  const { needs, uses, choices: read } = GARMENTS[garment]
  test.each([...needs, ...uses])('%s', (id) => {
    for (const numbers of BODIES) {
      const choices = standardFor(garment)
      const before = drawn(garment, numbers, choices)
      const after = drawn(garment, { ...numbers, [id]: numbers[id] + 5 }, choices)
      if (!before || !after) throw new Error(`${garment}: ${id} is not drawn`)
      expect(unsaid(before, after, id)).toEqual([])
    }
  })
  test.each(read)('%s', (id) => {
    for (const numbers of BODIES) {
      const choices = standardFor(garment)
      const { max, step } = CHOICES[id]
      const to = mm(choices[id] + 4 * step <= max ? choices[id] + 4 * step : choices[id] - 4 * step)
      const before = drawn(garment, numbers, choices)
      const after = drawn(garment, numbers, { ...choices, [id]: to })
      if (!before || !after) throw new Error(`${garment}: ${id} is not drawn`)
      expect(unsaid(before, after, id)).toEqual([])
    }
  })
})
