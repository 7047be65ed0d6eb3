/** Bytes as text and back, and their SHA-256, by which photos and backups are known. */

/** SHA-256 (FIPS 180-4) as sixty-four hexadecimal digits. */
export async function sha256Of(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', bytes)
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('')
}

/** As many arguments as every browser lets one call have (from memory: 65,536 and more). */
const CHUNK = 0x8000

/** Base64 (RFC 4648, section 4). */
export function toBase64(bytes: Uint8Array): string {
  let text = ''
  for (let i = 0; i < bytes.length; i += CHUNK)
    text += String.fromCharCode(...bytes.subarray(i, i + CHUNK))
  return btoa(text)
}

/** The bytes, or undefined when the text is no base64. */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))
  } catch {
    return undefined
  }
}
