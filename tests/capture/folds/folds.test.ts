/**
 * A trunk of plain cloth rendered here: light that falls off round the body, folds as pairs of a
 * bright and a dark flank with known place and direction, noise from a fixed sequence.
 */
import { describe, expect, test } from 'vitest'
import { faultSaid } from '../../../src/capture/fault.ts'
import { complaintsAt, placeOfFold, PLACES } from '../../../src/capture/folds/fold-places.ts'
import { readFolds } from '../../../src/capture/folds/read-folds.ts'
import { apart } from '../../../src/capture/folds/strokes.ts'
import type { TrunkFrame } from '../../../src/capture/folds/trunk-frame.ts'
import type { Person } from '../../../src/capture/person.ts'
import type { Picture } from '../../../src/capture/picture.ts'

const [WIDTH, HEIGHT] = [420, 560]
/** 1 mm a pixel: the shoulder joints lie 330 px apart, as a reading without a card takes them. */
const JOINTS = {
  left_shoulder: { x: 375, y: 90 },
  right_shoulder: { x: 45, y: 90 },
  left_hip: { x: 290, y: 520 },
  right_hip: { x: 130, y: 520 },
}

/** From the middle of a fold to its brightest and darkest line, px: about 10 mm from foot to foot. */
const FLANK = 2.5

interface DrawnFold {
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
  /** Part of the light that the flanks gain and lose. */
  readonly depth: number
}

function trunk(folds: readonly DrawnFold[]): { picture: Picture; person: Person } {
  const data = new Uint8ClampedArray(WIDTH * HEIGHT * 4)
  const mask = new Uint8Array(WIDTH * HEIGHT)
  let seed = 7
  const noise = (): number => {
    seed = (seed * 1103515245 + 12345) % 2147483648
    return seed / 2147483648 - 0.5
  }
  for (let y = 0; y < HEIGHT; y++)
    for (let x = 0; x < WIDTH; x++) {
      const k = y * WIDTH + x
      const her = x > 40 && x < 380 && y > 60
      // Light from the left on a round trunk, and a soft chest.
      const round = Math.sqrt(Math.max(0.05, 1 - ((x - 170) / 260) ** 2))
      let light = 0.45 * round + 0.03 * Math.exp(-(((y - 230) / 60) ** 2))
      for (const { from, to, depth } of folds) {
        const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
        const long = Math.hypot(dx, dy)
        const along = ((x - from[0]) * dx + (y - from[1]) * dy) / long
        const across = ((x - from[0]) * dy - (y - from[1]) * dx) / long
        if (along > 0 && along < long)
          light *= 1 + depth * (across / FLANK) * Math.exp(0.5 - (across / FLANK) ** 2 / 2)
      }
      light *= 1 + 0.015 * noise()
      const [r, g, b] = her ? [0.9, 0.85, 0.7] : [0.2, 0.5, 0.3]
      const grey = her ? light : 0.3
      data.set(
        [r, g, b].map((c) => 255 * (c * grey) ** (1 / 2.2)),
        k * 4,
      )
      data[k * 4 + 3] = 255
      mask[k] = her ? 255 : 0
    }
  const joints = Object.fromEntries(
    Object.entries(JOINTS).map(([name, at]) => [name, { at, score: 1 }]),
  )
  return {
    picture: { width: WIDTH, height: HEIGHT, data },
    person: { score: 1, joints, mask: { width: WIDTH, height: HEIGHT, data: mask } },
  }
}
const NO_CARD = { ok: false, reason: 'no card' } as const

const read = (folds: readonly DrawnFold[]) => {
  const { picture, person } = trunk(folds)
  const outcome = readFolds('front', picture, person, NO_CARD)
  if (!outcome.ok) throw new Error(outcome.reason)
  return outcome
}

describe('fold reading', () => {
  test('a smooth trunk has no folds', () => {
    expect(read([]).folds).toEqual([])
  })

  test('level folds between the apexes are found, level, and lead to complaints of the bust', () => {
    const found = read([
      { from: [130, 190], to: [290, 190], depth: 0.15 },
      { from: [130, 225], to: [290, 225], depth: 0.15 },
    ])
    expect(found.folds).toHaveLength(2)
    for (const { angle, lengthMm } of found.folds) {
      expect(apart(angle, 0)).toBeLessThan(0.06)
      expect(lengthMm).toBeGreaterThan(110)
    }
    const ys = found.folds.map(({ line }) => line.reduce((s, p) => s + p.y, 0) / line.length)
    expect(ys.sort((a, b) => a - b).map((y) => Math.round(y / 10))).toEqual([19, 23])
    expect(found.places[0]).toBe('betweenApexes')
    expect(complaintsAt(found.places)[0]).toBe('B1')
  })

  test('a slanting fold keeps its direction', () => {
    // Up to the right by 50 degrees, from the armpit towards the neck on the left of the picture.
    const turn = (50 * Math.PI) / 180
    const found = read([
      {
        from: [80, 150],
        to: [80 + 110 * Math.cos(turn), 150 - 110 * Math.sin(turn) + 20],
        depth: 0.18,
      },
    ])
    const expected = Math.atan2(110 * Math.sin(turn) - 20, 110 * Math.cos(turn))
    expect(found.folds.length).toBeGreaterThan(0)
    expect(apart(found.folds[0]?.angle ?? 9, expected)).toBeLessThan((5 * Math.PI) / 180)
  })

  test('nobody in the picture: what to do is said', () => {
    const { picture } = trunk([])
    const outcome = readFolds('front', picture, undefined, NO_CARD)
    expect(outcome.ok ? '' : faultSaid(outcome.reason)).toContain('from the neck to the thighs')
  })
})

describe('places of folds', () => {
  const frame: TrunkFrame = {
    shoulder: { x: 100, y: 0 },
    torso: 100,
    half: 50,
    middle: () => 100,
  }
  const one = (x: number, y: number, degrees: number) => ({
    cells: [y * 200 + x],
    angle: (degrees * Math.PI) / 180,
  })
  const at = (view: 'front' | 'back', x: number, y: number, degrees: number) =>
    placeOfFold(view, one(x, y, degrees), frame, 200)[0]?.place

  test('place and direction together tell, on both sides alike', () => {
    expect(at('front', 70, 8, 40)).toBe('neckToArmpit')
    expect(at('front', 130, 8, 140)).toBe('neckToArmpit')
    expect(at('front', 70, 10, 145)).toBe('shoulderTipToCentre')
    expect(at('back', 130, 10, 35)).toBe('shoulderTipToCentre')
    expect(at('back', 100, 65, 0)).toBe('aboveBackWaist')
    expect(at('front', 100, 25, 178)).toBe('betweenApexes')
    expect(at('front', 60, 50, 65)).toBe('apexToSideWaist')
    expect(at('back', 58, 10, 91)).toBe('besideArmhole')
  })

  test('every place names complaints of the table', () => {
    for (const { complaints } of Object.values(PLACES))
      for (const id of complaints) expect(id).toMatch(/^(N|SH|B|A|K|W|L|D|X)\d+$/)
  })
})
