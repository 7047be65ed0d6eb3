import { beforeEach, describe, expect, it, vi } from 'vitest'
import { userEvent } from 'vitest/browser'
import { render } from 'vitest-browser-svelte'
import type { Book } from '../../../src/measurements/book.ts'
import ClothPlace from '../../../src/ui/cut/cloth/ClothPlace.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { mm } from '../../../src/units/length.ts'
import { bookOf, INVENTED_ON, MIDDLE } from '../../bodies.ts'
import OnThePage from '../draft/OnThePage.svelte'
import { seeded } from '../draft/seeded.ts'
import { caughtFiles } from './caught-files.ts'

let files: ReturnType<typeof caughtFiles>
beforeEach(() => {
  files = caughtFiles(vi)
})

async function opened(book: Book, unit: 'cm' | 'inch' = 'cm') {
  const { session, garment } = await seeded(book)
  const preferences = new Preferences()
  preferences.unit = unit
  const screen = await render(OnThePage, { page: ClothPlace, garment, session, preferences })
  return { screen, session, garment }
}
type Opened = Awaited<ReturnType<typeof opened>>
const LONG = { timeout: 60_000 }

async function type(screen: Opened['screen'], label: string, text: string) {
  await screen.getByLabelText(label).fill(text)
  await userEvent.keyboard('{Enter}')
}
const firstPage = async (blob: Promise<ArrayBuffer>) => new TextDecoder('latin1').decode(await blob)

