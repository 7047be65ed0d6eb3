/** Common practice, no source. */
import { expect, test } from 'vitest'
import { pageInstead } from '../../src/ui/language.ts'

test('the German page sends on only who reads another language', () => {
  expect(pageInstead(undefined, ['de-DE'])).toBeUndefined()
  expect(pageInstead(undefined, ['en-US'])).toBe('./')
  expect(pageInstead('de', ['en-US'])).toBeUndefined()
})
