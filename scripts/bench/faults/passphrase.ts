/**
 * Bad days of photos under a passphrase: killed while they are closed and while they are opened, a
 * wrong passphrase, and one window that closes them while another adds some.
 */
import { cpSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { goTo, hungAndSewn } from '../../../tests/journeys/walk.ts'
import { whole } from '../bodies/chance.ts'
import { anotherWindow, device, newProfile, removeProfile } from './browser.ts'
import { must, Tally, type Outcome } from './fault.ts'
import { greyJpeg } from './made-photos.ts'
import { openAt, pageErrors } from './steps.ts'

const PHOTO = new URL('../../../tests/photos/figure-muslin-front.jpg', import.meta.url).pathname
const WORDS = 'calico thimble lantern gate'
const SEED = 29_112_026
/** So many that closing them takes a while. */
const PHOTOS = 60
/** Longest time from the press of the key to the end of the power, ms. */
const LONGEST_MS = 4000
const CLOSED = 'Every photo kept here is closed.'

/** What is done on a device until its power goes out. */
async function powered<T>(profile: string, work: (page: Page) => Promise<T>): Promise<T> {
  const { page, kill } = await device(profile)
  try {
    return await work(page)
  } finally {
    await kill()
  }
}

/** A device with a sewn muslin and photos in the open: one she added, the others like it. */
async function withPhotos(origin: string): Promise<string> {
  const profile = newProfile()
  await powered(profile, (page) => fillWithPhotos(page, origin))
  return profile
}
async function fillWithPhotos(page: Page, origin: string): Promise<void> {
  await hungAndSewn(page, origin)
  await goTo(page, 'Compare')
  await page.getByLabel('Add a front photo of muslin 1').setInputFiles(PHOTO)
  await page.getByRole('img', { name: 'Muslin 1 from the front' }).waitFor()
  await page.evaluate(async (more) => {
    const asked = indexedDB.open('tapetrue')
    await new Promise((done) => (asked.onsuccess = done))
    const read = asked.result.transaction(['photos', 'pixels'])
    const [photo, lying] = [
      read.objectStore('photos').getAll(),
      read.objectStore('pixels').getAll(),
    ]
    await new Promise((done) => (read.oncomplete = done))
    const pixels = lying.result[0] as { bytes: ArrayBuffer }
    for (let i = 1; i < more; i += 1) {
      // A JPEG stays one with a letter behind its end.
      const bytes = new Uint8Array([...new Uint8Array(pixels.bytes), i])
      const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))
      const sha256 = [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('')
      const put = asked.result.transaction(['photos', 'pixels'], 'readwrite')
      put.objectStore('photos').put({ ...(photo.result[0] as object), sha256 })
      put.objectStore('pixels').put({ ...pixels, sha256, bytes: bytes.buffer })
      await new Promise((done) => (put.oncomplete = done))
    }
    asked.result.close()
  }, PHOTOS)
}

interface Lie {
  /** Its name: the SHA-256 of its bytes. */
  readonly name: string
  /** What its bytes are by SHA-256 where they lie in the open; null where they are closed. */
  readonly is: string | null
}
interface Store {
  readonly photos: readonly string[]
  readonly pixels: readonly Lie[]
  readonly locked: boolean
}

/** How the photos lie on the disk, past the page. */
async function asTheyLie(page: Page): Promise<Store> {
  return page.evaluate(async () => {
    const asked = indexedDB.open('tapetrue')
    await new Promise((done) => (asked.onsuccess = done))
    const read = asked.result.transaction(['photos', 'pixels', 'settings'])
    const rows = ['photos', 'pixels', 'settings'].map((table) => read.objectStore(table).getAll())
    await new Promise((done) => (read.oncomplete = done))
    asked.result.close()
    const [photos, lying, settings] = rows.map(({ result }) => result) as [
      { sha256: string }[],
      { sha256: string; bytes?: ArrayBuffer }[],
      { key: string }[],
    ]
    const pixels: { name: string; is: string | null }[] = []
    for (const { sha256, bytes } of lying) {
      const hash = bytes && new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))
      const letters = [...(hash ?? [])].map((byte) => byte.toString(16).padStart(2, '0'))
      pixels.push({ name: sha256, is: bytes ? letters.join('') : null })
    }
    return {
      photos: photos.map(({ sha256 }) => sha256),
      pixels,
      locked: settings.some(({ key }) => key === 'photoLock'),
    }
  })
}
const open = ({ pixels }: Store): number => pixels.filter(({ is }) => is !== null).length

