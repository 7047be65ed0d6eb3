/** Choices of words, fit, openings and the ways to take a waist in, on the Draft page. */
import { userEvent } from 'vitest/browser'
import { describe, expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import type { Book } from '../../../src/measurements/book.ts'
import DraftPlace from '../../../src/ui/draft/DraftPlace.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { bookOf, FULL, LARGE, MIDDLE } from '../../bodies.ts'
import OnThePage from './OnThePage.svelte'
import { seeded } from './seeded.ts'

async function opened(book: Book = bookOf(MIDDLE)) {
  const { session, garment } = await seeded(book)
  const preferences = new Preferences()
  const screen = await render(OnThePage, { page: DraftPlace, garment, session, preferences })
  const summary = (words: string) =>
    screen.getByText(words, { exact: true }).element().closest('summary') ?? document.body
  const radio = (name: string) => screen.getByRole('radio', { name, exact: true })
  /** The button itself lies hidden under its words. */
  const pick = async (name: string) => {
    await expect.element(radio(name)).toBeInTheDocument()
    const node = radio(name).element()
    if (node instanceof HTMLInputElement) node.click()
  }
  return { screen, session, garment, summary, radio, pick, latest: () => session.latest(garment) }
}
const line = (name: string) => document.querySelector(`[data-line="${name}"]`)
const seam = () => line('seam')?.getAttribute('d') ?? ''

describe('a choice of words', () => {
  it('redraws at once, is kept, and is taken back', async () => {
    const { screen, summary, radio, pick, latest } = await opened()
    await pick('Front')
    const round = seam()
    summary('Neck').click()
    await pick('square')
    await expect.poll(seam).not.toBe(round)
    await expect.poll(() => latest()?.choices.neckShape).toBe('square')
    await expect.element(radio('square')).toBeChecked()
    await screen.getByRole('button', { name: 'Take back: neck shape: square' }).click()
    await expect.poll(() => latest()?.choices.neckShape).toBe('round')
    await expect.poll(seam).toBe(round)
    expect(latest()?.number).toBe(1)
  })

  it('arrow keys walk its words, as in any group of radio buttons', async () => {
    const { summary, radio, latest } = await opened()
    summary('Neck').click()
    radio('round').element().focus()
    await userEvent.keyboard('{ArrowRight}')
    await expect.poll(() => latest()?.choices.neckShape).toBe('square')
    await expect.element(radio('square')).toHaveFocus()
  })

  it('on a round on paper it begins the next one, and the paper stays', async () => {
    const { screen, session, garment, summary, pick, latest } = await opened()
    await session.putOnPaper(garment)
    await expect.poll(() => screen.getByRole('radio', { name: 'square' }).elements()).toEqual([])
    await screen.getByRole('button', { name: 'Turn choices for round 2' }).click()
    summary('Neck').click()
    await pick('V')
    await expect.poll(() => latest()?.number).toBe(2)
    expect(session.roundsOf(garment).map((r) => r.choices.neckShape)).toEqual(['round', 'vee'])
  })
})

// Eases of the two fits: common practice, no source (draft/choices.ts).
describe('fit', () => {
  it('sets four eases in one touch, and says when they are neither', async () => {
    const { screen, session, garment, radio, pick, latest } = await opened()
    await expect.element(radio('easy')).toBeChecked()
    await pick('close')
    await expect
      .poll(() => latest()?.choices)
      .toMatchObject({ easeBust: 12, easeWaist: 8, easeHighHip: 10, easeHip: 10 })
    expect(session.roundsOf(garment)).toHaveLength(1)
    screen
      .getByRole('slider', { name: /^Quarter-bust ease/ })
      .element()
      .focus()
    await userEvent.keyboard('{ArrowRight}')
    await expect.element(screen.getByText('Your own eases: neither easy nor close.')).toBeVisible()
    await expect.element(radio('easy')).not.toBeChecked()
    await expect.element(radio('close')).not.toBeChecked()
  })

  // By hand: 94 + 4 × 2.2 = 102.8 and 78 + 4 × 1.4 = 83.6, round the body.
  it('the sewn ease stands beside the body, level by level', async () => {
    const { screen } = await opened()
    const table = screen.getByRole('table').filter({ hasText: 'Sewn ease' })
    const row = (level: string) => table.getByRole('row', { name: new RegExp(`^${level} `) })
    await expect.element(row('Bust')).toHaveTextContent(/94\.0\s*102\.8\s*8\.8/)
    await expect.element(row('Waist')).toHaveTextContent(/78\.0\s*83\.6\s*5\.6/)
    await screen.getByText('Beside published ease').click()
    // The published span for a shirt at the bust is 6 to 10 cm; 8.8 lies in it.
    await expect.element(screen.getByText('6.0–10.0').first()).toHaveTextContent('holds this ease')
  })
})

describe('openings', () => {
  it('another one is picked from the proof, drawn on the piece, and holds', async () => {
    const { screen, radio, pick, latest } = await opened()
    expect(line('zip')).not.toBeNull()
    await screen.getByRole('button', { name: 'Choose another opening' }).first().click()
    await expect.element(radio('as needed')).toBeVisible()
    await pick('buttoned front')
    await expect.poll(() => latest()?.choices.opening).toBe('buttonedFront')
    await expect.poll(() => line('zip')).toBeNull()
    await pick('Front')
    await expect.poll(() => line('centreFront')).not.toBeNull()
    await expect
      .element(screen.getByText('The buttoned front lets the waist pass', { exact: false }))
      .toBeVisible()
    await expect
      .element(screen.getByRole('slider', { name: /^Overlap of a buttoned front/ }))
      .toBeVisible()
  })

  it('a piece that a choice takes away gives the table back to the back', async () => {
    const { summary, radio, pick } = await opened()
    await pick('Slit facing')
    summary('Opening').click()
    await pick('zip at the centre back')
    await expect.element(radio('Back')).toBeChecked()
    await expect.poll(() => document.body.textContent).not.toContain('Slit facing')
  })
})

describe('waist and front', () => {
  it('the ways to take a waist in are offered only where one dart is too narrow', async () => {
    const { screen, summary } = await opened()
    summary('Waist and darts').click()
    await expect.element(screen.getByText('Waist shaping')).toBeVisible()
    expect(document.body.textContent).not.toContain('Ways to take the waist in')
  })

  // By hand, as in choice-groups.test.ts: 83 mm on each half, 15 of them at the centre back.
  it('side by side with their numbers, one is picked', async () => {
    const { screen, summary, pick, latest } = await opened(bookOf({ ...MIDDLE, waistGirth: 640 }))
    summary('Waist and darts').click()
    const ways = screen.getByRole('table').filter({ hasText: 'Side first' })
    await expect
      .element(ways.getByRole('row', { name: /^Centre back/ }))
      .toHaveTextContent(/Centre back\s*–\s*–\s*1\.5/)
    await pick('Centre back')
    await expect.poll(() => latest()?.choices.surplus).toBe('centreBack')
    await expect
      .element(screen.getByRole('group', { name: /^Back, half/ }))
      .toHaveTextContent('centre-back seam')
  })

  it('a fuller bust is offered a wider front, and only once', async () => {
    const { screen, latest } = await opened(bookOf(FULL))
    await screen.getByRole('button', { name: 'Make the front wider' }).click()
    await screen.getByRole('button', { name: 'Front wider by 1.0 cm' }).click()
    await expect.poll(() => latest()?.choices.frontShare).toBe(10)
    await expect
      .element(screen.getByRole('slider', { name: /^Front wider than back/ }))
      .toHaveFocus()
    expect(document.body.textContent).not.toContain('Front wider by')
  })

  // Invented: front 486 over back 446 leaves 20 mm for a dart in the side.
  it('a side bust dart is drawn with its width, and the proof shows it', async () => {
    const { screen, radio } = await opened(bookOf(LARGE))
    await screen.getByRole('button', { name: 'Show it: front, side bust dart' }).click()
    await expect.element(radio('Front')).toBeChecked()
    const drawing = screen.getByRole('group', { name: /^Front, half/ })
    await expect.element(drawing).toHaveTextContent('2.0 cm')
    expect(document.querySelectorAll('.lit').length).toBe(2)
  })
})
