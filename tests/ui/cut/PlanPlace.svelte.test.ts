import { userEvent } from 'vitest/browser'
import { tick } from 'svelte'
import { beforeEach, expect, it, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import PlanPlace from '../../../src/ui/cut/plan/PlanPlace.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { bookOf, INVENTED_ON, MIDDLE } from '../../bodies.ts'
import OnThePage from '../draft/OnThePage.svelte'
import { seeded } from '../draft/seeded.ts'
import { caughtFiles } from './caught-files.ts'

let files: ReturnType<typeof caughtFiles>
beforeEach(() => {
  files = caughtFiles(vi)
})

async function opened(now?: () => Date) {
  const { session, garment } = await seeded(bookOf(MIDDLE), now)
  const preferences = new Preferences()
  const screen = await render(OnThePage, { page: PlanPlace, garment, session, preferences })
  return { screen, session, garment }
}

it('ticks are kept with the garment and taken away again', async () => {
  const { screen, session, garment } = await opened()
  const stay = screen.getByRole('checkbox', { name: /Stay the edges that stretch/ })
  await stay.click()
  await expect.poll(() => session.garment(garment)?.sewn).toEqual({ stay: INVENTED_ON })
  await session.open()
  await expect.element(stay).toBeChecked()
  await stay.click()
  await expect.poll(() => session.garment(garment)?.sewn).toEqual({})
})

it('an edge that hangs is waited for by the hour, and the next step with it', async () => {
  let now = new Date(`${INVENTED_ON}T13:30:00Z`)
  const { screen, session, garment } = await opened(() => now)
  const at = async (hours: number) => {
    now = new Date(Date.parse(`${INVENTED_ON}T13:30:00Z`) + hours * 3_600_000)
    // As when she takes the device up again.
    document.dispatchEvent(new Event('visibilitychange'))
    await tick()
  }
  const boxes = screen.getByRole('checkbox').all()
  const hang = screen.getByRole('checkbox', { name: /Let the sleeve edges hang/ })
  for (const box of boxes) {
    await box.click()
    if (box.element() === hang.element()) break
  }
  await expect
    .poll(() => session.garment(garment)?.sewn?.['hang.sleeveEdge'])
    .toBe(`${INVENTED_ON}T13:30:00.000Z`)
  await expect.element(screen.getByText('It hangs: 24 hours yet.')).toBeVisible()
  // Her own clock, whatever the time zone of the machine.
  const time = now.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' })
  await expect
    .element(screen.getByText(`Go on tomorrow from ${time}.`, { exact: true }))
    .toBeVisible()
  const next = screen.getByText(
    new RegExp(`^Step \\d+ hangs\\. Go on tomorrow from ${time} with step \\d+, Sleeve edge`),
  )
  await expect.element(next).toBeVisible()
  await at(19)
  await expect.element(screen.getByText('It hangs: 5 hours yet.')).toBeVisible()
  await at(24)
  await expect.element(screen.getByText('It has hung long enough.')).toBeVisible()
  await expect.element(screen.getByText(/^Next is step \d+, Sleeve edge/)).toBeVisible()
  // Set back by a week: she is not made to wait for a clock.
  await at(-7 * 24)
  await expect
    .element(screen.getByText('The clock of this device was set back since.'))
    .toBeVisible()
})

it('an edge hung before moments were kept has hung after its day', async () => {
  const { screen, session, garment } = await opened()
  const seen = session.garment(garment)!
  await session.changeGarment({ ...seen, sewn: { 'hang.sleeveEdge': INVENTED_ON } })
  await expect.element(screen.getByText('Hanging since today.')).toBeVisible()
  await session.changeGarment({ ...seen, sewn: { 'hang.sleeveEdge': '2026-01-02' } })
  await expect.element(screen.getByText('Done on 2 January 2026.')).toBeVisible()
})

it('crisp cotton warns for the draped sleeve, and its finishes are offered and taken', async () => {
  const { screen, session, garment } = await opened()
  await screen.getByText('crisp cotton', { exact: true }).click()
  await expect.element(screen.getByText(/stands away from a draped sleeve/).first()).toBeVisible()
  await session.changeCut(garment, (w) => ({
    ...w,
    cloth: { overarm: { finish: 'plainSeam' } },
  }))
  await screen.getByText('silk', { exact: true }).click()
  await screen.getByRole('button', { name: /^Take/ }).click()
  await expect.poll(() => session.cutWishes(garment).cloth.overarm?.finish).toBe('frenchSeam')
  // The muslin is cut as it was.
  expect(session.cutWishes(garment).stuff).toBe('muslin')
})

it('the answer of the drape test stays with the garment and its cloth, and is taken back once', async () => {
  const { screen, session, garment } = await opened()
  await session.changeCloth(garment, 'cm', (w) => ({ ...w, kind: 'rayon' }))
  await screen.getByText('Drape test on a pinned square').click()
  const apart = screen.getByLabelText('Lower corners apart')
  await apart.fill('26 cm')
  await userEvent.keyboard('{Enter}')
  await expect
    .poll(() => session.clothWishes(garment, 'cm').drape)
    .toEqual({ apart: 260, of: 'rayon' })
  await session.open()
  await expect.element(apart).toHaveValue('26.0 cm')
  // In the place of the warning, and in the step that makes the cloth ready.
  await expect
    .poll(() => screen.getByText(/the draped sleeve will stand away/).all())
    .toHaveLength(2)

  // It is of that cloth: another has not been tried, and hers counts again when she goes back.
  await screen.getByText('silk', { exact: true }).click()
  await expect.element(screen.getByText(/You read 26\.0 cm on rayon or viscose/)).toBeVisible()
  await expect
    .poll(() => screen.getByText(/the draped sleeve will stand away/).all())
    .toHaveLength(0)
  await session.undo()
  await expect.element(apart).toHaveValue('26.0 cm')
  await session.undo()
  await expect.poll(() => session.clothWishes(garment, 'cm').drape).toBeUndefined()
  await session.redo()
  await apart.fill('')
  await userEvent.keyboard('{Enter}')
  await expect.poll(() => session.clothWishes(garment, 'cm').drape).toBeUndefined()
})

it('is saved for the sewing table', async () => {
  const { screen } = await opened()
  await screen.getByRole('button', { name: 'Save the sewing plan (PDF)' }).click()
  await expect
    .element(screen.getByText(/Saved as invented-blouse-round-1-sewing-plan\.pdf, \d pages?\./), {
      timeout: 60_000,
    })
    .toBeVisible()
  expect(files).toHaveLength(1)
})
