import { userEvent } from 'vitest/browser'
import { beforeEach, describe, expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import RulerKnob from '../../../src/ui/parts/RulerKnob.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { mm, type Mm } from '../../../src/units/length.ts'
import WithPreferences from '../WithPreferences.svelte'

let moves: Mm[]
let settled: Mm[]
beforeEach(() => {
  moves = []
  settled = []
})

/** The page's part of the bargain: it hands every move back as the new value. */
async function knob(preferences: Preferences, start = mm(95)) {
  const given = (value: Mm) => ({
    label: 'Neck width',
    value,
    min: mm(60),
    max: mm(130),
    onmove: (next: Mm) => {
      moves.push(next)
      void screen.rerender({ given: given(next) })
    },
    onsettle: (next: Mm) => settled.push(next),
  })
  const screen = await render(WithPreferences<ReturnType<typeof given>>, {
    preferences,
    part: RulerKnob,
    given: given(start),
  })
  return { slider: screen.getByRole('slider'), field: screen.getByRole('textbox'), screen }
}
const inInches = () => {
  const preferences = new Preferences()
  preferences.unit = 'inch'
  return preferences
}

// WAI-ARIA Authoring Practices, slider pattern: arrows one step, Page a larger step, Home and
// End the two ends; the value is said in words through aria-valuetext.
describe('by keyboard', () => {
  it('moves one millimetre an arrow in centimetres, five a Page', async () => {
    const { slider } = await knob(new Preferences())
    slider.element().focus()
    await userEvent.keyboard('{ArrowRight}{ArrowUp}{ArrowLeft}')
    await expect.element(slider).toHaveAttribute('aria-valuetext', '9.6 cm')
    await userEvent.keyboard('{PageUp}')
    await expect.element(slider).toHaveAttribute('aria-valuetext', '10.1 cm')
    expect(moves).toEqual([96, 97, 96, 101])
    expect(settled).toEqual(moves)
  })

  it('moves one eighth an arrow in inches', async () => {
    const { slider } = await knob(inInches(), mm(101.6)) // 4 in × 25.4
    slider.element().focus()
    await userEvent.keyboard('{ArrowRight}')
    await expect.element(slider).toHaveAttribute('aria-valuetext', '4 1/8 in')
    expect(moves[0]).toBeCloseTo(104.775, 9) // 4.125 in × 25.4
  })

  it('goes to its ends and no further', async () => {
    const { slider } = await knob(new Preferences())
    slider.element().focus()
    await userEvent.keyboard('{End}{ArrowRight}')
    await expect.element(slider).toHaveAttribute('aria-valuenow', '130')
    await userEvent.keyboard('{Home}{PageDown}')
    await expect.element(slider).toHaveAttribute('aria-valuenow', '60')
    expect(moves).toEqual([130, 60])
  })
})

describe('by typing', () => {
  it('takes inches while the page speaks centimetres, and says how it read them', async () => {
    const { field, screen } = await knob(new Preferences())
    await userEvent.fill(field, '3 3/4 in')
    await userEvent.keyboard('{Enter}')
    expect(moves[0]).toBeCloseTo(95.25, 9) // 3.75 in × 25.4
    await expect.element(screen.getByRole('status')).toHaveTextContent('Read as 3 3/4 in')
  })

  it('refuses what lies outside the ruler with the range in the sentence', async () => {
    const { field, screen } = await knob(new Preferences())
    await userEvent.fill(field, '20')
    await userEvent.keyboard('{Enter}')
    expect(moves).toEqual([])
    await expect.element(field).toHaveAttribute('aria-invalid', 'true')
    await expect.element(screen.getByRole('status')).toHaveTextContent('6.0 cm to 13.0 cm')
    await expect.element(field).toHaveValue('20')
  })
})

it('follows the pointer along the ruler', async () => {
  const { slider } = await knob(new Preferences())
  const { left, top, width } = slider.element().getBoundingClientRect()
  const at = (share: number) => ({
    clientX: left + width * share,
    clientY: top + 20,
    pointerId: 1,
    bubbles: true,
  })
  const node = slider.element()
  node.setPointerCapture = () => undefined // a made-up pointer cannot be captured
  node.dispatchEvent(new PointerEvent('pointerdown', at(0.5)))
  node.dispatchEvent(new PointerEvent('pointermove', at(1)))
  await expect.element(slider).toHaveAttribute('aria-valuenow', '130')
  node.dispatchEvent(new PointerEvent('pointerup', at(1)))
  node.dispatchEvent(new PointerEvent('pointermove', at(0)))
  expect(moves).toEqual([130]) // the middle is 95, where it stood already
  expect(settled).toEqual([130])
})
