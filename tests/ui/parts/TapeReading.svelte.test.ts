import { userEvent } from 'vitest/browser'
import { beforeEach, expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import TapeReading from '../../../src/ui/parts/TapeReading.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { cm, type Mm } from '../../../src/units/length.ts'
import { parseLength } from '../../../src/units/parse.ts'
import WithPreferences from '../WithPreferences.svelte'

let read: Mm[]
beforeEach(() => {
  read = []
})

/** An upper arm of 10 to 60 cm: a bare 15 can be centimetres or inches. */
async function field(value?: Mm) {
  const preferences = new Preferences()
  const given = (now: Mm | undefined) => ({
    label: 'Upper arm',
    value: now,
    parse: (text: string) => parseLength(text, preferences.choice, { min: cm(10), max: cm(60) }),
    onread: (next: Mm) => {
      read.push(next)
      void screen.rerender({ given: given(next) })
    },
  })
  const screen = await render(WithPreferences<ReturnType<typeof given>>, {
    preferences,
    part: TapeReading,
    given: given(value),
  })
  return { screen, input: screen.getByRole('textbox', { name: 'Upper arm' }) }
}

it('takes a reading with its unit and prints it back in hers', async () => {
  const { input } = await field()
  await userEvent.fill(input, '33,8 cm')
  await userEvent.keyboard('{Enter}')
  expect(read).toEqual([338])
  await expect.element(input).toHaveValue('33.8 cm')
})

it('asks when a bare number can mean two lengths, and takes the one she chooses', async () => {
  const { input, screen } = await field()
  await userEvent.fill(input, '15')
  await userEvent.keyboard('{Enter}')
  expect(read).toEqual([])
  const keys = screen.getByRole('group').getByRole('button')
  expect(keys.elements().map((key) => key.textContent)).toEqual(['15.0 cm', '15 in (38.1 cm)'])
  await expect.element(input).not.toHaveAttribute('aria-invalid') // a question is no fault
  await keys.nth(1).click()
  expect(read).toHaveLength(1)
  expect(read[0]).toBeCloseTo(381, 9) // 15 × 25.4 mm
  await expect.element(input).toHaveValue('38.1 cm')
  expect(keys.elements()).toHaveLength(0)
})

it('keeps what she typed when it means nothing, and links the sentence to the field', async () => {
  const { input } = await field()
  await userEvent.fill(input, 'long')
  await userEvent.tab()
  expect(read).toEqual([])
  await expect.element(input).toHaveValue('long')
  await expect.element(input).toHaveAttribute('aria-invalid', 'true')
  const said = document.getElementById(input.element().getAttribute('aria-describedby') ?? '')
  expect(said?.textContent?.trim()).toMatch(/\.$/)
})

it('Escape puts the last reading back', async () => {
  const { input } = await field(cm(30))
  await userEvent.fill(input, '99')
  await userEvent.keyboard('{Escape}')
  await expect.element(input).toHaveValue('30.0 cm')
  expect(read).toEqual([])
})
