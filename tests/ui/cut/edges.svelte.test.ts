/** The edges on the Cut page: finishes, widths, what is refused, and that every writer gets them. */
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { page, userEvent } from 'vitest/browser'
import { render } from 'vitest-browser-svelte'
import type { Book } from '../../../src/measurements/book.ts'
import { cuttingOf } from '../../../src/output/cutting.ts'
import { draftDxf } from '../../../src/output/dxf.ts'
import { pieceSvg } from '../../../src/output/svg.ts'
import CutPlace from '../../../src/ui/cut/CutPlace.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { bookOf, MIDDLE } from '../../bodies.ts'
import OnThePage from '../draft/OnThePage.svelte'
import { seeded } from '../draft/seeded.ts'
import { caughtFiles } from './caught-files.ts'
import { drawn as drawnNow } from '../../../src/ui/session/drawn.ts'

let files: ReturnType<typeof caughtFiles>
beforeEach(() => {
  files = caughtFiles(vi)
})
async function opened(book: Book = bookOf(MIDDLE)) {
  await page.viewport(1440, 900)
  const { session, garment } = await seeded(book)
  const preferences = new Preferences()
  const screen = await render(OnThePage, { page: CutPlace, garment, session, preferences })
  await expect
    .element(screen.getByRole('button', { name: /^Save the PDF, \d+ sheets$/ }).first(), {
      timeout: 60_000,
    })
    .toBeVisible()
  return { screen, session, garment }
}
type Opened = Awaited<ReturnType<typeof opened>>
const pick = (screen: Opened['screen'], name: string) =>
  screen.getByRole('radio', { name, exact: true }).element().closest('label')?.click()
/** The cutting lines on the map of the sheets. */
const cutLines = () =>
  [...document.querySelectorAll('svg[aria-label*="sheets"] .ln-cut')].map((p) =>
    p.getAttribute('d'),
  )
const drawnOf = ({ session, garment }: Opened) => {
  const drawn = drawnNow(session, garment)
  if (drawn?.standing !== 'confirmed') throw new Error('no draft')
  return drawn.corrected.draft
}

describe('the edges of a muslin', () => {
  // 1 in at side and overarm (Clothing for Women, 1916); hem and neck: common practice, no source.
  it('are named with finish and width: 25 at side and overarm, 40 at the hem, none at the neck', async () => {
    const { screen } = await opened()
    for (const words of [
      /Neck edge back and front cut on the line none/,
      /Overarm seam back and front .* 2.5 cm/,
      /Side seam back and front .* 2.5 cm/,
      /Hem back and front .* 4.0 cm/,
    ])
      await expect.element(screen.getByRole('button', { name: words })).toBeVisible()
  })
  it('redraw the cutting line at once, and are kept with the garment', async () => {
    const all = await opened()
    const before = cutLines()
    await all.screen.getByRole('button', { name: /^Side seam/ }).click()
    const width = all.screen.getByLabelText('Beyond the seam line')
    await width.first().fill('3 cm')
    await userEvent.keyboard('{Enter}')
    await expect.poll(() => cutLines().join() === before.join()).toBe(false)
    await expect
      .poll(() => all.session.garment(all.garment)?.cutting?.muslin)
      .toEqual({ side: { finish: 'muslinSeam', allowance: 30 } })
    await all.screen.getByRole('button', { name: 'Put it back as usual' }).click()
    await expect.poll(() => cutLines().join() === before.join()).toBe(true)
  })
})

