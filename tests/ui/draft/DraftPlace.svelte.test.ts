import { userEvent } from 'vitest/browser'
import { describe, expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { mm } from '../../../src/units/length.ts'
import type { Book } from '../../../src/measurements/book.ts'
import DraftPlace from '../../../src/ui/draft/DraftPlace.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { bookOf, INVENTED_ON, MIDDLE } from '../../bodies.ts'
import OnThePage from './OnThePage.svelte'
import { seeded } from './seeded.ts'

async function opened(book: Book) {
  const { session, garment } = await seeded(book)
  const preferences = new Preferences()
  const screen = await render(OnThePage, { page: DraftPlace, garment, session, preferences })
  return { screen, session, garment }
}
const seam = () => document.querySelector('[data-line="seam"]')?.getAttribute('d') ?? ''

describe('a confirmed draft', () => {
  it('walks the steps over the back to the front, and back again', async () => {
    const { screen } = await opened(bookOf(MIDDLE))
    const next = screen.getByRole('button', { name: /^(Next step|Now the)/ }).first()
    await next.click()
    // 400 mm nape to waist, as typed.
    await expect
      .element(screen.getByRole('status').filter({ hasText: 'Down from A' }))
      .toHaveTextContent('nape to waist, 40.0 cm')
    const on = (piece: string) => screen.getByRole('radio', { name: piece, exact: true })
    const until = async (piece: string) => {
      while (!(on(piece).element() as HTMLInputElement).checked) await next.click()
    }
    await until('Front')
    await screen.getByRole('button', { name: 'Back a step' }).first().click()
    await expect.element(on('Back')).toBeChecked()
    // Openings are marked after the front is drawn; the pieces that finish an edge come last.
    await until('Front')
    await until('Back')
    await expect
      .element(screen.getByRole('status').filter({ hasText: 'Mark the zip' }))
      .toBeInTheDocument()
    await until('Neck strip')
    await expect
      .element(screen.getByRole('status').filter({ hasText: 'Rule a rectangle' }))
      .toBeInTheDocument()
    await expect
      .element(screen.getByRole('group', { name: /^Bias strip of the neck/ }))
      .toBeInTheDocument()
  })

  // The tests run at the width of a phone, where the present step lies under the drawing.
  it('on a phone the list of steps is folded until it is asked for', async () => {
    const { screen } = await opened(bookOf(MIDDLE))
    const last = screen.getByText('Mark the zip', { exact: false }).last()
    await expect.element(last).not.toBeVisible()
    const key = screen.getByRole('button', { name: /^All \d+ steps of the back$/ })
    await key.click()
    await expect.element(last).toBeVisible()
    await expect
      .element(screen.getByRole('button', { name: 'Fold the list' }))
      .toHaveAttribute('aria-expanded', 'true')
  })

  it('redraws while a choice is turned and keeps it only on letting go', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    const knob = screen.getByRole('slider', { name: /^Quarter-bust ease/ })
    const node = knob.element()
    node.setPointerCapture = () => undefined // a made-up pointer cannot be captured
    const { left, top, width } = node.getBoundingClientRect()
    const at = (share: number) => ({
      clientX: left + width * share,
      clientY: top + 20,
      pointerId: 1,
      bubbles: true,
    })
    const words = () =>
      [...document.querySelectorAll('.dw .len')].map(({ textContent }) => textContent).join()
    const [before, said] = [seam(), words()]
    node.dispatchEvent(new PointerEvent('pointerdown', at(0.6)))
    node.dispatchEvent(new PointerEvent('pointermove', at(0.8)))
    await expect.poll(seam).not.toBe(before)
    expect(session.roundsOf(garment)).toHaveLength(0)
    await expect.poll(() => document.querySelector('[data-line="moved"]')).not.toBeNull()
    // The words follow when the hand rests, before it lets go.
    await expect.poll(words).not.toBe(said)
    node.dispatchEvent(new PointerEvent('pointerup', at(0.8)))
    await expect.poll(() => session.latest(garment)?.choices.easeBust).toBe(49)
    await expect.poll(() => document.querySelector('[data-line="moved"]')).toBeNull()
    expect(session.roundsOf(garment)).toHaveLength(1)
  })

  it('keys pressed one after another are one round, and the last one counts', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    screen
      .getByRole('slider', { name: /^Quarter-bust ease/ })
      .element()
      .focus()
    await userEvent.keyboard('{ArrowRight}{ArrowRight}{ArrowRight}')
    await expect.poll(() => session.latest(garment)?.choices.easeBust).toBe(25)
    expect(session.roundsOf(garment)).toHaveLength(1)
    await expect.element(screen.getByRole('slider', { name: /^Quarter-bust ease/ })).toHaveFocus()
  })

  it('a round on paper is shown as it is, and says where a change goes', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    await session.putOnPaper(garment)
    await expect
      .element(screen.getByText('Round 1 is on paper and stays as it is.', { exact: false }))
      .toHaveTextContent('What you change goes into round 2.')
    expect(document.querySelector('[role="slider"]')).toBeNull()
    await screen.getByRole('button', { name: 'Turn choices for round 2' }).click()
    screen
      .getByRole('slider', { name: /^Quarter-bust ease/ })
      .element()
      .focus()
    await userEvent.keyboard('{ArrowRight}')
    await expect.poll(() => session.latest(garment)?.number).toBe(2)
    expect(session.roundsOf(garment)[0]?.choices.easeBust).toBe(22)
  })

  it('a correction in force is taken back and stays in the round', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    await session.makeChange(garment, {
      kind: 'close-wedge',
      piece: 'front',
      edge: 'sleeveEdge',
      along: 0.5,
      width: mm(10),
      because: {
        complaint: 'B8',
        cause: 'bust shaping',
        pinned: { how: 'wholeFold', read: mm(10), share: 1 },
        watch: mm(0),
        round: 1,
      },
    })
    await screen.getByRole('button', { name: 'Take back: Gaping armhole, round 1' }).click()
    await expect.element(screen.getByText('Gaping armhole: taken back.')).toBeVisible()
    expect(session.latest(garment)?.corrections.map((c) => c.kind)).toEqual([
      'close-wedge',
      'withdraw',
    ])
  })
})

it('a draft from guesses says so, on the drawing too, and what is still to tape', async () => {
  const estimate = { value: mm(940), pm90: mm(30), basis: 'front photo' }
  const { bustGirth: _, ...taped } = MIDDLE
  const book: Book = {
    ...bookOf(taped),
    bustGirth: { tape: [], proposal: { estimate, on: INVENTED_ON } },
  }
  const { screen } = await opened(book)
  await expect.element(screen.getByText('Drawn from guesses, not for cutting.')).toBeVisible()
  await expect
    .element(screen.getByRole('link', { name: 'Bust girth is still a guess from the photo.' }))
    .toHaveAttribute('href', '#/measure')
  expect(document.querySelector('svg.dw')?.textContent).toContain('not for cutting')
  expect(document.querySelector('[role="slider"]')).toBeNull()
})

it('with numbers missing it says which, and leads to the tape book', async () => {
  const { bustGirth: _, ...taped } = MIDDLE
  const { screen } = await opened(bookOf(taped))
  await expect.element(screen.getByText('Bust girth is not taped yet.')).toBeVisible()
  await expect
    .element(screen.getByRole('link', { name: 'Open the tape book' }))
    .toHaveAttribute('href', '#/measure')
})
