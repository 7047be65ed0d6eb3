/**
 * Every file of words has its sister in every other language, entry for entry, and nothing in it
 * was left in English. The words themselves are read by people: common practice, no source.
 */
import { describe, expect, test } from 'vitest'
import { OTHER_LANGUAGES } from '../../scripts/words.mjs'

/** The same in both languages: names, marks, borrowed words. */
const SAME: ReadonlySet<string> = new Set(['English', 'Deutsch', 'Name', 'Yards', '2 1/2 yd'])
/** Words that no German sentence has. */
const ENGLISH_LEFT = /\b(the|and|with|from|your|you|of|to|is|are|which|where)\b/i
/** What the finder listens for: never read, other in number; it has tests of its own. */
const LISTENED_FOR = /\/fitting\/finding\/(?!find\.|lexicon\/)/

/** A Map is keyed by the words of its own language: its entries are not held against each other. */
type Leaf = readonly [path: string, value: unknown]
function leaves(value: unknown, path: string): readonly Leaf[] {
  const plain = typeof value === 'object' && value !== null
  if (!plain || value instanceof RegExp || value instanceof Map) return [[path, value]]
  return Object.entries(value).flatMap(([key, v]) => leaves(v, `${path}.${key}`))
}
const load = import.meta.glob<Record<string, unknown>>('../../src/**/*.words*.ts')
const english = Object.keys(load).filter((path) => path.endsWith('.words.ts'))

describe.each(OTHER_LANGUAGES)('in "%s"', (language) => {
  const sisterOf = (path: string): string => path.replace(/\.ts$/, `.${language}.ts`)

  test('no file of words stands alone', () => {
    expect(english.length).toBeGreaterThan(0)
    expect(english.filter((path) => !load[sisterOf(path)])).toEqual([])
    const sisters = Object.keys(load).filter((path) => path.endsWith(`.words.${language}.ts`))
    expect(sisters.sort()).toEqual(english.map(sisterOf).sort())
  })

  test.each(english)('%s: entry for entry', async (path) => {
    const [ours, theirs] = [await load[path]!(), await load[sisterOf(path)]!()]
    // A sister may hold more: German nouns with their article and case, for other files of words.
    expect(Object.keys(theirs)).toEqual(expect.arrayContaining(Object.keys(ours)))
    if (LISTENED_FOR.test(path)) return
    const sisters = new Map(leaves(theirs, ''))
    const wrong = leaves(ours, '').flatMap(([at, value]) => {
      if (!sisters.has(at)) return [`${at} is missing`]
      const sister = sisters.get(at)
      if (typeof value === 'function')
        return typeof sister === 'function' && sister.length <= value.length
          ? []
          : [`${at} takes other arguments`]
      if (typeof value !== 'string' || typeof sister !== 'string') return []
      if (value === '' || !/[A-Za-z]{2}/.test(value)) return []
      if (value === sister) return SAME.has(value) ? [] : [`${at} is English: ${value}`]
      return ENGLISH_LEFT.test(sister) ? [`${at} has English in it: ${sister}`] : []
    })
    expect(wrong).toEqual([])
  })
})
