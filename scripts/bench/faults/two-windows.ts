/** Two windows of one store at the same time, both English or one German: nothing of either is lost. */
import type { Page } from 'playwright-core'
import { anotherWindow, type Device } from './browser.ts'
import { must, type Tally } from './fault.ts'
import { openAt, pageErrors } from './steps.ts'

/** Four numbers and the keys of the rail, as one of the pages calls them. */
interface Tongue {
  readonly names: readonly string[]
  readonly tape: string
  readonly comma: string
  readonly hang: string
  readonly rename: string
  readonly keepName: string
}
type Slot = 1 | 2
const ENGLISH: Tongue = {
  names: ['Bust girth', 'Waist girth', 'Hip girth', 'Nape to waist'],
  tape: 'tape',
  comma: '.',
  hang: 'Hang a blouse',
  rename: 'Rename',
  keepName: 'Keep the name',
}
const GERMAN: Tongue = {
  names: ['Brustumfang', 'Taillenumfang', 'Hüftumfang', 'Rückenlänge'],
  tape: 'Band',
  comma: ',',
  hang: 'Bluse aufhängen',
  rename: 'Umbenennen',
  keepName: 'Namen sichern',
}
/** Invented: two readings of each of the four, cm. */
const TWICE = [
  ['94.0', '94.1'],
  ['78.0', '78.1'],
  ['100.0', '100.1'],
  ['40.0', '40.1'],
] as const
/** Which of the four is typed in either window at the same moment. */
const AT_ONCE = [
  [0, 2],
  [1, 3],
  [2, 0],
  [3, 1],
] as const

interface Window {
  readonly page: Page
  readonly tongue: Tongue
}
const field = ({ page, tongue }: Window, which: number, slot: Slot) =>
  page.getByLabel(`${tongue.names[which]}, ${tongue.tape} ${slot}`, { exact: true }).first()

async function type(on: Window, which: number, slot: Slot): Promise<void> {
  const at = field(on, which, slot)
  await at.fill((TWICE[which]?.[slot === 1 ? 0 : 1] ?? '').replace('.', on.tongue.comma))
  await at.press('Enter')
}

/** How many of the eight readings this window does not show. */
async function missing(on: Window): Promise<number> {
  const there = await Promise.all(
    TWICE.map(async (readings, which) => {
      const both = await Promise.all(
        ([1, 2] as const).map(async (slot) =>
          (await field(on, which, slot).inputValue()).replace(/\scm$/, '').replace(',', '.'),
        ),
      )
      return readings.filter((reading) => !both.includes(reading)).length
    }),
  )
  return there.reduce((sum, n) => sum + n, 0)
}

export const twoWindows =
  (second: 'English' | 'German') =>
  async ({ page }: Device, origin: string, tally: Tally): Promise<void> => {
    const here: Window = { page, tongue: ENGLISH }
    const there: Window = {
      page: await anotherWindow(page),
      tongue: second === 'German' ? GERMAN : ENGLISH,
    }
    const both = [here, there] as const
    const errors = both.map((on) => pageErrors(on.page))
    await openAt(page, origin, '#/measure')
    await openAt(there.page, origin, '#/measure')
    // What she chose counts from the next opening on, so the first window stays as it is.
    if (second === 'German') {
      await there.page.getByText('More', { exact: true }).click()
      await there.page.getByRole('link', { name: 'Deutsch' }).click()
      await field(there, 0, 1).waitFor()
    }
    for (const slot of [1, 2] as const)
      for (const [mine, yours] of AT_ONCE)
        await tally.try(async () => {
          await Promise.all([type(here, mine, slot), type(there, yours, slot)])
          await page.waitForTimeout(400)
          return undefined
        })
    await tally.try(async () => {
      await page.waitForTimeout(800)
      return { lost: (await missing(here)) + (await missing(there)) }
    })
    await tally.try(() => sameName(both))
    await tally.try(async () => {
      await openAt(there.page, origin, '#/measure')
      const lost = await missing(there)
      must(errors.flat().length === 0, errors.flat().join(' '))
      return { lost }
    })
  }

/** Both rename the one garment: one name stands in both windows, and the other is told so in its language. */
async function sameName(both: readonly [Window, Window]): Promise<{ sentence: string }> {
  for (const { page } of both) await page.evaluate(() => (location.hash = '/'))
  const [first] = both
  await first.page.getByRole('button', { name: first.tongue.hang, exact: true }).first().click()
  await first.page.getByRole('heading', { level: 1, name: /blouse/i }).waitFor()
  await first.page.evaluate(() => (location.hash = '/'))
  for (const [i, { page, tongue }] of both.entries()) {
    await page.getByRole('button', { name: tongue.rename }).first().click()
    await page.getByLabel('Name', { exact: true }).fill(`Named in window ${i + 1}`)
  }
  await Promise.all(
    both.map(({ page, tongue }) => page.getByRole('button', { name: tongue.keepName }).click()),
  )
  await first.page.waitForTimeout(800)
  const said = await Promise.all(
    both.map(async ({ page }) => ({
      name: await page.getByRole('article').getByRole('heading', { level: 2 }).first().innerText(),
      alert: await page
        .getByRole('alert')
        .first()
        .innerText({ timeout: 500 })
        .catch(() => ''),
    })),
  )
  must(said[0]?.name === said[1]?.name, `the windows show ${said.map((s) => s.name).join(' and ')}`)
  const sentence = said.map(({ alert }) => alert).find((alert) => alert !== '')
  must(sentence, 'one name was written over without a word')
  return { sentence }
}
