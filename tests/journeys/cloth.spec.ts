/**
 * From the finishes to the sewing table in a real browser: a finish chosen, the cloth said, the
 * layout and its amount, the order of sewing ticked, everything in one print run, and the same in a
 * clean browser from a backup.
 */
import { readFileSync } from 'node:fs'
import type { Download, Page } from '@playwright/test'
import { everyPlace } from './every-place.ts'
import { expect, test } from './journey.ts'
import { goTo, INVENTED, tapeAll } from './walk.ts'

async function saved(page: Page, press: () => Promise<void>): Promise<Buffer> {
  const waiting = page.waitForEvent('download', { timeout: 180_000 })
  await press()
  const download: Download = await waiting
  return readFileSync(await download.path())
}
/** ISO 32000-1, 7.7.3.3: every page is a dictionary of this type. */
const pagesOf = (pdf: Buffer): number =>
  [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b/g)].length
async function leaf(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Leaves of Cut' }).getByRole('link', { name }).click()
  await page.getByRole('heading', { level: 1, name }).waitFor()
}
/** A row of the amount: "The layout", "109.4 cm". */
const item = async (page: Page, words: string): Promise<number> => {
  const dd = page.locator('dl dt', { hasText: words }).locator('xpath=following-sibling::dd[1]')
  return Number((await dd.innerText()).replace(/[^\d.]/g, ''))
}

test('finishes → cloth → sewing plan → one print run → backup', async ({ page, browser }) => {
  test.setTimeout(600_000)
  await page.goto('/')
  await goTo(page, 'Measure')
  await tapeAll(page, { ...INVENTED, slipThroughGirth: '101' })
  await goTo(page, 'Rail')
  await page.getByRole('button', { name: 'Hang a blouse' }).click()

  await test.step('a finish for the cloth', async () => {
    await goTo(page, 'Cut')
    await page.getByText('cloth', { exact: true }).click()
    await page.getByRole('button', { name: /^Overarm seam/ }).click()
    await page.getByText('flat-felled seam', { exact: true }).click()
    await expect(page.getByRole('button', { name: /^Overarm seam.*flat-felled/ })).toBeVisible()
  })

  await test.step('the cloth: folded, shrinking, laid out, every piece with its place', async () => {
    await leaf(page, 'Cloth')
    await page.getByText('folded lengthwise', { exact: true }).first().click()
    await page.getByText('Shrinkage', { exact: true }).click()
    await page.getByLabel('Along the cloth', { exact: true }).fill('4')
    await page.keyboard.press('Enter')
    await expect(page.getByText('This is the shortest layout found.')).toBeVisible({
      timeout: 180_000,
    })
    // By hand from what is used: length / 0.96, 5 cm, the larger of 10 cm and 5 %, up to 10 cm.
    const used = await item(page, 'the layout')
    const before = used / 0.96
    const buy = Math.ceil((before + 5 + Math.max(10, 0.05 * before)) / 10 - 1e-6) / 10
    expect(await item(page, 'to buy')).toBeCloseTo(buy, 9)
    await expect(page.getByText(`Buy ${buy.toFixed(1)} m`, { exact: true })).toBeVisible()
    await expect(page.getByText(/^\d Back.*centre on the fold.*from the cut end\.$/)).toBeVisible()
    await expect(page.getByText(/^\d Front.*centre on the fold.*from the cut end\.$/)).toBeVisible()
    const plan = await saved(page, () =>
      page.getByRole('button', { name: 'Save the cutting plan (PDF)' }).click(),
    )
    expect(pagesOf(plan)).toBeGreaterThanOrEqual(2)
  })

  await test.step('the plan follows the finish, and its ticks stay', async () => {
    await leaf(page, 'Sewing plan')
    await expect(page.getByText(/Overarm seams: flat-felled seam/)).toBeVisible()
    await page.getByRole('checkbox', { name: /Stay the edges that stretch/ }).check()
    await expect(page.getByText('1 of ', { exact: false }).first()).toBeVisible()
    await page.reload()
    await expect(page.getByRole('checkbox', { name: /Stay the edges that stretch/ })).toBeChecked()
  })

  await test.step('everything in one print run', async () => {
    await leaf(page, 'Cloth')
    await expect(page.getByText(/^Buy /)).toBeVisible()
    const run = await saved(page, () =>
      page.getByRole('button', { name: 'Save everything (PDF)' }).click(),
    )
    const told = page.getByText(/This list, page 1; Pieces at true scale/)
    await expect(told).toBeVisible()
    const last = /Sewing plan, pages? \d+(?: to (\d+))?/.exec(await told.innerText())
    expect(pagesOf(run)).toBe(Number(last?.[1]))
    await expect(page.getByText('Round 1 is on paper and stays as it is.')).toBeVisible()
  })

  await test.step('neither leaf breaks a rule of WCAG 2.2 AA or is wider than its window', async () => {
    await everyPlace(page, ['Cloth', 'Sewing plan'], leaf)
    await page.setViewportSize({ width: 1440, height: 900 })
  })

  await test.step('a backup in a clean browser holds cloth and ticks', async () => {
    await goTo(page, 'Rail')
    const backup = await saved(page, () =>
      page.getByRole('button', { name: 'Save everything to a file' }).click(),
    )
    const clean = await (await browser.newContext()).newPage()
    await clean.goto('/')
    await clean
      .getByLabel('Read a file back')
      .setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer: backup })
    await expect(clean.getByText(/Read back:/)).toBeVisible()
    await goTo(clean, 'Cut')
    await leaf(clean, 'Sewing plan')
    await expect(clean.getByRole('checkbox', { name: /Stay the edges that stretch/ })).toBeChecked()
    await leaf(clean, 'Cloth')
    await expect(clean.getByRole('radio', { name: 'folded lengthwise', exact: true })).toBeChecked()
    await clean.context().close()
  })
})
