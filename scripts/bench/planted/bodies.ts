/**
 * The bodies of the bench: women of ANSUR 1988, every so many in the order of their bust, and one
 * in five drawn larger from the tape model. Taken are those on whom the muslin from their true
 * numbers shows nothing, so that the planted error is the only one.
 */
import { drawnBodies } from '../bodies/drawn-bodies.ts'
import { numberOf, type Numbers } from '../bodies/numbers.ts'
import { women1988 } from '../bodies/ansur-1988.ts'
import type { Survey } from '../bodies/survey-file.ts'
import { normal } from '../bodies/chance.ts'

/** One in so many is drawn larger. */
const LARGER_EVERY = 5

export interface Taken {
  readonly bodies: readonly Numbers[]
  /** How many were looked at to find them. */
  readonly looked: number
}

export function bodies(
  survey: Survey,
  count: number,
  seed: number,
  fits: (body: Numbers) => boolean,
): Taken {
  const larger = Math.floor(count / LARGER_EVERY)
  const women = women1988(survey).bodies.map(withChest)
  const drawn = drawnBodies(survey, larger * 8, seed).bodies.map(withChest)
  const survey1 = spread(byBust(women), count - larger, seed, fits)
  const drawn1 = spread(byBust(drawn), larger, seed + 1, fits)
  return {
    bodies: [...survey1.bodies, ...drawn1.bodies],
    looked: survey1.looked + drawn1.looked,
  }
}

const byBust = (list: readonly Numbers[]): readonly Numbers[] =>
  [...list].sort((a, b) => numberOf(a, 'bustGirth') - numberOf(b, 'bustGirth'))

/** One body from each of equal parts of the row, the first that fits from a place chance gives. */
function spread(
  row: readonly Numbers[],
  count: number,
  seed: number,
  fits: (body: Numbers) => boolean,
): Taken {
  const chance = normal(seed)
  const taken: Numbers[] = []
  let looked = 0
  for (let part = 0; part < count; part++) {
    const from = Math.floor((part * row.length) / count)
    const own = row.slice(from, Math.floor(((part + 1) * row.length) / count))
    const start = Math.floor(Math.abs(chance() * 1000)) % own.length
    for (let i = 0; i < own.length; i++) {
      const body = own[(start + i) % own.length]
      looked++
      if (body && fits(body)) {
        taken.push(body)
        break
      }
    }
  }
  return { bodies: taken, looked }
}

/**
 * Neither survey taped across the chest. The British size table has it 20 mm under the back at
 * bust 880 and gaining 2 mm on it for 40 mm of bust; so here, from each woman's own back.
 */
const withChest = (body: Numbers): Numbers => ({
  ...body,
  acrossChest: numberOf(body, 'acrossBack') - 20 + (2 * (numberOf(body, 'bustGirth') - 880)) / 40,
})
