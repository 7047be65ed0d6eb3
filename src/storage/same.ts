/** Is it the same data? Plain values of any depth, whatever the order of their keys. */
export function sameData(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if (Array.isArray(a) !== Array.isArray(b)) return false
  const [left, right] = [filledFields(a), filledFields(b)]
  if (left.size !== right.size) return false
  return [...left].every(([key, value]) => right.has(key) && sameData(value, right.get(key)))
}

/** A field that is undefined is not there: stored data cannot tell the two apart. */
const filledFields = (from: object): Map<string, unknown> =>
  new Map(Object.entries(from).filter(([, value]) => value !== undefined))

export const startsWith = (list: readonly unknown[], start: readonly unknown[]): boolean =>
  start.length <= list.length && start.every((item, i) => sameData(item, list[i]))