describe('the edges of the garment', () => {
  it('refuse a hem too deep for the sleeve edge, with its numbers and the narrower one', async () => {
    const { screen, session, garment } = await opened()
    pick(screen, 'cloth')
    await screen.getByRole('button', { name: /^Sleeve edge/ }).click()
    const before = cutLines()
    pick(screen, 'double-fold hem, not on this curve')
    // Turned up by h a curve of radius R is h/R too long: 76/196 = 38.8 % (worked out).
    await expect
      .element(screen.getByText(/a radius of 19\.6 cm: its raw edge is 38\.8 % longer/))
      .toBeVisible()
    await expect.element(screen.getByText(/What goes there: narrow rolled edge/)).toBeVisible()
    expect(cutLines()).toEqual(before)
    expect(session.garment(garment)?.cutting?.cloth).toEqual({})
    // Another finish first, then the offered one is a key.
    pick(screen, 'bias strip')
    await expect.poll(() => session.garment(garment)?.cutting?.cloth.sleeveEdge).toBeDefined()
    pick(screen, 'double-fold hem, not on this curve')
    await screen.getByRole('button', { name: 'Take the narrow rolled edge' }).click()
    await expect
      .poll(() => session.garment(garment)?.cutting?.cloth.sleeveEdge)
      .toEqual({ finish: 'rolledEdge' })
  })
  it('reach SVG and DXF alike, the hem as it is turned', async () => {
    const all = await opened()
    const { screen, session, garment } = all
    pick(screen, 'cloth')
    await screen.getByRole('button', { name: /^Hem/ }).click()
    await screen.getByLabelText('Finished depth').first().fill('2 cm')
    await userEvent.keyboard('{Enter}')
    await expect
      .poll(() => session.garment(garment)?.cutting?.cloth.hem)
      .toEqual({ finish: 'doubleFoldHem', allowance: 40 })
    await screen.getByRole('button', { name: 'Save the back, drawing (SVG)' }).click()
    await expect.poll(() => files.length).toBe(1)
    await screen.getByRole('button', { name: /\(DXF\)$/ }).click()
    await expect.poll(() => files.length).toBe(2)
    const draft = drawnOf(all)
    const cutting = cuttingOf(draft, session.cutWishes(garment))
    expect(cutting).toMatchObject({ stuff: 'cloth', hemDepth: 20 })
    const words = { garmentName: 'Invented blouse', round: 1, ...cutting }
    const [svg, dxf] = await Promise.all(
      files.map(async (f) => new TextDecoder().decode(await f.blob)),
    )
    const [back] = draft.pieces
    if (!back) throw new Error('no back')
    expect(svg).toBe(pieceSvg(back, { ...words, standing: 'confirmed' }))
    expect(dxf).toBe(draftDxf(draft, words))
    expect(files.map((f) => f.name)).toEqual([
      'invented-blouse-round-1-cloth-back.svg',
      'invented-blouse-round-1-cloth-pieces.dxf',
    ])
  })
  it('wait while a finding asks for a muslin first', async () => {
    const { headGirth: _head, ...rest } = MIDDLE
    const { screen } = await opened(bookOf(rest))
    pick(screen, 'cloth')
    const save = screen.getByRole('button', { name: /^Save the PDF/ }).first()
    await expect.element(save).toHaveAttribute('aria-disabled', 'true')
    await expect
      .element(screen.getByText('Not yet for cloth: the reason stands above.').first())
      .toBeVisible()
    await screen.getByRole('button', { name: /\(DXF\)$/ }).click({ force: true })
    expect(files).toEqual([])
  })
})

describe('the paper', () => {
  it('off a roll is as wide as she says, and no roll is refused with what there is', async () => {
    const { screen, session, garment } = await opened()
    pick(screen, 'Roll')
    const width = screen.getByLabelText('Width of the roll')
    await expect.element(width).toHaveValue('91.4 cm')
    await width.fill('20 cm')
    await userEvent.keyboard('{Enter}')
    await expect.element(screen.getByText(/rolls go from 29\.7 cm to 162\.6 cm/)).toBeVisible()
    await width.fill('120 cm')
    await userEvent.keyboard('{Enter}')
    await expect.poll(() => session.garment(garment)?.cutting?.paper).toEqual({ roll: 1200 })
    await expect.element(screen.getByText(/a roll of 120\.0 cm/), { timeout: 60_000 }).toBeVisible()
  })
})

describe('the squares she measured', () => {
  it('say which pages go into the bin, and make a corrected file', async () => {
    const { screen, session, garment } = await opened()
    const type = async (label: string, text: string) => {
      await screen.getByLabelText(label).first().fill(text)
      await userEvent.keyboard('{Enter}')
    }
    await type('Across', '98.5')
    await type('Down', '10')
    // 98.5 for 100: 1.5 % of 500 mm is 7.5 mm.
    await expect.element(screen.getByText(/across, is printed 7\.5 mm too short/)).toBeVisible()
    await expect
      .element(screen.getByText(/Pages 1 to \d+ go into the bin, all of them/))
      .toBeVisible()
    await screen.getByRole('button', { name: 'Save a corrected file' }).click()
    await expect.poll(() => files.length, { timeout: 60_000 }).toBe(1)
    expect(files[0]?.name).toBe('invented-blouse-round-1-corrected-sheets-a4.pdf')
    const scale = session.garment(garment)?.cutting?.scale
    expect(scale?.x).toBeCloseTo(1 / 0.985, 9)
    expect(scale?.y).toBeCloseTo(1, 9)
    await expect.element(screen.getByText('Files are made for one printer.')).toBeVisible()
    // Measured true from the corrected file: nothing more to do.
    await type('Across', '100')
    await type('Down', '100 mm')
    await expect.element(screen.getByText(/The print is true/)).toBeVisible()
    await screen.getByRole('button', { name: 'Back to true size' }).click()
    await expect.poll(() => session.garment(garment)?.cutting?.scale).toBeUndefined()
  })
})
