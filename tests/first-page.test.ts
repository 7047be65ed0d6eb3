/**
 * What the first page brings along before anything hangs: none of what only a drawing needs. Walks
 * the imports that a browser would follow; a type is not one of them.
 */
import { existsSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { expect, test } from 'vitest'
import { PLACE_IDS } from '../src/ui/tape/places.ts'
import { PLACE_WORDS } from '../src/ui/tape/tape.words.ts'

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

const opening = (page: string): readonly (string | undefined)[] =>
  [...readFileSync(join(SRC, '..', page), 'utf8').matchAll(/<li>(\w+)<\/li>/g)].map(
    ([, word]) => word,
  )
test('the tape that lies there before the scripts says the words of the tape, in its order', () => {
  expect(opening('index.html')).toEqual(PLACE_IDS.map((id) => PLACE_WORDS[id]))
})
