/**
 * Ticks of the first things as they were kept before rounds kept them: beside the store, in this
 * browser. They are taken over once and then forgotten there.
 */
import { FIRST_THING_IDS, type FirstThing } from '../../rounds/first-things.ts'
import type { PreferenceStore } from '../kept-preferences.ts'

const KEY = 'tapetrue.first-things.v1'

/** What is ticked for a round; a spoilt or foreign record counts as nothing ticked. */
export const oldTicks = (
  store: PreferenceStore | undefined,
  round: string,
): readonly FirstThing[] => all(store)[round] ?? []

/** Lets the old ticks of one round go. */
export function forgetOldTicks(store: PreferenceStore | undefined, round: string): void {
  try {
    const { [round]: _gone, ...rest } = all(store)
    store?.setItem(KEY, JSON.stringify(rest))
  } catch {
    // Storage is full or denied: they are taken over once more, which changes nothing.
  }
}

function all(store: PreferenceStore | undefined): Record<string, readonly FirstThing[]> {
  try {
    const found: unknown = JSON.parse(store?.getItem(KEY) ?? 'null')
    if (typeof found !== 'object' || found === null) return {}
    return Object.fromEntries(
      Object.entries(found).map(([round, list]) => [
        round,
        Array.isArray(list) ? FIRST_THING_IDS.filter((id) => list.includes(id)) : [],
      ]),
    )
  } catch {
    return {}
  }
}
