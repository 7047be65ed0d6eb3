/** A camera she does not allow: the reason, the way on, and photos chosen as before. */
import { expect, test } from './journey.ts'
import { CHROMIUM_FLAGS, findChromium } from '../../scripts/chromium.mjs'
import { goTo, hungAndSewn } from './walk.ts'

test.use({
  launchOptions: {
    executablePath: findChromium() ?? 'chromium',
    args: [...CHROMIUM_FLAGS, '--use-fake-device-for-media-stream', '--deny-permission-prompts'],
  },
  permissions: [],
})

test('a denied camera leads to the photos she has, and nothing is lost', async ({ page }) => {
  await page.goto('/')
  await goTo(page, 'Measure')
  const photo = new URL('../photos/figure-front.jpg', import.meta.url).pathname
  await page.getByLabel('Front photo').setInputFiles(photo)
  await expect(page.getByText('figure-front.jpg')).toBeVisible()
  await page.getByRole('button', { name: 'Take the photos here' }).click()
  const dialog = page.getByRole('dialog')
  await expect(
    dialog.getByText('The camera is not allowed for this page.', { exact: false }),
  ).toBeVisible()
  await expect(dialog.getByRole('button', { name: 'Start the camera again' })).toBeVisible()
  await dialog.getByRole('button', { name: 'Leave' }).click()
  await expect(page.getByText('figure-front.jpg')).toBeVisible()
  await expect(page.getByText('lands in its gallery', { exact: false })).toBeVisible()
  await page
    .getByLabel('Side photo')
    .setInputFiles(new URL('../photos/figure-side.jpg', import.meta.url).pathname)
  await expect(page.getByRole('button', { name: 'Read the photos' })).toBeEnabled()
})

test('denied for a muslin: its photos come from files, and lie with its round', async ({
  page,
}) => {
  await hungAndSewn(page)
  await goTo(page, 'Compare')
  await page.getByRole('button', { name: 'Take the photos of muslin 1' }).click()
  const dialog = page.getByRole('dialog')
  await expect(
    dialog.getByText('The camera is not allowed for this page.', { exact: false }),
  ).toBeVisible()
  await dialog.getByRole('button', { name: 'Leave' }).click()
  await page
    .getByLabel('Add a front photo of muslin 1')
    .setInputFiles(new URL('../photos/figure-muslin-front.jpg', import.meta.url).pathname)
  await expect(page.getByRole('img', { name: 'Muslin 1 from the front' })).toBeVisible()
})
