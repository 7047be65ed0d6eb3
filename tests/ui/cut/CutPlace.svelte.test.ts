import { beforeEach, describe, expect, it, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import type { Book } from '../../../src/measurements/book.ts'
import CutPlace from '../../../src/ui/cut/CutPlace.svelte'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { mm } from '../../../src/units/length.ts'
import { bookOf, INVENTED_ON, MIDDLE } from '../../bodies.ts'
import OnThePage from '../draft/OnThePage.svelte'
import { seeded } from '../draft/seeded.ts'
import { caughtFiles } from './caught-files.ts'

let files: ReturnType<typeof caughtFiles>
beforeEach(() => {
  files = caughtFiles(vi)
})

async function opened(book: Book) {
  const { session, garment } = await seeded(book)
  const preferences = new Preferences()
  const screen = await render(OnThePage, { page: CutPlace, garment, session, preferences })
  return { screen, session, garment }
}

describe('a confirmed round', () => {
  it('is laid out on sheets, saved as a PDF, and lies on paper from then on', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    const save = screen.getByRole('button', { name: /^Save the PDF, \d+ sheets$/ }).first()
    await expect.element(save, { timeout: 60_000 }).toBeVisible()
    await save.click()
    await expect
      .element(screen.getByText('Round 1 is on paper and stays as it is.'), { timeout: 60_000 })
      .toBeVisible()
    expect(session.latest(garment)?.printed?.on).toBe(INVENTED_ON)
    await expect
      .poll(() => session.latest(garment)?.paperWork)
      .toMatchObject([
        {
          how: 'sheets',
          on: INVENTED_ON,
          about: expect.stringMatching(/^A4, \d+ sheets, muslin$/) as string,
        },
      ])
    const [pdf] = files
    expect(pdf?.name).toBe('invented-blouse-round-1-sheets-a4.pdf')
    const text = new TextDecoder('latin1').decode(await pdf?.blob)
    // ISO 32000-1, 7.5.2: a PDF begins with its version and ends with %%EOF.
    expect(text.startsWith('%PDF-')).toBe(true)
    expect(text.trimEnd().endsWith('%%EOF')).toBe(true)
    // The same round once more: the same bytes.
    await save.click()
    await expect.poll(() => files.length, { timeout: 60_000 }).toBe(2)
    expect(new TextDecoder('latin1').decode(await files[1]?.blob)).toBe(text)
  })

  it('says which finding keeps it to a muslin', async () => {
    const { headGirth: _head, ...rest } = MIDDLE
    const { screen } = await opened(bookOf(rest))
    await expect.element(screen.getByText('For a muslin first.').first()).toBeVisible()
    await expect.element(screen.getByText(/The head is not taped/).first()).toBeVisible()
  })

  it('asks in one sentence before it counts as drawn by hand', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    await screen.getByRole('button', { name: 'I have drawn it by hand' }).click()
    await expect.element(screen.getByText(/every change goes into round 2/)).toBeVisible()
    await screen.getByRole('button', { name: 'Not yet' }).click()
    expect(session.latest(garment)).toBeUndefined()
    await screen.getByRole('button', { name: 'I have drawn it by hand' }).click()
    await screen.getByRole('button', { name: 'It is drawn by hand' }).click()
    await expect.poll(() => session.latest(garment)?.printed?.on).toBe(INVENTED_ON)
    await expect.poll(() => session.latest(garment)?.paperWork).toMatchObject([{ how: 'byHand' }])
  })

  it('saves the steps without putting the round on paper, a drawing only with it', async () => {
    const { screen, session, garment } = await opened(bookOf(MIDDLE))
    await screen.getByRole('button', { name: 'Save the steps (text)' }).click()
    expect(new TextDecoder().decode(await files[0]?.blob)).toContain('nape to waist, 40.0 cm')
    expect(session.latest(garment)).toBeUndefined()
    await screen.getByRole('button', { name: 'Save the back, drawing (SVG)' }).click()
    await expect.poll(() => session.latest(garment)?.printed?.on).toBe(INVENTED_ON)
    await expect.poll(() => files.length).toBe(2)
    // SVG 2, 8.2: width and height in mm with a viewBox of the same numbers is true scale.
    const svg = new TextDecoder().decode(await files[1]?.blob)
    const [, wide, box] = /width="([\d.]+)mm".*?viewBox="([^"]+)"/.exec(svg) ?? []
    expect(box?.split(' ')[2]).toBe(wide)
  })
})

it('a draft from guesses has a dashed key with its reason, and no sheets', async () => {
  const estimate = { value: mm(940), pm90: mm(30), basis: 'front photo' }
  const { bustGirth: _, ...taped } = MIDDLE
  const { screen, session, garment } = await opened({
    ...bookOf(taped),
    bustGirth: { tape: [], proposal: { estimate, on: INVENTED_ON } },
  })
  const save = screen.getByRole('button', { name: 'Save the PDF' })
  await expect.element(save).toHaveAttribute('aria-disabled', 'true')
  await expect.element(screen.getByText('1 number is not agreed.')).toBeVisible()
  await save.click({ force: true })
  expect(files).toEqual([])
  expect(session.latest(garment)).toBeUndefined()
})
