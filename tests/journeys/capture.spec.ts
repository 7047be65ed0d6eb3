/**
 * Photos taken alone, in a real browser with the real model, before a fake camera that shows the
 * invented figure. She turns when the screen asks for it; nothing here waits by the clock.
 */
import type { Locator, Page } from '@playwright/test'
import { breaches } from './breaches.ts'
import { expect, test } from './journey.ts'
import { CHROMIUM_FLAGS, findChromium } from '../../scripts/chromium.mjs'
import { fakeCamera, fakeCameraFile, fakeCameraFlags, type FakeCamera } from './fake-camera.ts'
import { headsCovered, hint, LONG, tracks, watchTracks } from './sitting.ts'
import { goTo } from './walk.ts'

const FILE = fakeCameraFile()
test.use({
  launchOptions: {
    executablePath: findChromium() ?? 'chromium',
    args: [...CHROMIUM_FLAGS, ...fakeCameraFlags(FILE, true)],
  },
})

let camera: FakeCamera
test.beforeAll(async () => {
  camera = await fakeCamera(FILE)
})
test.afterAll(() => camera.remove())
test.beforeEach(() => camera.show('empty room'))

async function begin(page: Page): Promise<Locator> {
  await watchTracks(page)
  await page.goto('/')
  await goTo(page, 'Measure')
  await page.getByRole('button', { name: 'Take the photos here' }).click()
  return page.getByRole('dialog')
}
test('front, side and back in one go: hints, count-down, read, accepted, head covered', async ({
  page,
}) => {
  const dialog = await begin(page)

  await test.step('hints say what to mend', async () => {
    await hint(dialog, 'Step into the picture')
    await expect(dialog.getByRole('status').first()).toHaveText(/Step into the picture/)
    camera.show('side')
    await hint(dialog, 'Face the camera')
    expect(await breaches(page)).toEqual([])
  })

  await test.step('standing still begins the count, and each view follows', async () => {
    camera.show('front')
    await expect(dialog.locator('.digit')).toBeVisible(LONG)
    await hint(dialog, 'Front is taken. Now your side')
    camera.show('side')
    await hint(dialog, 'Side is taken. Now your back')
    camera.show('back')
    await hint(dialog, 'All are taken')
    // The figure's own sheet, found in each photo as it was taken.
    await expect(dialog.getByText('Sheet and person found.')).toHaveCount(3, LONG)
  })

  await test.step('any photo can be taken again', async () => {
    camera.show('empty room')
    await dialog.getByRole('button', { name: 'Take the side photo again' }).click()
    await hint(dialog, 'Step into the picture')
    camera.show('side')
    await hint(dialog, 'Side is taken')
    await hint(dialog, 'All are taken')
    await expect(dialog.getByText('Sheet and person found.')).toHaveCount(3, LONG)
  })

  await test.step('the camera is let go, the photos lie on the table, read', async () => {
    expect(await tracks(page)).toEqual(['live'])
    await dialog.getByRole('button', { name: 'Use these photos' }).click()
    await expect(page.getByText('3 of 3 read')).toBeVisible()
    expect(await tracks(page)).toEqual(['ended'])
    await page.getByRole('button', { name: 'Accept these points' }).click()
    await page.getByRole('button', { name: 'Keep the photos on this device' }).click()
    await expect(page.getByRole('row', { name: /^Nape to waist/ }).first()).toContainText('±')
  })

  await test.step('what is kept has paper where the head was', async () => {
    await headsCovered(page, 3)
  })
})

test('the key counts down without hints; leaving keeps what is taken and lets the camera go', async ({
  page,
}) => {
  // The model does not arrive: an upload and the key must still do.
  await page.route('**/models/*.bin', (route) => route.abort())
  const dialog = await begin(page)
  await expect(dialog.getByText('The hints did not arrive.', { exact: false })).toBeVisible(LONG)
  camera.show('front')
  await dialog.getByRole('button', { name: 'Count down from 10' }).click()
  await expect(dialog.locator('.digit')).toBeVisible()
  await dialog.getByRole('button', { name: 'Stop the count' }).click()
  await expect(dialog.locator('.digit')).toHaveCount(0)
  await dialog.getByRole('button', { name: 'Count down from 10' }).click()
  await hint(dialog, 'Front is taken')
  await page.keyboard.press('Escape')
  await expect(page.getByText('1 of 3 taken here, on the table.')).toBeVisible()
  await expect(page.getByRole('button', { name: 'Read the photos' })).toBeVisible()
  expect(await tracks(page)).toEqual(['ended'])
})

test('walking to another place lets the camera go', async ({ page }) => {
  await begin(page)
  await expect.poll(() => tracks(page)).toEqual(['live'])
  await page.evaluate(() => (location.hash = '#/'))
  await expect.poll(() => tracks(page)).toEqual(['ended'])
})
