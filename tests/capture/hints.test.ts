/**
 * Which hint is said for which stance. What the photos need (whole body in view, arms clear of the
 * hips, front, side and back) is common practice of measuring from photos; no published source.
 */
import { describe, expect, test } from 'vitest'
import { hintFor } from '../../src/capture/hints.ts'
import { HINT_WORDS } from '../../src/capture/hints.words.ts'
import { livePose, movedBy } from '../../src/capture/live-pose.ts'
import { VIEWS } from '../../src/capture/reading.ts'
import { sightOf, type Stance } from './live-sight.ts'

const hint = (view: (typeof VIEWS)[number], stance: Stance) =>
  hintFor(view, livePose(sightOf(stance)))

describe('a good stance has no hint', () => {
  test.each(VIEWS)('%s', (view) => expect(hint(view, { turn: view })).toBeUndefined())
  test('from the side with an arm lifted forward', () =>
    expect(hint('side', { turn: 'side', arms: 95 })).toBeUndefined())
})

test('nobody in the picture', () => {
  expect(hintFor('front', livePose(undefined))).toBe('nobody')
  const faint = sightOf()
  const joints = Object.fromEntries(
    Object.entries(faint.joints).map(([name, joint]) => [name, { ...joint, score: 0.2 }]),
  )
  expect(hintFor('front', livePose({ ...faint, joints }))).toBe('nobody')
})

test.each([
  ['stepBack', { tall: 1.1, sole: 1.04 }],
  ['feet', { sole: 1.02 }],
  ['feet', { feet: false }],
  ['head', { sole: 0.7, tall: 0.78 }],
  ['nearer', { tall: 0.3 }],
  // Her left lies right in the picture: standing there, the way to the middle is to her right.
  ['goRight', { across: 0.8 }],
  ['goLeft', { across: 0.2 }],
  ['faceCamera', { turn: 'side' }],
  ['faceCamera', { turn: 'back' }],
  ['armsAway', { arms: 3 }],
  ['armsDown', { arms: 80 }],
  ['handDown', { rightArm: 178 }],
] as const)('front: %s', (wanted, stance) => expect(hint('front', stance)).toBe(wanted))

test('from behind left and right are exchanged in the picture', () => {
  expect(hint('back', { turn: 'back', across: 0.8 })).toBe('goLeft')
  expect(hint('side', { turn: 'side', across: 0.8 })).toBe('middle')
})
test('each view asks for its own turn', () => {
  expect(hint('side', { turn: 'front' })).toBe('turnSide')
  expect(hint('back', { turn: 'front' })).toBe('turnBack')
})

test('what is out of the picture is said before what the arms do', () =>
  expect(hint('front', { sole: 1.02, arms: 3 })).toBe('feet'))

test('movement is counted in torsos, wherever she stands', () => {
  const pose = (across: number) => {
    const found = livePose(sightOf({ across }))
    if (!found) throw new Error('no pose')
    return found
  }
  // A torso is 2.5 of 8 heads: 0.7 * 480 / 8 * 2.5 = 105 px; 0.1 of 360 px is 36 px.
  expect(movedBy(pose(0.4), pose(0.5))).toBeCloseTo(36 / 105, 6)
  expect(movedBy(pose(0.4), pose(0.4))).toBe(0)
})

test('a hint is one short sentence she can read from the wall', () => {
  for (const words of Object.values(HINT_WORDS)) {
    expect(words).toMatch(/^[A-Z][^!]*\.$/)
    expect(words.length).toBeLessThan(56)
  }
})
