/** The states of taking the photos alone: frames and times in, states out. No clock runs here. */
import { describe, expect, test } from 'vitest'
import { livePose } from '../../src/capture/live-pose.ts'
import {
  beginLive,
  breakOff,
  countDown,
  COUNT_SECONDS,
  digit,
  missed,
  STEADY_MS,
  takeAgain,
  tick,
  took,
  watch,
  type LiveState,
} from '../../src/capture/live.ts'
import { sightOf, type Stance } from './live-sight.ts'

const see = (state: LiveState, stance: Stance | undefined, now: number): LiveState =>
  watch(state, stance && livePose(sightOf(stance)), now)
const phase = (state: LiveState): string => state.step.phase
/** Frames every 200 ms from `from` to `to`, both included. */
function hold(state: LiveState, stance: Stance | undefined, from: number, to: number): LiveState {
  let now = from
  let next = state
  for (; now <= to; now += 200) next = tick(see(next, stance, now), now)
  return next
}
const still = COUNT_SECONDS.still * 1000

/** Stands still for the first view until the camera has to shoot. */
function shot(state: LiveState, stance: Stance, from: number): LiveState {
  const counted = hold(state, stance, from, from + STEADY_MS + 400)
  expect(phase(counted)).toBe('counting')
  return tick(counted, from + STEADY_MS + 400 + still)
}

describe('front, side and back in one go', () => {
  test('waiting, near, steady, counting, taken, next view, done', () => {
    let state = beginLive()
    expect(state.step).toEqual({ phase: 'waiting', hint: 'nobody' })
    state = see(state, {}, 0)
    expect(phase(state)).toBe('near')
    state = see(state, {}, 200)
    expect(phase(state)).toBe('steady')
    state = see(state, {}, 200 + STEADY_MS - 1)
    expect(phase(state)).toBe('steady')
    state = see(state, {}, 200 + STEADY_MS)
    expect(phase(state)).toBe('counting')
    const began = 200 + STEADY_MS
    expect([0, 999, 1001, 2999].map((t) => digit(state.step, began + t))).toEqual([3, 3, 2, 1])
    expect(phase(tick(state, began + still - 1))).toBe('counting')
    state = tick(state, began + still)
    expect(phase(state)).toBe('shooting')
    state = took(state, began + still)
    expect(state.step).toMatchObject({ phase: 'taken', view: 'front' })
    expect(state.todo).toEqual(['side', 'back'])
    // Frames during the pause change nothing; after it the side is next.
    state = hold(state, { turn: 'side' }, began + still, began + still + 1000)
    expect(phase(state)).toBe('taken')
    state = tick(state, began + still + 10_000)
    expect(phase(state)).toBe('waiting')
    state = took(shot(state, { turn: 'side' }, 20_000), 25_000)
    state = took(shot(tick(state, 30_000), { turn: 'back' }, 31_000), 36_000)
    expect(phase(state)).toBe('taken')
    state = tick(state, 40_000)
    expect(phase(state)).toBe('done')
    expect(see(state, {}, 41_000)).toBe(state)
  })

  test('the wrong view is not counted', () => {
    const state = hold(beginLive(['side', 'back']), { turn: 'front' }, 0, 5000)
    expect(state.step).toMatchObject({ phase: 'waiting', hint: 'turnSide' })
  })
})

describe('steady', () => {
  test('moving begins it anew', () => {
    let state = hold(beginLive(), {}, 0, 800)
    expect(phase(state)).toBe('steady')
    // 0.05 of 360 px is 18 px, 0.17 of a torso of 105 px.
    state = see(state, { across: 0.55 }, 1000)
    expect(phase(state)).toBe('near')
    state = hold(state, { across: 0.55 }, 1200, 2000)
    expect(phase(state)).toBe('steady')
  })
  test('slow drift is movement too: it is measured from where she began to stand still', () => {
    let state = beginLive()
    for (let k = 0; k < 20; k++) state = see(state, { across: 0.4 + 0.007 * k }, 200 * k)
    expect(phase(state)).not.toBe('counting')
  })
})

describe('a count after standing still', () => {
  const counting = hold(beginLive(), {}, 0, STEADY_MS + 400)
  test('goes on over one bad frame and breaks off at the second', () => {
    const one = see(counting, undefined, 2000)
    expect(phase(one)).toBe('counting')
    expect(phase(see(one, {}, 2200))).toBe('counting')
    expect(see(one, undefined, 2200).step).toEqual({ phase: 'waiting', hint: 'nobody' })
  })
  test('breaks off when she walks', () => {
    const walked = hold(counting, { across: 0.65 }, 2000, 2200)
    expect(phase(walked)).toBe('near')
  })
})

describe('a raised hand', () => {
  test('begins a longer count, though the arms are not as they should be', () => {
    const state = see(beginLive(), { rightArm: 178 }, 0)
    expect(state.step).toMatchObject({ phase: 'counting', by: 'hand' })
    expect(digit(state.step, 0)).toBe(5)
    const lowered = hold(state, {}, 200, 4800)
    expect(phase(tick(lowered, 5000))).toBe('shooting')
  })
  test('still up at the end: no photo, the hint says why, and it must come down first', () => {
    const state = hold(beginLive(), { rightArm: 178 }, 0, 5400)
    expect(state.step).toEqual({ phase: 'waiting', hint: 'handDown' })
    const down = hold(state, { arms: 3 }, 5600, 6000)
    expect(phase(see(down, { rightArm: 178 }, 6200))).toBe('counting')
  })
  test('is no trigger with the feet out of the picture', () =>
    expect(phase(see(beginLive(), { rightArm: 178, feet: false }, 0))).toBe('waiting'))
})

describe('the key', () => {
  test('counts ten without anybody seen, and shoots', () => {
    const state = countDown(beginLive(), 100)
    expect(digit(state.step, 100)).toBe(10)
    const unseen = hold(state, undefined, 200, 10_000)
    expect(phase(tick(unseen, 10_100))).toBe('shooting')
  })
  test('pressed again it breaks off', () =>
    expect(phase(breakOff(countDown(beginLive(), 0)))).toBe('waiting'))
})

test('a hint has to last before it takes the place of another', () => {
  const first = hold(beginLive(), { turn: 'side' }, 0, 600)
  expect(first.step).toMatchObject({ hint: 'faceCamera' })
  const flicker = see(first, { tall: 0.3 }, 800)
  expect(flicker.step).toMatchObject({ hint: 'faceCamera' })
  expect(see(flicker, { turn: 'side' }, 900).step).toEqual({
    phase: 'waiting',
    hint: 'faceCamera',
  })
  expect(hold(first, { tall: 0.3 }, 800, 1200).step).toMatchObject({ hint: 'nearer' })
})

test('a picture that failed is tried once more; any view can be taken again', () => {
  const shooting = tick(countDown(beginLive(), 0), 10_000)
  expect(missed(shooting)).toMatchObject({ todo: ['front', 'side', 'back'] })
  expect(phase(missed(shooting))).toBe('waiting')
  const taken = took(shooting, 10_000)
  const again = takeAgain(taken, 'front')
  expect(again).toMatchObject({ todo: ['front', 'side', 'back'], step: { phase: 'waiting' } })
  expect(takeAgain(again, 'back').todo).toEqual(['back', 'front', 'side'])
  expect(phase(beginLive([]))).toBe('done')
})
