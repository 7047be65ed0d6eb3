/**
 * The pictures of public/guide: the invented example walked from photo to sewn, on a laptop and on
 * a phone. The sizes are written into the pages, so that nothing jumps while they load.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import type { Browser, Locator, Page } from 'playwright-core'
import { goTo } from '../../tests/journeys/walk.ts'
import { cameraInto, DENSITY, type Camera } from './camera.ts'

const GUIDE = new URL('../../public/guide/', import.meta.url).pathname
const FIGURES = new URL('../../tests/photos/', import.meta.url).pathname
const LAPTOP = { width: 1280, height: 860 }
/** Narrow enough that a sheet over the whole width can be read in the guide. */
const BOOK = { width: 860, height: 860 }
const PHONE = { width: 390, height: 780 }
/** The photo reader takes long on a loaded machine. */
const READING_MS = 400_000

const sheet = (page: Page, title: string) =>
  page.locator('section').filter({ has: page.getByRole('heading', { name: title, exact: true }) })
const leaf = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Leaves of Cut' }).getByRole('link', { name }).click()

async function opened(browser: Browser, address: string, viewport: typeof LAPTOP): Promise<Page> {
  const page = await browser.newPage({ viewport, deviceScaleFactor: DENSITY })
  await page.goto(address)
  return page
}
async function example(browser: Browser, address: string, viewport: typeof LAPTOP) {
  const page = await opened(browser, address, viewport)
  await page.getByRole('button', { name: 'Look at the example' }).click()
  await page.getByRole('button', { name: 'Take the example down' }).waitFor()
  return page
}

/** Photos of an invented figure, read by the real model, in a browser that holds nothing else. */
async function photos({ take }: Camera, page: Page) {
  await take('begin', page.getByRole('main'), 500)
  await page.setViewportSize(BOOK)
  await goTo(page, 'Measure')
  await page.getByText('Before you take them', { exact: true }).click()
  await take('before', page.locator('details', { hasText: 'Before you take them' }))
  for (const view of ['Front', 'Side', 'Back'])
    await page
      .getByLabel(`${view} photo`)
      .setInputFiles(`${FIGURES}figure-${view.toLowerCase()}.jpg`)
  await page.getByRole('button', { name: 'Read the photos' }).click()
  await page.getByText('Photos read.').waitFor({ timeout: READING_MS })
  await take('points', page.locator('.laid'))
  await page.getByRole('button', { name: 'Accept these points' }).click()
  await page.getByRole('button', { name: 'Keep the photos on this device' }).click()
  await take('camera-says', sheet(page, 'Camera and tape'))
  await goTo(page, 'Rail')
  await take('safe-keeping', sheet(page, 'Safe keeping'))
}

async function measureAndDraft({ take }: Camera, page: Page) {
  await page.setViewportSize(BOOK)
  await take('rail', page.getByRole('main'), 590)
  await page.setViewportSize(LAPTOP)
  await goTo(page, 'Measure')
  await take('tape', sheet(page, 'Camera and tape'))
  await take('how-to-tape', sheet(page, 'Nape to waist').filter({ visible: true }).first())
  await goTo(page, 'Draft')
  const next = page.getByRole('button', { name: /^Next step/ }).first()
  for (let step = 1; step < 12; step += 1) await next.click()
  await take('drawing', sheet(page, 'The drawing'))
  await take('steps', sheet(page, 'The steps'))
  await take('proof', sheet(page, 'Proof'))
}

