/** What goes with the body into the next garment. The rule is common practice, no source. */
import { expect, test } from 'vitest'
import type { Correction } from '../../src/fitting/correction.ts'
import { lastingOf } from '../../src/rounds/lasting.ts'
import { withCarried } from '../../src/rounds/carried.ts'
import { firstRound, withCorrection } from '../../src/rounds/round.ts'
import { redraft } from '../../src/rounds/redraft.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

const because = (complaint: 'B8' | 'W1') => ({
  complaint,
  cause: 'bust shaping',
  pinned: { how: 'wholeFold', read: mm(10), share: 1 } as const,
  watch: mm(0),
  round: 1,
})
const wedge: Correction = {
  v: 1,
  id: 'wedge',
  kind: 'close-wedge',
  piece: 'front',
  edge: 'sleeveEdge',
  along: 0.5,
  width: mm(10),
  because: because('B8'),
}
const turned = (id: string, choice: 'lengthAdded' | 'easeBust', by: number): Correction => ({
  v: 1,
  id,
  kind: 'turn-choice',
  choice,
  by: mm(by),
  because: because('W1'),
})
const first = (garment: 'blouse' | 'sleeveless' = 'blouse') =>
  firstRound({ id: 'r1', garmentId: 'g' }, garment, body(), '2026-11-25')
const made = [wedge, turned('long', 'lengthAdded', 10), turned('ease', 'easeBust', 5)]
const corrected = made.reduce(withCorrection, first())

test('a gape and a short waist are of the body, ease is of the style; what was taken back stays behind', () => {
  expect(lastingOf(corrected).map(({ id }) => id)).toEqual(['wedge', 'long'])
  const back: Correction = { v: 1, id: 'w', kind: 'withdraw', correction: 'long', round: 2 }
  expect(lastingOf(withCorrection(corrected, back)).map(({ id }) => id)).toEqual(['wedge'])
})

test('the same garment begins with them, drawn as they were; the ease is as usual again', () => {
  const next = withCarried(first(), lastingOf(corrected))
  expect(next.corrections.map(({ id }) => id)).toEqual(['wedge', 'long'])
  const { draft, refused } = redraft(next)
  expect(refused).toEqual([])
  expect(draft.choices.lengthAdded).toBe(10)
  expect(draft.choices.easeBust).toBe(first().choices.easeBust)
})

test('a garment without that edge takes only what it can', () => {
  const next = withCarried(first('sleeveless'), lastingOf(corrected))
  expect(next.corrections.map(({ id }) => id)).toEqual(['long'])
  expect(redraft(next).refused).toEqual([])
})
