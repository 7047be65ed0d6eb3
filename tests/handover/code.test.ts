/**
 * The code out and in. Descriptions are what a browser wrote (from a session of Chromium, addresses
 * of documentation in place of the real ones: RFC 5737); the parts of it by RFC 8839 and RFC 8842.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readCode, writeCode, type Code } from '../../src/handover/code.ts'
import { describedIn, sessionOf, shortened } from '../../src/handover/description.ts'
import { toGroups } from '../../src/handover/symbols.ts'
import { filled, FIRST, SECOND, SECRET, subtle } from './invented.ts'

const OFFER: Code = { side: 'offer', about: FIRST, secret: SECRET }
const ANSWER: Code = { side: 'answer', about: SECOND, secret: SECRET }
const textOf = async (code: Code): Promise<string> => (await writeCode(subtle, code)).join(' ')
const sentence = async (text: string, secret?: typeof SECRET): Promise<string> => {
  const read = await readCode(subtle, text, secret)
  return read.ok ? 'read' : read.sentence
}

const OF_A_BROWSER = [
  'v=0',
  'o=- 9059895753365796404 2 IN IP4 127.0.0.1',
  's=-',
  't=0 0',
  'a=group:BUNDLE 0',
  'm=application 9 UDP/DTLS/SCTP webrtc-datachannel',
  'c=IN IP4 0.0.0.0',
  'a=candidate:386 1 udp 2113937151 c668c2aa-f92f-4ad6-b74e-e2fb0b7f5d50.local 50301 typ host generation 0',
  'a=candidate:418 1 udp 1677729535 198.51.100.4 50301 typ srflx raddr 0.0.0.0 rport 0',
  'a=ice-ufrag:Wk2u',
  'a=ice-pwd:QubCYAdDFhogzhHSYAUGY5zT',
  'a=fingerprint:sha-256 63:CC:46:74:67:D5:7F:6B:F5:AF:C9:AA:B5:90:02:74:76:12:B3:9A:0E:D9:50:47:2F:B7:28:75:99:BE:73:5C',
  'a=setup:actpass',
  'a=mid:0',
].join('\r\n')

test('a description of a browser is read, but for what is no host candidate', () => {
  const about = describedIn(OF_A_BROWSER)
  expect(about).toMatchObject({ ufrag: 'Wk2u', pwd: 'QubCYAdDFhogzhHSYAUGY5zT' })
  expect([...(about?.fingerprint ?? [])].slice(0, 3)).toEqual([0x63, 0xcc, 0x46])
  expect(about?.candidates).toHaveLength(1)
  expect(describedIn(OF_A_BROWSER.replace('a=ice-pwd', 'a=x'))).toBeUndefined()
  const written = about && sessionOf('offer', about)
  expect(written).not.toMatch(/srflx|relay|198\.51/)
  expect(describedIn(written ?? '')).toEqual(about)
})

test('what is packed is what is read, on either side', async () => {
  expect(await readCode(subtle, await textOf(OFFER), undefined)).toEqual({ ok: true, code: OFFER })
  expect(await readCode(subtle, await textOf(ANSWER), SECRET)).toEqual({ ok: true, code: ANSWER })
})

const iceWord = (min: number, max: number) =>
  fc.string({
    unit: fc.constantFrom(...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'),
    minLength: min,
    maxLength: max,
  })
const bytes = (length: number) =>
  fc.uint8Array({ minLength: length, maxLength: length }).map((all) => new Uint8Array(all))

test('also with any words and addresses a browser may choose', async () => {
  const port = fc.integer({ min: 1, max: 65_535 })
  const candidate = fc.oneof(
    fc.record({ kind: fc.constant('ip4' as const), address: bytes(4), port }),
    fc.record({ kind: fc.constantFrom('ip6' as const, 'name' as const), address: bytes(16), port }),
  )
  const code = fc.record({
    side: fc.constant('offer' as const),
    secret: bytes(16),
    about: fc.record({
      fingerprint: bytes(32),
      ufrag: iceWord(4, 32),
      pwd: iceWord(22, 64),
      candidates: fc.array(candidate, { maxLength: 6 }),
    }),
  })
  await fc.assert(
    fc.asyncProperty(code, async (any) => {
      expect(await readCode(subtle, await textOf(any), undefined)).toEqual({ ok: true, code: any })
    }),
  )
})

test('small enough for a coarse square and for a hand that types', async () => {
  // ISO/IEC 18004, table 7: 311 signs of the alphanumeric mode fit version 10 at level M.
  expect((await textOf(OFFER)).replaceAll(' ', '').length).toBeLessThanOrEqual(311)
  const typed = await writeCode(subtle, { ...ANSWER, about: shortened(SECOND) })
  expect(typed.length).toBeLessThanOrEqual(28)
  const offer = await writeCode(subtle, { ...OFFER, about: shortened(FIRST) })
  const read = await readCode(subtle, offer.join(' '), undefined)
  expect(read.ok && read.code.about.candidates).toEqual([FIRST.candidates[1]])
})

test('a spoilt code is refused with a sentence that says where', async () => {
  const groups = (await textOf(OFFER)).split(' ')
  const wrong = groups.with(6, groups[6] === 'AAAAA' ? 'BBBBB' : 'AAAAA')
  expect(await sentence(wrong.join(' '))).toContain('Group 7 (AAAAA) does not fit.')
  expect(await sentence(groups.slice(0, -3).join(' '))).toContain('A part of this code is missing.')
  expect(await sentence('https://example.org/a-shop/and-its-offers')).toContain(
    'no code of this page',
  )
})

test('nor is a code of the wrong side, or an answer to another code', async () => {
  expect(await sentence(await textOf(OFFER), SECRET)).toContain('Both devices show a first code.')
  expect(await sentence(await textOf(ANSWER))).toContain('This is an answer')
  expect(await sentence(await textOf(ANSWER), filled(16, 1))).toContain('answers another one')
})

test('random bytes in our own groups never pass and never throw', async () => {
  await fc.assert(
    fc.asyncProperty(fc.uint8Array({ minLength: 1, maxLength: 160 }), async (any) => {
      for (const head of [0x11, 0x12]) {
        const text = toGroups(Uint8Array.of(head, ...any)).join(' ')
        expect((await readCode(subtle, text, head === 0x12 ? SECRET : undefined)).ok).toBe(false)
      }
    }),
  )
})