/** Photos whose pixels are not here, in the open and true to their name. */
async function lostOf(page: Page, names: readonly string[]): Promise<number> {
  const { pixels } = await asTheyLie(page)
  return names.filter((name) => !pixels.some((lie) => lie.name === name && lie.is === name)).length
}

async function setPassphrase(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Set a passphrase' }).click()
  await page.getByLabel(/^New passphrase/).fill(WORDS)
  await page.getByLabel('The same once more').fill(WORDS)
  await page.getByRole('button', { name: 'Close the photos with it' }).click()
}
async function unlock(page: Page, passphrase = WORDS): Promise<void> {
  await page.getByLabel('Passphrase of the photos').first().fill(passphrase)
  await page.getByRole('button', { name: 'Open the photos' }).first().click()
}
async function takeOff(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Take it off' }).click()
  await page.getByLabel('Passphrase as it is').fill(WORDS)
  await page.getByRole('button', { name: 'Take it off' }).click()
}

/** Where neither key is there she would be at a loss: one of the states the page can stand in. */
async function standing(page: Page): Promise<'open' | 'locked'> {
  const set = page.getByRole('button', { name: 'Set a passphrase' })
  const locked = page.getByText('Your photos are locked.').first()
  await set.or(locked).first().waitFor()
  return (await set.isVisible()) ? 'open' : 'locked'
}

/** Each try: power lost while the photos are closed, then while they are opened for good. */
export async function killedUnderPassphrase(origin: string, tries: number): Promise<Outcome> {
  const chance = whole(SEED)
  const moment = () => new Promise((done) => setTimeout(done, (chance() / 2 ** 32) * LONGEST_MS))
  const profile = await withPhotos(origin)
  const tally = new Tally()
  let halfway = 0
  const looked = async (page: Page): Promise<Store> => {
    await openAt(page, origin)
    const lie = await asTheyLie(page)
    if (lie.locked && open(lie) > 0) halfway += 1
    return lie
  }
  for (let i = 0; i < tries; i += 1)
    await tally.try(async () => {
      const { photos } = await powered(profile, async (page) => {
        const before = await looked(page)
        must((await standing(page)) === 'open', 'the last try left the photos locked')
        await setPassphrase(page)
        await moment()
        return before
      })
      await powered(profile, async (page) => {
        await looked(page)
        if ((await standing(page)) === 'open') await setPassphrase(page)
        else await unlock(page)
        await page.getByRole('button', { name: 'Take it off' }).waitFor()
        must(open(await asTheyLie(page)) === 0, 'a photo stayed in the open')
        await takeOff(page)
        await moment()
      })
      return powered(profile, async (page) => {
        await looked(page)
        const off = page.getByRole('button', { name: 'Take it off' })
        const set = page.getByRole('button', { name: 'Set a passphrase' })
        if ((await standing(page)) === 'locked') {
          await unlock(page)
          await off.or(set).waitFor()
          if (await off.isVisible()) await takeOff(page)
          await set.waitFor()
        }
        const sentence = 'Opens as it was; what broke off goes on when she opens the photos.'
        return { lost: await lostOf(page, photos), sentence }
      })
    })
  removeProfile(profile)
  console.log(
    `  killed: ${halfway} of ${2 * tries} times some photos were closed and others not yet`,
  )
  for (const fault of new Set(tally.faults)) console.log(`  ${fault}`)
  return tally.outcome
}

const WRONG = ['', WORDS.toUpperCase(), WORDS.slice(0, -1), `${WORDS} `, 'another one altogether']

