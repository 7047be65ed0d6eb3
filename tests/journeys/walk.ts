/** The steps of a journey as she takes them: by the words on the screen, through the built app. */
import type { Page } from '@playwright/test'
import { CATALOGUE, type MeasurementId } from '../../src/measurements/catalogue.ts'

/** Opens a place by its line on the tape. */
export async function goTo(page: Page, place: string): Promise<void> {
  await page
    .getByRole('navigation')
    .getByRole('link', { name: new RegExp(`^${place}`) })
    .click()
}

/** Types both readings of a number as she would, and waits until both are kept. */
export async function tape(page: Page, id: MeasurementId, text: string): Promise<void> {
  const { label } = CATALOGUE[id]
  for (const reading of [1, 2]) {
    const field = page.getByLabel(`${label}, tape ${reading}`, { exact: true }).first()
    await field.fill(text)
    await field.press('Enter')
  }
  await page
    .getByRole('row', { name: new RegExp(`^${label}`) })
    .getByText('agreed')
    .waitFor()
}

export async function tapeAll(
  page: Page,
  numbers: Partial<Record<MeasurementId, string>>,
): Promise<void> {
  for (const group of ['Needed', 'Makes it truer', 'All others']) {
    await page.getByText(group, { exact: true }).click()
    for (const [id, text] of Object.entries(numbers) as [MeasurementId, string][]) {
      const field = page.getByLabel(`${CATALOGUE[id].label}, tape 1`, { exact: true })
      if ((await field.count()) > 0) await tape(page, id, text)
    }
  }
}

/** Invented numbers: the middle body of tests/bodies.ts, as she would type them. */
export const INVENTED: Partial<Record<MeasurementId, string>> = {
  bustGirth: '94',
  waistGirth: '78 cm',
  hipGirth: '100,0 cm',
  waistToHip: '200 mm',
  napeToWaist: '40.0',
  waistToBustLevel: '16.5',
  apexSpacing: '18.4',
  napeToArmpitLevel: '18.6',
  upperArmGirth: '29',
  headGirth: '56',
  sideNeckOverBladeToWaist: '42.4',
  sideNeckOverApexToWaist: '42.6',
}

/** Photos of the invented figure are chosen under Measure, and read by the real model. */
export async function readPhotos(page: Page): Promise<void> {
  for (const view of ['Front', 'Side', 'Back']) {
    const photo = new URL(`../photos/figure-${view.toLowerCase()}.jpg`, import.meta.url).pathname
    await page.getByLabel(`${view} photo`).setInputFiles(photo)
  }
  await page.getByRole('button', { name: 'Read the photos' }).click()
  await page.getByText('Photos read.').waitFor({ timeout: 180_000 })
}

/**
 * A blouse from invented numbers, its first muslin sewn.
 *
 * @param address of the page; else the one the journeys are run at
 */
export async function hungAndSewn(page: Page, address = '/'): Promise<void> {
  await page.goto(address)
  await goTo(page, 'Measure')
  await tapeAll(page, INVENTED)
  await goTo(page, 'Rail')
  await page.getByRole('button', { name: 'Hang a blouse' }).click()
  await goTo(page, 'Fit')
  await page.getByRole('button', { name: 'I have sewn this muslin' }).first().click()
  await page.getByRole('heading', { name: 'Say it' }).waitFor()
}
