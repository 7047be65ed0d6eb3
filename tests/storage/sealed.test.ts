/**
 * A closed file is opened here by another implementation (Node's OpenSSL: RFC 8018 key, AES-256-GCM
 * of NIST SP 800-38D) from what stands in its head and the passphrase alone.
 */
import { createDecipheriv, pbkdf2Sync } from 'node:crypto'
import { describe, expect, test } from 'vitest'
import { isSealed, sealed, unsealed } from '../../src/storage/sealed.ts'
import { value } from './opened.ts'

const PASSPHRASE = 'vier Fäden und ein Knopf'
const TEXT = JSON.stringify({ invented: 'photo of a muslin', bytes: 'AAEC' })

interface InFile {
  key: { iterations: number; salt: string; name: string; hash: string }
  cipher: { iv: string }
  data: string
}
const closed = async () => value(await sealed(TEXT, PASSPHRASE)).text()
const changed = (text: string, change: (file: InFile) => void): string => {
  const file = JSON.parse(text) as InFile
  change(file)
  return JSON.stringify(file)
}
const sentence = async (text: string, passphrase = PASSPHRASE) => {
  const read = await unsealed(text, passphrase)
  return read.ok ? `opened: ${read.value}` : read.sentence
}

test('opens elsewhere from its head and the passphrase', async () => {
  const text = await closed()
  const { data, ...head } = JSON.parse(text) as InFile
  expect(text).not.toContain('muslin')
  expect(head.key).toMatchObject({ name: 'PBKDF2', hash: 'SHA-256', iterations: 600_000 })
  const salt = Buffer.from(head.key.salt, 'base64')
  const key = pbkdf2Sync(PASSPHRASE.normalize('NFKC'), salt, head.key.iterations, 32, 'sha256')
  const bytes = Buffer.from(data, 'base64')
  const open = createDecipheriv('aes-256-gcm', key, Buffer.from(head.cipher.iv, 'base64'))
  open.setAAD(Buffer.from(JSON.stringify(head)))
  open.setAuthTag(bytes.subarray(-16))
  expect(Buffer.concat([open.update(bytes.subarray(0, -16)), open.final()]).toString()).toBe(TEXT)
})

test('opens with the passphrase however the keyboard composes it, and laid out in lines', async () => {
  const text = await closed()
  expect(isSealed(text)).toBe(true)
  expect(value(await unsealed(text, PASSPHRASE.normalize('NFD')))).toBe(TEXT)
  expect(value(await unsealed(JSON.stringify(JSON.parse(text), null, 2), PASSPHRASE))).toBe(TEXT)
})

test('salt and nonce are never used twice', async () => {
  const [a, b] = [await closed(), await closed()].map((t) => JSON.parse(t) as InFile)
  expect(a?.key.salt).not.toBe(b?.key.salt)
  expect(a?.cipher.iv).not.toBe(b?.cipher.iv)
})

describe('stays closed, with a sentence', () => {
  test('another passphrase, another head, other contents', async () => {
    const text = await closed()
    expect(await sentence(text, 'vier Faden und ein Knopf')).toMatch(/does not open/)
    const fewer = changed(text, (f) => (f.key.iterations = 599_999))
    expect(await sentence(fewer)).toMatch(/does not open/)
    const other = changed(text, (f) => (f.data = `AAAA${f.data.slice(4)}`))
    expect(await sentence(other)).toMatch(/does not open/)
  })
  test('cut off, hostile or no file', async () => {
    const text = await closed()
    expect(await sentence(text.slice(0, -40))).toMatch(/damaged/)
    expect(await sentence(changed(text, (f) => (f.key.iterations = 1e12)))).toMatch(/damaged/)
    expect(await sentence(changed(text, (f) => (f.cipher.iv = 'AA==')))).toMatch(/damaged/)
    expect(await sentence('[]')).toMatch(/damaged/)
  })
  test('a short passphrase closes nothing', async () => {
    const refused = await sealed(TEXT, 'zu kurz')
    expect(refused).toMatchObject({ ok: false, sentence: expect.stringContaining('15 characters') })
  })
})
