/**
 * The German page through the built app, as a browser that asks for German opens it: the road of a
 * garment by its German keys, the same work on the English page, and every place held against
 * axe-core (a reference library). Trade words: common practice, no source.
 */
import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { expect, test } from './journey.ts'
import { everyPlace } from './every-place.ts'
import { goTo } from './walk.ts'

// The app is kept for use without a net, as on her device.
test.use({ locale: 'de-CH', serviceWorkers: 'allow' })

const PLACES = ['Stange', 'Messen', 'Schnitt', 'Anprobe', 'Vergleich', 'Zuschnitt']
/** Invented numbers, typed as a German hand writes them. */
const NUMBERS: Readonly<Record<string, string>> = {
  Brustumfang: '94',
  Taillenumfang: '78 cm',
  Hüftumfang: '100,0 cm',
  Hüfttiefe: '200 mm',
  Rückenlänge: '40,0',
  'Taille bis Brusthöhe': '16,5',
  Brustpunktabstand: '18,4',
}

async function taped(page: Page): Promise<void> {
  for (const [label, text] of Object.entries(NUMBERS)) {
    for (const reading of [1, 2]) {
      const field = page.getByLabel(`${label}, Band ${reading}`, { exact: true }).first()
      await field.fill(text)
      await field.press('Enter')
    }
    await page
      .getByRole('row', { name: new RegExp(`^${label}`) })
      .getByText('bestätigt')
      .waitFor()
  }
}

test('numbers → draft → muslin → gape → correction → paper, then the same work in English', async ({
  page,
}) => {
  await page.goto('/')
  await expect(page).toHaveURL(/\/de\.html/)
  await expect(page.locator('html')).toHaveAttribute('lang', 'de')

  await test.step('numbers with a comma are taped', async () => {
    await goTo(page, 'Messen')
    await taped(page)
  })
  await test.step('the draft tells its steps in German', async () => {
    await goTo(page, 'Stange')
    await page.getByRole('button', { name: 'Bluse aufhängen' }).click()
    await goTo(page, 'Schnitt')
    await expect(
      page
        .getByText(
          'Von A nach unten, Rückenlänge = 40,0 cm. Winkle dort nach außen: die Taillenlinie.',
        )
        .first(),
    ).toBeVisible()
  })
  await test.step('what she sees is found in her words and corrected', async () => {
    await goTo(page, 'Anprobe')
    await page.getByRole('button', { name: 'Dieses Probeteil ist genäht' }).first().click()
    const words = page.getByLabel('Oder mit deinen Worten')
    await words.fill('das armloch steht ab')
    await words.press('Enter')
    await page
      .getByRole('button', { name: /^Armloch steht ab/ })
      .first()
      .click()
    await page.getByText(/^Ja\./).first().click()
    const amount = page.getByRole('textbox', { name: 'Ganze Falte' })
    await amount.fill('1,2')
    await amount.press('Enter')
    await page.getByRole('button', { name: 'So ändern' }).first().click()
    await expect(page.getByText('Der Schnitt von Runde 2 ist geändert.')).toBeVisible()
  })
  await test.step('paper is saved', async () => {
    await goTo(page, 'Zuschnitt')
    const waiting = page.waitForEvent('download')
    await page.getByRole('button', { name: /^PDF speichern/ }).click()
    const pdf = readFileSync(await (await waiting).path())
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-')
    // The language of a document: ISO 32000-1, 14.9.2.
    expect(pdf.toString('latin1')).toMatch(/\/Lang ?\(de/)
  })
  await test.step('the same garment on the English page, kept by choice', async () => {
    await page.getByText('Mehr', { exact: true }).click()
    await page.getByRole('link', { name: 'English' }).click()
    await expect(page.locator('html')).toHaveAttribute('lang', 'en')
    await expect(page.getByText(/, round 2, on paper since/).first()).toBeVisible()
    await page.goto('/')
    await expect(page.getByRole('heading', { name: 'On the rail' })).toBeVisible()
  })
})

test('no German place breaks a rule of WCAG 2.2 AA, and none is wider than its window', async ({
  page,
}) => {
  await page.goto('/')
  await page.getByRole('button', { name: 'Beispiel ansehen' }).click()
  await page.getByRole('button', { name: 'Beispiel abnehmen' }).waitFor()
  await everyPlace(page, PLACES)
})
