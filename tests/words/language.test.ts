/** Source of the tags: BCP 47 (RFC 5646), of which the first subtag is the language. */
import { expect, test } from 'vitest'
import { languageFor, pageInstead } from '../../src/ui/language.ts'

test.each([
  [undefined, ['en-GB', 'de'], 'en'],
  [undefined, ['fr-CH', 'de-CH', 'en'], 'de'],
  [undefined, ['DE-at'], 'de'],
  [undefined, ['fr', 'it'], 'en'],
  [undefined, [], 'en'],
  ['en', ['de-DE'], 'en'],
  ['de', ['en-US'], 'de'],
] as const)('chosen %s, asked for %j: %s', (chosen, asked, language) => {
  expect(languageFor(chosen, asked)).toBe(language)
})

test('the English page sends on only who reads another language', () => {
  expect(pageInstead(undefined, ['en-US'])).toBeUndefined()
  expect(pageInstead(undefined, ['de-DE'])).toBe('./de.html')
  expect(pageInstead('en', ['de-DE'])).toBeUndefined()
})
