/**
 * What is read of the cloth and traced on it. Which complaints fit a place: our table of complaints;
 * tilt and height of a line: plane geometry.
 */
import { expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { userEvent } from 'vitest/browser'
import type { MuslinSight } from '../../../src/capture/muslin-sight.ts'
import { UNMOVED } from '../../../src/capture/similarity.ts'
import { complaintOf } from '../../../src/fitting/complaints/catalogue.ts'
import { card, NO_CARD, opened, reading } from './photographed.ts'
import PhotosInApp from './PhotosInApp.svelte'

const BRING = { name: 'Bring the two photos to one scale' }
const FOLDED: MuslinSight = {
  folds: {
    ok: true,
    folds: [
      {
        line: [
          { x: 215, y: 230 },
          { x: 265, y: 232 },
        ],
        angle: 0.04,
        lengthMm: 150,
        places: ['betweenApexes'],
      },
    ],
    places: ['betweenApexes'],
  },
  lines: [],
}
const SMOOTH: MuslinSight = { folds: { ok: true, folds: [], places: [] }, lines: [] }

it('folds are strokes over the photo, with place and fitting complaints, and how often that is right', async () => {
  const readings = [reading(UNMOVED, NO_CARD), reading(UNMOVED, NO_CARD)]
  const { screen } = await opened({ readings, closed: 0, sights: [FOLDED, SMOOTH] })
  await screen.getByRole('button', BRING).click()
  const strokes = () => document.querySelectorAll('polyline.fold')
  const tick = screen.getByLabelText('Folds, as hints')
  await expect.element(tick).not.toBeChecked()
  expect(strokes()).toHaveLength(0)
  await tick.click()
  expect(strokes()).toHaveLength(1)
  const told = screen.getByText(/^Level, from bust tip to bust tip\. Complaints that fit:/)
  // Table of complaints: a level fold between the apexes is B1, B9 or B11.
  for (const id of ['B1', 'B9', 'B11'] as const)
    await expect.element(told).toHaveTextContent(complaintOf(id).name.toLowerCase())
  await expect.element(screen.getByText('No fold that draws the cloth was seen.')).toBeVisible()
  await expect
    .element(screen.getByText(/^A hint, never a verdict;/))
    .toHaveTextContent(/found \d+ of 100 folds/)
  await tick.click()
  expect(strokes()).toHaveLength(0)
})

it('a line traced by keys tells its tilt and height, is kept, and the camera does not move it', async () => {
  const at = (x1: number, y1: number, x2: number, y2: number) =>
    ({ name: 'waistLine', from: { x: x1, y: y1 }, to: { x: x2, y: y2 }, by: 'camera' }) as const
  const sights: MuslinSight[] = [{ lines: [at(200, 300, 280, 300)] }, { lines: [] }]
  const readings = [reading(UNMOVED, card(UNMOVED, 3)), reading(UNMOVED, card(UNMOVED, 3))]
  const { screen, session, shown } = await opened({ readings, closed: 0, sights })
  await screen.getByRole('button', BRING).click()
  await screen.getByLabelText('Lines on the muslin').click()
  const row = () => screen.getByRole('row', { name: /^Waist line/ })
  // 120 px below the shoulder joints, 3 mm each at the sheet. It hangs some 15 cm before the middle of
  // the body: at 2.5 m that is 6 in a hundred more there.
  await expect
    .element(row())
    .toHaveTextContent(/level, 3[678]\.\d cm below the shoulders.*not found/)

  await screen.getByRole('button', { name: 'Trace a line of the muslin' }).click()
  await screen.getByText('waist', { exact: true }).click()
  const ring = screen.getByRole('button', { name: 'right end' })
  ;(ring.element() as HTMLElement).focus()
  await userEvent.keyboard(
    '{Shift>}{ArrowDown}{/Shift}{ArrowDown}{ArrowDown}{ArrowDown}{ArrowDown}',
  )
  await screen.getByRole('button', { name: 'Keep this waist line' }).click()
  await expect.element(screen.getByText('Kept: the waist line of muslin 1.')).toBeVisible()
  await screen.getByRole('button', { name: 'Done', exact: true }).click()
  // 14 px down over 80 px across: atan(14/80) = 9.9 degrees.
  await expect.element(row()).toHaveTextContent(/9\.9° lower on the right.*traced/)
  const [kept] = (await session.keptPhotos('all')).flatMap((p) => p.muslin?.lines ?? [])
  expect(kept).toMatchObject({ by: 'hand', from: { x: 200, y: 300 }, to: { x: 280, y: 314 } })

  await screen.unmount()
  const again = await render(PhotosInApp, shown)
  await again.getByLabelText('Lines on the muslin').click()
  await expect
    .element(again.getByRole('row', { name: /^Waist line/ }))
    .toHaveTextContent(/9\.9° lower on the right/)
})
