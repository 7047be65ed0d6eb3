/**
 * The Fit screen on a session of its own, at the width of a phone. What a change does to the
 * numbers is checked in tests/fitting; here, that what she does leads there and back.
 */
import { userEvent } from 'vitest/browser'
import { describe, expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import type { Book } from '../../src/measurements/book.ts'
import { record } from '../../src/draft/record.ts'
import { redraft } from '../../src/rounds/redraft.ts'
import FitPlace from '../../src/ui/fitting/FitPlace.svelte'
import { Preferences } from '../../src/ui/preferences.svelte.ts'
import { bookOf, MIDDLE } from '../bodies.ts'
import OnThePage from './draft/OnThePage.svelte'
import { seeded } from './draft/seeded.ts'

async function opened(book: Book, sewn = true) {
  const { session, garment } = await seeded(book)
  if (sewn) expect(await session.putOnPaper(garment)).toBe(true)
  const preferences = new Preferences()
  const screen = await render(OnThePage, { page: FitPlace, garment, session, preferences })
  return { screen, session, garment }
}
type Screen = Awaited<ReturnType<typeof opened>>['screen']

async function say(screen: Screen, words: string) {
  await screen.getByRole('textbox', { name: 'Or in your own words' }).fill(words)
  await userEvent.keyboard('{Enter}')
}
async function pin(screen: Screen, label: string, text: string) {
  await screen.getByRole('textbox', { name: label }).fill(text)
  await userEvent.keyboard('{Enter}')
}

describe('before a muslin is sewn', () => {
  it('says so, and one key puts the round on paper', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE), false)
    await expect
      .element(screen.getByRole('heading', { name: 'Round 1 is not on paper yet.' }))
      .toBeInTheDocument()
    await screen.getByRole('button', { name: 'I have sewn this muslin' }).click()
    await expect.element(screen.getByRole('combobox', { name: 'Where' })).toBeInTheDocument()
    expect(session.latest(garment)?.printed).toBeDefined()
  })
  it('with numbers missing it leads to the tape book', async () => {
    const { screen } = await opened(bookOf({ bustGirth: 940 }), false)
    await expect
      .element(screen.getByRole('link', { name: 'Open the tape book' }))
      .toHaveAttribute('href', '#/measure')
  })
})

const HEARD = /^Gaping armhole/
async function gape(screen: Screen) {
  await say(screen, 'my armholes gape')
  await screen.getByRole('button', { name: HEARD }).first().click()
}

describe('a gaping armhole', () => {
  it('is said, answered, pinned at its place, changed in the next round, and taken back', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    const before = record(redraft(session.latest(garment)!).draft)
    await gape(screen)
    await screen.getByText(/^Yes\./).click()
    await pin(screen, 'Whole fold', '1.2 cm')
    // 87 in a hundred of 12 mm, 85 to 90 being common practice: 10.44 mm, printed 1.0 cm.
    await expect.element(screen.getByText(/sleeve edge comes in by 1.0 cm/)).toBeVisible()
    const long = before.lengths['front.sleeveEdge']!
    await pin(screen, 'From the underarm, along the edge', `${(long / 20).toFixed(1)} cm`)
    await screen.getByRole('button', { name: 'See what would change' }).click()
    await screen.getByRole('button', { name: 'Make this change' }).click()
    await expect.element(screen.getByText('The draft of round 2 has changed.')).toBeVisible()

    const [muslin, next] = session.roundsOf(garment)
    expect(muslin?.seen).toMatchObject([{ complaint: 'B8', answer: 'B8.1' }])
    expect(muslin?.corrections).toEqual([])
    expect(next?.corrections).toMatchObject([
      {
        kind: 'operate',
        operation: { op: 'ROT', edge: 'sleeveEdge', along: expect.closeTo(0.5, 2) },
        because: { round: 1, cause: 'B8.1' },
      },
    ])
    const after = record(redraft(next!).draft)
    expect(before.lengths['front.sleeveEdge']! - after.lengths['front.sleeveEdge']!).toBeCloseTo(
      10.44,
      1,
    )
    await screen.getByRole('button', { name: 'Take it back', exact: true }).click()
    await expect.element(screen.getByText(/^Taken back\./)).toBeVisible()
    expect(record(redraft(session.latest(garment)!).draft)).toEqual(before)
    expect(session.latest(garment)?.corrections.map((c) => c.kind)).toEqual(['operate', 'withdraw'])
  })

  it('under 3 mm there is nothing to change', async () => {
    const { screen } = await opened(bookOf(MIDDLE))
    await gape(screen)
    await screen.getByText(/^Yes\./).click()
    await pin(screen, 'Whole fold', '0.2 cm')
    await expect.element(screen.getByText('Nothing to change in the draft.')).toBeVisible()
    expect(document.body.textContent).not.toContain('Make this change')
  })

  it('the part and the most of a round are hers to change', async () => {
    const { screen } = await opened(bookOf(MIDDLE))
    await gape(screen)
    await screen.getByText(/^Yes\./).click()
    await pin(screen, 'Whole fold', '1.2 cm')
    await screen.getByText(/^Of a take-in 87 in a hundred/).click()
    await screen.getByRole('combobox', { name: /^Of a pinned take-in/ }).selectOptions('half of it')
    // Half of 12 mm.
    await expect.element(screen.getByText(/sleeve edge comes in by 0.6 cm/)).toBeVisible()
    await pin(screen, 'The most of one round', '0.4 cm')
    await expect.element(screen.getByText(/sleeve edge comes in by 0.4 cm/)).toBeVisible()
    await expect.element(screen.getByText('Watch next time:')).toBeVisible()
  })

  it('what one test cannot tell the next is asked for', async () => {
    const { screen } = await opened(bookOf(MIDDLE))
    await gape(screen)
    await screen.getByRole('button', { name: 'I cannot tell' }).click()
    await expect.element(screen.getByText('cannot tell', { exact: true })).toBeVisible()
    await expect.element(screen.getByText(/pin at the shoulder tip/).first()).toBeVisible()
  })
})

