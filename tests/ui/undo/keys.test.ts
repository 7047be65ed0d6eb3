/** The usual keys of undo on desktop systems (common practice, no source). */
import { expect, test } from 'vitest'
import { stepFor } from '../../../src/ui/undo/keys.ts'

const NONE = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false }
test.each([
  ['z', { ctrlKey: true }, 'back'],
  ['z', { metaKey: true }, 'back'],
  ['Z', { ctrlKey: true, shiftKey: true }, 'again'],
  ['Z', { metaKey: true, shiftKey: true }, 'again'],
  ['y', { ctrlKey: true }, 'again'],
  ['z', {}, undefined],
  ['z', { ctrlKey: true, altKey: true }, undefined],
  ['y', { metaKey: true }, undefined],
])('%s with %j is %s', (key, held, step) => {
  expect(stepFor({ ...NONE, key, ...held })).toBe(step)
})
