/**
 * The pictures of public/guide: the invented example walked from photo to sewn, on a laptop and on
 * a phone. The sizes are written into the pages, so that nothing jumps while they load.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import type { Browser, Locator, Page } from 'playwright-core'
import { goTo } from '../../tests/journeys/walk.ts'
import { PAGES, type Language } from '../../src/ui/language.ts'
import { cameraInto, DENSITY, type Camera } from './camera.ts'
import { saidIn, type Said } from './said.ts'

/** Where the leaves of a language lie. */
const guideOf = (language: Language): string =>
  new URL(`../../public/guide/${language === 'en' ? '' : `${language}/`}`, import.meta.url).pathname
const FIGURES = new URL('../../tests/photos/', import.meta.url).pathname
const LAPTOP = { width: 1280, height: 860 }
/** Narrow enough that a sheet over the whole width can be read in the guide. */
const BOOK = { width: 860, height: 860 }
const PHONE = { width: 390, height: 780 }
/** The photo reader takes long on a loaded machine. */
const READING_MS = 400_000

/** A camera that knows what the page says, and opens it. */
interface Walk extends Camera, Said {
  readonly opened: (viewport: typeof LAPTOP) => Promise<Page>
}
const sheet = ({ whole }: Said, page: Page, title: string) =>
  page
    .locator('section')
    .filter({ has: page.getByRole('heading', { name: whole(title), exact: true }) })
const press = ({ whole }: Said, page: Page, key: string) =>
  page
    .getByRole('button', { name: whole(key) })
    .first()
    .click()
const place = ({ whole }: Said, page: Page, name: string) => goTo(page, whole(name))
const leaf = ({ whole }: Said, page: Page, name: string) =>
  page
    .getByRole('navigation', { name: whole('Leaves of Cut') })
    .getByRole('link', { name: whole(name) })
    .click()

async function example(walk: Walk, viewport: typeof LAPTOP): Promise<Page> {
  const page = await walk.opened(viewport)
  await press(walk, page, 'Look at the example')
  await page.getByRole('button', { name: walk.whole('Take the example down') }).waitFor()
  return page
}

/** Photos of an invented figure, read by the real model, in a browser that holds nothing else. */
async function photos(walk: Walk, page: Page) {
  const { take, whole } = walk
  await take('begin', page.getByRole('main'), 500)
  await page.setViewportSize(BOOK)
  await place(walk, page, 'Measure')
  const before = whole('Before you take them')
  await page.getByText(before, { exact: true }).click()
  await take('before', page.locator('details', { hasText: before }))
  const files = page.locator('input[type="file"]')
  for (const [k, view] of ['front', 'side', 'back'].entries())
    await files.nth(k).setInputFiles(`${FIGURES}figure-${view}.jpg`)
  await press(walk, page, 'Read the photos')
  await page.getByText(whole('Photos read.')).waitFor({ timeout: READING_MS })
  await take('points', page.locator('.laid'))
  await press(walk, page, 'Accept these points')
  await press(walk, page, 'Keep the photos on this device')
  await take('camera-says', sheet(walk, page, 'Camera and tape'))
  await place(walk, page, 'Rail')
  await take('safe-keeping', sheet(walk, page, 'Safe keeping'))
}

async function measureAndDraft(walk: Walk, page: Page) {
  const { take, begins } = walk
  await page.setViewportSize(BOOK)
  await take('rail', page.getByRole('main'), 590)
  await page.setViewportSize(LAPTOP)
  await place(walk, page, 'Measure')
  await take('tape', sheet(walk, page, 'Camera and tape'))
  await take('how-to-tape', sheet(walk, page, 'Nape to waist').filter({ visible: true }).first())
  await place(walk, page, 'Draft')
  const next = page.getByRole('button', { name: begins('Next step') }).first()
  for (let step = 1; step < 12; step += 1) await next.click()
  await take('drawing', sheet(walk, page, 'The drawing'))
  await take('steps', sheet(walk, page, 'The steps'))
  await take('proof', sheet(walk, page, 'Proof'))
}

async function fit(walk: Walk, page: Page, said: string) {
  const { take, whole, gapped, begins } = walk
  await place(walk, page, 'Fit')
  await page
    .getByRole('button', { name: gapped('Take back … of round …') })
    .first()
    .click()
  await page.setViewportSize(BOOK)
  const first = whole('First things first')
  await take('first-things', page.locator('details', { hasText: first }).first())
  await page.setViewportSize(LAPTOP)
  const words = page.getByRole('textbox', { name: whole('Or in your own words') })
  await words.fill(said)
  await words.press('Enter')
  const heard = page.getByRole('button', { name: begins('Front neck edge gapes') }).first()
  await heard.waitFor()
  await take('say', sheet(walk, page, 'Say it'), 690)
  await take('heard', page.getByRole('list').filter({ has: heard }))
  await heard.click()
  await take('question', sheet(walk, page, 'One question'), 700)
  await page.getByText(begins('Yes.')).first().click()
  const fold = page.getByRole('textbox', { name: whole('whole fold') })
  await fold.fill('0.7 cm')
  await fold.press('Enter')
  await fold.blur()
  await take('pin', page.locator('.pin.stack').filter({ visible: true }))
  const change = page.getByRole('button', { name: whole('Make this change') })
  await change.filter({ visible: true }).waitFor()
  await take('change', sheet(walk, page, 'What would change'))
  await change.first().click()
  const paper = begins('On the paper of')
  await page.getByText(paper).click()
  await page.setViewportSize(BOOK)
  await take(
    'on-paper',
    page
      .locator('details')
      .filter({ has: page.getByText(paper) })
      .last(),
  )
}

