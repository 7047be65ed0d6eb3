/**
 * Where a device can be reached on its own network: a host candidate. No other kind is read,
 * written or packed, so nothing here can name a server or an address outside.
 * Sources: RFC 8839, 5.1 (the attribute); RFC 8445, 5.1.1 (host candidates); mDNS names in place
 * of addresses: IETF draft-ietf-mmusic-mdns-ice-candidates, a version 4 UUID under `.local`.
 */
export interface Candidate {
  readonly kind: 'ip4' | 'ip6' | 'name'
  /** 4 bytes, 16 bytes, or the 16 bytes of the UUID. */
  readonly address: Uint8Array<ArrayBuffer>
  readonly port: number
}

const UUID_NAME = /^([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})\.local$/i

/** The candidate in a line of SDP; undefined when it is no host candidate over UDP. */
export function candidateIn(line: string): Candidate | undefined {
  const words = line.replace(/^a=/, '').trim().split(' ')
  const [foundation, component, transport, , address, port, typ, kind] = words
  if (!foundation?.startsWith('candidate:') || component !== '1') return undefined
  if (transport?.toLowerCase() !== 'udp' || typ !== 'typ' || kind !== 'host') return undefined
  const at = addressOf(address ?? '')
  const number = Number(port)
  if (!at || !Number.isInteger(number) || number < 1 || number > 65_535) return undefined
  return { ...at, port: number }
}

/** The same as a line; priorities fall in the order given (RFC 8445, 5.1.2.1: type preference 126). */
export function candidateLine({ kind, address, port }: Candidate, at: number): string {
  const priority = 126 * 2 ** 24 + (65_535 - at) * 2 ** 8 + 255
  return `candidate:${at + 1} 1 udp ${priority} ${addressText(kind, address)} ${port} typ host`
}

function addressOf(text: string): Omit<Candidate, 'port'> | undefined {
  const uuid = UUID_NAME.exec(text)?.[1]
  if (uuid !== undefined) return { kind: 'name', address: ofHex(uuid.replaceAll('-', '')) }
  const four = text.split('.').map((part) => (/^\d{1,3}$/.test(part) ? Number(part) : NaN))
  if (four.length === 4 && four.every((byte) => byte <= 255))
    return { kind: 'ip4', address: Uint8Array.from(four) }
  const six = ip6(text)
  return six && { kind: 'ip6', address: six }
}

/** RFC 4291, 2.2: eight groups, of which one run of zeros may be left out. */
function ip6(text: string): Uint8Array<ArrayBuffer> | undefined {
  const halves = text.split('::')
  if (!text.includes(':') || halves.length > 2) return undefined
  const [head = [], tail = []] = halves.map((half) => (half === '' ? [] : half.split(':')))
  const gap = 8 - head.length - tail.length
  if (halves.length === 2 ? gap < 1 : gap !== 0) return undefined
  const groups = [...head, ...Array<string>(gap).fill('0'), ...tail]
  if (!groups.every((group) => /^[0-9a-f]{1,4}$/i.test(group))) return undefined
  return ofHex(groups.map((group) => group.padStart(4, '0')).join(''))
}

function addressText(kind: Candidate['kind'], address: Uint8Array): string {
  if (kind === 'ip4') return [...address].join('.')
  const hex = [...address].map((byte) => byte.toString(16).padStart(2, '0')).join('')
  if (kind === 'ip6') return (hex.match(/.{4}/g) ?? []).join(':')
  return `${hex.replace(/^(.{8})(.{4})(.{4})(.{4})/, '$1-$2-$3-$4-')}.local`
}

const ofHex = (hex: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(hex.match(/../g) ?? [], (pair) => parseInt(pair, 16))
