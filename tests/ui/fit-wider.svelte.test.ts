/**
 * The Fit screen with any complaint of the catalogue: words → question → pin → decision → change.
 * The amount is worked by hand: 10 mm pinned, 87 in a hundred applied (85 to 90 being common
 * practice) = 8.7 mm, printed 0.9 cm.
 */
import { userEvent } from 'vitest/browser'
import { describe, expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import type { GarmentId } from '../../src/draft/draft.ts'
import { record } from '../../src/draft/record.ts'
import { redraft } from '../../src/rounds/redraft.ts'
import FitPlace from '../../src/ui/fitting/FitPlace.svelte'
import { Preferences } from '../../src/ui/preferences.svelte.ts'
import { bookOf, MIDDLE } from '../bodies.ts'
import OnThePage from './draft/OnThePage.svelte'
import { seeded } from './draft/seeded.ts'

async function sewn(id: GarmentId) {
  const { session } = await seeded(bookOf(MIDDLE))
  const garment = await session.hang(id)
  if (garment === undefined) throw new Error(session.problem)
  expect(await session.putOnPaper(garment)).toBe(true)
  const preferences = new Preferences()
  const screen = await render(OnThePage, { page: FitPlace, garment, session, preferences })
  return { screen, session, garment }
}
type Screen = Awaited<ReturnType<typeof sewn>>['screen']

async function say(screen: Screen, words: string) {
  await screen.getByRole('textbox', { name: 'Or in your own words' }).fill(words)
  await userEvent.keyboard('{Enter}')
}
describe('on a bodice block', () => {
  it('a gaping neck is heard, tested, pinned, changed and taken back', async () => {
    const { screen, session, garment } = await sewn('block')
    const before = record(redraft(session.latest(garment)!).draft)
    await say(screen, 'my neckline gapes at the front')
    await screen
      .getByRole('button', { name: /^Front neck edge gapes/ })
      .first()
      .click()
    await screen.getByText(/^Yes\./).click()
    await screen.getByRole('textbox', { name: 'Whole fold' }).fill('1.0 cm')
    await userEvent.keyboard('{Enter}')
    await expect.element(screen.getByText(/The front neck edge comes in by 0.9 cm/)).toBeVisible()
    await screen.getByRole('button', { name: 'See what would change' }).click()
    await screen.getByRole('button', { name: 'Make this change' }).click()
    await expect.element(screen.getByText('The draft of round 2 has changed.')).toBeVisible()

    const [muslin, next] = session.roundsOf(garment)
    expect(muslin?.seen).toMatchObject([{ complaint: 'N1' }])
    expect(record(redraft(next!).draft).lengths['front.neck']).toBeLessThan(
      before.lengths['front.neck']!,
    )
    await screen.getByRole('button', { name: 'Take it back', exact: true }).first().click()
    await expect.element(screen.getByText(/^Taken back\./)).toBeVisible()
    expect(record(redraft(session.latest(garment)!).draft)).toEqual(before)
  })

  it('a stretched edge changes nothing and is kept with the round', async () => {
    const { screen, session, garment } = await sewn('block')
    await say(screen, 'my neckline gapes at the front')
    await screen
      .getByRole('button', { name: /^Front neck edge gapes/ })
      .first()
      .click()
    await screen.getByText(/^No\./).click()
    await screen.getByText(/^No\./).click()
    await screen.getByText(/^Yes\./).click()
    await expect.element(screen.getByText('Nothing to change in the draft.')).toBeVisible()
    await screen.getByRole('button', { name: 'Keep it with the round' }).click()
    await expect
      .poll(() => session.latest(garment)?.seen)
      .toMatchObject([{ complaint: 'N1', answer: 'nothing to change' }])
    expect(session.roundsOf(garment)).toHaveLength(1)
  })

  it('a word she puts right leads elsewhere', async () => {
    const { screen } = await sewn('block')
    await say(screen, 'the hem is tight')
    await screen
      .getByRole('combobox', { name: /^Place/ })
      .first()
      .selectOptions('hip')
    await expect
      .element(screen.getByRole('button', { name: /^Hip too tight/ }).first())
      .toBeVisible()
  })
})
