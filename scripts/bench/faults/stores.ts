/** Trouble with what the browser keeps: no room, no store, two tabs at once, a clock set back. */
import { writeFileSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { device, newProfile, removeProfile, type Device } from './browser.ts'
import { must, Tally, type Outcome } from './fault.ts'
import { openAt, pageErrors, readingField, typeReading } from './steps.ts'

type Work = (device: Device, origin: string, tally: Tally) => Promise<void>

/** One browser on a fresh profile for one case. */
export async function onFresh(
  origin: string,
  work: Work,
  flags: readonly string[] = [],
  prepare: (profile: string) => void = () => undefined,
): Promise<Outcome> {
  const profile = newProfile()
  prepare(profile)
  const tally = new Tally()
  const open = await device(profile, flags)
  try {
    await work(open, origin, tally)
  } finally {
    await open.kill()
    removeProfile(profile)
  }
  for (const fault of new Set(tally.faults)) console.log(`  ${fault}`)
  return tally.outcome
}

const shown = async (page: Page, label: string, slot: 1 | 2 = 1): Promise<string> =>
  (await readingField(page, label, slot).inputValue()).replace(' cm', '')

const TRIES = 5

/** Room is taken away between two readings, and given back. */
export const quotaFull: Work = async ({ page }, origin, tally) => {
  const cdp = await page.context().newCDPSession(page)
  await openAt(page, origin, '#/measure')
  await typeReading(page, 'Bust girth', '94.0')
  await page.getByText('Kept on this device').first().waitFor()
  for (let i = 0; i < TRIES; i += 1)
    await tally.try(async () => {
      const value = `78.${i}`
      await cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 })
      await openAt(page, origin, '#/measure')
      const alert = page.getByRole('alert').filter({ hasText: 'Not kept' })
      // Chromium goes by the room it knew before for a while: typed until it refuses.
      for (let k = 0; k < 30 && (await alert.count()) === 0; k += 1) {
        await typeReading(page, 'Waist girth', `77.${k % 10}`)
        await page.waitForTimeout(2000)
      }
      await alert.waitFor({ timeout: 1000 })
      await typeReading(page, 'Waist girth', value)
      await page.waitForTimeout(1000)
      const sentence = await alert.innerText()
      const typed = await shown(page, 'Waist girth')
      must(typed === value, `what was typed is gone from the field: "${typed}"`)
      await cdp.send('Storage.overrideQuotaForOrigin', { origin })
      for (let k = 0; k < 30 && (await alert.count()) > 0; k += 1) {
        await readingField(page, 'Waist girth').press('Enter')
        await page.waitForTimeout(2000)
      }
      await alert.waitFor({ state: 'detached', timeout: 1000 })
      await openAt(page, origin, '#/measure')
      const [bust, waist] = [await shown(page, 'Bust girth'), await shown(page, 'Waist girth')]
      return { lost: Number(bust !== '94.0') + Number(waist !== value), sentence }
    })
}

const refusedWith =
  (spoil: () => void): Work =>
  async ({ page }, origin, tally) => {
    await page.addInitScript(spoil)
    for (let i = 0; i < TRIES; i += 1)
      await tally.try(async () => {
        await openAt(page, origin)
        const alert = page.getByRole('alert')
        await alert.waitFor()
        return { sentence: await alert.innerText() }
      })
  }
export const indexedDbThrows = refusedWith(() => {
  IDBFactory.prototype.open = () => {
    throw new DOMException('refused', 'SecurityError')
  }
})
export const indexedDbAbsent = refusedWith(() => {
  Object.defineProperty(globalThis, 'indexedDB', { value: undefined })
})
/** Refused by the browser's own setting: this page may keep no data. */
export const dataForbidden = refusedWith(() => undefined)
export function forbidData(profile: string): void {
  mkdirSync(join(profile, 'Default'), { recursive: true })
  const preferences = { profile: { default_content_setting_values: { cookies: 2 } } }
  writeFileSync(join(profile, 'Default', 'Preferences'), JSON.stringify(preferences))
}

