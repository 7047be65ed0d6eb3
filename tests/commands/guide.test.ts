/**
 * The guide is whole: every link and picture is there, nothing runs and nothing is asked of another
 * origin. Sizes are read from the files themselves (RFC 9649, 2.7: the canvas of the extended
 * format). That it opens without a net is tried by tests/journeys/offline.spec.ts.
 */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { DENSITY } from '../../scripts/pictures/camera.ts'

const PUBLIC = new URL('../../public/', import.meta.url)
const STYLE = new URL('guide/guide.css', PUBLIC)
/** All pictures of a language together, bytes: the guide is kept for offline use with the first visit. */
const MOST_PICTURES = 1_500_000
/** What the build puts beside the guide: the pages themselves and their faces. */
const BUILT = /^(?:\w+\.html|faces\/[\w-]+\.woff2)$/

const read = (file: URL) => readFileSync(file, 'utf8')
const attributes = (text: string, name: string): string[] =>
  [...text.matchAll(new RegExp(`\\s${name}="([^"]*)"`, 'g'))].map((m) => m[1] ?? '')

function leadsSomewhere(reference: string, from: URL): boolean {
  const [file = '', id] = reference.split('#')
  const target = new URL(file || from.href, from)
  if (!target.href.startsWith(PUBLIC.href)) return false
  if (BUILT.test(target.href.slice(PUBLIC.href.length))) return true
  if (!existsSync(target)) return false
  return id === undefined || attributes(read(target), 'id').includes(id)
}
function sizeOf(picture: URL): readonly [number, number] {
  const bytes = readFileSync(picture)
  expect(bytes.toString('latin1', 8, 16), picture.href).toBe('WEBPVP8X')
  return [1 + bytes.readUIntLE(24, 3), 1 + bytes.readUIntLE(27, 3)]
}

describe.each([
  ['English', 'guide/', '../index.html'],
  ['German', 'guide/de/', '../../de.html'],
])('%s', (_language, folder, app) => {
  const guide = new URL(folder, PUBLIC)
  const leaves = readdirSync(guide).filter((name) => name.endsWith('.html'))
  const pictures = readdirSync(new URL('pictures/', guide))

  describe.each(leaves)('%s', (name) => {
    const file = new URL(name, guide)
    const text = read(file)

    test('links relatively, and only to what is there', () => {
      const references = [...attributes(text, 'href'), ...attributes(text, 'src')]
      expect(references.length).toBeGreaterThan(5)
      for (const reference of references) {
        expect(reference).not.toMatch(/^(?:[a-z]+:|\/)/i)
        expect(leadsSomewhere(reference, file), reference).toBe(true)
      }
    })

    test('runs nothing and asks no other origin', () => {
      expect(text).not.toMatch(/<(?:script|iframe|object|embed|form|style)\b/i)
      expect(text).not.toMatch(/\s(?:on\w+|style|srcset)=|javascript:|https?:/i)
      expect(text).toContain(
        "default-src 'none'; style-src 'self'; img-src 'self'; font-src 'self'",
      )
    })

    test('every picture is told in words and keeps its room while it loads', () => {
      for (const [image] of text.matchAll(/<img\b[^>]*>/g)) {
        const one = (attribute: string) => attributes(image, attribute)[0] ?? ''
        const [width, height] = sizeOf(new URL(one('src'), file))
        expect(one('alt').length, one('src')).toBeGreaterThan(10)
        expect(Number(one('width')), one('src')).toBe(Math.round(width / DENSITY))
        expect(Number(one('height')), one('src')).toBe(Math.round(height / DENSITY))
      }
    })

    test('leads to every other leaf and back to the app', () => {
      expect(attributes(text, 'href')).toEqual(expect.arrayContaining([...leaves, app]))
    })
  })

  test('no picture lies there unused, and all of them are small', () => {
    const shown = new Set(leaves.flatMap((name) => attributes(read(new URL(name, guide)), 'src')))
    expect([...shown].sort()).toEqual(pictures.map((name) => `pictures/${name}`).sort())
    const bytes = pictures.map((name) => statSync(new URL(`pictures/${name}`, guide)).size)
    expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThan(MOST_PICTURES)
  })
})

test('both languages have the same leaves, sections and pictures', () => {
  for (const name of readdirSync(new URL('guide/', PUBLIC)).filter((n) => n.endsWith('.html'))) {
    const [english, german] = ['guide/', 'guide/de/'].map((f) => read(new URL(f + name, PUBLIC)))
    for (const kind of ['id', 'src'])
      expect(attributes(german!, kind), name).toEqual(attributes(english!, kind))
  }
})

test('the stylesheet asks only for what is there', () => {
  const asked = [...read(STYLE).matchAll(/url\('([^']*)'\)|@import\s+(\S+)/g)].map(
    (m) => m[1] ?? m[2] ?? '',
  )
  expect(asked.length).toBeGreaterThan(0)
  for (const reference of asked) expect(leadsSomewhere(reference, STYLE), reference).toBe(true)
})
