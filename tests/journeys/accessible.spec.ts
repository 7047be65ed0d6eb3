/**
 * Every place held against axe-core's rules for WCAG 2.2 A and AA (a reference library), at phone
 * and laptop width, in day and lamp light, with a garment from guesses,
 * and with the invented example, whose two muslins fill every place.
 */
import { expect, test } from './journey.ts'
import { everyPlace } from './every-place.ts'
import { goTo, INVENTED, tapeAll } from './walk.ts'

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

test('nor do the pages beside the tape: words and pocket card, bringing work over', async ({
  page,
}) => {
  await page.goto('/')
  await everyPlace(page, ['words', 'bring'], async (on, place) => {
    await on.evaluate((to) => (location.hash = `/${to}`), place)
    await expect(on).toHaveURL(new RegExp(`#/${place}$`))
  })
})
