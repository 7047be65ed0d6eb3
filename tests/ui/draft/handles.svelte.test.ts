/** A ringed point on the drawing turns its choice: by arrow keys, by dragging, kept on letting go. */
import { afterEach, expect, test } from 'vitest'
import { page, userEvent } from 'vitest/browser'
import { cleanup, render } from 'vitest-browser-svelte'
import DraftPlace from '../../../src/ui/draft/DraftPlace.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { bookOf, MIDDLE } from '../../bodies.ts'
import OnThePage from './OnThePage.svelte'
import { seeded } from './seeded.ts'

afterEach(cleanup)

test('the hem: an arrow key lengthens it by its step, a drag redraws before it is kept', async () => {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  await render(OnThePage, {
    page: DraftPlace,
    garment,
    session,
    preferences: new Preferences(),
  })
  const hem = page.getByRole('slider', { name: 'L: length below the waist' })
  await expect.element(hem).toBeInTheDocument()
  const node = hem.element()
  if (!(node instanceof SVGGElement)) throw new Error('the handle is no part of the drawing')
  node.focus()
  await userEvent.keyboard('{ArrowDown}')
  await expect.poll(() => session.latest(garment)?.choices.lengthBelowWaist).toBe(225)

  const ring = node.querySelector('.ring')!.getBoundingClientRect()
  const [x, y] = [ring.x + ring.width / 2, ring.y + ring.height / 2]
  const at = (type: string, dy: number) =>
    node
      .querySelector('.reach')!
      .dispatchEvent(
        new PointerEvent(type, { bubbles: true, pointerId: 1, clientX: x, clientY: y + dy }),
      )
  const capture = node.setPointerCapture
  // A made-up pointer cannot be captured; the browser's own can.
  node.setPointerCapture = () => undefined
  at('pointerdown', 0)
  at('pointermove', 40)
  await expect.poll(() => Number(node.getAttribute('aria-valuenow'))).toBeGreaterThan(225)
  expect(session.latest(garment)?.choices.lengthBelowWaist).toBe(225)
  const dragged = Number(node.getAttribute('aria-valuenow'))
  at('pointerup', 40)
  await expect.poll(() => session.latest(garment)?.choices.lengthBelowWaist).toBe(dragged)
  node.setPointerCapture = capture
})
