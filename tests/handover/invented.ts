/** Two invented devices: descriptions as browsers write them, a secret, the browser's own crypto. */
import type { Candidate } from '../../src/handover/candidate.ts'
import type { Description } from '../../src/handover/description.ts'
import type { Bytes, Pairing } from '../../src/handover/proof.ts'

export const { subtle } = crypto
export const filled = (length: number, with_: number): Bytes => new Uint8Array(length).fill(with_)

const candidates: readonly Candidate[] = [
  { kind: 'name', address: filled(16, 0x1f), port: 54_596 },
  { kind: 'ip4', address: Uint8Array.of(192, 0, 2, 7), port: 40_001 },
  { kind: 'ip6', address: filled(16, 0x20), port: 40_002 },
]
export const FIRST: Description = {
  fingerprint: filled(32, 0xa1),
  ufrag: 'Wk2u',
  pwd: 'QubCYAdDFhogzhHSYAUGY5zT',
  candidates,
}
export const SECOND: Description = {
  fingerprint: filled(32, 0xb2),
  ufrag: '+0vt',
  pwd: 'sIiM5l/14iGnlO848MnO0NWv',
  candidates: candidates.slice(1),
}
export const SECRET = filled(16, 0x5e)
export const PAIRING: Pairing = {
  secret: SECRET,
  offer: FIRST.fingerprint,
  answer: SECOND.fingerprint,
}
