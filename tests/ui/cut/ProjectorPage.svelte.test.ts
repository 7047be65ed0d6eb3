import { describe, expect, it } from 'vitest'
import { page, userEvent } from 'vitest/browser'
import { render } from 'vitest-browser-svelte'
import type { Book } from '../../../src/measurements/book.ts'
import type { Segment } from '../../../src/geometry/segment.ts'
import ProjectorPage from '../../../src/ui/cut/ProjectorPage.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { mm } from '../../../src/units/length.ts'
import { bookOf, INVENTED_ON, MIDDLE } from '../../bodies.ts'
import OnThePage from '../draft/OnThePage.svelte'
import { seeded } from '../draft/seeded.ts'
import { drawn as drawnNow } from '../../../src/ui/session/drawn.ts'

async function opened(book: Book) {
  const { session, garment } = await seeded(book)
  const preferences = new Preferences()
  const screen = await render(OnThePage, { page: ProjectorPage, garment, session, preferences })
  return { screen, session, garment }
}
type Opened = Awaited<ReturnType<typeof opened>>

/** Types a length in a field as she does, and leaves it with Enter. */
async function type(screen: Opened['screen'], label: string, text: string) {
  await screen.getByLabelText(label).fill(text)
  await userEvent.keyboard('{Enter}')
}
const settled = () => new Promise((done) => setTimeout(done, 50))
const field = () => document.querySelector<SVGSVGElement>('.stage svg')
const said = () => document.querySelector('.strip p')?.textContent ?? ''

/** How far two ends of the grain line lie apart on the screen, in pixels. */
function grainPixels(): number {
  const grain = field()?.querySelector<SVGPathElement>('path.grain')
  const matrix = grain?.getScreenCTM()
  if (!grain || !matrix) throw new Error('no grain line is thrown')
  const [, x1, y1, x2, y2] = /^M(\S+) (\S+) L(\S+) (\S+)/.exec(grain.getAttribute('d') ?? '') ?? []
  const at = (x?: string, y?: string) => new DOMPoint(Number(x), Number(y)).matrixTransform(matrix)
  const [a, b] = [at(x1, y1), at(x2, y2)]
  return Math.hypot(a.x - b.x, a.y - b.y)
}

describe('the crosses', () => {
  it('give the scale: a line on the screen is as many pixels as the tape says', async () => {
    await page.viewport(1440, 900)
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    const throwKey = screen.getByRole('button', { name: 'Throw the pieces' })
    await expect.element(throwKey).toHaveAttribute('aria-disabled', 'true')
    // What the light does is measured here by the browser: 1 and 2 as they are drawn.
    const [one, two] = [...document.querySelectorAll('svg > path')].map((p) =>
      p.getBoundingClientRect(),
    )
    if (!one || !two) throw new Error('no crosses')
    const pixels = two.left - one.left
    await type(screen, 'From 1 to 2', '80 cm')
    await throwKey.click()
    await expect.poll(() => field() !== null).toBe(true)
    const back = drawnNow(session, garment)
    if (back?.standing !== 'confirmed') throw new Error('no draft')
    const grain = back.corrected.draft.pieces[0]?.grain
    if (!grain) throw new Error('no grain')
    const millimetres = Math.hypot(grain.from.x - grain.to.x, grain.from.y - grain.to.y)
    // 80 cm typed for so many pixels: the same share for the grain line, to a quarter of a pixel.
    expect(Math.abs(grainPixels() - (millimetres * pixels) / 800)).toBeLessThan(0.25)
    // What is thrown can be cut: the round stays as it is from now on.
    expect(session.latest(garment)?.printed?.on).toBe(INVENTED_ON)
  })

  it('refuse a picture that is drawn out, with what to do', async () => {
    await page.viewport(1440, 900)
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    await type(screen, 'From 1 to 2', '80 cm')
    await type(screen, 'From 1 to 3', '80 cm')
    await expect.element(screen.getByText(/drawn out by \d+ % one way/)).toBeVisible()
    await screen.getByRole('button', { name: 'Throw the pieces' }).click({ force: true })
    await settled()
    expect(field()).toBeNull()
    expect(session.latest(garment)).toBeUndefined()
  })
})

