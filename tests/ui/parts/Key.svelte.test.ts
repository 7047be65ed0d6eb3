import { createRawSnippet } from 'svelte'
import { expect, it, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import Key from '../../../src/ui/parts/Key.svelte'

const words = createRawSnippet(() => ({ render: () => '<span>Save the PDF</span>' }))

it('a key that cannot be pressed yet can still be reached, and says why', async () => {
  const onclick = vi.fn()
  const screen = await render(Key, {
    onclick,
    disabledReason: 'Two numbers are not taped.',
    children: words,
  })
  const key = screen.getByRole('button', { name: 'Save the PDF' })
  // aria-disabled keeps it in the tab order: WAI-ARIA 1.2, aria-disabled.
  await expect.element(key).toHaveAttribute('aria-disabled', 'true')
  await expect.element(key).toHaveAccessibleDescription('Two numbers are not taped.')
  await key.click({ force: true })
  expect(onclick).not.toHaveBeenCalled()
})

it('is pressed once when it can be', async () => {
  const onclick = vi.fn()
  const screen = await render(Key, { onclick, children: words })
  await screen.getByRole('button').click()
  expect(onclick).toHaveBeenCalledOnce()
})
