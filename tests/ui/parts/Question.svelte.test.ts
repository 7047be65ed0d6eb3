import { userEvent } from 'vitest/browser'
import { expect, it, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import Question from '../../../src/ui/parts/Question.svelte'

const OUTCOMES = [
  { id: 'quiet', sees: 'Lies quiet', means: 'The bust needs more dart.' },
  { id: 'pulls', sees: 'Pulls up to one side', means: 'The shoulder slopes more.' },
  { id: 'wavy', sees: 'The edge itself is wavy', means: 'It stretched while sewing.' },
]
const given = () => ({
  prompt: 'What does the waist do?',
  outcomes: OUTCOMES,
  value: undefined,
  onpick: vi.fn(),
  oncannot: vi.fn(),
})

// WAI-ARIA Authoring Practices, radio group: one choice, arrows move and choose.
it('is one question with three answers, reached by arrows', async () => {
  const props = given()
  const screen = await render(Question, props)
  const group = screen.getByRole('group', { name: 'What does the waist do?' })
  expect(group.getByRole('radio').elements()).toHaveLength(3)
  await userEvent.click(screen.getByText('Pulls up to one side'))
  expect(props.onpick).toHaveBeenLastCalledWith('pulls')
  await userEvent.keyboard('{ArrowDown}')
  expect(props.onpick).toHaveBeenLastCalledWith('wavy')
})

it('what she sees and what it means are both read out with the answer', async () => {
  const screen = await render(Question, given())
  const answer = screen.getByRole('radio', { name: 'Lies quiet The bust needs more dart.' })
  await expect.element(answer).toBeInTheDocument()
})

it('"I cannot tell" is always there and picks none of the three', async () => {
  const props = given()
  const screen = await render(Question, props)
  await screen.getByRole('button', { name: 'I cannot tell' }).click()
  expect(props.oncannot).toHaveBeenCalledOnce()
  expect(props.onpick).not.toHaveBeenCalled()
})

it('a fourth outcome is our own mistake', async () => {
  const four = [...OUTCOMES, { id: 'more', sees: 'More', means: 'More.' }]
  await expect((async () => render(Question, { ...given(), outcomes: four }))()).rejects.toThrow(
    '4 outcomes',
  )
})
