/**
 * Two invented photos of which the second is the first scaled, turned and moved by known numbers;
 * the model is answered with joints carried by the same numbers, so what the screen must do to the
 * second photo is known exactly: plane geometry.
 */
import { expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { userEvent } from 'vitest/browser'
import type { Camera } from '../../../src/capture/camera.ts'
import type { CardOutcome } from '../../../src/capture/card.ts'
import type { Joint } from '../../../src/capture/person.ts'
import type { ViewReading } from '../../../src/capture/reading.ts'
import { carried, type Similarity, UNMOVED } from '../../../src/capture/similarity.ts'
import { distance } from '../../../src/geometry/point.ts'
import { mm } from '../../../src/units/length.ts'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { bookOf, MIDDLE } from '../../bodies.ts'
import PhotosInApp from './PhotosInApp.svelte'
import { seeded } from '../draft/seeded.ts'

const SIZE = { width: 480, height: 640 }
const AT: Readonly<Record<string, readonly [number, number]>> = {
  nose: [240, 100],
  left_ear: [255, 100],
  right_ear: [225, 100],
  left_shoulder: [290, 180],
  right_shoulder: [190, 180],
  left_hip: [270, 330],
  right_hip: [210, 330],
  left_knee: [270, 480],
  right_knee: [210, 480],
}
/** 0.8 times as large, turned by 2 degrees, moved. */
const TURN = (2 * Math.PI) / 180
const MOVED: Similarity = { a: 0.8 * Math.cos(TURN), b: 0.8 * Math.sin(TURN), dx: 60, dy: 40 }

const NO_CARD: CardOutcome = { ok: false, reason: 'No card.' }
function card(by: Similarity, mmPerPx: number): CardOutcome {
  const at = (x: number, y: number) => carried(by, { x, y })
  const corners = [at(225, 260), at(255, 260), at(255, 290), at(225, 290)] as const
  const side = mm(100)
  const homography = [1, 0, 0, 0, 1, 0, 0, 0, 1] as const
  return {
    ok: true,
    card: {
      kind: 'sheet',
      corners,
      widthMm: side,
      heightMm: side,
      homography,
      mmPerPx,
      residualPx: 0,
    },
  }
}
const reading = (by: Similarity, outcome: CardOutcome): ViewReading => ({
  view: 'front',
  size: SIZE,
  person: {
    ok: true,
    score: 1,
    joints: Object.fromEntries(
      Object.entries(AT).map(([name, [x, y]]): [string, Joint] => [
        name,
        { at: carried(by, { x, y }), score: 1 },
      ]),
    ),
  },
  card: outcome,
  points: {},
  missing: {},
  outline: [],
  facing: -1,
})

interface Asked {
  readonly readings: ViewReading[]
  closed: number
  hold?: Promise<void>
}
const answering = (asked: Asked) => (): Camera => ({
  warm: async (onFetched) => {
    onFetched?.({ loaded: 6e6, total: 13e6 })
    await asked.hold
  },
  muslin: async () => {
    const next = asked.readings.shift()
    if (!next) throw new Error('asked more often than there are photos')
    return { reading: next, sight: { lines: [] } }
  },
  read: () => Promise.reject(new Error('not asked here')),
  look: () => Promise.reject(new Error('not asked here')),
  close: () => (asked.closed += 1),
})

/** Two rounds, each with a plain photo of its own colour. */
async function opened(asked: Asked) {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  await session.putOnPaper(garment)
  await session.startNext(garment)
  await session.putOnPaper(garment)
  for (const round of session.roundsOf(garment)) {
    const jpeg = await grey(90 + 40 * round.number)
    const about = { view: 'front' as const, garmentId: garment, roundId: round.id }
    const sha = await session.keepPhoto(jpeg, about)
    await session.notePhoto(round, 'front', sha ?? '')
  }
  const [before, after] = session.roundsOf(garment)
  if (!before || !after) throw new Error('test: two rounds')
  const preferences = new Preferences()
  const shown = { before, after, camera: answering(asked), session, preferences }
  return { screen: await render(PhotosInApp, shown), session, shown }
}
async function grey(level: number): Promise<Blob> {
  const canvas = new OffscreenCanvas(SIZE.width, SIZE.height)
  const context = canvas.getContext('2d')
  if (!context) throw new Error('test: no canvas')
  context.fillStyle = `rgb(${level} ${level} ${level})`
  context.fillRect(0, 0, SIZE.width, SIZE.height)
  return canvas.convertToBlob({ type: 'image/jpeg' })
}
const BRING = { name: 'Bring the two photos to one scale' }

/** From px of the later photo to px of the drawing, as the screen carries it. */
function carry(of: Element): Similarity {
  const layer = of.querySelector('g[transform^="matrix"]')
  const [a = NaN, b = NaN, , , dx = NaN, dy = NaN] =
    layer?.getAttribute('transform')?.slice(7, -1).split(' ').map(Number) ?? []
  return { a, b, dx, dy }
}

/** How far a joint of the later photo comes to lie from where it was, px. */
const farthest = (by: Similarity): number =>
  Math.max(
    ...Object.values(AT).map(([x, y]) => distance(carried(by, carried(MOVED, { x, y })), { x, y })),
  )

it('the later photo is carried back by the numbers it was moved by; both cards tell it in mm', async () => {
  const readings = [reading(UNMOVED, card(UNMOVED, 3)), reading(MOVED, card(MOVED, 3 / 0.8))]
  const { screen, session, shown } = await opened({ readings, closed: 0 })
  await screen.getByRole('button', BRING).click()
  const drawing = screen.getByRole('group', { name: /parted by a straight edge/ })
  await expect.element(drawing).toBeInTheDocument()
  const by = carry(drawing.element())
  // A sheet hangs before the body, and at one lens that is a larger share of the nearer stand: the
  // cards pull the scale by under a hundredth of the torso.
  expect(farthest(by)).toBeLessThan(1.5)
  await expect
    .element(screen.getByText(/^Lined up by the cards/))
    .toHaveTextContent(/[012] mm at the shoulders and [012] mm at the hips/)
  // Kept with the photos: opened again it is there without the model.
  expect(session.photos.map((p) => p.reading?.size)).toEqual([SIZE, SIZE])
  await screen.unmount()
  const again = await render(PhotosInApp, shown)
  await expect
    .element(again.getByRole('group', { name: /parted by a straight edge/ }))
    .toBeInTheDocument()
})

it('the edge is pushed by keys, one photo lies over the other, and is in turn while a key is held', async () => {
  const readings = [reading(UNMOVED, NO_CARD), reading(MOVED, NO_CARD)]
  const { screen } = await opened({ readings, closed: 0 })
  await screen.getByRole('button', BRING).click()
  await expect
    .element(screen.getByText(/^No card: sizes are made alike/))
    .toHaveTextContent('so they cannot be compared')
  const apart = screen.getByRole('group', { name: /parted by a straight edge/ })
  expect(farthest(carry(apart.element()))).toBeLessThan(1e-3)
  const edge = screen.getByRole('slider', { name: 'Straight edge between round 1 and round 2' })
  ;(edge.element() as SVGElement).focus()
  await userEvent.keyboard('{ArrowRight}{PageUp}')
  await expect.element(edge).toHaveAttribute('aria-valuenow', '61')
  await userEvent.keyboard('{Home}')
  await expect
    .element(edge)
    .toHaveAttribute('aria-valuetext', 'Round 1 to 0 in a hundred from the left')

  await screen.getByText('laid over', { exact: true }).click()
  const strength = screen.getByRole('slider', { name: /How strongly round 2 lies/ })
  await strength.fill('20')
  const over = screen.getByRole('group', { name: 'Muslin 2 laid over muslin 1, from the front' })
  expect(over.element().querySelector('g[opacity]')?.getAttribute('opacity')).toBe('0.2')

  await screen.getByText('blink', { exact: true }).click()
  const inSight = () => screen.getByRole('group', { name: /^Muslin \d from the front$/ })
  await expect.element(inSight()).toHaveAccessibleName('Muslin 2 from the front')
  const key = screen.getByRole('button', { name: 'Hold to blink' })
  ;(key.element() as HTMLElement).focus()
  await userEvent.keyboard('{ >}')
  await expect.element(inSight()).toHaveAccessibleName('Muslin 1 from the front')
  await userEvent.keyboard('{/ }')
  await expect.element(inSight()).toHaveAccessibleName('Muslin 2 from the front')
})

it('nobody in one photo: the reason, and two places marked by hand in both', async () => {
  const nobody: ViewReading = { ...reading(MOVED, NO_CARD), person: { ok: false, reason: 'x' } }
  const { screen } = await opened({ readings: [reading(UNMOVED, NO_CARD), nobody], closed: 0 })
  await screen.getByRole('button', BRING).click()
  await expect.element(screen.getByText('Not brought together.')).toBeInTheDocument()
  await screen.getByRole('button', { name: 'Mark the same two places by hand' }).click()
  const ring = screen.getByRole('button', { name: 'Front or back of the neck' }).last()
  ;(ring.element() as HTMLElement).focus()
  await userEvent.keyboard('{Shift>}{ArrowRight}{/Shift}')
  await screen.getByRole('button', { name: 'Lay them over on these marks' }).click()
  await expect.element(screen.getByText(/^Lined up by your two marks/)).toBeInTheDocument()
  // 10 px aside over the 224 px between the rings: the photo turns by atan(10/224).
  const by = carry(screen.getByRole('group', { name: /parted by a straight edge/ }).element())
  expect(Math.abs(Math.atan2(by.b, by.a))).toBeCloseTo(Math.atan(10 / 224), 3)
})

it('reading can be stopped; what it still brings is not taken', async () => {
  let release: () => void = () => undefined
  const hold = new Promise<void>((resolve) => (release = resolve))
  const asked: Asked = { readings: [reading(UNMOVED, NO_CARD)], closed: 0, hold }
  const { screen, session } = await opened(asked)
  await screen.getByRole('button', BRING).click()
  await expect.element(screen.getByRole('progressbar')).toBeInTheDocument()
  await screen.getByRole('button', { name: 'Stop reading' }).click()
  release()
  await expect.element(screen.getByRole('button', BRING)).toBeInTheDocument()
  expect(asked.closed).toBe(1)
  expect(session.photos.filter((p) => p.reading)).toEqual([])
})
