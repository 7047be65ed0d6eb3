/**
 * The guide is whole: every link and picture is there, nothing runs and nothing is asked of another
 * origin. Sizes are read from the files themselves (RFC 9649, 2.7: the canvas of the extended
 * format). That it opens without a net is tried by tests/journeys/offline.spec.ts.
 */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { DENSITY } from '../../scripts/pictures/camera.ts'

const PUBLIC = new URL('../../public/', import.meta.url)
const GUIDE = new URL('guide/', PUBLIC)
/** All pictures together, bytes: the guide is kept for offline use with the first visit. */
const MOST_PICTURES = 1_500_000

const files = readdirSync(GUIDE)
const leaves = files.filter((name) => name.endsWith('.html'))
const pictures = readdirSync(new URL('pictures/', GUIDE))
const read = (name: string) => readFileSync(new URL(name, GUIDE), 'utf8')
const attributes = (text: string, name: string): string[] =>
  [...text.matchAll(new RegExp(`\\s${name}="([^"]*)"`, 'g'))].map((m) => m[1] ?? '')
/** What the build puts beside the guide: the page itself and its faces. */
const BUILT = /^\.\.\/(?:index\.html|faces\/[\w-]+\.woff2)$/

function leadsSomewhere(reference: string, from: string): boolean {
  if (BUILT.test(reference)) return true
  const [file = '', id] = reference.split('#')
  const target = new URL(file || from, GUIDE)
  if (!target.href.startsWith(PUBLIC.href) || !existsSync(target)) return false
  return id === undefined || attributes(readFileSync(target, 'utf8'), 'id').includes(id)
}
function sizeOf(picture: string): readonly [number, number] {
  const bytes = readFileSync(new URL(`pictures/${picture}`, GUIDE))
  expect(bytes.toString('latin1', 8, 16), picture).toBe('WEBPVP8X')
  return [1 + bytes.readUIntLE(24, 3), 1 + bytes.readUIntLE(27, 3)]
}

describe.each(leaves)('%s', (name) => {
  const text = read(name)

  test('links relatively, and only to what is there', () => {
    const references = [...attributes(text, 'href'), ...attributes(text, 'src')]
    expect(references.length).toBeGreaterThan(5)
    for (const reference of references) {
      expect(reference).not.toMatch(/^(?:[a-z]+:|\/)/i)
      expect(leadsSomewhere(reference, name), reference).toBe(true)
    }
  })

  test('runs nothing and asks no other origin', () => {
    expect(text).not.toMatch(/<(?:script|iframe|object|embed|form|style)\b/i)
    expect(text).not.toMatch(/\s(?:on\w+|style|srcset)=|javascript:|https?:/i)
    expect(text).toContain("default-src 'none'; style-src 'self'; img-src 'self'; font-src 'self'")
  })

  test('every picture is told in words and keeps its room while it loads', () => {
    for (const [image] of text.matchAll(/<img\b[^>]*>/g)) {
      const one = (attribute: string) => attributes(image, attribute)[0] ?? ''
      const [width, height] = sizeOf(one('src').replace('pictures/', ''))
      expect(one('alt').length, one('src')).toBeGreaterThan(10)
      expect(Number(one('width')), one('src')).toBe(Math.round(width / DENSITY))
      expect(Number(one('height')), one('src')).toBe(Math.round(height / DENSITY))
    }
  })

  test('leads to every other leaf and back to the app', () => {
    expect(attributes(text, 'href')).toEqual(expect.arrayContaining([...leaves, '../index.html']))
  })
})

test('the stylesheet asks only for what is there', () => {
  const asked = [...read('guide.css').matchAll(/url\('([^']*)'\)|@import\s+(\S+)/g)].map(
    (m) => m[1] ?? m[2] ?? '',
  )
  expect(asked.length).toBeGreaterThan(0)
  for (const reference of asked) expect(leadsSomewhere(reference, 'guide.css')).toBe(true)
})

test('no picture lies there unused, and all of them are small', () => {
  const shown = new Set(leaves.flatMap((name) => attributes(read(name), 'src')))
  expect([...shown].sort()).toEqual(pictures.map((name) => `pictures/${name}`).sort())
  const bytes = pictures.map((name) => statSync(new URL(`pictures/${name}`, GUIDE)).size)
  expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThan(MOST_PICTURES)
})
