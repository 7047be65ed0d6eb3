/** A kept correction as work on the paper of the sewn muslin, in the Fit place and on the Cut page. */
import { beforeEach, expect, it, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { onPaper } from '../../src/fitting/on-paper.ts'
import type { NewCorrection } from '../../src/fitting/preview.ts'
import CutPlace from '../../src/ui/cut/CutPlace.svelte'
import FitPlace from '../../src/ui/fitting/FitPlace.svelte'
import { Preferences } from '../../src/ui/preferences.svelte.ts'
import { mm } from '../../src/units/length.ts'
import { bookOf, MIDDLE } from '../bodies.ts'
import { caughtFiles } from './cut/caught-files.ts'
import OnThePage from './draft/OnThePage.svelte'
import { seeded } from './draft/seeded.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const LONGER: NewCorrection = {
  kind: 'turn-choice',
  choice: 'lengthAdded',
  by: mm(12),
  because: {
    complaint: 'W1',
    cause: 'length',
    pinned: { how: 'levelError', read: mm(12), share: 1 },
    watch: mm(0),
    round: 1,
  },
}
let files: ReturnType<typeof caughtFiles>
beforeEach(() => {
  files = caughtFiles(vi)
})

async function corrected() {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  await session.putOnPaper(garment)
  expect(await session.makeChange(garment, LONGER)).toBe(true)
  const round = session.latest(garment)
  if (!round) throw new Error('no round')
  const lines = onPaper(round, CM).flatMap((work) => work.lines)
  expect(lines.length).toBeGreaterThan(1)
  // 12 mm longer: the cut is spread by as much (slash and spread, common practice).
  expect(lines.join(' ')).toContain('spread it by 1.2 cm')
  return { session, garment, lines, preferences: new Preferences() }
}

it('beside the correction in the Fit place', async () => {
  const { session, garment, lines, preferences } = await corrected()
  const screen = await render(OnThePage, { page: FitPlace, garment, session, preferences })
  await screen.getByText('On the paper of muslin 1').click()
  for (const line of lines) await expect.element(screen.getByText(line)).toBeVisible()
})

it('on the Cut page, and in the steps she saves', async () => {
  const { session, garment, lines, preferences } = await corrected()
  const screen = await render(OnThePage, { page: CutPlace, garment, session, preferences })
  await expect.element(screen.getByText('the paper of round 1')).toBeVisible()
  for (const line of lines) await expect.element(screen.getByText(line)).toBeVisible()
  await screen.getByRole('button', { name: 'Save the steps (text)' }).click()
  const text = new TextDecoder().decode(await files[0]?.blob)
  for (const line of lines) expect(text).toContain(line)
  expect(text).toContain('Side seam: mark 2.5 cm outside it')
  // The first round has no paper before it.
  expect(session.roundsOf(garment)).toHaveLength(2)
})
