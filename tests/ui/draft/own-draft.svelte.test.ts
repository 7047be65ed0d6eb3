/** Her own lengths on the Draft page: entered, kept with the garment, pointed at, taken as ease. */
import { afterEach, expect, test } from 'vitest'
import { page, userEvent } from 'vitest/browser'
import { cleanup, render } from 'vitest-browser-svelte'
import DraftPlace from '../../../src/ui/draft/DraftPlace.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { bookOf, MIDDLE } from '../../bodies.ts'
import OnThePage from './OnThePage.svelte'
import { seeded } from './seeded.ts'

afterEach(cleanup)

test('a length 7 mm off is told, pointed at and kept; emptied, it is gone', async () => {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  await render(OnThePage, {
    page: DraftPlace,
    garment,
    session,
    preferences: new Preferences(),
  })
  const field = page.getByRole('textbox', { name: 'underarm line, centre to side, yours' })
  await field.fill('26.4')
  await userEvent.keyboard('{Enter}')
  // 940/4 + 22 = 257 mm on the paper: 264 is 7 more.
  await expect
    .element(page.getByText('Underarm line, centre to side: yours is 0.7 cm longer.'))
    .toBeVisible()
  expect(session.garment(garment)?.own?.drawn).toEqual({ 'back.bustLine': 264 })
  expect(document.querySelectorAll('svg .pointed')).toHaveLength(1)
  await field.fill('')
  await userEvent.keyboard('{Enter}')
  await expect.poll(() => document.querySelectorAll('svg .pointed').length).toBe(0)
  expect(session.garment(garment)?.own?.drawn).toEqual({})
})

test('the ease of a garment laid flat is worked out and taken by one key', async () => {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  await render(OnThePage, {
    page: DraftPlace,
    garment,
    session,
    preferences: new Preferences(),
  })
  const field = page.getByRole('textbox', { name: 'Across, under the armholes' })
  await field.fill('52')
  await userEvent.keyboard('{Enter}')
  await expect
    .element(page.getByText(/Twice 52.0 cm less 94.0 cm is 10.0 cm all round/))
    .toBeVisible()
  await page.getByRole('button', { name: 'Draw it with this' }).click()
  await expect.poll(() => session.latest(garment)?.choices.easeBust).toBe(25)
})