it('what is thrown has the finishes she chose on the Cut page', async () => {
  await page.viewport(1440, 900)
  const { screen, session, garment } = await opened(bookOf(MIDDLE))
  await session.changeCut(garment, (wishes) => ({
    ...wishes,
    stuff: 'cloth',
    cloth: { hem: { finish: 'doubleFoldHem', allowance: mm(60) } },
  }))
  await type(screen, 'From 1 to 2', '300 cm')
  await screen.getByRole('button', { name: 'Throw the pieces' }).click()
  await expect.poll(() => field()?.querySelector('path.cutting')?.getAttribute('d')).toBeTruthy()
  const drawn = drawnNow(session, garment)
  const back = drawn?.standing === 'confirmed' ? drawn.corrected.draft.pieces[0] : undefined
  if (!back) throw new Error('no draft')
  const low = (selector: string): number =>
    [...(field()?.querySelectorAll<SVGPathElement>(selector) ?? [])].reduce(
      (most, p) => Math.max(most, p.getBBox().y + p.getBBox().height),
      -Infinity,
    )
  // The hem hangs 60 mm below its seam line: twice the 30 mm it is turned.
  const hem = Math.max(...(back.edges.find((e) => e.role === 'hem')?.path ?? []).map(lowest))
  expect(low('path.cutting') - hem).toBeCloseTo(60, 3)
})
const lowest = (s: Segment): number => (s.kind === 'line' ? Math.max(s.from.y, s.to.y) : -Infinity)

describe('the fields', () => {
  async function thrown(width: number, height: number, tape: string) {
    await page.viewport(width, height)
    const all = await opened(bookOf(MIDDLE))
    await type(all.screen, 'From 1 to 2', tape)
    await all.screen.getByRole('button', { name: 'Throw the pieces' }).click()
    await expect.poll(() => field() !== null).toBe(true)
    return all
  }
  it('are walked with the arrows, and the same cross is chalked on one and laid under on the next', async () => {
    const { screen } = await thrown(1440, 900, '45 cm')
    expect(said()).toMatch(/Field A1, 1 of \d+\./)
    const chalked = /Chalk (\d+a) and/.exec(said())?.[1]
    const before = /for (A2|B1)/.exec(said())?.[1]
    if (!chalked || !before) throw new Error(`nothing to chalk: ${said()}`)
    await userEvent.keyboard(before === 'A2' ? '{ArrowRight}' : '{ArrowDown}')
    await expect.poll(said).toContain(`Field ${before},`)
    expect(said()).toContain(`the chalk of A1 lies under ${chalked}`)
    await userEvent.keyboard(before === 'A2' ? '{ArrowLeft}' : '{ArrowUp}')
    await expect.poll(said).toContain('Field A1,')
    // At the rim an arrow leads nowhere.
    await userEvent.keyboard('{ArrowLeft}')
    await settled()
    expect(said()).toContain('Field A1,')
    await screen.getByRole('button', { name: /^Next field/ }).click()
    await expect.poll(said).not.toContain('Field A1,')
  })

  it('turn light and dark, and grow heavier, without moving', async () => {
    const { screen } = await thrown(1440, 900, '120 cm')
    const [ground, wide] = [
      () => getComputedStyle(field() ?? document.body).backgroundColor,
      () => parseFloat(field()?.querySelector('path.cutting')?.getAttribute('stroke-width') ?? ''),
    ]
    const [long, before] = [grainPixels(), wide()]
    expect(ground()).toBe('rgb(255, 255, 255)')
    await screen.getByRole('button', { name: 'Light lines on dark' }).click()
    await expect.poll(ground).toBe('rgb(0, 0, 0)')
    await screen.getByRole('button', { name: 'Lines: heavy' }).click()
    await expect.poll(wide).toBeGreaterThan(before)
    expect(grainPixels()).toBe(long)
  })

  it('that would be narrower than a hand are refused with their size', async () => {
    await page.viewport(390, 844)
    const { screen } = await opened(bookOf(MIDDLE))
    await type(screen, 'From 1 to 2', '10 cm')
    await screen.getByRole('button', { name: 'Throw the pieces' }).click()
    await expect.poll(said).toMatch(/The light covers .* Move the projector away/)
    await page.viewport(1440, 900)
  })

  it('are left with Escape', async () => {
    await thrown(1440, 900, '120 cm')
    await userEvent.keyboard('{Escape}')
    await expect.poll(() => location.hash).toMatch(/^#\/g\/.+\/cut$/)
    location.hash = ''
  })
})

it('nothing is thrown from guesses', async () => {
  const estimate = { value: mm(940), pm90: mm(30), basis: 'front photo' }
  const { bustGirth: _, ...taped } = MIDDLE
  const { screen } = await opened({
    ...bookOf(taped),
    bustGirth: { tape: [], proposal: { estimate, on: INVENTED_ON } },
  })
  await expect.element(screen.getByText('Nothing to throw.')).toBeVisible()
  await expect.element(screen.getByRole('link', { name: 'Back to Cut' })).toBeVisible()
  expect(document.querySelector('svg path.cutting')).toBeNull()
})
