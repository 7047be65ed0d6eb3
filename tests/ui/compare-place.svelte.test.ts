/** The Compare screen on a session of its own. */
import { expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { page, userEvent } from 'vitest/browser'
import { clothOf, noteOf, verdictOf } from '../../src/rounds/worn.ts'
import { mm } from '../../src/units/length.ts'
import { Preferences } from '../../src/ui/preferences.svelte.ts'
import ComparePlace from '../../src/ui/rounds/ComparePlace.svelte'
import { bookOf, MIDDLE } from '../bodies.ts'
import OnThePage from './draft/OnThePage.svelte'
import { seeded } from './draft/seeded.ts'

async function opened(prepare: (made: Awaited<ReturnType<typeof seeded>>) => Promise<void>) {
  // As on a table: a phone shows one part at a time.
  await page.viewport(1280, 900)
  const made = await seeded(bookOf(MIDDLE))
  await prepare(made)
  const { session, garment } = made
  const preferences = new Preferences()
  const screen = await render(OnThePage, { page: ComparePlace, garment, session, preferences })
  return { screen, session, garment }
}
const twoRounds = async ({ session, garment }: Awaited<ReturnType<typeof seeded>>) => {
  await session.putOnPaper(garment)
  await session.turnChoice(garment, 'lengthAdded', mm(15))
}

it('one round has nothing to lie over yet; its notes and reasons are there', async () => {
  const { screen } = await opened(async ({ session, garment }) => {
    await session.putOnPaper(garment)
  })
  await expect
    .element(screen.getByRole('heading', { name: 'One round has nothing to lie over yet.' }))
    .toBeInTheDocument()
  await expect
    .element(screen.getByRole('link', { name: 'Say what muslin 1 does' }).first())
    .toBeInTheDocument()
  await expect.element(screen.getByRole('heading', { name: 'The record' })).toBeInTheDocument()
})

// 15 mm let out between bust and waist lengthen the fold by 15 mm (slash and spread, 1921).
it('two rounds: every changed number once, the drawing in words, another anchor moves the old one', async () => {
  const { screen } = await opened(twoRounds)
  await expect
    .element(screen.getByRole('heading', { level: 1 }))
    .toHaveTextContent('Round 1 with round 2')
  const row = screen.getByRole('row', { name: /^Back centre/ })
  await expect.element(row).toHaveTextContent(/\+1\.5$/)
  const drawing = () => screen.getByRole('group', { name: /^Front, half, round 1 under round 2/ })
  await expect.element(drawing()).toHaveAccessibleName(/hem/)
  await screen.getByText('waist', { exact: true }).click()
  await expect.element(drawing()).toHaveAccessibleName(/neck edge/)
  await expect.element(drawing()).not.toHaveAccessibleName(/hem/)
})

it('from a round on paper the next one is begun as it is', async () => {
  const { screen, session, garment } = await opened(async (made) => {
    await twoRounds(made)
    await made.session.putOnPaper(made.garment)
  })
  await screen.getByRole('button', { name: 'Start round 3 from here' }).click()
  await expect.poll(() => session.latest(garment)?.number).toBe(3)
  expect(session.latest(garment)?.choices.lengthAdded).toBe(15)
  await expect
    .element(screen.getByRole('link', { name: 'Put round 3 on paper' }))
    .toBeInTheDocument()
})

it('a photo is kept with its muslin; let go, the day stays; a file that is none is refused', async () => {
  const { screen, session, garment } = await opened(twoRounds)
  const field = screen.getByLabelText('Add a front photo of muslin 1')
  await field.upload(new File(['no photo'], 'a.txt', { type: 'text/plain' }))
  await expect.element(screen.getByRole('alert')).toHaveTextContent('not a photo')
  await field.upload(await photo())
  await expect
    .element(screen.getByRole('img', { name: 'Muslin 1 from the front' }))
    .toBeInTheDocument()
  expect(session.roundsOf(garment)[0]?.photos).toMatchObject([{ view: 'front' }])
  await screen.getByRole('button', { name: 'Let the front photo of round 1 go' }).click()
  await expect
    .element(screen.getByText(/^Photo removed on \d{1,2} [A-Z][a-z]+ \d{4}\./))
    .toBeInTheDocument()
  expect((await session.keptPhotos('all'))[0]?.here).toBe(false)
})

it('verdict, cloth and notes of a muslin are kept in its record', async () => {
  const { screen, session, garment } = await opened(twoRounds)
  const round = () => session.roundsOf(garment)[0]
  await screen.getByRole('combobox', { name: 'Round', exact: true }).selectOptions('id-2')
  await screen.getByText('another muslin', { exact: true }).click()
  await expect.poll(() => round() && verdictOf(round()!)).toBe('anotherMuslin')
  await screen.getByLabelText('Sewn of').fill('calico, invented')
  await userEvent.tab()
  await expect.poll(() => round() && clothOf(round()!)).toBe('calico, invented')
  await screen.getByText('Notes by zone').click()
  await screen.getByRole('textbox', { name: 'Armhole' }).fill('Stands away in front.')
  await userEvent.tab()
  await expect.poll(() => round() && noteOf(round()!, 'armhole')).toBe('Stands away in front.')
  // Said anew, the last word holds and the first stays in the record.
  await screen.getByText('ready for cloth', { exact: true }).click()
  await expect
    .poll(() => round()?.verdicts.map((v) => v.verdict))
    .toEqual(['anotherMuslin', 'readyForCloth'])
})

it('a round goes on from any round on paper, and the record of both stays', async () => {
  const { screen, session, garment } = await opened(async (made) => {
    await twoRounds(made)
    await made.session.putOnPaper(made.garment)
  })
  await screen.getByRole('combobox', { name: 'Round', exact: true }).selectOptions('id-2')
  await screen.getByRole('button', { name: 'Start a round from round 1' }).click()
  await expect.poll(() => session.latest(garment)?.number).toBe(3)
  expect(session.latest(garment)?.from).toBe(session.roundsOf(garment)[0]?.id)
  expect(session.latest(garment)?.choices.lengthAdded).toBe(0)
})

it('a branch while another round is open sets that one aside, with all that was decided in it', async () => {
  const { screen, session, garment } = await opened(twoRounds)
  const rounds = () => session.roundsOf(garment)
  await screen.getByRole('combobox', { name: 'Round', exact: true }).selectOptions('id-2')
  await expect.element(screen.getByText(/^Round 2 is not on paper yet\./)).toBeInTheDocument()
  await screen.getByRole('button', { name: 'Start a round from round 1' }).click()
  await expect.poll(() => rounds().length).toBe(3)
  // What is turned now is turned in round 3; a number taped anew moves it alone.
  await session.turnChoice(garment, 'lengthAdded', mm(5))
  await session.typeReading('hipGirth', mm(1040))
  await session.typeReading('hipGirth', mm(1040))
  expect(rounds().map((r) => r.choices.lengthAdded)).toEqual([0, 15, 5])
  expect(rounds()[1]?.body.values.hipGirth).toBe(MIDDLE.hipGirth)
  expect(rounds()[1]?.printed).toBeUndefined()
  await screen.getByRole('combobox', { name: 'Round', exact: true }).selectOptions('2, set aside')
  await screen.getByRole('button', { name: 'Start a round from round 2' }).click()
  await expect.poll(() => rounds().map((r) => r.choices.lengthAdded)).toEqual([0, 15, 5, 15])
  expect(session.latest(garment)?.from).toBe(rounds()[1]?.id)
})

it('one photo chosen for two muslins: let go of one, its pixels are gone from both, and both say so', async () => {
  const { screen, session, garment } = await opened(async (made) => {
    await twoRounds(made)
    await made.session.putOnPaper(made.garment)
  })
  const file = await photo()
  for (const muslin of [1, 2])
    await screen.getByLabelText(`Add a front photo of muslin ${muslin}`).upload(file)
  const seen = screen.getByRole('img', { name: /^Muslin \d from the front$/ })
  await expect.poll(() => seen.all().length).toBe(2)
  await expect.element(screen.getByText(/^It also lies with round 2: let go/)).toBeInTheDocument()
  await screen.getByRole('button', { name: 'Let the front photo of round 2 go' }).click()
  await expect.poll(() => screen.getByText(/^Photo removed on/).all().length).toBe(2)
  expect(session.roundsOf(garment).map((r) => r.photos[0]?.removedOn)).toEqual([
    session.today(),
    session.today(),
  ])
})

it('what is chosen while another is being opened has its turn: two are kept, why one was refused stays', async () => {
  const { screen, session, garment } = await opened(twoRounds)
  await screen.getByRole('combobox', { name: 'Round', exact: true }).selectOptions('id-2')
  const field = screen.getByLabelText(/close-up of muslin 1/).element() as HTMLInputElement
  const none = new File(['no photo'], 'a.txt', { type: 'text/plain' })
  for (const file of [none, await photo(480), await photo(500)]) {
    const chosen = new DataTransfer()
    chosen.items.add(file)
    field.files = chosen.files
    field.dispatchEvent(new Event('change', { bubbles: true }))
  }
  await expect.poll(() => session.roundsOf(garment)[0]?.photos.length).toBe(2)
  await expect.element(screen.getByRole('alert')).toHaveTextContent('not a photo')
})

/** A grey picture large enough to be taken, made here. */
async function photo(width = 480): Promise<File> {
  const canvas = new OffscreenCanvas(width, 640)
  const context = canvas.getContext('2d')
  if (!context) throw new Error('test: no canvas')
  context.fillStyle = '#999'
  context.fillRect(0, 0, width, 640)
  return new File([await canvas.convertToBlob({ type: 'image/jpeg' })], 'invented.jpg', {
    type: 'image/jpeg',
  })
}
