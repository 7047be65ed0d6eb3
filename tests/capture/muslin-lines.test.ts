/** Lines drawn on an invented muslin at known places: plane trigonometry. */
import { expect, test } from 'vitest'
import type { CardOutcome } from '../../src/capture/card.ts'
import { findLines } from '../../src/capture/find-lines.ts'
import {
  belowShoulders,
  linesOf,
  tiltOf,
  tracedLine,
  type MuslinLine,
} from '../../src/capture/muslin-lines.ts'
import type { Person } from '../../src/capture/person.ts'
import type { Picture } from '../../src/capture/picture.ts'

const [W, H] = [600, 800]
const NO_CARD: CardOutcome = { ok: false, reason: 'none' }
const AT = {
  left_shoulder: [380, 200],
  right_shoulder: [220, 200],
  left_hip: [350, 450],
  right_hip: [250, 450],
} as const
const person = (): Person => ({
  score: 1,
  joints: Object.fromEntries(
    Object.entries(AT).map(([name, [x, y]]) => [name, { at: { x, y }, score: 1 }]),
  ),
  mask: { width: W, height: H, data: new Uint8Array(W * H).fill(255) },
})

interface Pen {
  readonly at: number
  readonly lean: number
  readonly plumb?: boolean
}
/** Cloth with a weave that strays by a few in a hundred, and pen lines 2 px wide. Seeded, no chance. */
function muslin(pens: readonly Pen[], more?: (x: number, y: number) => number): Picture {
  const data = new Uint8ClampedArray(W * H * 4)
  let seed = 7
  for (let y = 0; y < H; y++)
    for (let x = 0; x < W; x++) {
      seed = (seed * 16807) % 2147483647
      let level = 200 + ((seed % 7) - 3) + (more?.(x, y) ?? 0)
      for (const { at, lean, plumb } of pens) {
        const slope = Math.tan((lean * Math.PI) / 180)
        const off = plumb ? x - at - slope * (y - 325) : y - at - slope * (x - 300)
        if (Math.abs(off) <= 1) level = 120
      }
      data.set([level, level, level, 255], (y * W + x) * 4)
    }
  return { width: W, height: H, data }
}
const named = (lines: readonly MuslinLine[], name: string) => lines.find((l) => l.name === name)

test('a bust line, a waist line and a centre are found where they were drawn', () => {
  const picture = muslin([
    { at: 280, lean: 1.5 },
    { at: 390, lean: -2 },
    { at: 302, lean: 1, plumb: true },
  ])
  const lines = findLines(picture, person(), NO_CARD)
  expect(lines.map((l) => l.name)).toEqual(['bustLine', 'waistLine', 'centre'])
  for (const [name, at, lean] of [
    ['bustLine', 280, 1.5],
    ['waistLine', 390, -2],
  ] as const) {
    const line = named(lines, name)
    if (!line) throw new Error(name)
    expect(Math.abs(tiltOf(line) - lean)).toBeLessThan(0.25)
    expect(Math.abs((line.from.y + line.to.y) / 2 - at)).toBeLessThan(2)
  }
  expect(Math.abs(tiltOf(named(lines, 'centre') ?? lines[0]!) - 1)).toBeLessThan(0.25)
})

test('plain cloth, a step of light as at a hem, and a short fold are no drawn lines', () => {
  expect(findLines(muslin([]), person(), NO_CARD)).toEqual([])
  const hem = muslin([], (_x, y) => (y > 380 ? -70 : 0))
  expect(findLines(hem, person(), NO_CARD)).toEqual([])
  const fold = muslin([], (x, y) => (Math.abs(y - 300) <= 1 && x > 290 && x < 340 ? -60 : 0))
  expect(findLines(fold, person(), NO_CARD)).toEqual([])
})

test('tilt is positive where a level falls to the right and a plumb walks to the right', () => {
  const level = tracedLine('waistLine', { x: 300, y: 110 }, { x: 100, y: 100 })
  expect(level.from.x).toBe(100)
  expect(tiltOf(level)).toBeCloseTo((Math.atan2(10, 200) * 180) / Math.PI, 9)
  const plumb = tracedLine('centre', { x: 103, y: 400 }, { x: 100, y: 100 })
  expect(tiltOf(plumb)).toBeCloseTo((Math.atan2(3, 300) * 180) / Math.PI, 9)
})

test('what she traced stands before what the camera saw', () => {
  const seen: MuslinLine = {
    name: 'hipLine',
    from: { x: 0, y: 9 },
    to: { x: 99, y: 9 },
    by: 'camera',
  }
  const mine = tracedLine('hipLine', { x: 0, y: 5 }, { x: 9, y: 5 })
  expect(linesOf([seen, mine])).toEqual([mine])
})

test('without a card the height is not told in millimetres', () => {
  const line = tracedLine('waistLine', { x: 0, y: 400 }, { x: 9, y: 400 })
  const joints = {
    ...person().joints,
    nose: { at: { x: 300, y: 100 }, score: 1 },
    left_ear: { at: { x: 315, y: 100 }, score: 1 },
    right_ear: { at: { x: 285, y: 100 }, score: 1 },
    left_knee: { at: { x: 350, y: 650 }, score: 1 },
    right_knee: { at: { x: 250, y: 650 }, score: 1 },
  }
  const reading = {
    view: 'front',
    size: { width: W, height: H },
    person: { ok: true, score: 1, joints },
    card: NO_CARD,
    points: {},
    missing: {},
    outline: [],
    facing: -1,
  } as const
  expect(belowShoulders(line, reading)).toBeUndefined()
})
