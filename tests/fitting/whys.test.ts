/**
 * Why a cause is likely, from the numbers. Ease limits: published tables, as in rules/gates.ts
 * (38 to 60 mm at the bust, 19 to 40 at the waist of a woven bodice).
 */
import { expect, test } from 'vitest'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { sewnEase } from '../../src/draft/ease.ts'
import { measuredReaches } from '../../src/fitting/measured-reaches.ts'
import { whysFor, type Known } from '../../src/fitting/whys.ts'
import { mm } from '../../src/units/length.ts'
import { body, bodyOf, MIDDLE } from '../bodies.ts'

const known = (easeBust?: number): Known => {
  const choices = standardFor('block')
  const made = draft('block', body(), {
    ...choices,
    easeBust: mm(easeBust ?? choices.easeBust),
  })
  return { draft: made, reaches: measuredReaches(made) }
}
const first = (id: Parameters<typeof whysFor>[0], k: Known) => whysFor(id, k)[0]
const text = (said: readonly unknown[]) => said.join('')

test('ease that is there contradicts tightness, and asks for the tape first', () => {
  // Choices are for half the body: 40 mm on the half is 80 mm round, over the 60 of a fitted bodice.
  const roomy = known(40)
  const ease = sewnEase(roomy.draft).find((e) => e.level === 'bust')?.ease ?? 0
  expect(ease).toBeGreaterThan(60)
  const tight = first('B1', roomy)
  expect(tight?.leans).toBe('against')
  expect(text(tight?.said ?? [])).toMatch(/tape the bust once more first/)
  // The same number speaks for looseness.
  expect(first('B3', roomy)?.leans).toBe('for')
})
test('ease that is not there speaks for tightness and against looseness', () => {
  const close = known(8)
  const ease = sewnEase(close.draft).find((e) => e.level === 'bust')?.ease ?? 99
  expect(ease).toBeLessThan(38)
  expect(first('B1', close)?.leans).toBe('for')
  expect(first('B3', close)?.leans).toBe('against')
})
test('what is drawn to the tape sends her to the tape; what is not taped may well be off', () => {
  const k = known()
  const back = whysFor('W1', k)[0]
  expect(back?.leans).toBe('against')
  expect(back?.said).toContain(400)
  const { shoulderSlopeRight: _one, shoulderSlopeLeft: _other, ...rest } = MIDDLE
  const untaped = { ...k, draft: { ...k.draft, body: bodyOf(rest) } }
  const slope = whysFor('SH1', untaped)[0]
  expect([slope?.leans, text(slope?.said ?? [])]).toEqual([
    'for',
    expect.stringMatching(/is not taped/),
  ])
})
test('a stretched edge is told by the length it was drawn', () => {
  const why = whysFor('N1', known()).find(({ causes }) => causes.some((c) => c.number === 4))
  expect(why?.leans).toBe('open')
  // 111.26 mm of front neck on the half: numbers() of the same draft, tests/draft/bodice.test.ts.
  expect(why?.said.some((part) => typeof part === 'number' && Math.abs(part - 111.26) < 0.1)).toBe(
    true,
  )
})
test('a movement that pulls speaks for want of room to move, one that is free against it', () => {
  const k = known()
  const of = (freedom: 'free' | 'pulls') =>
    whysFor('K1', { ...k, armsForward: { freedom, rose: mm(12) } }).find((w) =>
      w.causes.some((c) => c.number === 2),
    )
  expect(of('pulls')?.leans).toBe('for')
  expect(of('pulls')?.said).toContain(12)
  expect(of('free')?.leans).toBe('against')
})
test('causes of which one number says the same are told together', () => {
  const [tight] = whysFor('B1', known(40))
  expect(tight?.causes.map((c) => c.number)).toEqual([1, 2])
})
test('a cause that leads to another complaint is read by its number', () => {
  // B11.3 is a tight bust under another name.
  const why = whysFor('B11', known(8)).find(({ causes }) => causes.some((c) => c.number === 3))
  expect(why?.leans).toBe('for')
})
