/**
 * Photos under a passphrase through the built app: set, opened anew, locked, opened. On the way no
 * address of a picture outlives what showed it, and the locked screens hold against axe-core.
 */
import { expect, test } from './journey.ts'
import { breaches } from './breaches.ts'
import { asItStands } from './every-place.ts'
import { goTo, hungAndSewn } from './walk.ts'

const WORDS = 'calico thimble lantern gate'
const PHOTO = new URL('../photos/figure-muslin-front.jpg', import.meta.url).pathname

test('a photo is closed, locked and opened, and no address of it is left behind', async ({
  page,
}) => {
  // A saved file is held for a minute; the clock is put forward instead of waiting.
  await page.clock.install()
  await page.addInitScript(() => {
    const live = new Set<string>()
    const [make, revoke] = [URL.createObjectURL, URL.revokeObjectURL]
    URL.createObjectURL = (thing) => {
      const url = make.call(URL, thing)
      live.add(url)
      return url
    }
    URL.revokeObjectURL = (url) => {
      live.delete(url)
      revoke.call(URL, url)
    }
    Object.assign(window, { liveAddresses: () => live.size })
  })
  const live = () =>
    page.evaluate(() => (window as unknown as { liveAddresses: () => number }).liveAddresses())
  const shown = page.getByRole('img', { name: 'Muslin 1 from the front' })

  await hungAndSewn(page)
  await goTo(page, 'Compare')
  await page.getByLabel('Add a front photo of muslin 1').setInputFiles(PHOTO)
  await expect(shown).toBeVisible()
  expect(await live()).toBeGreaterThan(0)
  await goTo(page, 'Rail')
  await expect.poll(live).toBe(0)

  await test.step('a file that is saved is let go after its minute', async () => {
    const file = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save everything to a file' }).click()
    await file
    expect(await live()).toBe(1)
    await page.clock.fastForward(61_000)
    await expect.poll(live).toBe(0)
  })

  await page.getByRole('button', { name: 'Set a passphrase' }).click()
  await page.getByLabel(/^New passphrase/).fill(WORDS)
  await page.getByLabel('The same once more').fill(WORDS)
  await page.getByRole('button', { name: 'Close the photos with it' }).click()
  await expect(page.getByText('Every photo kept here is closed.')).toBeVisible()
  await page.reload()

  for (const place of ['Rail', 'Measure', 'Compare']) {
    await goTo(page, place)
    await expect(page.getByText('Your photos are locked.').first()).toBeVisible()
    expect(await breaches(page), place).toEqual([])
  }
  await expect(page.getByText('This photo is locked.').first()).toBeVisible()
  await asItStands(page, 'a locked photo')
  await page.getByLabel('Passphrase of the photos').fill('calico thimble lantern')
  await page.getByRole('button', { name: 'Open the photos' }).click()
  await expect(page.getByText('Not opened.')).toBeVisible()
  await page.getByLabel('Passphrase of the photos').fill(WORDS)
  await page.getByRole('button', { name: 'Open the photos' }).click()
  await expect(shown).toBeVisible()
  await goTo(page, 'Rail')
  await expect.poll(live).toBe(0)
  await page.getByRole('button', { name: 'Lock them now' }).click()
  await goTo(page, 'Compare')
  await expect(shown).toBeHidden()
})
