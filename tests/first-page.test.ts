/**
 * What the first page brings along before anything hangs: none of what only a drawing needs. Walks
 * the imports that a browser would follow; a type is not one of them.
 */
import { existsSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { expect, test } from 'vitest'
import { PLACE_IDS } from '../src/ui/tape/places.ts'
import { PLACE_WORDS } from '../src/ui/tape/tape.words.ts'
import { PLACE_WORDS as PLACE_WORDS_DE } from '../src/ui/tape/tape.words.de.ts'
import { RAIL_WORDS } from '../src/ui/rail/rail.words.ts'
import { RAIL_WORDS as RAIL_WORDS_DE } from '../src/ui/rail/rail.words.de.ts'
import { openingOf } from '../scripts/opening.mjs'

const SRC = new URL('../src', import.meta.url).pathname
const IMPORT = /(?:^|\n)\s*(?:import|export)\s+(?!type\b)[^'"()]*?['"](\.[^'"]+)['"]/g

function brought(from: string, seen = new Set<string>()): Set<string> {
  if (seen.has(from) || !existsSync(from)) return seen
  seen.add(from)
  if (/\.(ts|svelte)$/.test(from))
    for (const [, path = ''] of readFileSync(from, 'utf8').matchAll(IMPORT))
      brought(join(dirname(from), path), seen)
  return seen
}
const first = [...brought(join(SRC, 'main.ts'))].map((path) => relative(SRC, path))

test('the walk follows modules and parts: it arrives at the rail, the store and the catalogue', () => {
  for (const path of ['ui/rail/RailPlace.svelte', 'storage/db.ts', 'measurements/catalogue.ts'])
    expect(first).toContain(path)
})

test.each([
  ['a construction', /^draft\/(make\.ts|blocks\/|garments\/)/],
  ['a correction made', /^fitting\/(apply\.ts|ops\/(operate|turn|field)\.ts)/],
  ['an entry of a complaint', /^fitting\/complaints\/(catalogue|neck|bust|waist)\.ts/],
  ['the rules and the finder', /^fitting\/(rules|finding)\//],
  ['the camera', /^capture\/(detector|camera|card)\.ts/],
  ['a printer', /^output\/(pdf|tiles|dxf)\.ts/],
  ['the example', /^ui\/example\/(build|seed)\.ts/],
])('%s comes only when it is needed', (_what, heavy) => {
  expect(first.filter((path) => heavy.test(path))).toEqual([])
})

/** The whole text of a page, as a reader without its scripts would see it. */
async function said(language: 'en' | 'de'): Promise<string> {
  const page = readFileSync(join(SRC, '..', language === 'en' ? 'index.html' : 'de.html'), 'utf8')
  const [plugin] = openingOf(language)
  const hook = plugin?.transformIndexHtml
  if (typeof hook !== 'object' || !('handler' in hook)) throw new Error('no handler')
  return String(await Reflect.apply(hook.handler, undefined, [page, {}]))
}
test.each([
  ['en', PLACE_WORDS, RAIL_WORDS],
  ['de', PLACE_WORDS_DE, RAIL_WORDS_DE],
] as const)(
  'what lies there before the scripts says the words of the screens: %s',
  async (language, places, rail) => {
    const page = await said(language)
    expect([...page.matchAll(/<li>([^<]+)<\/li>/g)].map(([, word]) => word)).toEqual(
      PLACE_IDS.map((id) => places[id]),
    )
    expect(page).toContain(`<h1>${rail.title}</h1>`)
    expect(page).toContain(`<p class="q">${rail.about}</p>`)
    expect(page).toContain('<div class="opening" aria-hidden="true" hidden>')
  },
)
