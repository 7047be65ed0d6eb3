/** One garment changed in two windows at once: both changes, unless they are about the same thing. */
import { parseGarmentRow } from './rows.ts'
import { sameData } from './same.ts'
import type { HungGarment } from './schema/garment.ts'

/**
 * `stored` with what `mine` changed since `seen`.
 * @returns undefined when both changed the same field, and not to the same
 */
export function mergedGarment(
  seen: HungGarment,
  mine: HungGarment,
  stored: HungGarment,
): HungGarment | undefined {
  const fields = new Set([...keysOf(seen), ...keysOf(mine), ...keysOf(stored)])
  const merged = new Map<string, unknown>()
  for (const field of fields) {
    const [was, here, there] = [seen[field], mine[field], stored[field]]
    const both = !sameData(here, was) && !sameData(there, was) && !sameData(here, there)
    if (both && field !== FOUND) return undefined
    const value = sameData(here, was) ? there : here
    if (value !== undefined) merged.set(field, value)
  }
  const read = parseGarmentRow(Object.fromEntries(merged))
  return read.ok ? read.value : undefined
}

/** What the program found by itself: the newer stands, and nothing of hers is lost. */
const FOUND = 'laid'

const keysOf = (garment: HungGarment) => Object.keys(garment) as (keyof HungGarment)[]
