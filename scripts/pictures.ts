/**
 * Takes the pictures of README.md from the running app, with the invented numbers of the
 * journeys: the rail, a draft and its steps, what a correction would change; then those of the
 * guide in every language. Needs `npm run build`.
 */
import { mkdirSync } from 'node:fs'
import { chromium } from 'playwright-core'
import { preview } from 'vite'
import { goTo, INVENTED, tapeAll } from '../tests/journeys/walk.ts'
import { CHROMIUM_FLAGS, findChromium } from './chromium.mjs'
import { takeGuidePictures } from './pictures/guide.ts'
import { OTHER_LANGUAGES } from './words.mjs'

const DOCS = new URL('../docs/', import.meta.url).pathname
const executablePath = findChromium()
if (!executablePath) {
  console.error('No Chromium or Chrome is found here: install one, or set CHROMIUM to its path.')
  process.exit(2)
}
mkdirSync(DOCS, { recursive: true })
const server = await preview({ logLevel: 'warn', preview: { host: '127.0.0.1', port: 0 } })
const browser = await chromium.launch({ executablePath, args: CHROMIUM_FLAGS })
try {
  const address = server.resolvedUrls?.local[0] ?? ''
  const page = await browser.newPage({ viewport: { width: 1280, height: 1060 } })
  const take = (name: string) => page.screenshot({ path: `${DOCS}${name}.png` })
  await page.goto(address)
  await goTo(page, 'Measure')
  await tapeAll(page, INVENTED)
  await goTo(page, 'Rail')
  await page.getByRole('button', { name: 'Hang a blouse' }).click()
  await page
    .getByRole('button', { name: /^Next step/ })
    .first()
    .click()
  await take('draft')
  await goTo(page, 'Fit')
  await page.getByRole('button', { name: 'I have sewn this muslin' }).first().click()
  await page.getByLabel('Or in your own words').fill('gaping armhole')
  await page.getByRole('button', { name: 'Find the complaint in these words' }).click()
  await page
    .getByRole('button', { name: /^Gaping armhole/ })
    .first()
    .click()
  await page
    .getByText(/^Yes\./)
    .first()
    .click()
  const amount = page.getByRole('textbox', { name: 'Whole fold' })
  await amount.fill('12 mm')
  await amount.press('Enter')
  await page.getByRole('heading', { name: 'What would change' }).scrollIntoViewIfNeeded()
  await take('fit')
  await page.getByRole('button', { name: 'Make this change' }).first().click()
  await goTo(page, 'Compare')
  await take('compare')
  await goTo(page, 'Rail')
  await take('rail')
  const guide = await takeGuidePictures(browser, address, 'en')
  for (const language of OTHER_LANGUAGES)
    guide.push(...(await takeGuidePictures(browser, address, language)))
  const pictures = ['draft', 'fit', 'compare', 'rail']
  console.log(`RESULT ${JSON.stringify({ n: pictures.length + guide.length, pictures, guide })}`)
} finally {
  await browser.close()
  await server.close()
}
