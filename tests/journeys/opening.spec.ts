/**
 * What a page says before its scripts have come, held against what the screens say when they have:
 * the same words at the same place, so that nothing jumps; and none of it where another place, another
 * language or the example opens. The scripts are held back by the browser, not by the app.
 */
import type { Page } from '@playwright/test'
import { expect, test } from './journey.ts'

/** The scripts of the screens; the small one that runs before the first paint is let through. */
const SCREENS = /\/assets\/first-[^/]*\.js$/
/** Rounding of the browser: half a pixel. */
const SAME = 0.5
const STATIC = '.opening .page'

const head = (page: Page, within: string) =>
  page.locator(within).evaluate((frame) =>
    [...frame.querySelectorAll(':scope > header > :is(h1, p)')].map((part) => {
      const range = document.createRange()
      range.selectNodeContents(part)
      const { x, y, height } = range.getBoundingClientRect()
      return { text: part.textContent?.trim(), x, y, height }
    }),
  )
async function faces(page: Page): Promise<void> {
  await page.evaluate(() => document.fonts.ready)
}

const PAGES = [
  ['en-GB', './'],
  ['de-CH', './de.html'],
] as const
for (const [locale, address] of PAGES)
  test.describe(`asked for ${locale}`, () => {
    test.use({ locale })
    for (const width of [390, 820, 1440])
      test(`words before the scripts lie where the screens draw them, ${width} px wide`, async ({
        page,
      }) => {
        await page.setViewportSize({ width, height: 900 })
        await page.route(SCREENS, (route) => route.abort())
        await page.goto(address)
        await expect(page.locator(STATIC)).toBeVisible()
        await faces(page)
        const before = await head(page, STATIC)

        await page.unroute(SCREENS)
        await page.reload()
        await expect(page.locator('.opening')).toHaveCount(0)
        await faces(page)
        const after = await head(page, '.page')
        expect(before.map(({ text }) => text)).toEqual(after.map(({ text }) => text))
        for (const [i, { x, y, height }] of after.entries()) {
          expect(Math.abs((before[i]?.x ?? NaN) - x)).toBeLessThan(SAME)
          expect(Math.abs((before[i]?.y ?? NaN) - y)).toBeLessThan(SAME)
          expect(Math.abs((before[i]?.height ?? NaN) - height)).toBeLessThan(SAME)
        }
      })
  })

test('another place shows the tape and no words of the rail', async ({ page }) => {
  await page.route(SCREENS, (route) => route.abort())
  for (const hash of ['#/measure', '#/g/blouse-1/fit', '#/nowhere']) {
    await page.goto('about:blank')
    await page.goto(`./${hash}`)
    await expect(page.locator('.opening ol')).toBeVisible()
    await expect(page.locator(STATIC)).toBeHidden()
  }
})

test.describe('where German is asked for', () => {
  test.use({ locale: 'de-CH' })
  test('the English page says nothing before it gives way to the German one', async ({ page }) => {
    await page.route(SCREENS, (route) => route.abort())
    await page.goto('./')
    await expect(page).toHaveURL(/de\.html/)
    await expect(page.locator(`${STATIC} h1`)).toHaveText('An der Stange')
  })
})

test('lamp is lit before the scripts have come, where the device is dark', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' })
  await page.route(SCREENS, (route) => route.abort())
  await page.goto('./')
  await expect(page.locator('html')).toHaveAttribute('data-light', 'lamp')
})