export async function wrongPassphrase(origin: string): Promise<Outcome> {
  const profile = await withPhotos(origin)
  const tally = new Tally()
  await powered(profile, async (page) => {
    const errors = pageErrors(page)
    await openAt(page, origin)
    const { photos } = await asTheyLie(page)
    await setPassphrase(page)
    await page.getByText(CLOSED).waitFor()
    for (const wrong of WRONG)
      await tally.try(async () => {
        await openAt(page, origin)
        await unlock(page, wrong)
        const said = page.getByRole('status').filter({ hasText: 'Not opened.' }).first()
        await said.waitFor()
        const sentence = (await said.innerText()).replace('Not opened.', '')
        must(open(await asTheyLie(page)) === 0, 'a wrong passphrase opened something')
        await unlock(page)
        await page.getByRole('button', { name: 'Lock them now' }).waitFor()
        must(errors.length === 0, errors.join(' '))
        return { sentence }
      })
    await tally.try(async () => {
      await takeOff(page)
      await page.getByRole('button', { name: 'Set a passphrase' }).waitFor()
      return { lost: await lostOf(page, photos) }
    })
  })
  removeProfile(profile)
  for (const fault of new Set(tally.faults)) console.log(`  ${fault}`)
  return tally.outcome
}

/** One window sets a passphrase while another adds close-ups of the muslin, one after another. */
export async function closedWhileAdding(origin: string, tries: number): Promise<Outcome> {
  const chance = whole(SEED)
  const kept = await withPhotos(origin)
  const tally = new Tally()
  let told = 0
  for (let i = 0; i < tries; i += 1) {
    const profile = newProfile()
    // A killed browser leaves its lock: a link to what is no file, which a copy would lead elsewhere.
    cpSync(kept, profile, { recursive: true, filter: (from) => !/Singleton\w+$/.test(from) })
    await tally.try(async () => {
      const headStart = (chance() / 2 ** 32) * 1500
      const done = await powered(profile, (page) => raced(page, origin, headStart))
      told += done.added
      return done
    })
    removeProfile(profile)
  }
  removeProfile(kept)
  console.log(`  adding: ${told} photos were told as kept while another window closed them`)
  for (const fault of new Set(tally.faults)) console.log(`  ${fault}`)
  return tally.outcome
}

async function raced(
  page: Page,
  origin: string,
  headStart: number,
): Promise<{ lost: number; added: number; sentence: string }> {
  const other = await anotherWindow(page)
  const errors = [pageErrors(page), pageErrors(other)]
  await openAt(page, origin)
  await openAt(other, origin)
  await goTo(other, 'Compare')
  const { photos: before } = await asTheyLie(page)
  let sentence = ''
  const shown = other.locator('h3', { hasText: 'Close-ups' }).locator('xpath=..').locator('li')
  const adding = (async () => {
    for (let k = 0; sentence === ''; k += 1) {
      must(k < 40, 'the other window went on adding photos')
      await other.getByLabel(/close-up of muslin 1/).setInputFiles({
        name: `${k}.jpg`,
        mimeType: 'image/jpeg',
        buffer: greyJpeg(640 + 8 * k, 800),
      })
      const refused = other.getByRole('alert').filter({ hasText: 'locked' }).first()
      await shown.nth(k).or(refused).first().waitFor()
      if (await refused.isVisible()) sentence = await refused.innerText()
    }
  })()
  await page.waitForTimeout(headStart)
  await setPassphrase(page)
  await page.getByText(CLOSED).waitFor()
  await adding
  const after = await asTheyLie(page)
  must(open(after) === 0, `${open(after)} photos stayed in the open`)
  const added = await shown.count()
  await takeOff(page)
  await page.getByRole('button', { name: 'Set a passphrase' }).waitFor()
  must(after.photos.length <= before.length + added, 'a photo is kept that nothing shows')
  const names = [...new Set([...before, ...after.photos])]
  const lost = (await lostOf(page, names)) + before.length + added - after.photos.length
  must(errors.flat().length === 0, errors.flat().join(' '))
  return { lost, added, sentence: sentence.replace('Stop:', '') }
}
