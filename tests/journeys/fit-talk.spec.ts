/**
 * Saying what she sees, through the built app: by her words, by pointing with a finger, by the
 * keyboard alone, and on a phone. Each ends at the question of the right complaint with its
 * drawings; which complaint is right: our table of complaints.
 */
import type { Page } from '@playwright/test'
import { expect, test } from './journey.ts'
import { hungAndSewn } from './walk.ts'

const PHONE = { width: 390, height: 844 }

/** The sway back's first question, with the two ways it may come out. */
async function asked(page: Page): Promise<void> {
  await expect(
    page.getByText(/^Pin a tuck at the centre back to nothing at the side/),
  ).toBeVisible()
  const yes = page.getByRole('radio', { name: /^Yes\. The folds go, the hem hangs level/ })
  await expect(yes).toBeAttached()
  await expect(page.locator('label', { has: yes }).locator('svg')).toBeVisible()
}

test('by words, wrongly spelt and in a roundabout way', async ({ page }) => {
  await hungAndSewn(page)
  await page
    .getByLabel('Or in your own words')
    .fill('there are horizontel wrinkels in the smal of my back, above my bottom')
  await page.getByRole('button', { name: 'Find the complaint in these words' }).click()
  await page
    .getByRole('button', { name: /^Sway back/ })
    .first()
    .click()
  await asked(page)
  await page.getByText(/^Yes\. The folds go/).click()
  await expect(
    page.getByRole('heading', { name: 'How much did you pin or measure?' }),
  ).toBeVisible()
})

test('by pointing: place, cloth and folds, from the back', async ({ page }) => {
  await hungAndSewn(page)
  await page.getByText('Back', { exact: true }).first().click()
  await page.getByTitle('back waist', { exact: true }).click()
  await page
    .getByRole('group', { name: /^Which way do the folds lie/ })
    .getByText('level')
    .click()
  await page
    .getByRole('group', { name: /^What does the cloth do there/ })
    .getByText('loose')
    .click()
  await page
    .getByRole('button', { name: /^Sway back/ })
    .first()
    .click()
  await asked(page)
})

test('by the keyboard alone', async ({ page }) => {
  await hungAndSewn(page)
  const where = page.getByRole('combobox', { name: 'Where' })
  await where.focus()
  await page.keyboard.type('back waist')
  await expect(where.locator('option:checked')).toHaveText('back waist')
  // On to the figure, whose spots are one list of choices; the place named is the one marked.
  const spot = page.getByRole('radio', { name: 'back waist', exact: true })
  await expect(spot).toBeChecked()
  for (const word of ['level', 'loose']) await choose(page, word)
  const sway = page.getByRole('button', { name: /^Sway back/ }).first()
  for (let i = 0; i < 60 && !(await sway.evaluate((e) => e === document.activeElement)); i += 1)
    await page.keyboard.press('Tab')
  await page.keyboard.press('Enter')
  await asked(page)
})
/** Tab into the group of a choice, then by arrows to the choice itself. */
async function choose(page: Page, word: string): Promise<void> {
  const choice = page.getByRole('radio', { name: word, exact: true })
  const inGroup = () =>
    choice.evaluate(
      (e) => (e as HTMLInputElement).name === (document.activeElement as HTMLInputElement).name,
    )
  for (let i = 0; i < 60 && !(await inGroup()); i += 1) await page.keyboard.press('Tab')
  await page.keyboard.press('Space')
  for (let i = 0; i < 20 && !(await choice.isChecked()); i += 1)
    await page.keyboard.press('ArrowRight')
  await expect(choice).toBeChecked()
}

test('on a phone: pointed with the thumb, the lines kept, nothing wider than the page', async ({
  page,
}) => {
  await page.setViewportSize(PHONE)
  await hungAndSewn(page)
  await page.getByRole('combobox', { name: 'Side seam' }).selectOption({ label: 'it bows' })
  await expect(page.getByText('Begin with what the lines say.')).toBeVisible()
  const spot = page.getByTitle('bust', { exact: true }).first()
  await spot.scrollIntoViewIfNeeded()
  const box = await spot.boundingBox()
  expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44)
  await spot.click()
  await page
    .getByRole('group', { name: /^What does the cloth do there/ })
    .getByText('tight')
    .click()
  await page
    .getByRole('button', { name: /^Pulls across the bust/ })
    .first()
    .click()
  // The blouse has 88 mm of ease there, so the tape comes before any test.
  await page.getByRole('button', { name: 'See what it comes to' }).click()
  await expect(page.getByText('One thing is still open.')).toBeInViewport()
  await expect(page.getByRole('link', { name: 'Open the tape book' })).toBeVisible()
  const wide = await page.evaluate(() => document.documentElement.scrollWidth)
  expect(wide).toBeLessThanOrEqual(PHONE.width)
})

test('two things in one sentence, one after the other; what she cannot tell leads on', async ({
  page,
}) => {
  await page.setViewportSize(PHONE)
  await hungAndSewn(page)
  await page
    .getByLabel('Or in your own words')
    .fill('the armhole gapes in front and there are folds in the small of my back above my bottom')
  await page.getByRole('button', { name: 'Find the complaint in these words' }).click()
  // Each understood word stands there to be changed.
  await expect(page.getByRole('combobox', { name: /^Place/ }).first()).toBeVisible()
  await page
    .getByRole('button', { name: /^Gaping armhole/ })
    .first()
    .click()
  await page.getByText('Where this comes from').first().click()
  await expect(page.getByText(/^Evidence: /).first()).toBeVisible()
  const cannot = page.getByRole('button', { name: 'I cannot tell' })
  // The four tests of our table for a gaping armhole.
  for (let tests = 4; tests > 0; tests -= 1) await cannot.click()
  await expect(page.getByText('One thing is still open.')).toBeVisible()
  await page.getByRole('button', { name: 'I see something else too' }).click()
  await page
    .getByRole('button', { name: /^Sway back/ })
    .first()
    .click()
  await asked(page)
})
