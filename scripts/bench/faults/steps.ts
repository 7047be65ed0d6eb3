/** What is done on the page in every case, by the words on the screen. */
import type { Page } from 'playwright-core'

export async function openAt(page: Page, origin: string, hash = '#/'): Promise<void> {
  await page.goto('about:blank')
  await page.goto(`${origin}/${hash}`)
  await page.getByRole('heading', { level: 1 }).waitFor()
}

export const readingField = (page: Page, label: string, slot: 1 | 2 = 1) =>
  page.getByLabel(`${label}, tape ${slot}`, { exact: true }).first()

/** Types a reading and leaves it to the page when it is kept. */
export async function typeReading(
  page: Page,
  label: string,
  text: string,
  slot: 1 | 2 = 1,
): Promise<void> {
  const field = readingField(page, label, slot)
  await field.fill(text)
  await field.press('Enter')
}

/** Errors of the page that nobody caught. */
export function pageErrors(page: Page): string[] {
  const errors: string[] = []
  page.on('pageerror', (error) => errors.push(error.message))
  return errors
}
