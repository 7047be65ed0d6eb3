/**
 * What a correction would do, before anyone decides on it. Worked by hand; the turn of the wedge is
 * plane trigonometry.
 */
import { describe, expect, test } from 'vitest'
import { standardChoices, type ChoiceId } from '../../src/draft/choices.ts'
import { record } from '../../src/draft/record.ts'
import type { Because } from '../../src/fitting/correction.ts'
import { previewOf, type Base, type NewCorrection } from '../../src/fitting/preview.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

const base = (over = {}): Base => ({
  garment: 'blouse',
  body: body(over),
  choices: standardChoices(),
  corrections: [],
})
const because: Because = {
  complaint: 'B8',
  cause: 'B8.1',
  pinned: { how: 'wholeFold', read: mm(12), share: 1 },
  watch: mm(0),
  round: 2,
}
/** As the first rounds kept a gape: a wedge of its own kind. */
const WEDGE: NewCorrection = {
  kind: 'close-wedge',
  piece: 'front',
  edge: 'sleeveEdge',
  along: 0.5,
  width: mm(12),
  because,
}
const turned = (choice: ChoiceId, by: number): NewCorrection => ({
  kind: 'turn-choice',
  choice,
  by: mm(by),
  because,
})

describe('what it would do', () => {
  test('it stands on the changes already made, and leaves them as they are', () => {
    const first = turned('lengthAdded', 14)
    const list = [{ ...first, v: 1 as const, id: 'c1' }]
    const second = turned('lengthAdded', 6)
    const outcome = previewOf({ ...base(), corrections: list }, second)
    if (!outcome.ok) throw new Error(outcome.why.id)
    expect(outcome.preview.before.choices.lengthAdded).toBe(14)
    expect(outcome.preview.after.choices.lengthAdded).toBe(20)
    expect(list).toHaveLength(1)
  })
  test('what cannot be made is refused with its reason: no dart, past the range', () => {
    const straight = base({ bustGirth: 880, waistGirth: 888 })
    expect(previewOf(straight, WEDGE)).toMatchObject({ ok: false, why: { id: 'noDart' } })
    const far = turned('lengthAdded', 40)
    const twice = { ...base(), corrections: [{ ...far, v: 1 as const, id: 'c1' }] }
    expect(previewOf(twice, far)).toMatchObject({
      ok: false,
      why: { id: 'choiceOutOfRange', choice: 'lengthAdded', to: 80 },
    })
  })
  // An arm opening holds the upper arm and 50 mm more (published sleeve drafts, 51 mm and more):
  // where it would not, the underarm goes deeper, and that is said.
  test('what the proof finds only after the change is handed on', () => {
    const correction = turned('overarmDrop', 15)
    const now = previewOf(base(), correction)
    if (!now.ok) throw new Error(now.why.id)
    const opening = (at: 'before' | 'after') => {
      const { lengths } = record(now.preview[at])
      return lengths['front.sleeveEdge']! + lengths['back.sleeveEdge']!
    }
    expect(opening('after')).toBeLessThan(opening('before'))
    // An arm that gets through by 1 mm before the change.
    const tight = base({ upperArmGirth: Math.round(opening('before')) - 51 })
    const then = previewOf(tight, correction)
    if (!then.ok) throw new Error(then.why.id)
    expect(then.preview.found.map((f) => f.id)).toContain('underarmDeeper')
    expect(now.preview.found.map((f) => f.id)).not.toContain('underarmDeeper')
  })
})
