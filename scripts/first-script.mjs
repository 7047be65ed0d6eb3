/**
 * The scripts and styles of the first page in one file each: what the page brings along in any case
 * needs no round trip of its own on a slow line. What the first paint waits for stays a small script
 * of its own, and what other places bring is split as it is.
 */
import { OPENING } from './opening.mjs'

/**
 * @param {string} entry path of the module the page begins with
 * @param {string} opening path of the module that runs before the first paint
 */
export const firstScripts = (entry, opening) => [
  { ...scriptOf(OPENING, opening, MAKES_AN_ERROR), priority: 1 },
  scriptOf('first', entry),
]

/**
 * Svelte makes an error as this module loads. Where an inspector listens (and Lighthouse is one), V8
 * then reads the whole script around it a second time to say where it was made: 20 of 55 ms of
 * loading, so it lies in the small one.
 */
const MAKES_AN_ERROR = /\/svelte\/src\/internal\/client\/constants\.js$/

/**
 * @param {string} name
 * @param {string} entry
 * @param {RegExp} [also]
 * @returns {{ debugName: string, name: (id: string, context: { getModuleInfo: (id: string) => { importedIds: readonly string[] } | null }) => string | null }}
 */
function scriptOf(name, entry, also) {
  /** @type {Set<string> | undefined} */
  let brought
  return {
    debugName: name,
    name: (id, context) => {
      brought ??= reached(entry, (from) => context.getModuleInfo(from)?.importedIds ?? [])
      return brought.has(id) || also?.test(id) ? name : null
    },
  }
}

/**
 * @param {string} from
 * @param {(id: string) => readonly string[]} imports
 */
function reached(from, imports) {
  const seen = new Set([from])
  for (const id of seen) for (const next of imports(id)) seen.add(next)
  return seen
}
