/**
 * A name for a file that follows from its content alone, so the same draft gives the same bytes.
 * FNV-1a (Fowler, Noll, Vo; IETF draft draft-eastlake-fnv), 32 bits, four times with other
 * starts. It tells files apart and protects nothing.
 */
const PRIME = 0x01000193
const STARTS: readonly number[] = [0x811c9dc5, 0x1234567, 0x89abcdef, 0x2468ace1]

/** 32 hex digits. */
export function contentId(text: string): string {
  let [a = 0, b = 0, c = 0, d = 0] = STARTS
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i)
    a = Math.imul(a ^ code, PRIME)
    b = Math.imul(b ^ code, PRIME)
    c = Math.imul(c ^ code, PRIME)
    d = Math.imul(d ^ code, PRIME)
  }
  return [a, b, c, d].map((hash) => (hash >>> 0).toString(16).padStart(8, '0')).join('')
}
