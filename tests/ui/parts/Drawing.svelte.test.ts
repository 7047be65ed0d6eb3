import { userEvent } from 'vitest/browser'
import { expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import type { Point } from '../../../src/geometry/point.ts'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import WithPreferences from '../WithPreferences.svelte'
import DrawingUnderTest from './DrawingUnderTest.svelte'

async function drawing(preferences = new Preferences(), onplace?: (place?: Point) => void) {
  const screen = await render(WithPreferences<{ onplace?: (place?: Point) => void }>, {
    preferences,
    part: DrawingUnderTest,
    given: onplace ? { onplace } : {},
  })
  const svg = screen.getByRole('group', { name: 'Back, half' })
  await expect.poll(() => side()).toBeCloseTo(100, 1)
  return { screen, svg }
}
/** Side of the 100 mm square as the browser laid it out, in pixels of the screen. */
const square = () => document.querySelector('[data-square]')!.getBoundingClientRect()
const side = () => square().width

// A drawing shown k times closer shows every length k times longer: SVG 2, 8.2 viewBox.
it('three presses of + double every length, three of − bring it back', async () => {
  const { svg } = await drawing()
  svg.element().focus()
  await userEvent.keyboard('+++')
  await expect.poll(side).toBeCloseTo(200, 1)
  await userEvent.keyboard('---')
  await expect.poll(side).toBeCloseTo(100, 1)
})

it('arrows push the paper along and 0 shows the whole', async () => {
  const { svg } = await drawing()
  const start = square().left
  svg.element().focus()
  await userEvent.keyboard('+++')
  await expect.poll(side).toBeCloseTo(200, 1)
  const before = square().left
  await userEvent.keyboard('{ArrowRight}')
  // A tenth of the 200 mm in view is 20 mm, at 2 px a millimetre.
  await expect.poll(() => before - square().left).toBeCloseTo(40, 1)
  await userEvent.keyboard('0')
  await expect.poll(side).toBeCloseTo(100, 1)
  expect(square().left).toBeCloseTo(start, 1)
})

it('never goes further off than the whole', async () => {
  const { svg } = await drawing()
  svg.element().focus()
  await userEvent.keyboard('-----')
  expect(side()).toBeCloseTo(100, 1)
})

it('a double tap makes the lit place large, once more shows the whole', async () => {
  const { svg } = await drawing()
  await userEvent.dblClick(svg)
  await expect.poll(side).toBeCloseTo(400, 0) // the lit square fills the frame of 400 px
  await userEvent.dblClick(svg)
  await expect.poll(side).toBeCloseTo(100, 1)
})

it('two fingers twice as far apart draw it twice as close', async () => {
  const { svg } = await drawing()
  const node = svg.element()
  node.setPointerCapture = () => undefined // a made-up pointer cannot be captured
  const { left, top } = node.getBoundingClientRect()
  const finger = (type: string, pointerId: number, x: number) =>
    node.dispatchEvent(
      new PointerEvent(type, { pointerId, clientX: left + x, clientY: top + 200, bubbles: true }),
    )
  finger('pointerdown', 1, 150)
  finger('pointerdown', 2, 250)
  finger('pointermove', 1, 100)
  finger('pointermove', 2, 300)
  await expect.poll(side).toBeCloseTo(200, 0)
})

it('the dots lie 5 cm apart in centimetres and 2 in apart in inches', async () => {
  const preferences = new Preferences()
  const { screen } = await drawing(preferences)
  const spacing = () => Number(document.querySelector('pattern')?.getAttribute('width'))
  expect(spacing()).toBe(50)
  preferences.unit = 'inch'
  await expect.poll(spacing).toBeCloseTo(50.8, 9)
  await expect.element(screen.getByText('Dots are 2 in apart')).toBeVisible()
})

it('says where a pointer is in millimetres, at any closeness', async () => {
  const places: (Point | undefined)[] = []
  const { svg } = await drawing(new Preferences(), (place) => places.push(place))
  const tapMiddle = () => {
    const { left, top, width, height } = square()
    const at = { clientX: left + width / 2, clientY: top + height / 2, bubbles: true }
    document.querySelector('[data-square]')!.dispatchEvent(new MouseEvent('click', at))
  }
  tapMiddle()
  svg.element().focus()
  await userEvent.keyboard('+++')
  await expect.poll(side).toBeCloseTo(200, 1)
  tapMiddle()
  // The middle of the square, 100 to 200 mm both ways.
  for (const place of places) {
    expect(place?.x).toBeCloseTo(150, 1)
    expect(place?.y).toBeCloseTo(150, 1)
  }
  expect(places).toHaveLength(2)
})
