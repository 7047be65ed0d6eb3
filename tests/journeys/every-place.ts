/** Walks every place and looks at how it stands. */
import { expect, type Page } from '@playwright/test'
import { breaches } from './breaches.ts'
import { goTo } from './walk.ts'

/**
 * Every place in either light at three widths, held against axe-core; none is wider than its window.
 * `open` brings a place on the screen.
 */
export async function everyPlace(
  page: Page,
  places: readonly string[],
  open = goTo,
): Promise<void> {
  for (const light of ['day', 'lamp'])
    for (const width of [1440, 820, 390]) {
      await page.setViewportSize({ width, height: 860 })
      await page.evaluate((to) => (document.documentElement.dataset['light'] = to), light)
      for (const place of places) {
        await open(page, place)
        await page.getByRole('heading', { level: 1 }).waitFor()
        expect(await breaches(page), `${place}, ${width} px, ${light}`).toEqual([])
        const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
        expect(over, `${place}, ${width} px`).toBeLessThanOrEqual(0)
      }
    }
}
