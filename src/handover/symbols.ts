/**
 * Bytes as symbols that are typed and read out without mistakes: five bits each, no I, L, O or U.
 * Every fifth symbol vouches for the four before it and for where they stand, so a slip of the
 * hand is found in its own group. Digits and capitals are also what a QR code packs densest.
 * Source: Crockford, Base 32 (the symbols and what is read as what). The check is ours: the word's
 * value over GF(32) with x^5 + x^2 + 1, which finds any one wrong symbol and any two exchanged.
 */
const SYMBOLS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'
const BITS = 5
/** Symbols of a group that carry bytes; one more is the check. */
const CARRYING = 4
const REDUCE = 0b100101

export type Symbols =
  | { readonly ok: true; readonly bytes: Uint8Array<ArrayBuffer> }
  /** `foreign`: nothing of ours. Else the first group that is wrong, counted from 1. */
  | { readonly ok: false; readonly why: 'foreign' }
  | { readonly ok: false; readonly why: 'group'; readonly group: number; readonly text: string }

/** Groups of five, the last one filled up with zero bits. */
export function toGroups(bytes: Uint8Array): readonly string[] {
  const values: number[] = []
  let [held, bits] = [0, 0]
  for (const byte of bytes) {
    held = (held << 8) | byte
    bits += 8
    for (; bits >= BITS; bits -= BITS) values.push((held >> (bits - BITS)) & 31)
    held &= (1 << bits) - 1
  }
  if (bits > 0) values.push((held << (BITS - bits)) & 31)
  while (values.length % CARRYING > 0) values.push(0)
  return groupsOf(values, CARRYING).map((group, at) =>
    [...group, checkOf(group, at)].map((value) => SYMBOLS[value]).join(''),
  )
}

/** As typed: capitals or not, with blanks, hyphens and line ends where she likes. */
export function fromGroups(text: string): Symbols {
  const typed = text.toUpperCase().replace(/[\s-]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1')
  const groups = groupsOf([...typed], CARRYING + 1)
  const wrong = groups.flatMap((group, at) => (fits(group, at) ? [] : [at]))
  const [first] = wrong
  // A text of something else fails nearly everywhere: one group in 32 fits by chance.
  if (groups.length === 0 || wrong.length > groups.length / 2) return { ok: false, why: 'foreign' }
  if (first !== undefined)
    return { ok: false, why: 'group', group: first + 1, text: (groups[first] ?? []).join('') }
  const values = groups.flatMap((group) =>
    group.slice(0, CARRYING).map((symbol) => SYMBOLS.indexOf(symbol)),
  )
  const bytes = new Uint8Array(Math.floor((values.length * BITS) / 8))
  let [held, bits, at] = [0, 0, 0]
  for (const value of values) {
    held = (held << BITS) | value
    bits += BITS
    if (bits < 8) continue
    bits -= 8
    bytes[at++] = held >> bits
    held &= (1 << bits) - 1
  }
  return { ok: true, bytes }
}

function fits(group: readonly string[], at: number): boolean {
  const values = group.map((symbol) => SYMBOLS.indexOf(symbol))
  if (values.length !== CARRYING + 1 || values.includes(-1)) return false
  return checkOf(values.slice(0, CARRYING), at) === values[CARRYING]
}

const checkOf = (values: readonly number[], at: number): number =>
  values.reduce((sum, value) => shifted(sum ^ value), (at + 1) & 31)

/** Times x in GF(32). */
function shifted(value: number): number {
  const twice = value << 1
  return twice > 31 ? twice ^ REDUCE : twice
}

const groupsOf = <T>(all: readonly T[], size: number): T[][] =>
  Array.from({ length: Math.ceil(all.length / size) }, (_, k) =>
    all.slice(k * size, (k + 1) * size),
  )
