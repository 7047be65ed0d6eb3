/**
 * What is looked at before anything is read off a muslin, ticked once a round. The ticks are kept
 * with this browser, not with the work: they say nothing about the draft.
 */
import type { PreferenceStore } from '../preferences.svelte.ts'

export const FIRST_THINGS = {
  pressed: 'The muslin is pressed, allowances pressed the way they will lie.',
  underwear: 'Under it is what will be worn under the garment.',
  arms: 'Arms hang down, weight on both feet, eyes on a mirror or a camera.',
  levels: 'Bust, waist and hip lines and both centres are drawn on the cloth.',
  square: 'The printed square measured right, or the pieces were drawn by hand.',
} as const
export type FirstThing = keyof typeof FIRST_THINGS
export const FIRST_THING_IDS = Object.keys(FIRST_THINGS) as readonly FirstThing[]

const KEY = 'tapetrue.first-things.v1'

/** What is ticked for a round; a spoilt or foreign record counts as nothing ticked. */
export const ticked = (store: PreferenceStore | undefined, round: string): readonly FirstThing[] =>
  all(store)[round] ?? []

/** Keeps the ticks of one round beside those of the others. */
export function keepTicks(
  store: PreferenceStore | undefined,
  round: string,
  ticks: readonly FirstThing[],
): void {
  try {
    store?.setItem(KEY, JSON.stringify({ ...all(store), [round]: ticks }))
  } catch {
    // Storage is full or denied: the ticks last until the page closes.
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
