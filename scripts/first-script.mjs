/**
 * The scripts and styles of the first page in one file each: what the page brings along in any case
 * needs no round trip of its own on a slow line. What other places bring stays as it is split.
 */

/**
 * @param {string} entry path of the module the page begins with
 * @returns {{ debugName: string, name: (id: string, context: { getModuleInfo: (id: string) => { importedIds: readonly string[] } | null }) => string | null }}
 */
export function firstScript(entry) {
  /** @type {Set<string> | undefined} */
  let brought
  return {
    debugName: 'first',
    name: (id, context) => {
      brought ??= reached(entry, (from) => context.getModuleInfo(from)?.importedIds ?? [])
      return brought.has(id) ? 'first' : null
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
