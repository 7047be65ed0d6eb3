/**
 * What one device has to know of the other to join it, read from the browser's session description
 * and written into one. The rest of a description is the same on every device, so it is not sent.
 * Sources: RFC 8866 (SDP), RFC 8841 (data channels over SCTP; 64 KiB where no larger message is
 * named), RFC 8842 (setup and fingerprint), RFC 8839 (ice-ufrag, ice-pwd).
 */
import { candidateIn, candidateLine, type Candidate } from './candidate.ts'

export interface Description {
  /** SHA-256 of the certificate the device shows, 32 bytes. */
  readonly fingerprint: Uint8Array<ArrayBuffer>
  readonly ufrag: string
  readonly pwd: string
  readonly candidates: readonly Candidate[]
}
/** Who showed the first code. The other one opens the encrypted connection. */
export type Side = 'offer' | 'answer'

/** More are rarely there, and each makes the code larger. */
export const MOST_CANDIDATES = 6
/** Most bytes of one message either device has to take. */
export const LARGEST_MESSAGE = 65_536

/** undefined when the description lacks a part, as one of another kind would. */
export function describedIn(sdp: string): Description | undefined {
  const lines = sdp.split(/\r?\n/)
  const value = (name: string): string | undefined =>
    lines.find((line) => line.startsWith(`a=${name}:`))?.slice(name.length + 3)
  const [ufrag, pwd] = [value('ice-ufrag'), value('ice-pwd')]
  const pairs = /^sha-256 ((?:[0-9A-F]{2}:){31}[0-9A-F]{2})$/i.exec(value('fingerprint') ?? '')
  if (ufrag === undefined || pwd === undefined || pairs?.[1] === undefined) return undefined
  const fingerprint = Uint8Array.from(pairs[1].split(':'), (pair) => parseInt(pair, 16))
  const candidates = lines.flatMap((line) => candidateIn(line) ?? [])
  return { fingerprint, ufrag, pwd, candidates: candidates.slice(0, MOST_CANDIDATES) }
}

/**
 * The same with one candidate, for a code that is typed: an address where there is one, for a name
 * is longer and not every network finds it. The other device is found by the first words it sends.
 */
export function shortened(about: Description): Description {
  const first = about.candidates.find(({ kind }) => kind === 'ip4') ?? about.candidates[0]
  return { ...about, candidates: first ? [first] : [] }
}

/** A whole description of the other device, for `setRemoteDescription`. */
export function sessionOf(side: Side, { fingerprint, ufrag, pwd, candidates }: Description) {
  const pairs = [...fingerprint].map((byte) => byte.toString(16).padStart(2, '0').toUpperCase())
  const lines = [
    'v=0',
    'o=- 1 1 IN IP4 0.0.0.0',
    's=-',
    't=0 0',
    'a=group:BUNDLE 0',
    'm=application 9 UDP/DTLS/SCTP webrtc-datachannel',
    'c=IN IP4 0.0.0.0',
    'a=mid:0',
    `a=ice-ufrag:${ufrag}`,
    `a=ice-pwd:${pwd}`,
    `a=fingerprint:sha-256 ${pairs.join(':')}`,
    `a=setup:${side === 'offer' ? 'actpass' : 'active'}`,
    'a=sctp-port:5000',
    `a=max-message-size:${LARGEST_MESSAGE}`,
    ...candidates.map((candidate, at) => `a=${candidateLine(candidate, at)}`),
  ]
  return `${lines.join('\r\n')}\r\n`
}
