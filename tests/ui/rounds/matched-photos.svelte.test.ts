/**
 * Two invented photos of which the second is the first scaled, turned and moved by known numbers;
 * the model is answered with joints carried by the same numbers, so what the screen must do to the
 * second photo is known exactly: plane geometry.
 */
import { expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { userEvent } from 'vitest/browser'
import type { ViewReading } from '../../../src/capture/reading.ts'
import { carried, type Similarity, UNMOVED } from '../../../src/capture/similarity.ts'
import { distance, type Point } from '../../../src/geometry/point.ts'
import { photoOf } from '../../../src/rounds/round.ts'
import type { Session } from '../../../src/ui/session.svelte.ts'
import { AT, card, NO_CARD, opened, reading, SIZE, type Asked } from './photographed.ts'
import { anotherWindow } from '../draft/seeded.ts'
import PhotosInApp from './PhotosInApp.svelte'

/** The photos whose pixels are kept. */
const here = async (session: Session) =>
  (await session.keptPhotos('all')).filter((photo) => photo.here)

/** 0.8 times as large, turned by 2 degrees, moved. */
const TURN = (2 * Math.PI) / 180
const MOVED: Similarity = { a: 0.8 * Math.cos(TURN), b: 0.8 * Math.sin(TURN), dx: 60, dy: 40 }

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
  expect((await here(session)).map((p) => p.reading?.size)).toEqual([SIZE, SIZE])
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
  expect((await session.keptPhotos('all')).filter((p) => p.reading)).toEqual([])
})

const HEAD = { x: 240, y: 100 }
const MUSLIN = { x: 240, y: 300 }
/** The grey of a place in the photo that round shows, as it lies in the store. */
async function greyAt(session: Session, number: number, { x, y }: Point): Promise<number> {
  const round = session.rounds.find((r) => r.number === number)
  const blob = round && (await session.readPhoto(photoOf(round, 'front')?.sha256 ?? ''))
  if (!blob) throw new Error('test: no pixels')
  const context = new OffscreenCanvas(SIZE.width, SIZE.height).getContext('2d')
  context?.drawImage(await createImageBitmap(blob), 0, 0)
  return context?.getImageData(x, y, 1, 1).data[0] ?? NaN
}

it('a head that is found is covered in the pixels that are kept, and the old pixels are gone', async () => {
  const nobody: ViewReading = { ...reading(MOVED, NO_CARD), person: { ok: false, reason: 'x' } }
  const { screen, session } = await opened({
    readings: [reading(UNMOVED, NO_CARD), nobody],
    closed: 0,
  })
  const before = (await here(session)).map((p) => p.sha256)
  expect(await greyAt(session, 1, HEAD)).toBeCloseTo(await greyAt(session, 1, MUSLIN), -1)
  await screen.getByRole('button', BRING).click()
  await expect.element(screen.getByText('Not brought together.')).toBeInTheDocument()
  // Paper is far lighter than the grey of the invented photo.
  expect(await greyAt(session, 1, HEAD)).toBeGreaterThan((await greyAt(session, 1, MUSLIN)) + 60)
  expect(await greyAt(session, 2, HEAD)).toBeCloseTo(await greyAt(session, 2, MUSLIN), -1)
  expect((await here(session)).filter((p) => before.includes(p.sha256))).toHaveLength(1)
})
it('switched off before they are read, the photos stay as they were chosen', async () => {
  const readings = [reading(UNMOVED, NO_CARD), reading(UNMOVED, NO_CARD)]
  const { screen, session } = await opened({ readings, closed: 0 })
  const before = (await here(session)).map((p) => p.sha256)
  await screen.getByRole('checkbox', { name: /^Cover the head in the pixels/ }).click()
  await screen.getByRole('button', BRING).click()
  await expect
    .element(screen.getByRole('group', { name: /parted by a straight edge/ }))
    .toBeInTheDocument()
  expect((await here(session)).map((p) => p.sha256)).toEqual(before)
})

it('what another window reads of the photos is shown here; a screen that is left holds none', async () => {
  const { screen, session } = await opened({ readings: [], closed: 0 })
  await expect.element(screen.getByRole('button', BRING)).toBeInTheDocument()
  const other = await anotherWindow()
  const [first, second] = await other.keptPhotos('all')
  await other.noteRead(first?.sha256 ?? '', { reading: reading(UNMOVED, NO_CARD) })
  await other.noteRead(second?.sha256 ?? '', { reading: reading(UNMOVED, NO_CARD) })
  await expect
    .element(screen.getByRole('group', { name: /parted by a straight edge/ }))
    .toBeInTheDocument()
  await other.letPhotoGo(second?.sha256 ?? '')
  await expect.element(screen.getByText(/^Photo removed on/)).toBeInTheDocument()
  expect(session.photosShown.length).toBe(1)
  await screen.unmount()
  expect(session.photosShown.length).toBe(0)
})