async function compareAndCut(walk: Walk, page: Page) {
  const { take, whole, begins } = walk
  await page.setViewportSize(LAPTOP)
  await place(walk, page, 'Compare')
  await take('laid-over', sheet(walk, page, 'Pieces laid over'))
  await take('what-changed', sheet(walk, page, 'What changed'))
  await take('settling', sheet(walk, page, 'Is it settling?'))
  await place(walk, page, 'Cut')
  await page
    .getByRole('button', { name: begins('Save the PDF, ') })
    .first()
    .waitFor()
  await take('paper', sheet(walk, page, 'Paper for the muslin'))
  await page.locator('label').getByText(whole('cloth'), { exact: true }).click()
  await page.getByRole('button', { name: new RegExp(`^${whole('Side seam')}`) }).click()
  await take('finishes', sheet(walk, page, 'Edges of the garment'))
  await leaf(walk, page, 'Cloth')
  await page.getByText(whole('This is the shortest layout found.')).waitFor({ timeout: READING_MS })
  await take('layout', sheet(walk, page, 'Layout'), 1400)
  await leaf(walk, page, 'Sewing plan')
  await take('plan', sheet(walk, page, 'The order'))
}

async function onThePhone(walk: Walk, page: Page) {
  const { take, begins } = walk
  /** Past the banner of the example, to where the work begins. */
  const show = (name: string, from: Locator) =>
    from.evaluate((e) => e.scrollIntoView()).then(() => take(name, page))
  await show('phone-rail', page.getByRole('heading', { level: 1 }))
  for (const name of ['Measure', 'Draft', 'Fit', 'Compare', 'Cut']) {
    await place(walk, page, name)
    await page.getByRole('heading', { level: 1 }).waitFor()
    if (name === 'Draft')
      for (let step = 1; step < 6; step += 1)
        await page
          .getByRole('button', { name: begins('Next step: ') })
          .filter({ visible: true })
          .first()
          .click()
    await show(
      `phone-${name.toLowerCase()}`,
      name === 'Draft' ? sheet(walk, page, 'The drawing') : page.getByRole('heading', { level: 1 }),
    )
  }
}

/** Writes the sizes of the pictures, px of the screen, into the pages that show them. */
function writeSizes(guide: string, { taken }: Camera) {
  for (const name of readdirSync(guide).filter((file) => file.endsWith('.html'))) {
    const sized = readFileSync(`${guide}${name}`, 'utf8').replace(
      /(src="pictures\/([\w-]+)\.webp"\s+)width="\d+"(\s+)height="\d+"/g,
      (whole, src: string, picture: string, space: string) => {
        const [width, height] = taken.get(picture) ?? []
        return width ? `${src}width="${width}"${space}height="${height}"` : whole
      },
    )
    writeFileSync(`${guide}${name}`, sized)
  }
}

/** What she types into Fit, as each guide tells it. */
const GAPE: Readonly<Record<Language, string>> = {
  en: 'my neckline gapes at the front',
  de: 'mein Ausschnitt steht vorn ab',
}

/**
 * @param address of the folder the app lies in, ending in a slash
 * @returns the names of the pictures taken
 */
export async function takeGuidePictures(
  browser: Browser,
  address: string,
  language: Language,
): Promise<string[]> {
  const guide = guideOf(language)
  const folder = `${guide}pictures/`
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  const walk: Walk = {
    ...(await cameraInto(folder, browser)),
    ...(await saidIn(language)),
    opened: async (viewport) => {
      // A browser that asks for this language, or the page sends it to another.
      const page = await browser.newPage({ viewport, deviceScaleFactor: DENSITY, locale: language })
      await page.goto(new URL(PAGES[language], address).href)
      return page
    },
  }
  const page = await example(walk, LAPTOP)
  await measureAndDraft(walk, page)
  await fit(walk, page, GAPE[language])
  await compareAndCut(walk, page)
  await onThePhone(walk, await example(walk, PHONE))
  await photos(walk, await walk.opened(LAPTOP))
  writeSizes(guide, walk)
  return [...walk.taken.keys()]
}