async function fit({ take }: Camera, page: Page) {
  await goTo(page, 'Fit')
  await page
    .getByRole('button', { name: /^Take back .* of round/ })
    .first()
    .click()
  await page.setViewportSize(BOOK)
  await take('first-things', page.locator('details', { hasText: 'First things first' }).first())
  await page.setViewportSize(LAPTOP)
  const words = page.getByRole('textbox', { name: 'Or in your own words' })
  await words.fill('my neckline gapes at the front')
  await words.press('Enter')
  const heard = page.getByRole('button', { name: /^Front neck edge gapes/ }).first()
  await heard.waitFor()
  await take('say', sheet(page, 'Say it'), 690)
  await take('heard', page.getByRole('list').filter({ has: heard }))
  await heard.click()
  await take('question', sheet(page, 'One question'), 700)
  await page
    .getByText(/^Yes\./)
    .first()
    .click()
  const fold = page.getByRole('textbox', { name: 'Whole fold' })
  await fold.fill('0.7 cm')
  await fold.press('Enter')
  await fold.blur()
  await take('pin', page.locator('.pin.stack').filter({ visible: true }))
  await page.getByRole('button', { name: 'Make this change' }).filter({ visible: true }).waitFor()
  await take('change', sheet(page, 'What would change'))
  await page.getByRole('button', { name: 'Make this change' }).first().click()
  await page.getByText(/^On the paper of muslin/).click()
  await page.setViewportSize(BOOK)
  await take('on-paper', page.locator('details', { hasText: 'On the paper of muslin' }).last())
}

async function compareAndCut({ take }: Camera, page: Page) {
  await page.setViewportSize(LAPTOP)
  await goTo(page, 'Compare')
  await take('laid-over', sheet(page, 'Pieces laid over'))
  await take('what-changed', sheet(page, 'What changed'))
  await take('settling', sheet(page, 'Is it settling?'))
  await goTo(page, 'Cut')
  await page
    .getByRole('button', { name: /^Save the PDF, \d+ sheets/ })
    .first()
    .waitFor()
  await take('paper', sheet(page, 'Paper for the muslin'))
  await page.getByText('cloth', { exact: true }).click()
  await page.getByRole('button', { name: /^Side seam/ }).click()
  await take('finishes', sheet(page, 'Edges of the garment'))
  await leaf(page, 'Cloth')
  await page.getByText('This is the shortest layout found.').waitFor({ timeout: READING_MS })
  await take('layout', sheet(page, 'Layout'), 1400)
  await leaf(page, 'Sewing plan')
  await take('plan', sheet(page, 'The order'))
}

async function onThePhone({ take }: Camera, page: Page) {
  /** Past the banner of the example, to where the work begins. */
  const show = (name: string, from: Locator) =>
    from.evaluate((e) => e.scrollIntoView()).then(() => take(name, page))
  await show('phone-rail', page.getByRole('heading', { level: 1 }))
  for (const place of ['Measure', 'Draft', 'Fit', 'Compare', 'Cut']) {
    await goTo(page, place)
    await page.getByRole('heading', { level: 1 }).waitFor()
    if (place === 'Draft')
      for (let step = 1; step < 6; step += 1)
        await page
          .getByRole('button', { name: /^Next step/ })
          .filter({ visible: true })
          .first()
          .click()
    await show(
      `phone-${place.toLowerCase()}`,
      place === 'Draft' ? sheet(page, 'The drawing') : page.getByRole('heading', { level: 1 }),
    )
  }
}

/** Writes the sizes of the pictures, px of the screen, into the pages that show them. */
function writeSizes({ taken }: Camera) {
  for (const name of readdirSync(GUIDE).filter((file) => file.endsWith('.html'))) {
    const sized = readFileSync(`${GUIDE}${name}`, 'utf8').replace(
      /(src="pictures\/([\w-]+)\.webp"\s+)width="\d+"(\s+)height="\d+"/g,
      (whole, src: string, picture: string, space: string) => {
        const [width, height] = taken.get(picture) ?? []
        return width ? `${src}width="${width}"${space}height="${height}"` : whole
      },
    )
    writeFileSync(`${GUIDE}${name}`, sized)
  }
}

/** @returns the names of the pictures taken */
export async function takeGuidePictures(browser: Browser, address: string): Promise<string[]> {
  const folder = `${GUIDE}pictures/`
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  const camera = await cameraInto(folder, browser)
  const page = await example(browser, address, LAPTOP)
  await measureAndDraft(camera, page)
  await fit(camera, page)
  await compareAndCut(camera, page)
  await onThePhone(camera, await example(browser, address, PHONE))
  await photos(camera, await opened(browser, address, LAPTOP))
  writeSizes(camera)
  return [...camera.taken.keys()]
}
