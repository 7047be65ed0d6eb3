/**
 * The whole road in a real browser with the real model: photos of an invented figure, tape,
 * draft, muslin, a pinned gape, correction, next round, comparison, paper, backup.
 *
 * The wedge is held against what was pinned: an edge from which w is pinned out is shorter by w
 * (the rule of the pivot method), and the dart that takes it up is wider.
 */
import { readFileSync } from 'node:fs'
import { inflateSync } from 'node:zlib'
import type { Download, Page } from '@playwright/test'
import { expect, test } from './journey.ts'
import { goTo, INVENTED, readPhotos, tapeAll } from './walk.ts'

// The app is kept for use without a net, as on her device.
test.use({ serviceWorkers: 'allow' })

async function saved(page: Page, press: () => Promise<void>): Promise<Buffer> {
  const waiting = page.waitForEvent('download')
  await press()
  const download: Download = await waiting
  return readFileSync(await download.path())
}
const savePdf = (page: Page): Promise<Buffer> =>
  saved(page, () => page.getByRole('button', { name: /^Save the PDF/ }).click())

/** Lengths of straight strokes on the first page, in millimetres, from its operators. */
function strokes(pdf: Buffer): number[] {
  const text = pdf.toString('latin1')
  const starts = [...text.matchAll(/stream\r?\n/g)].map((m) => m.index + m[0].length)
  const contents = starts.flatMap((from) => {
    try {
      return [inflateSync(pdf.subarray(from)).toString('latin1')]
    } catch {
      return []
    }
  })
  const lengths: number[] = []
  for (const content of contents)
    for (const m of content.matchAll(/(-?[\d.]+) (-?[\d.]+) m\s+(-?[\d.]+) (-?[\d.]+) l/g)) {
      const [x0, y0, x1, y1] = m.slice(1).map(Number) as [number, number, number, number]
      lengths.push((Math.hypot(x1 - x0, y1 - y0) * 25.4) / 72)
    }
  for (const content of contents)
    for (const m of content.matchAll(/(-?[\d.]+) (-?[\d.]+) (-?[\d.]+) (-?[\d.]+) re/g))
      lengths.push((Math.abs(Number(m[3])) * 25.4) / 72)
  return lengths
}

const napeToWaist = (page: Page) => page.getByRole('row', { name: /^Nape to waist moves/ })

async function shownLength(page: Page, row: RegExp): Promise<readonly [number, number]> {
  const cells = await page.getByRole('row', { name: row }).first().getByRole('cell').allInnerTexts()
  return [Number(cells[0]), Number(cells[1])]
}

test('photos → tape → draft → muslin → pinned gape → correction → compare → paper → backup', async ({
  page,
  browser,
}) => {
  await page.goto('/')

  await test.step('photos give starting lengths with ±', async () => {
    await goTo(page, 'Measure')
    const sheet = await saved(page, () =>
      page.getByRole('button', { name: 'Save the sheet, dots and pocket card, A4' }).click(),
    )
    expect(sheet.subarray(0, 5).toString()).toBe('%PDF-')
    await readPhotos(page)
    await page.getByRole('button', { name: 'Accept these points' }).click()
    await page.getByRole('button', { name: 'Keep the photos on this device' }).click()
    await expect(napeToWaist(page)).toContainText('±')
    await expect(napeToWaist(page)).toContainText('not taped')
  })

  await test.step('a tape far outside ± asks which is right, over the photo; then taped anew', async () => {
    const field = page.getByLabel('Nape to waist, tape 1', { exact: true }).first()
    await field.fill('52')
    await field.press('Enter')
    await expect(napeToWaist(page)).toContainText('photo differs')
    await expect(
      page.getByText(/^Tape and photo differ by/).filter({ visible: true }),
    ).toBeVisible()
    await expect(
      page.getByRole('img', { name: 'The side photo with the line the length was read along' }),
    ).toBeVisible()
    await page.getByRole('button', { name: /^Tape it anew/ }).click()
    await expect(napeToWaist(page)).toContainText('not taped')
    await expect(napeToWaist(page)).not.toContainText('photo differs')
    await page.getByRole('button', { name: 'Keep the numbers, let the photos go' }).click()
  })

  await test.step('a guess draws nothing for cutting', async () => {
    await goTo(page, 'Rail')
    await page.getByRole('button', { name: 'Hang a blouse' }).click()
    await goTo(page, 'Cut')
    await expect(page.getByText('Drawn from guesses, not for cutting.')).toBeVisible()
    await expect(page.getByRole('button', { name: /^Save the PDF/ }).first()).toBeDisabled()
  })

  await test.step('tape typed in, in the ways she writes it', async () => {
    await goTo(page, 'Measure')
    await tapeAll(page, INVENTED)
  })

  await test.step('the draft stands, with its steps', async () => {
    await goTo(page, 'Draft')
    await expect(
      page.getByText('Down from A, nape to waist, 40.0 cm. Square out: the waist line.').first(),
    ).toBeVisible()
  })

  await test.step('the muslin goes on paper', async () => {
    await goTo(page, 'Cut')
    const pdf = await savePdf(page)
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-')
    await expect(page.getByText('Round 1 is on paper and stays as it is.')).toBeVisible()
  })

  await test.step('"gaping armhole", 12 mm pinned, all of it', async () => {
    await goTo(page, 'Fit')
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
    await page.getByText(/^Of a take-in/).click()
    await page.getByLabel(/^Of a pinned take-in/).selectOption('1')
    await expect(page.getByText(/sleeve edge comes in by 1.2 cm/).first()).toBeVisible()
    const [edgeWas, edgeWillBe] = await shownLength(page, /front sleeve edge/i)
    // Two printed numbers, each to a millimetre.
    expect(Math.abs(edgeWas - edgeWillBe - 1.2)).toBeLessThan(0.1 + 1e-9)
    const [dartWas, dartWillBe] = await shownLength(page, /side bust dart/i)
    expect(dartWillBe).toBeGreaterThan(dartWas)
    await page.getByRole('button', { name: 'Make this change' }).first().click()
    await expect(page.getByText('The draft of round 2 has changed.')).toBeVisible()
  })

  await test.step('two rounds side by side', async () => {
    await goTo(page, 'Compare')
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Round 1 with round 2')
    await expect(page.getByRole('row', { name: /front sleeve edge/i }).first()).toBeVisible()
  })

  let pdf: Buffer = Buffer.alloc(0)
  await test.step('the second muslin at true scale', async () => {
    await goTo(page, 'Cut')
    pdf = await savePdf(page)
    const lengths = strokes(pdf)
    for (const side of [100, 101.6])
      expect(lengths.filter((l) => Math.abs(l - side) < 0.1).length).toBeGreaterThan(0)
    expect(await savePdf(page)).toEqual(pdf)
  })

  await test.step('a backup read in a clean browser prints the same file', async () => {
    await goTo(page, 'Rail')
    const backup = await saved(page, () =>
      page.getByRole('button', { name: 'Save everything to a file' }).click(),
    )
    const clean = await (await browser.newContext()).newPage()
    await clean.goto('/')
    await clean.getByLabel('Read a file back').setInputFiles({
      name: 'broken.json',
      mimeType: 'application/json',
      buffer: backup.subarray(0, 900),
    })
    await expect(clean.getByText('Not done.')).toBeVisible()
    await clean
      .getByLabel('Read a file back')
      .setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer: backup })
    await expect(clean.getByText(/Read back:/)).toBeVisible()
    await goTo(clean, 'Cut')
    expect((await savePdf(clean)).equals(pdf)).toBe(true)
    await clean.context().close()
  })
})
