import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openCanvas, type Canvas } from '../../scripts/figure/canvas.ts'
import { findChromium } from '../../scripts/chromium.mjs'
import { findSheet } from '../../src/capture/card.ts'
import { faultSaid } from '../../src/capture/fault.ts'
import type { Detector } from '../../src/capture/detector.ts'
import type { Person } from '../../src/capture/person.ts'
import { mirrored, type Picture } from '../../src/capture/picture.ts'
import { placePoints } from '../../src/capture/place-points.ts'
import type { View } from '../../src/capture/reading.ts'
import { nodeDetector } from './node-detector.ts'
import { againstLight, blurred, covered, cropped, sideBySide, turned } from './spoil.ts'

/**
 * Thirty pictures of the invented figure, each spoiled in one way, read by the real model. What is
 * wrong is what was done to the picture; the sentence must say it and what to do.
 */
const PHOTOS = fileURLToPath(new URL('../photos/', import.meta.url))
const VIEWS = ['front', 'side', 'back'] as const
const ready = findChromium() !== undefined && existsSync(`${PHOTOS}figure-front.jpg`)
if (!ready) console.log('skipped: no Chromium to decode the rendered figure')

interface Good {
  readonly picture: Picture
  readonly person: Person
}
type Spoil = (good: Good, all: Readonly<Record<View, Good>>) => Picture

const WAYS: readonly (readonly [name: string, reason: RegExp, variants: readonly Spoil[]])[] = [
  [
    'feet cut',
    /feet.*Step back/,
    [({ picture }) => cropped(picture, 0, 0.77), ({ picture }) => cropped(picture, 0.02, 0.7)],
  ],
  ['head cut', /head.*Step back/, [({ picture }) => cropped(picture, 0.3, 1)]],
  [
    'on its side',
    /on its side.*upright/,
    [({ picture }) => turned(picture, true), ({ picture }) => turned(picture, false)],
  ],
  ['mirrored', /mirrored.*take it again/, [({ picture }) => mirrored(picture)]],
  ['no card', /No card.*Hang the printed sheet/, [(good) => covered(good.picture, sheetOf(good))]],
  ['blurred', /blurred.*Rest the camera/, [({ picture }) => blurred(picture, 4)]],
  [
    'against the light',
    /behind you.*in front of you/,
    [({ picture, person }) => againstLight(picture, person.mask.data, 0.12)],
  ],
  [
    'two persons',
    /More than one person.*Stand alone/,
    [({ picture }, { front }) => sideBySide(picture, front.picture)],
  ],
]

/** Where the sheet hangs, shares of the picture, its paper included. */
function sheetOf({ picture }: Good): readonly [number, number, number, number] {
  const found = findSheet(picture)
  if (!found.ok) throw new Error(found.reason)
  const [xs, ys] = [found.card.corners.map((p) => p.x), found.card.corners.map((p) => p.y)]
  const side = Math.max(...xs) - Math.min(...xs)
  return [
    (Math.min(...xs) - 0.1 * side) / picture.width,
    (Math.min(...ys) - 0.1 * side) / picture.height,
    (Math.max(...xs) + 0.1 * side) / picture.width,
    (Math.max(...ys) + 0.1 * side) / picture.height,
  ]
}

describe.skipIf(!ready)('spoiled photos are named', () => {
  let canvas: Canvas | null = null
  let model: Detector
  let good: Record<View, Good>

  beforeAll(async () => {
    canvas = await openCanvas()
    model = await nodeDetector()
    const read = async (view: View): Promise<Good> => {
      if (!canvas) throw new Error('no canvas')
      const picture = await canvas.decode(`${PHOTOS}figure-${view}.jpg`)
      const person = await model.find(picture)
      if (!person) throw new Error(`nobody in figure-${view}.jpg`)
      return { picture, person }
    }
    good = { front: await read('front'), side: await read('side'), back: await read('back') }
  })
  afterAll(async () => {
    model.close()
    await canvas?.close()
  })

  async function reasons(view: View, picture: Picture): Promise<string> {
    const person = await model.find(picture)
    const company = person ? await model.hasCompany(picture, person) : false
    const seen = person && company ? { ...person, company } : person
    const reading = placePoints(view, picture, seen, findSheet(picture))
    return [reading.person, reading.card]
      .map((outcome) => (outcome.ok ? '' : faultSaid(outcome.reason)))
      .join(' ')
      .trim()
  }

  it.each(VIEWS)('%s as it is: nothing to say', async (view) => {
    expect(await reasons(view, good[view].picture)).toBe('')
  })

  const cases = WAYS.flatMap(([name, reason, variants]) =>
    VIEWS.flatMap((view) =>
      variants.map((spoil, k) => [`${view}, ${name} (${k + 1})`, view, spoil, reason] as const),
    ),
  )
  it('counts thirty', () => expect(cases.length).toBe(30))

  it.each(cases)('%s', async (_, view, spoil, reason) => {
    expect(await reasons(view, spoil(good[view], good))).toMatch(reason)
  })

  it.each(['front', 'back'] as const)('%s, a hand on the hip', (view) => {
    const { picture, person } = good[view]
    const { left_hip, left_shoulder, left_elbow, left_wrist } = person.joints
    if (!left_hip || !left_shoulder || !left_elbow || !left_wrist) throw new Error('joints')
    const torso = left_hip.at.y - left_shoulder.at.y
    const out = Math.sign(left_hip.at.x - (person.joints.right_hip?.at.x ?? 0))
    const place = (x: number, y: number) => ({ at: { x, y }, score: 1 })
    // Elbow a forearm away from the trunk, hand on the hip bone: arms akimbo.
    const joints = {
      ...person.joints,
      left_elbow: place(left_hip.at.x + out * 0.55 * torso, left_shoulder.at.y + 0.55 * torso),
      left_wrist: place(left_hip.at.x + out * 0.15 * torso, left_hip.at.y - 0.15 * torso),
    }
    const { person: found } = placePoints(view, picture, { ...person, joints }, findSheet(picture))
    expect(found.ok ? '' : faultSaid(found.reason)).toMatch(/hands rest.*a little away/)
  })
})