describe('cloth for a draft that may be cut', () => {
  it('is laid out on every width, told piece by piece, and saved as a cutting plan', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    await expect.element(screen.getByText(/^Buy \d\.\d m$/), LONG).toBeVisible()
    for (const name of [/^1 .*begins [\d.]+\scm from the cut end\.$/, /^2 .*cut end\.$/])
      await expect.element(screen.getByText(name).first()).toBeVisible()
    // On three of the usual widths; the back is wider than the fourth, and it says so.
    await expect.poll(() => document.querySelectorAll('table tbody tr td.r').length, LONG).toBe(9)
    await expect.element(screen.getByText(/is wider than the cloth/).first(), LONG).toBeVisible()
    await screen.getByRole('button', { name: 'Save the cutting plan (PDF)' }).first().click()
    await expect.element(screen.getByText('The cutting plan is saved.'), LONG).toBeVisible()
    expect(files[0]?.name).toBe('invented-blouse-round-1-cutting-plan.pdf')
    // ISO 32000-1, 7.5.2: a PDF begins with its version.
    expect(await firstPage(files[0]!.blob)).toMatch(/^%PDF-/)
    expect(session.latest(garment)?.printed).toBeUndefined()
  })

  it('keeps what she says of it with the garment', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    await screen.getByText('folded lengthwise', { exact: true }).first().click()
    await screen.getByText('silk', { exact: true }).click()
    await screen.getByRole('checkbox', { name: /Nap, shading/ }).click()
    await type(screen, 'Another width to compare', '115 cm')
    await expect
      .poll(() => session.clothWishes(garment, 'cm'))
      .toMatchObject({
        kind: 'silk',
        manner: 'lengthwise',
        oneWay: true,
        width: 1150,
      })
    await session.open()
    expect(session.clothWishes(garment, 'cm')).toMatchObject({ kind: 'silk', width: mm(1150) })
    // Said where the cloth is chosen, before it is bought.
    await screen.getByText('crisp cotton', { exact: true }).click()
    await expect.element(screen.getByText(/stands away from a draped sleeve/)).toBeVisible()
  })

  // What a shop in either unit has on its shelves: common practice, no source.
  it('offers the widths of her unit, and leaves one that is kept as it was', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE), 'inch')
    const widths = () =>
      screen
        .getByRole('group', { name: 'Width of the cloth' })
        .getByRole('radio')
        .elements()
        .map((radio) => radio.closest('label')?.textContent?.trim())
    expect(widths()).toEqual(['36 in', '45 in', '54 in', '60 in'])
    await screen.getByText('45 in', { exact: true }).first().click()
    // By hand: 45 × 25.4.
    await expect.poll(() => session.clothWishes(garment, 'cm').width).toBe(1143)
    expect(session.clothWishes(garment, 'cm').widths).toEqual([914.4, 1143, 1371.6, 1524].map(mm))

    const metric = await session.hang('sleeveless')
    if (metric === undefined) throw new Error(session.problem)
    await session.changeCloth(metric, 'cm', (w) => ({ ...w, kind: 'silk' }))
    await session.open()
    expect(session.clothWishes(metric, 'inch').widths).toEqual([900, 1150, 1400, 1500].map(mm))
  })

  it('shows the layout kept with the garment at once, and says when it is out of date', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    const search = () => document.querySelector('progress')
    await expect.element(screen.getByText(/^Buy \d\.\d m$/), LONG).toBeVisible()
    await expect.poll(() => search(), { timeout: 200_000 }).toBeNull()
    await expect.poll(() => session.laid(garment).length, LONG).toBe(3)
    // Nothing was said of the cloth: what was laid out stays among the widths in either unit.
    expect(session.clothWishes(garment, 'inch').widths).toContain(session.laid(garment)[0]?.width)
    await screen.unmount()
    await session.open()

    const shown = { page: ClothPlace, garment, session, preferences: new Preferences() }
    const again = await render(OnThePage, shown)
    // At once: nothing was waited for.
    expect(again.getByText(/^Buy \d\.\d m$/).elements()).toHaveLength(1)
    await expect
      .element(again.getByText('This is the layout kept on 25 November 2026.'), LONG)
      .toBeInTheDocument()
    // What was tried on the other widths is told as well.
    expect(document.querySelectorAll('table tbody tr td.r')).toHaveLength(9)
    await again.unmount()

    await session.turnChoice(garment, 'lengthAdded', mm(20))
    const longer = await render(OnThePage, shown)
    await expect
      .element(longer.getByText('The layout of 25 November 2026 is out of date.'))
      .toBeInTheDocument()
    await expect
      .element(longer.getByRole('img', { name: /^The earlier layout, \d pieces: 1 / }))
      .toBeInTheDocument()
    await expect.element(longer.getByText(/^Buy \d\.\d m$/), LONG).toBeVisible()
  }, 300_000)

  it('says whether it fits on what she has, and what would have to give', async () => {
    const { screen } = await opened(bookOf(MIDDLE))
    await type(screen, 'I have', '4 m')
    await screen.getByRole('button', { name: 'Does it fit?' }).click()
    await expect.element(screen.getByText('It fits on 4.00 m of 140.0 cm.'), LONG).toBeVisible()
    await type(screen, 'I have', '0.5 m')
    await screen.getByRole('button', { name: 'Does it fit?' }).click()
    await expect
      .element(screen.getByText('It does not fit on 0.50 m of 140.0 cm.'), { timeout: 120_000 })
      .toBeVisible()
    await expect.element(screen.getByText(/cm are missing/)).toBeVisible()
  })

  it('prints everything as one run, which puts the round on paper', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    await expect.element(screen.getByText(/^Buy \d\.\d m$/), LONG).toBeVisible()
    await screen.getByRole('button', { name: 'Save everything (PDF)' }).click()
    await expect
      .poll(() => session.latest(garment)?.printed?.on, { timeout: 120_000 })
      .toBe(INVENTED_ON)
    await expect
      .poll(() => session.latest(garment)?.paperWork)
      .toMatchObject([
        {
          how: 'sheets',
          on: INVENTED_ON,
          about: expect.stringMatching(/^run, \d+ pages$/),
        },
      ])
    await expect.element(screen.getByText(/This list, page 1; Pieces at true scale/)).toBeVisible()
    expect(files[0]?.name).toBe('invented-blouse-round-1-print-run.pdf')
  })
})

it('a draft with a finding against cloth is not laid out, and says why', async () => {
  const { headGirth: _head, ...rest } = MIDDLE
  const { screen } = await opened(bookOf(rest))
  await expect.element(screen.getByText('Not for cloth yet.')).toBeVisible()
  await expect.element(screen.getByText(/The head is not taped/)).toBeVisible()
  expect(document.querySelector('progress')).toBeNull()
})
