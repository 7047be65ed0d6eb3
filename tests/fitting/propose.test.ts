/**
 * From complaint, answer and pinned amount to the correction. Amounts are worked by hand from the
 * published and common-practice rules named beside each check; the turn of the wedge is plane
 * trigonometry.
 */
import { describe, expect, test } from 'vitest'
import { standardChoices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { edge } from '../../src/draft/piece.ts'
import { record } from '../../src/draft/record.ts'
import { COMPLAINTS, type ComplaintId } from '../../src/fitting/complaints.ts'
import type { Pinned } from '../../src/fitting/pinned.ts'
import { previewOf, propose, type Base } from '../../src/fitting/propose.ts'
import { distance } from '../../src/geometry/point.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { pointAtLength } from '../../src/geometry/path.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

const base = (over = {}): Base => ({
  garment: 'blouse',
  body: body(over),
  choices: standardChoices(),
  corrections: [],
})
const answer = (complaint: ComplaintId, at: 0 | 1 | 2, pinned?: Pinned, along = 0.5) =>
  propose({ complaint, outcome: COMPLAINTS[complaint].outcomes[at], pinned, along, round: 2 })
const changeOf = (complaint: ComplaintId, at: 0 | 1 | 2, pinned: Pinned, along = 0.5) => {
  const proposal = answer(complaint, at, pinned, along)
  if (proposal.kind !== 'change') throw new Error(proposal.kind)
  return proposal
}

describe('what is proposed', () => {
  // 85 to 90 in a hundred of a pinned take-in are taken, common practice: 12 × 0.87 = 10.44.
  test('a gaping armhole that lies quiet when pinned: a wedge of 87 in a hundred of the fold', () => {
    const made = changeOf('B8', 0, { how: 'wholeFold', read: mm(12), share: 0.87 }, 0.4)
    expect(made.correction).toEqual({
      kind: 'close-wedge',
      piece: 'front',
      edge: 'sleeveEdge',
      along: 0.4,
      width: expect.closeTo(10.44, 9),
      because: {
        complaint: 'B8',
        cause: 'bust shaping',
        pinned: { how: 'wholeFold', read: 12, share: 0.87 },
        watch: 0,
        round: 2,
      },
    })
  })
  // A flat pinch lies double: fold to pin 6 mm takes 12 mm of cloth out.
  test('the same pinch read from fold to pin counts twice', () => {
    const folded = changeOf('B8', 0, { how: 'foldToPin', read: mm(6), share: 0.87 })
    expect(folded.settled.applied).toBeCloseTo(10.44, 9)
  })
  // Most in one round 15 mm: 20 × 1 = 20, so 15 are taken and 5 are left for the next muslin.
  test('over the most of one round the rest is watched next time', () => {
    const made = changeOf('B8', 0, { how: 'wholeFold', read: mm(20), share: 1 })
    expect(made.settled).toEqual({ applied: 15, watch: 5 })
    expect(made.correction).toMatchObject({ width: 15, because: { watch: 5 } })
  })
  // Slash and spread lets out the whole missing length (a dressmaking manual of 1921).
  test('a waist too high all round lets out the whole distance', () => {
    const made = changeOf('W1', 0, { how: 'levelError', read: mm(14), share: 1 })
    expect(made.correction).toMatchObject({ kind: 'turn-choice', choice: 'lengthAdded', by: 14 })
  })
  test('a wavy edge leaves the draft alone; a short front is taped again; each says what to do', () => {
    expect(answer('B8', 2)).toEqual({ kind: 'leave', advice: expect.stringContaining('stretch') })
    expect(answer('W1', 1)).toEqual({
      kind: 'tape-again',
      advice: expect.stringContaining('once more'),
      ids: ['sideNeckOverApexToWaist', 'sideNeckOverBladeToWaist'],
    })
  })
  test('before anything is read it asks how much; under 3 mm it says why nothing is changed', () => {
    expect(answer('B8', 0)).toEqual({ kind: 'not-yet', reason: COMPLAINTS.B8.howMuch })
    expect(answer('B8', 0, { how: 'wholeFold', read: mm(2), share: 1 })).toEqual({
      kind: 'not-yet',
      reason: 'Under 3 mm there is nothing to change: no one cuts truer than that.',
    })
  })
})

describe('what it would do', () => {
  test('the wedge opens the dart by 2R·sin(θ/2) and the edge loses less than the wedge', () => {
    const { correction } = changeOf('B8', 0, { how: 'wholeFold', read: mm(12), share: 1 })
    const outcome = previewOf(base(), correction)
    if (!outcome.ok) throw new Error(outcome.why.id)
    const { before, after, wedge } = outcome.preview
    const front = pieceOf(before, 'front')
    const path = edge(front, 'sleeveEdge').path
    const apex = front.points['apex']!
    const r = distance(apex, pointAtLength(path, pathLength(path) / 2))
    const R = distance(apex, front.darts[0]!.outer)
    // sin(θ/2) = w/2r, so 2R·sin(θ/2) = w·R/r.
    expect(wedge?.opens).toBeCloseTo((12 * R) / r, 9)
    const [a, b] = [record(before).lengths, record(after).lengths]
    const lost = a['front.sleeveEdge']! - b['front.sleeveEdge']!
    expect(lost).toBeGreaterThan(3)
    expect(lost).toBeLessThan(12)
    expect(b['front.hem']!).toBeGreaterThan(a['front.hem']!)
    expect(b['back.sleeveEdge']).toBe(a['back.sleeveEdge'])
  })
  test('it stands on the changes already made, and leaves them as they are', () => {
    const first = changeOf('W1', 0, { how: 'levelError', read: mm(14), share: 1 }).correction
    const list = [{ ...first, v: 1 as const, id: 'c1' }]
    const second = changeOf('W1', 0, { how: 'levelError', read: mm(6), share: 1 }).correction
    const outcome = previewOf({ ...base(), corrections: list }, second)
    if (!outcome.ok) throw new Error(outcome.why.id)
    expect(outcome.preview.before.choices.lengthAdded).toBe(14)
    expect(outcome.preview.after.choices.lengthAdded).toBe(20)
    expect(list).toHaveLength(1)
  })
  test('what cannot be made is refused with its reason: no dart, past the range', () => {
    const { correction } = changeOf('B8', 0, { how: 'wholeFold', read: mm(12), share: 1 })
    const straight = base({ bustGirth: 880, waistGirth: 888 })
    expect(previewOf(straight, correction)).toMatchObject({ ok: false, why: { id: 'noDart' } })
    const far = changeOf('W1', 0, { how: 'levelError', read: mm(40), share: 1 }).correction
    const twice = { ...base(), corrections: [{ ...far, v: 1 as const, id: 'c1' }] }
    expect(previewOf(twice, far)).toMatchObject({
      ok: false,
      why: { id: 'choiceOutOfRange', choice: 'lengthAdded', to: 80 },
    })
  })
  // An arm opening holds the upper arm and 50 mm more (published sleeve drafts, 51 mm and more):
  // where it would not, the underarm goes deeper, and that is said.
  test('what the proof finds only after the change is handed on', () => {
    const { correction } = changeOf('B8', 1, { how: 'seamToPin', read: mm(15), share: 1 })
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
