/**
 * A JPEG without what says where, when and with what it was taken. The pixels are not touched.
 * Kept are the segments a picture is drawn from, and JFIF (APP0), colour profile (APP2) and the
 * Adobe colour mark (APP14); all other application segments and comments are left out.
 * Source: ITU-T T.81 (09/92), annex B.
 */
const SOI = 0xd8
const SOS = 0xda
const COMMENT = 0xfe
const [APP0, APP2, APP14, APP15] = [0xe0, 0xe2, 0xee, 0xef] as const

/** The same picture without metadata, or undefined when this is no JPEG that can be read through. */
export function withoutMetadata(bytes: Uint8Array): Uint8Array<ArrayBuffer> | undefined {
  if (bytes[0] !== 0xff || bytes[1] !== SOI) return undefined
  const parts: Uint8Array[] = [bytes.subarray(0, 2)]
  let at = 2
  for (;;) {
    if (bytes[at] !== 0xff) return undefined
    const marker = bytes[at + 1]
    // A marker may be led by any number of fill bytes.
    if (marker === 0xff) {
      at += 1
      continue
    }
    const [high, low] = [bytes[at + 2], bytes[at + 3]]
    if (marker === undefined || high === undefined || low === undefined) return undefined
    if (marker === SOS) {
      parts.push(bytes.subarray(at))
      return joined(parts)
    }
    const end = at + 2 + high * 256 + low
    if (!saysWhere(marker)) parts.push(bytes.subarray(at, end))
    at = end
  }
}

function saysWhere(marker: number): boolean {
  if (marker === COMMENT) return true
  if (marker < APP0 || marker > APP15) return false
  return marker !== APP0 && marker !== APP2 && marker !== APP14
}

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}