/** Invented: two readings of each, cm. */
const TWICE = [
  ['Bust girth', '94.0', '94.1'],
  ['Waist girth', '78.0', '78.1'],
  ['Hip girth', '100.0', '100.1'],
  ['Nape to waist', '40.0', '40.1'],
] as const

/** Both tabs type at the same time: other numbers, then the two readings of the same number. */
export const twoTabs: Work = async ({ page }, origin, tally) => {
  const other = await anotherWindow(page)
  const errors = [pageErrors(page), pageErrors(other)]
  await openAt(page, origin, '#/measure')
  await openAt(other, origin, '#/measure')
  for (const slot of [1, 2] as const)
    for (const [here, there] of [
      [0, 2],
      [1, 3],
      [2, 0],
      [3, 1],
    ] as const)
      await tally.try(async () => {
        const type = (on: Page, i: number) =>
          typeReading(on, TWICE[i]?.[0] ?? '', TWICE[i]?.[slot] ?? '', slot)
        await Promise.all([type(page, here), type(other, there)])
        await page.waitForTimeout(400)
        return undefined
      })
  await tally.try(async () => {
    await openAt(page, origin)
    await page.getByRole('button', { name: 'Hang a blouse' }).click()
    await page.getByRole('heading', { level: 1, name: /blouse/i }).waitFor()
    await openAt(page, origin)
    await other.goto(`${origin}/#/`)
    await other
      .getByRole('article', { name: /blouse/i })
      .first()
      .waitFor()
    const rename = async (on: Page, name: string) => {
      await on.getByRole('button', { name: 'Rename' }).first().click()
      await on.getByLabel('Name', { exact: true }).fill(name)
    }
    await rename(page, 'Named here')
    await rename(other, 'Named there')
    await Promise.all(
      [page, other].map((on) => on.getByRole('button', { name: 'Keep the name' }).click()),
    )
    await page.waitForTimeout(800)
    const said = await Promise.all(
      [page, other].map(async (on) => ({
        name: await on.getByRole('heading', { level: 2 }).first().innerText(),
        alert: await on
          .getByRole('alert')
          .first()
          .innerText({ timeout: 500 })
          .catch(() => ''),
      })),
    )
    must(said[0]?.name === said[1]?.name, `the tabs show ${said.map((s) => s.name).join(' and ')}`)
    const sentence = said.map((s) => s.alert).find((a) => a !== '')
    must(sentence, 'one name was written over without a word')
    return { sentence }
  })
  await tally.try(async () => {
    await openAt(page, origin, '#/measure')
    const there = await Promise.all(
      TWICE.map(async ([label, ...readings]) => {
        const both = [await shown(page, label), await shown(page, label, 2)]
        return readings.filter((reading) => !both.includes(reading)).length
      }),
    )
    must(errors.flat().length === 0, errors.flat().join(' '))
    return { lost: there.reduce((sum, n) => sum + n, 0) }
  })
}

/** A window and not a tab behind the first one: a browser lets hidden tabs rest. */
async function anotherWindow(page: Page): Promise<Page> {
  const context = page.context()
  const opened = context.waitForEvent('page')
  const cdp = await context.newCDPSession(page)
  await cdp.send('Target.createTarget', { url: 'about:blank', newWindow: true })
  return opened
}

/** The clock goes back three years between two visits; what is kept later still counts as later. */
export const clockBack: Work = async ({ page }, origin, tally) => {
  const setBack = '2023-11-25T08:00:00Z'
  await openAt(page, origin, '#/measure')
  await typeReading(page, 'Bust girth', '94.0')
  await page.getByText('Kept on this device').first().waitFor()
  await page.clock.setFixedTime(new Date(setBack))
  for (let i = 0; i < TRIES; i += 1)
    await tally.try(async () => {
      const value = `9${i}.5`
      await openAt(page, origin, '#/measure')
      await typeReading(page, 'Bust girth', value, 2)
      await page.waitForTimeout(300)
      await openAt(page, origin, '#/measure')
      const second = await shown(page, 'Bust girth', 2)
      const first = await shown(page, 'Bust girth')
      const lost = Number(first !== '94.0') + Number(second !== value)
      return {
        lost,
        sentence: 'Goes on in order; dates are what the device says, order is what she did.',
      }
    })
}
