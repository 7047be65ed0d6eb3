/** Walks every place, or stays at one, and looks at how it stands. */
import { expect, type Page } from '@playwright/test'
import { breaches } from './breaches.ts'
import { goTo } from './walk.ts'

/** In either light at three widths, one after another. */
async function inEveryLight(page: Page, look: (at: string) => Promise<void>): Promise<void> {
  for (const light of ['day', 'lamp'])
    for (const width of [1440, 820, 390]) {
      await page.setViewportSize({ width, height: 860 })
      await page.evaluate((to) => (document.documentElement.dataset['light'] = to), light)
      await look(`${width} px, ${light}`)
    }
}

/** Held against axe-core, and not wider than its window. */
async function holds(page: Page, what: string): Promise<void> {
  expect(await breaches(page), what).toEqual([])
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
  expect(over, what).toBeLessThanOrEqual(0)
}

/** Each place as it is come upon. `open` brings a place on the screen. */
export const everyPlace = (page: Page, places: readonly string[], open = goTo): Promise<void> =>
  inEveryLight(page, async (at) => {
    for (const place of places) {
      await open(page, place)
      await page.getByRole('heading', { level: 1 }).waitFor()
      await holds(page, `${place}, ${at}`)
    }
  })

/** The screen as it stands now, with what is open on it. */
export async function asItStands(page: Page, what: string): Promise<void> {
  const before = page.viewportSize()
  await inEveryLight(page, (at) => holds(page, `${what}, ${at}`))
  if (before) await page.setViewportSize(before)
}
