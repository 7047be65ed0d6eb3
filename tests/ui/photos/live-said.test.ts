/** What is said and heard while the photos are taken. */
import { expect, it } from 'vitest'
import { beginLive, countDown, tick, took, type Step } from '../../../src/capture/live.ts'
import { said, toneOf } from '../../../src/ui/measure/photos/live-said.ts'

const waiting: Step = { phase: 'waiting', hint: 'nobody' }
const counting: Step = { phase: 'counting', by: 'still', until: 3000, bad: 0 }
const taken: Step = { phase: 'taken', view: 'front', until: 9000 }

it('a tone for each second, the last one higher, and none between', () => {
  expect(toneOf(waiting, counting, 0, 0)).toBe('tick')
  expect(toneOf(counting, counting, 400, 500)).toBeUndefined()
  expect(toneOf(counting, counting, 950, 1050)).toBe('tick')
  expect(toneOf(counting, counting, 1950, 2050)).toBe('last')
})
it('taken, broken off and done sound different', () => {
  expect(toneOf({ phase: 'shooting' }, taken, 0, 0)).toBe('taken')
  expect(toneOf(counting, waiting, 0, 100)).toBe('broken')
  expect(toneOf(counting, { phase: 'shooting' }, 2900, 3000)).toBeUndefined()
  expect(toneOf(taken, { phase: 'done' }, 0, 0)).toBe('done')
  expect(toneOf(waiting, waiting, 0, 100)).toBeUndefined()
})
it('the words lead from one view to the next', () => {
  const shooting = tick(countDown(beginLive(), 0), 10_000)
  expect(said(took(shooting, 10_000))).toBe('Front is taken. Now your side.')
  const last = tick(countDown(beginLive(['back']), 0), 10_000)
  expect(said(took(last, 10_000))).toBe('Back is taken.')
  expect(said(beginLive())).toBe('Step into the picture.')
  expect(said(beginLive([]))).toBe('All are taken.')
})
