/**
 * The photos of a sewn muslin taken by the same sitting as those for the tape book: the browser's
 * fake camera shows the invented figure, the real model reads her; the photos lie with the round.
 */
import { breaches } from './breaches.ts'
import { expect, test } from './journey.ts'
import { CHROMIUM_FLAGS, findChromium } from '../../scripts/chromium.mjs'
import { fakeCamera, fakeCameraFile, fakeCameraFlags, type FakeCamera } from './fake-camera.ts'
import { headsCovered, hint, LONG, tracks, watchTracks } from './sitting.ts'
import { goTo, hungAndSewn } from './walk.ts'

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

test('front, side and back of a muslin in one go lie with its round, read, head covered', async ({
  page,
}) => {
  await watchTracks(page)
  await hungAndSewn(page)
  await goTo(page, 'Compare')
  await page.getByRole('button', { name: 'Take the photos of muslin 1' }).click()
  const dialog = page.getByRole('dialog')

  await test.step('the same sitting, in the words of a muslin', async () => {
    await hint(dialog, 'Step into the picture')
    await expect(dialog.getByText(/^Closed and pinned as you judge it/)).toBeVisible()
    expect(await breaches(page, 'every rule')).toEqual([])
    for (const view of ['front', 'side', 'back'] as const) {
      camera.show(view)
      await hint(dialog, `${view[0]?.toUpperCase()}${view.slice(1)} is taken`)
    }
    await hint(dialog, 'All are taken')
  })

  await test.step('kept with the round, the camera let go', async () => {
    await dialog.getByRole('button', { name: 'Keep them with round 1' }).click()
    await expect(page.getByText('Kept with round 1: front, side and back.')).toBeVisible(LONG)
    expect(await tracks(page)).toEqual(['ended'])
    await headsCovered(page, 3)
    for (const view of ['back', 'side', 'front']) {
      await page.getByText(view, { exact: true }).first().click()
      await expect(page.getByRole('img', { name: `Muslin 1 from the ${view}` })).toBeVisible()
    }
    // The model has read her while she stood: folds and drawn lines are there without a further key.
    await expect(page.getByLabel('Folds, as hints')).toBeVisible()
  })

  await test.step('closed and opened again, nothing is lost', async () => {
    await page.goto('about:blank')
    await page.goto('/')
    await goTo(page, 'Compare')
    await expect(page.getByRole('img', { name: 'Muslin 1 from the front' })).toBeVisible()
    await expect(page.getByLabel('Folds, as hints')).toBeVisible()
  })
})

test('without hints the key takes one photo; leaving keeps it with the round', async ({ page }) => {
  await page.route('**/models/*.bin', (route) => route.abort())
  await hungAndSewn(page)
  await goTo(page, 'Compare')
  await page.getByRole('button', { name: 'Take the photos of muslin 1' }).click()
  const dialog = page.getByRole('dialog')
  await expect(dialog.getByText('The hints did not arrive.', { exact: false })).toBeVisible(LONG)
  camera.show('front')
  await dialog.getByRole('button', { name: 'Count down from 10' }).click()
  await hint(dialog, 'Front is taken')
  await page.keyboard.press('Escape')
  await expect(page.getByText('Kept with round 1: front.')).toBeVisible()
  await expect(page.getByRole('img', { name: 'Muslin 1 from the front' })).toBeVisible()
})
