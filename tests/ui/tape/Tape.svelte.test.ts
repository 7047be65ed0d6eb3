import { userEvent } from 'vitest/browser'
import { expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import Tape from '../../../src/ui/tape/Tape.svelte'
import '../../../src/ui/styles/base.css'

const focused = () => document.activeElement?.textContent?.trim().split(/\s/)[0]

it('names the six places in the order work goes and marks the present one', async () => {
  const screen = await render(Tape, {
    present: 'fit',
    garment: 'shell',
    words: { fit: 'round 3', measure: '23 of 26' },
  })
  const links = screen.getByRole('navigation').getByRole('list').getByRole('link').elements()
  const words = links.map((link) => link.textContent?.replace(/\s+/g, ' ').trim())
  expect(words).toEqual(['Rail', 'Measure 23 of 26', 'Draft', 'Fit round 3', 'Compare', 'Cut'])
  const present = links.filter((link) => link.getAttribute('aria-current') === 'page')
  expect(present.map((link) => link.getAttribute('href'))).toEqual(['#/g/shell/fit'])
})

it('arrow keys walk it, round its ends, without leaving the page', async () => {
  const screen = await render(Tape, { present: 'rail' })
  const address = location.hash
  screen.getByRole('link', { name: 'Rail' }).element().focus()
  await userEvent.keyboard('{ArrowDown}{ArrowRight}')
  expect(focused()).toBe('Draft')
  await userEvent.keyboard('{End}{ArrowDown}')
  expect(focused()).toBe('Rail')
  await userEvent.keyboard('{ArrowUp}')
  expect(focused()).toBe('Cut')
  expect(location.hash).toBe(address)
})
