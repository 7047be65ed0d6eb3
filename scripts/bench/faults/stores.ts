/** Trouble with what the browser keeps: no room, no store, two tabs at once, a clock set back. */
import { writeFileSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { device, newProfile, removeProfile, type Device } from './browser.ts'
import { must, Tally, type Outcome } from './fault.ts'
import { openAt, readingField, typeReading } from './steps.ts'

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
  } catch (error) {
    // It broke off between two tries: what was still to come did not survive.
    tally.tries += 1
    tally.faults.push(String(error))
  } finally {
    await open.kill()
    removeProfile(profile)
  }
  for (const fault of new Set(tally.faults)) console.log(`  ${fault}`)
  return tally.outcome
}

const shown = async (page: Page, label: string, slot: 1 | 2 = 1): Promise<string> =>
  (await readingField(page, label, slot).inputValue()).replace(' cm', '')

/** The key that takes it back stands there from the moment an edit is kept. */
const keptOnce = (page: Page): Promise<void> =>
  page.locator('[aria-label^="Take back:"]').first().waitFor({ state: 'attached' })

const TRIES = 5

/** Room is taken away between two readings, and given back. */
export const quotaFull: Work = async ({ page }, origin, tally) => {
  const cdp = await page.context().newCDPSession(page)
  await openAt(page, origin, '#/measure')
  await typeReading(page, 'Bust girth', '94.0')
  await keptOnce(page)
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

/** The clock goes back three years between two visits; what is kept later still counts as later. */
export const clockBack: Work = async ({ page }, origin, tally) => {
  const setBack = '2023-11-25T08:00:00Z'
  await openAt(page, origin, '#/measure')
  await typeReading(page, 'Bust girth', '94.0')
  await keptOnce(page)
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
