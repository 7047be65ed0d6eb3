/** The forward model stands apart: it must not know how the engine thinks. */
import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { expect, test } from 'vitest'

const ROOT = new URL('../../../', import.meta.url).pathname
const MODEL = join(ROOT, 'scripts/bench/planted')
const MAY = [
  'src/units/',
  'src/geometry/',
  'src/measurements/',
  'src/draft/',
  'scripts/bench/bodies/',
  'scripts/bench/planted/',
]
const IMPORT = /(?:from|import)\s*\(?\s*['"](\.[^'"]+)['"]/g

const importsOf = (file: string): string[] =>
  [...readFileSync(file, 'utf8').matchAll(IMPORT)].map((m) =>
    normalize(join(dirname(file), m[1] ?? '')),
  )

/** Everything a file reaches by its imports, itself included. */
function reached(from: readonly string[]): Set<string> {
  const seen = new Set<string>()
  const open = [...from]
  for (let file = open.pop(); file; file = open.pop()) {
    if (seen.has(file)) continue
    seen.add(file)
    open.push(...importsOf(file))
  }
  return seen
}

test('it reaches units, geometry, measurements and draft, and nothing of fitting', () => {
  const files = readdirSync(MODEL).map((name) => join(MODEL, name))
  expect(files.length).toBeGreaterThan(6)
  const outside = [...reached(files)]
    .map((file) => file.slice(ROOT.length))
    .filter((file) => !MAY.some((room) => file.startsWith(room)))
  expect(outside).toEqual([])
})

test('the check bites: the engine reaches its own room', () => {
  const engine = reached([join(ROOT, 'src/fitting/apply.ts')])
  expect([...engine].some((file) => file.includes('/src/fitting/'))).toBe(true)
})
