/**
 * Symbols of a code. The digits are held against ECMA-262's radix 32, whose digits 0 to v stand in
 * the same order as Crockford's; what is read as what: Crockford, Base 32.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fromGroups, toGroups } from '../../src/handover/symbols.ts'

const CROCKFORD = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'
const RADIX_32 = '0123456789abcdefghijklmnopqrstuv'
const some = fc.uint8Array({ minLength: 1, maxLength: 150 })

/** The bytes as digits of radix 32, each carrying symbol compared; checks left out. */
function digits(bytes: Uint8Array): string {
  const bits = [...bytes].map((byte) => byte.toString(2).padStart(8, '0')).join('')
  const groups = Math.ceil(bits.length / 20)
  const padded = BigInt(`0b${bits.padEnd(groups * 20, '0')}`)
    .toString(32)
    .padStart(groups * 4, '0')
  return [...padded].map((digit) => CROCKFORD[RADIX_32.indexOf(digit)]).join('')
}
const textOf = (bytes: Uint8Array): string => toGroups(bytes).join(' ')
const bytesOf = (text: string): Uint8Array | undefined => {
  const read = fromGroups(text)
  return read.ok ? read.bytes : undefined
}

test('bytes are the digits of radix 32 under other names', () => {
  fc.assert(
    fc.property(some, (bytes) => {
      const carried = toGroups(bytes).map((group) => group.slice(0, 4))
      expect(carried.join('')).toBe(digits(bytes))
    }),
  )
})

test('what was written is read, however it is typed', () => {
  fc.assert(
    fc.property(some, fc.boolean(), (bytes, hyphens) => {
      const typed = toGroups(bytes)
        .join(hyphens ? '-' : '\n')
        .toLowerCase()
      const read = bytesOf(typed.replaceAll('0', 'o').replaceAll('1', 'l'))
      // The last group may be filled up with zero bits.
      expect(read?.slice(0, bytes.length)).toEqual(new Uint8Array(bytes))
      expect([...(read ?? []).slice(bytes.length)].every((byte) => byte === 0)).toBe(true)
    }),
  )
})

test('any one wrong symbol is found in its group', () => {
  const bytes = Uint8Array.from({ length: 30 }, (_, k) => (k * 37) & 255)
  const groups = toGroups(bytes)
  for (const [g, group] of groups.entries())
    for (let k = 0; k < group.length; k += 1)
      for (const other of CROCKFORD) {
        if (other === group[k]) continue
        const spoilt = group.slice(0, k) + other + group.slice(k + 1)
        const read = fromGroups(groups.with(g, spoilt).join(' '))
        expect(read).toMatchObject({ ok: false, why: 'group', group: g + 1, text: spoilt })
      }
})

test('two symbols exchanged in a group, and two groups exchanged, are found', () => {
  fc.assert(
    fc.property(some, fc.nat(), fc.nat(4), fc.nat(4), (bytes, at, i, k) => {
      const groups = toGroups(bytes)
      const g = at % groups.length
      const letters = [...(groups[g] ?? '')]
      fc.pre(letters[i] !== letters[k])
      const swapped = letters.with(i, letters[k] ?? '').with(k, letters[i] ?? '')
      expect(fromGroups(groups.with(g, swapped.join('')).join(' ')).ok).toBe(false)
    }),
  )
  const groups = toGroups(Uint8Array.from({ length: 40 }, (_, k) => k))
  const moved = groups.with(2, groups[3] ?? '').with(3, groups[2] ?? '')
  expect(fromGroups(moved.join(' '))).toMatchObject({ ok: false, why: 'group', group: 3 })
})

test('a text of something else is nothing of ours', () => {
  for (const text of ['', '   ', 'https://example.org/shop?item=3', 'WIFI:S:net;T:WPA;P:word;;'])
    expect(fromGroups(text)).toEqual({ ok: false, why: 'foreign' })
  expect(bytesOf(textOf(Uint8Array.of(7)))?.[0]).toBe(7)
})
