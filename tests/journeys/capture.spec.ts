/**
 * Photos taken alone, in a real browser with the real model, before a fake camera that shows the
 * invented figure. She turns when the screen asks for it; nothing here waits by the clock.
 */
import AxeBuilder from '@axe-core/playwright'
import type { Locator, Page } from '@playwright/test'
import { expect, test } from './journey.ts'
import { CHROMIUM_FLAGS, findChromium } from '../../scripts/chromium.mjs'
import {
  fakeCamera,
  fakeCameraFile,
  fakeCameraFlags,
  type FakeCamera,
  type Shown,
} from './fake-camera.ts'
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

/** Loaded machines take long for one frame; the model comes first of all. */
const LONG = { timeout: 180_000 }
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

declare global {
  interface Window {
    openedTracks: MediaStreamTrack[]
  }
}

async function begin(page: Page): Promise<Locator> {
  await page.addInitScript(() => {
    window.openedTracks = []
    const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices)
    navigator.mediaDevices.getUserMedia = async (wanted) => {
      const stream = await ask(wanted)
      window.openedTracks.push(...stream.getTracks())
      return stream
    }
  })
  await page.goto('/')
  await goTo(page, 'Measure')
  await page.getByRole('button', { name: 'Take the photos here' }).click()
  return page.getByRole('dialog')
}
const hint = (dialog: Locator, words: string): Promise<void> =>
  expect(dialog.locator('.hint')).toHaveText(new RegExp(words), LONG)
const tracks = (page: Page): Promise<string[]> =>
  page.evaluate(() => window.openedTracks.map((track) => track.readyState))

async function stand(dialog: Locator, shown: Shown, taken: string): Promise<void> {
  camera.show(shown)
  await hint(dialog, taken)
}

/** Red, green, blue in the middle of where the figure's head is (share of the picture), kept pixels. */
async function headPixels(page: Page): Promise<number[][]> {
  return page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((done, failed) => {
      const asked = indexedDB.open('tapetrue')
      asked.onsuccess = () => done(asked.result)
      asked.onerror = () => failed(asked.error)
    })
    const rows = await new Promise<{ bytes: ArrayBuffer }[]>((done) => {
      const asked = db.transaction('pixels').objectStore('pixels').getAll()
      asked.onsuccess = () => done(asked.result)
    })
    db.close()
    const colours: number[][] = []
    for (const { bytes } of rows) {
      const picture = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }))
      const context = new OffscreenCanvas(picture.width, picture.height).getContext('2d')
      if (!context) throw new Error('no 2d context')
      context.drawImage(picture, 0, 0)
      const at = [Math.round(picture.width * 0.5), Math.round(picture.height * 0.275)] as const
      colours.push([...context.getImageData(...at, 1, 1).data].slice(0, 3))
    }
    return colours
  })
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
    const { violations } = await new AxeBuilder({ page }).withTags(RULES).analyze()
    expect(violations.map((v) => `${v.id}: ${v.nodes[0]?.target.join(' ')}`)).toEqual([])
  })

  await test.step('standing still begins the count, and each view follows', async () => {
    camera.show('front')
    await expect(dialog.locator('.digit')).toBeVisible(LONG)
    await hint(dialog, 'Front is taken. Now your side')
    await stand(dialog, 'side', 'Side is taken. Now your back')
    await stand(dialog, 'back', 'All are taken')
    // The figure's own sheet, found in each photo as it was taken.
    await expect(dialog.getByText('Sheet and person found.')).toHaveCount(3, LONG)
  })

  await test.step('any photo can be taken again', async () => {
    camera.show('empty room')
    await dialog.getByRole('button', { name: 'Take the side photo again' }).click()
    await hint(dialog, 'Step into the picture')
    await stand(dialog, 'side', 'Side is taken')
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
    const colours = await headPixels(page)
    expect(colours).toHaveLength(3)
    // JPEG changes a plain colour by a few of 255.
    for (const colour of colours)
      for (const [k, value] of [0xf1, 0xee, 0xe2].entries())
        expect(Math.abs((colour[k] ?? 0) - value)).toBeLessThan(12)
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
