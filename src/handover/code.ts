/**
 * The code one device shows and the other reads: a description and, in the first code, the
 * one-time secret, packed to about a hundred bytes so that a QR code of it stays coarse.
 *
 * | bytes | what |
 * |---|---|
 * | 1 | kind and version: 0x11 first code, 0x12 answer |
 * | 16 | the secret, in the first code only |
 * | 32 | fingerprint |
 * | 1 + n, twice | ice-ufrag, ice-pwd: length, then six bits a letter (RFC 8839, ice-char) |
 * | 1 + n | candidates: count, then kind, port, address each |
 * | 4 | HMAC of all before it under the secret, cut short: damage, or the answer to another code |
 */
import type { Candidate } from './candidate.ts'
import { MOST_CANDIDATES, type Description, type Side } from './description.ts'
import { hmac, SECRET_BYTES, type Bytes } from './proof.ts'
import { fromGroups, toGroups } from './symbols.ts'
import { CODE_WORDS, SAME_SIDE } from './handover.words.ts'

export interface Code {
  readonly side: Side
  readonly about: Description
  readonly secret: Bytes
}
export type CodeRead =
  { readonly ok: true; readonly code: Code } | { readonly ok: false; readonly sentence: string }

const KIND: Readonly<Record<Side, number>> = { offer: 0x11, answer: 0x12 }
const CANDIDATE_KINDS = ['ip4', 'ip6', 'name'] as const
const ADDRESS_BYTES: Readonly<Record<Candidate['kind'], number>> = { ip4: 4, ip6: 16, name: 16 }
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'
const FINGERPRINT_BYTES = 32
const MARK_BYTES = 4
/** RFC 8839, 5.4: at least 4 and 22 letters; no browser comes near the upper bound of 256. */
const [SHORTEST_UFRAG, SHORTEST_PWD, LONGEST] = [4, 22, 64] as const

/** The code in groups of five symbols, to be shown as a QR code and as text. */
export async function writeCode(subtle: SubtleCrypto, code: Code): Promise<readonly string[]> {
  const { side, about, secret } = code
  const body = [
    KIND[side],
    ...(side === 'offer' ? secret : []),
    ...about.fingerprint,
    ...letters(about.ufrag),
    ...letters(about.pwd),
    about.candidates.length,
    ...about.candidates.flatMap(({ kind, port, address }) => [
      CANDIDATE_KINDS.indexOf(kind),
      port >> 8,
      port & 255,
      ...address,
    ]),
  ]
  const mark = await hmac(subtle, secret, Uint8Array.from(body))
  return toGroups(Uint8Array.from([...body, ...mark.subarray(0, MARK_BYTES)]))
}

/**
 * A code as read or typed, or one sentence what is wrong with it.
 * @param secret of the code shown here, when an answer to it is awaited; undefined for a first code
 */
export async function readCode(
  subtle: SubtleCrypto,
  text: string,
  secret: Bytes | undefined,
): Promise<CodeRead> {
  const symbols = fromGroups(text)
  if (!symbols.ok)
    return refused(
      symbols.why === 'foreign'
        ? CODE_WORDS.foreign
        : CODE_WORDS.group(symbols.group, symbols.text),
    )
  const awaited: Side = secret ? 'answer' : 'offer'
  const packed = unpacked(symbols.bytes)
  if (packed === 'foreign') return refused(CODE_WORDS.foreign)
  if (!packed) return refused(CODE_WORDS.cutShort)
  if (packed.side !== awaited) return refused(SAME_SIDE[packed.side])
  const key = packed.secret ?? secret
  if (!key) throw new Error('readCode: a first code without its secret was unpacked')
  const mark = await hmac(subtle, key, packed.body)
  if (packed.mark.some((byte, at) => byte !== mark[at]))
    return refused(awaited === 'answer' ? CODE_WORDS.another : CODE_WORDS.cutShort)
  return { ok: true, code: { side: packed.side, about: packed.about, secret: key } }
}

interface Packed {
  readonly side: Side
  readonly secret: Bytes | undefined
  readonly about: Description
  readonly body: Bytes
  readonly mark: Bytes
}

/** undefined where the bytes end too soon or hold what no browser writes. */
function unpacked(bytes: Bytes): Packed | 'foreign' | undefined {
  let at = 0
  const take = (count: number): Bytes => bytes.slice(at, (at += count))
  const byte = (): number => take(1)[0] ?? 0
  const kind = byte()
  const side = kind === KIND.offer ? 'offer' : kind === KIND.answer ? 'answer' : undefined
  if (!side) return 'foreign'
  const secret = side === 'offer' ? take(SECRET_BYTES) : undefined
  const fingerprint = take(FINGERPRINT_BYTES)
  const word = (): string => {
    const length = byte()
    return wordIn(take(Math.ceil((length * 6) / 8)), length)
  }
  const [ufrag, pwd] = [word(), word()]
  const count = byte()
  const candidates: Candidate[] = []
  for (let k = 0; k < Math.min(count, MOST_CANDIDATES); k += 1) {
    const of = CANDIDATE_KINDS[byte()]
    const port = byte() * 256 + byte()
    if (!of || port === 0) return undefined
    candidates.push({ kind: of, port, address: take(ADDRESS_BYTES[of]) })
  }
  const body = bytes.slice(0, at)
  const mark = take(MARK_BYTES)
  const whole = at <= bytes.length && count <= MOST_CANDIDATES && inBounds(ufrag, pwd)
  return whole
    ? { side, secret, about: { fingerprint, ufrag, pwd, candidates }, body, mark }
    : undefined
}

const inBounds = (ufrag: string, pwd: string): boolean =>
  ufrag.length >= SHORTEST_UFRAG && pwd.length >= SHORTEST_PWD && pwd.length <= LONGEST

/** Length, then the letters at six bits each. */
function letters(word: string): number[] {
  const values = [...word].map((letter) => LETTERS.indexOf(letter))
  if (values.includes(-1) || values.length > LONGEST)
    throw new Error(`writeCode: "${word}" is no ice-char word of at most ${LONGEST} letters`)
  const bits = values.map((value) => value.toString(2).padStart(6, '0')).join('')
  return [values.length, ...(bits.match(/.{1,8}/g) ?? []).map((b) => parseInt(b.padEnd(8, '0'), 2))]
}

function wordIn(bytes: Uint8Array, length: number): string {
  const bits = [...bytes].map((byte) => byte.toString(2).padStart(8, '0')).join('')
  const six = (bits.match(/.{6}/g) ?? []).slice(0, length)
  return six.map((b) => LETTERS[parseInt(b, 2)] ?? '').join('')
}

const refused = (sentence: string): CodeRead => ({ ok: false, sentence })
