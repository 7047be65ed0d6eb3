/** Whoever works in inches reads inches: no sentence of Draft keeps another unit. */
import { expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { GARMENT_IDS } from '../../../src/draft/garments.ts'
import DraftPlace from '../../../src/ui/draft/DraftPlace.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { bookOf, MIDDLE } from '../../bodies.ts'
import OnThePage from './OnThePage.svelte'
import { seeded } from './seeded.ts'

const METRIC = /\d\s?(mm|cm|m)\b/

it.each(GARMENT_IDS)('%s in inches', async (id) => {
  const { session } = await seeded(bookOf(MIDDLE))
  const garment = await session.hang(id)
  if (garment === undefined) throw new Error(session.problem)
  const preferences = new Preferences()
  preferences.unit = 'inch'
  const screen = await render(OnThePage, { page: DraftPlace, garment, session, preferences })
  await expect.element(screen.getByRole('heading', { name: 'Proof' })).toBeInTheDocument()
  const read = () =>
    [...screen.container.querySelectorAll('*')].flatMap((part) => [
      ...[...part.childNodes]
        .filter((n) => n.nodeType === Node.TEXT_NODE)
        .map((n) => n.textContent ?? ''),
      part.getAttribute('aria-label') ?? '',
    ])
  expect(read().filter((text) => METRIC.test(text))).toEqual([])
  // The page is not empty of lengths.
  expect(read().filter((text) => /\d\sin\b/.test(text)).length).toBeGreaterThan(20)
})
