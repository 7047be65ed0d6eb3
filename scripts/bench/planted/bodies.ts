/**
 * The bodies of the bench: women of ANSUR 1988 in the order of their bust, cut into equal parts,
 * and one part in five of larger bodies drawn from the tape model. A case takes the first body of
 * its part that suits it, from a place that chance gives.
 */
import { women1988 } from '../bodies/ansur-1988.ts'
import { whole, type Chance } from '../bodies/chance.ts'
import { drawnBodies } from '../bodies/drawn-bodies.ts'
import { numberOf, type Numbers } from '../bodies/numbers.ts'
import type { Survey } from '../bodies/survey-file.ts'

/** One part in so many is drawn larger. */
const LARGER_EVERY = 5
/** Larger bodies drawn to choose from, for each part. */
const TO_CHOOSE = 20

/** So many parts, each a row of bodies to be looked at in turn. */
export function candidates(
  survey: Survey,
  count: number,
  seed: number,
): readonly (readonly Numbers[])[] {
  const larger = Math.floor(count / LARGER_EVERY)
  const chance = whole(seed)
  const parts = [
    ...cut(women1988(survey).bodies.map(withChest), count - larger, chance),
    ...cut(drawnBodies(survey, larger * TO_CHOOSE, seed).bodies.map(withChest), larger, chance),
  ]
  // Garments take turns by place, so small and large bodies are mixed among them.
  return shuffled(parts, chance)
}

function cut(
  bodies: readonly Numbers[],
  count: number,
  chance: Chance,
): readonly (readonly Numbers[])[] {
  const row = [...bodies].sort((a, b) => numberOf(a, 'bustGirth') - numberOf(b, 'bustGirth'))
  return Array.from({ length: count }, (_, part) => {
    const own = row.slice(
      Math.floor((part * row.length) / count),
      Math.floor(((part + 1) * row.length) / count),
    )
    const start = chance() % Math.max(1, own.length)
    return [...own.slice(start), ...own.slice(0, start)]
  })
}

function shuffled<T>(list: readonly T[], chance: Chance): T[] {
  const keyed = list.map((item) => ({ item, key: chance() }))
  return keyed.sort((a, b) => a.key - b.key).map(({ item }) => item)
}

/**
 * Neither survey taped across the chest. The British size table has it 20 mm under the back at
 * bust 880 and gaining 2 mm on it for 40 mm of bust; so here, from each woman's own back.
 */
const withChest = (body: Numbers): Numbers => ({
  ...body,
  acrossChest: numberOf(body, 'acrossBack') - 20 + (2 * (numberOf(body, 'bustGirth') - 880)) / 40,
})
