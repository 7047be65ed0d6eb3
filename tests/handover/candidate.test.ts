/**
 * Host candidates and nothing else. Lines: RFC 8839, 5.1 and its example; names: the examples of
 * draft-ietf-mmusic-mdns-ice-candidates. IPv6 is held against the URL Standard's own writing of it.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { candidateIn, candidateLine } from '../../src/handover/candidate.ts'

describe('lines that are read', () => {
  test.each([
    ['a=candidate:1 1 UDP 2130706431 203.0.113.141 8998 typ host', 'ip4', 8998],
    [
      'candidate:1 1 udp 2122262783 1f4712db-ea17-4bcf-a596-105139dfd8bf.local 54596 typ host',
      'name',
      54596,
    ],
    [
      'candidate:2 1 udp 2122262783 2001:db8::1 40000 typ host generation 0 network-cost 999',
      'ip6',
      40000,
    ],
  ])('%s', (line, kind, port) => {
    const read = candidateIn(line)
    expect(read).toMatchObject({ kind, port })
    expect(read && candidateIn(candidateLine(read, 0))).toEqual(read)
  })
})

describe('lines that are not', () => {
  test.each([
    // RFC 8839, the second line of its example: seen by a server.
    'a=candidate:2 1 UDP 1694498815 192.0.2.3 45664 typ srflx raddr 203.0.113.141 rport 8998',
    'a=candidate:3 1 udp 16777215 192.0.2.9 50000 typ relay raddr 192.0.2.3 rport 45664',
    'a=candidate:4 1 udp 1845501695 192.0.2.7 4000 typ prflx raddr 10.0.0.1 rport 4000',
    // RFC 6544: over TCP a browser only calls, it does not answer.
    'a=candidate:5 1 tcp 1518280447 192.0.2.1 9 typ host tcptype active',
    'a=candidate:6 2 UDP 2130706430 203.0.113.141 8999 typ host',
    'a=candidate:7 1 UDP 2130706431 stun.example.org 8998 typ host',
    'a=candidate:8 1 UDP 2130706431 203.0.113.141 0 typ host',
    'a=candidate:9 1 UDP 2130706431 203.0.113.341 8998 typ host',
    'a=ice-ufrag:8hhY',
    '',
  ])('%s', (line) => {
    expect(candidateIn(line)).toBeUndefined()
  })
})

test('every address and port comes back', () => {
  const address = fc.oneof(
    fc.ipV4(),
    fc.uuid({ version: 4 }).map((uuid) => `${uuid}.local`),
    fc.ipV6().filter((text) => !text.includes('.')),
  )
  fc.assert(
    fc.property(address, fc.integer({ min: 1, max: 65_535 }), (at, port) => {
      const read = candidateIn(`candidate:1 1 udp 1 ${at} ${port} typ host`)
      const words = read && candidateLine(read, 0).split(' ')
      expect(same(words?.[4] ?? '')).toBe(same(at))
      expect(words?.[5]).toBe(`${port}`)
    }),
  )
})
/** IPv6 as the URL Standard writes it, other addresses as they are. */
const same = (address: string): string =>
  address.includes(':') ? new URL(`http://[${address}]`).hostname : address
