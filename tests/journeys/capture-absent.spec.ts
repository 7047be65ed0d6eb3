/** A device without a camera: said in words, and photos chosen as before. */
import { expect, test } from './journey.ts'
import { goTo } from './walk.ts'

// The browser of these journeys has no fake device; whatever the machine has, it is told to have none.
test('no camera: the reason and the other way', async ({ page }) => {
  await page.addInitScript(() => {
    navigator.mediaDevices.getUserMedia = () =>
      Promise.reject(new DOMException('Requested device not found', 'NotFoundError'))
  })
  await page.goto('/')
  await goTo(page, 'Measure')
  await page.getByRole('button', { name: 'Take the photos here' }).click()
  const dialog = page.getByRole('dialog')
  await expect(dialog.getByText('This device shows no camera.', { exact: false })).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(page.getByLabel('Front photo')).toBeVisible()
})
