/**
 * Every place held against axe-core's rules for WCAG 2.2 A and AA (a reference library), at phone,
 * tablet and laptop width, in day and lamp light, with a garment from guesses, with the invented
 * example, whose two muslins fill every place, with photos that were read, and with what opens on
 * the way. Cloth and locked photos are held in the journeys that come there.
 */
import { expect, test } from './journey.ts'
import { asItStands, everyPlace } from './every-place.ts'
import { goTo, hungAndSewn, INVENTED, readPhotos, tapeAll } from './walk.ts'

// The app is kept for use without a net, as on her device.
test.use({ serviceWorkers: 'allow' })

const PLACES = ['Rail', 'Measure', 'Draft', 'Fit', 'Compare', 'Cut']

test('no place breaks a rule of WCAG 2.2 AA, and none is wider than its window', async ({
  page,
}) => {
  await page.goto('/')
  await everyPlace(page, ['Rail'])
  await goTo(page, 'Measure')
  await tapeAll(page, INVENTED)
  await goTo(page, 'Rail')
  await page.getByRole('button', { name: 'Hang a blouse' }).click()
  await everyPlace(page, PLACES)
})

test('nor where two muslins were sewn, and the example leaves no trace', async ({ page }) => {
  await page.goto('/')
  await page.getByRole('button', { name: 'Look at the example' }).click()
  const down = page.getByRole('button', { name: 'Take the example down' })
  await down.waitFor()
  await everyPlace(page, PLACES)
  await down.click()
  await expect(page.getByRole('button', { name: 'Look at the example' })).toBeVisible()
  await expect
    .poll(() => page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name)))
    .toEqual(['tapetrue'])
})

test('nor do photos that were read, from any side, their points close together', async ({
  page,
}) => {
  await page.goto('/')
  await goTo(page, 'Measure')
  await readPhotos(page)
  for (const view of ['Front', 'Side', 'Back']) {
    await page.getByRole('radio', { name: view, exact: true }).check({ force: true })
    await page.getByRole('group', { name: `${view} view, with its points` }).waitFor()
    await asItStands(page, `${view} photo, read`)
  }
})

test('nor do the pages beside the tape: words and pocket card, bringing work over', async ({
  page,
}) => {
  await page.goto('/')
  await everyPlace(page, ['words', 'bring'], async (on, place) => {
    await on.evaluate((to) => (location.hash = `/${to}`), place)
    await expect(on).toHaveURL(new RegExp(`#/${place}$`))
  })
})

test('nor does what opens on the way: a complaint, its correction, a turned choice, the panels', async ({
  page,
}) => {
  await hungAndSewn(page)
  await test.step('a complaint is heard, pinned, and its correction proposed', async () => {
    await page.getByLabel('Or in your own words').fill('gaping armhole')
    await page.getByRole('button', { name: 'Find the complaint in these words' }).click()
    await page
      .getByRole('button', { name: /^Gaping armhole/ })
      .first()
      .click()
    await page.getByText('Where this comes from').first().click()
    await asItStands(page, 'a complaint heard')
    await page
      .getByText(/^Yes\./)
      .first()
      .click()
    const amount = page.getByRole('textbox', { name: 'Whole fold' })
    await amount.fill('12 mm')
    await amount.press('Enter')
    await expect(page.getByRole('button', { name: 'Make this change' }).first()).toBeVisible()
    await asItStands(page, 'a correction proposed')
    await page.getByRole('button', { name: 'Make this change' }).first().click()
    await expect(page.getByText('The draft of round 2 has changed.')).toBeVisible()
  })
  await test.step('a choice is turned by hand', async () => {
    await goTo(page, 'Draft')
    const ruler = page.locator('.knob .ruler').first()
    await ruler.scrollIntoViewIfNeeded()
    const box = await ruler.boundingBox()
    if (!box) throw new Error('no ruler on the screen')
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
    await page.mouse.down()
    await page.mouse.move(box.x + box.width / 2 + 30, box.y + box.height / 2, { steps: 4 })
    await page.mouse.up()
    await expect(page.getByRole('button', { name: /^Take back: / }).first()).toBeEnabled()
    await asItStands(page, 'a choice turned')
  })
  await test.step('more, a passphrase, a code for another device', async () => {
    await goTo(page, 'Rail')
    await page.getByText('More', { exact: true }).click()
    await asItStands(page, 'More')
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: 'Set a passphrase' }).click()
    await asItStands(page, 'a passphrase')
    await page.goto('/#/bring')
    await page.getByRole('button', { name: 'Show a code here' }).click()
    await page.getByRole('img', { name: /^The code as a square/ }).waitFor()
    await page.getByText('No camera on the other device? Type it there').click()
    await asItStands(page, 'a code shown')
  })
})