it('what the most of a round left over is looked for on the next muslin', async () => {
  const { screen, session, garment } = await opened(bookOf(MIDDLE))
  await gape(screen)
  await screen.getByText(/^Yes\./).click()
  // 87 in a hundred of 20 mm are 17.4: the cap of 15 leaves 2.4.
  await pin(screen, 'Whole fold', '2.0 cm')
  await screen.getByRole('button', { name: 'See what would change' }).click()
  await screen.getByRole('button', { name: 'Make this change' }).click()
  await expect.element(screen.getByText('The draft of round 2 has changed.')).toBeVisible()
  await screen.getByRole('button', { name: 'Say the next thing' }).click()
  expect(await session.putOnPaper(garment)).toBe(true)
  await screen.getByRole('button', { name: 'Read it again' }).click()
  await pin(screen, 'Whole fold', '0.2 cm')
  // Half of 2.4 and 87 in a hundred of 2: 2.07 mm.
  await expect.element(screen.getByText(/sleeve edge comes in by 0.2 cm/)).toBeVisible()
})

it('what no complaint fits is said so, and kept as a note once', async () => {
  const { screen, session, garment } = await opened(bookOf(MIDDLE))
  await say(screen, 'the neck is tight')
  await screen.getByRole('button', { name: 'Keep these words as a note' }).click()
  await expect.poll(() => session.latest(garment)?.notes).toBe('the neck is tight')
  await screen.getByRole('combobox', { name: 'Where' }).selectOptions('hem')
  await screen.getByRole('combobox', { name: 'How the cloth is' }).selectOptions('too long')
  await screen.getByRole('button', { name: 'Keep the sentence as a note' }).click()
  await expect
    .poll(() => session.latest(garment)?.notes)
    .toBe('the neck is tight\nAt the hem, the cloth is too long.')
})

it('the first things and the lines are kept with the round, and a line leads to its complaint', async () => {
  const { screen, session, garment } = await opened(bookOf(MIDDLE))
  await screen.getByRole('checkbox', { name: /^The muslin is pressed/ }).click()
  await expect
    .poll(() => session.latest(garment)?.firstThings)
    .toMatchObject([{ thing: 'pressed', done: true }])
  await screen
    .getByRole('combobox', { name: 'Side seam' })
    .selectOptions('its lower end swings forward')
  await expect.element(screen.getByText('Begin with what the lines say.')).toBeVisible()
  await screen.getByRole('button', { name: 'Side seam swings forward' }).first().click()
  await expect.element(screen.getByText(/Hang a plumb line from the underarm/)).toBeVisible()
})

it('a movement and the rise of the hem are kept with the round, and speak for a complaint', async () => {
  const { screen, session, garment } = await opened(bookOf(MIDDLE))
  await screen.getByText('Movement check').click()
  await screen
    .getByRole('group', { name: 'Both arms reach forward' })
    .getByText('pulls', { exact: true })
    .click()
  await pin(screen, 'The hem rose by', '3.5 cm')
  await expect
    .poll(() => session.latest(garment)?.movements.at(-1))
    .toMatchObject({ movement: 'armsForward', freedom: 'pulls', rose: 35 })
  await screen.getByRole('button', { name: 'Tight across the shoulder blades' }).first().click()
  // The number it is read by, and the movement itself, each in one sentence.
  await expect
    .element(screen.getByText(/With both arms forward it pulled, and the hem rose by 3.5 cm/))
    .toBeVisible()
})
