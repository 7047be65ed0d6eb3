/**
 * A garment and photos from a phone to a laptop, in two real browsers: each reads the square on the
 * other's screen with its camera, or the code is typed. What arrives is held against what was sent,
 * byte for byte (SHA-256 by Node), and every connection against the rule of no server.
 */
import { createHash } from 'node:crypto'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Browser, type Page } from '@playwright/test'
import { CHROMIUM_FLAGS, findChromium } from '../../scripts/chromium.mjs'
import { openCanvas } from '../../scripts/figure/canvas.ts'
import { breaches } from './breaches.ts'
import { fakeCameraFlags } from './fake-camera.ts'
import { expect, test } from './journey.ts'
import { showScreen } from './screen-camera.ts'
import { goTo, INVENTED, tapeAll } from './walk.ts'
import {
  cameras,
  connections,
  onlyItsOwnAddresses,
  pictureDigests,
  watchConnections,
} from './watched-connections.ts'

const FOLDER = mkdtempSync(join(tmpdir(), 'bring-over-'))
const [LAPTOP_SEES, PHONE_SEES] = [join(FOLDER, 'laptop.y4m'), join(FOLDER, 'phone.y4m')]
const launched = (file: string) => ({
  executablePath: findChromium() ?? 'chromium',
  args: [...CHROMIUM_FLAGS, ...fakeCameraFlags(file, true)],
})
test.use({ launchOptions: launched(LAPTOP_SEES) })

const PHOTO = (view: string): string =>
  new URL(`../photos/figure-${view}.jpg`, import.meta.url).pathname
const sha = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

let second: Browser
let phone: Page
test.beforeEach(async ({ page, baseURL }) => {
  for (const file of [LAPTOP_SEES, PHONE_SEES]) showScreen(file, undefined)
  second = await chromium.launch(launched(PHONE_SEES))
  const viewport = { width: 390, height: 844 }
  phone = await (await second.newContext({ baseURL: baseURL ?? '', viewport })).newPage()
  const foreign: string[] = []
  phone.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url())
    if (!['blob:', 'data:'].includes(protocol) && hostname !== '127.0.0.1') foreign.push(hostname)
  })
  for (const device of [page, phone]) await watchConnections(device)
  phone.on('close', () => expect(foreign).toEqual([]))
})
test.afterEach(() => second.close())
test.afterAll(() => rmSync(FOLDER, { recursive: true, force: true }))

const press = (device: Page, name: string | RegExp): Promise<void> =>
  device.getByRole('button', { name, exact: typeof name === 'string' }).click()
const begin = async (device: Page): Promise<void> => {
  await device.goto('/#/bring')
  await device.getByRole('heading', { name: 'Bring over' }).waitFor()
}
/** WCAG 2.2 AA by axe-core, in both lights, and nothing wider than the window. */
async function readsWell(device: Page): Promise<void> {
  for (const light of ['lamp', 'day']) {
    await device.evaluate((to) => (document.documentElement.dataset['light'] = to), light)
    expect(await breaches(device)).toEqual([])
    const over = await device.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    expect(over).toBeLessThanOrEqual(0)
  }
}
/** Holds one device's camera before the square on the other's screen. */
async function look(at: Page, file: string): Promise<void> {
  const square = at.getByRole('img', { name: /^The code as a square/ })
  await square.waitFor()
  const shot = join(FOLDER, 'screen.jpg')
  await square.screenshot({ type: 'jpeg', quality: 90, path: shot })
  const canvas = await openCanvas()
  if (!canvas) throw new Error('no Chromium to decode the screen with')
  showScreen(file, await canvas.decode(shot))
  await canvas.close()
}
/** The code as it is written out beside the square. */
async function written(device: Page): Promise<string> {
  await device.getByText('No camera on the other device? Type it there').click()
  const groups = await device
    .getByRole('list', { name: 'The code in groups' })
    .locator('.group')
    .allInnerTexts()
  return groups.join(' ').toLowerCase()
}
async function type(device: Page, text: string): Promise<void> {
  await device.getByLabel(/^Or type the code/).fill(text)
  await press(device, 'Take this code')
}
const words = (device: Page): Promise<string[]> =>
  device.getByRole('list', { name: 'Four words' }).getByRole('listitem').allInnerTexts()
async function joinedByTyping(laptop: Page): Promise<void> {
  await begin(laptop)
  await press(laptop, 'Show a code here')
  await begin(phone)
  await press(phone, 'Read the code of the other')
  await type(phone, await written(laptop))
  await press(laptop, 'Read its answer')
  await type(laptop, await written(phone))
}
async function agreed(...devices: readonly Page[]): Promise<void> {
  for (const device of devices) await press(device, 'They are the same')
  for (const device of devices)
    await expect(device.getByRole('heading', { name: 'What goes over from here?' })).toBeVisible()
}
/** What became of a thing, in the list of what arrived or was sent. */
const listed = (device: Page, words: RegExp) =>
  device.getByRole('listitem').filter({ hasText: words })
async function savedBy(device: Page, name: string | RegExp): Promise<Buffer> {
  const waiting = device.waitForEvent('download')
  await press(device, name)
  return readFileSync(await (await waiting).path())
}
/** Garment, rounds and tape book in a file of one garment. */
async function garmentOf(device: Page): Promise<unknown> {
  await goTo(device, 'Rail')
  const file = await savedBy(device, /^Save to a file: /)
  const { payload } = JSON.parse(file.toString()) as { payload: Record<string, unknown> }
  return { garments: payload['garments'], rounds: payload['rounds'], book: payload['book'] }
}

/** SHA-256 of the photos that lie in the store of a device. */
const keptPixels = (device: Page): Promise<string[]> =>
  device.evaluate(async () => {
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
    const digests = rows.map(({ bytes }) => crypto.subtle.digest('SHA-256', bytes))
    return (await Promise.all(digests)).map((digest) => [...new Uint8Array(digest)].join(' '))
  })

test('by camera: nothing before she asks, the same words, a garment and photos arrive as they were', async ({
  page: laptop,
}) => {
  await test.step('a garment with a sewn muslin and its photo on the phone', async () => {
    await phone.goto('/')
    await goTo(phone, 'Measure')
    await tapeAll(phone, INVENTED)
    await goTo(phone, 'Rail')
    await press(phone, 'Hang a blouse')
    await goTo(phone, 'Fit')
    await press(phone, 'I have sewn this muslin')
    await goTo(phone, 'Compare')
    await phone.getByLabel('Add a front photo of muslin 1').setInputFiles(PHOTO('muslin-front'))
    await expect(phone.getByRole('img', { name: 'Muslin 1 from the front' })).toBeVisible()
  })

  await test.step('nothing is opened before a key is pressed', async () => {
    for (const device of [laptop, phone]) {
      await begin(device)
      expect([await connections(device), await cameras(device)]).toEqual([0, []])
      await readsWell(device)
    }
  })

  await test.step('each reads the square of the other', async () => {
    await press(laptop, 'Show a code here')
    await press(phone, 'Read the code of the other')
    await expect.poll(() => cameras(phone)).toEqual(['live'])
    for (const device of [laptop, phone]) await readsWell(device)
    await look(laptop, PHONE_SEES)
    await expect(phone.getByRole('heading', { name: /read this answer$/ })).toBeVisible()
    expect(await cameras(phone)).toEqual(['ended'])
    await press(laptop, 'Read its answer')
    await look(phone, LAPTOP_SEES)
  })

  await test.step('both show the same four words', async () => {
    for (const device of [laptop, phone])
      await expect(device.getByRole('list', { name: 'Four words' })).toBeVisible()
    expect(await words(laptop)).toHaveLength(4)
    expect(await words(phone)).toEqual(await words(laptop))
    expect(await cameras(laptop)).toEqual(['ended'])
    await readsWell(phone)
    await agreed(laptop, phone)
  })

  await test.step('photos, turned upright and without metadata', async () => {
    await phone.getByLabel('Choose photos').setInputFiles([PHOTO('front'), PHOTO('side')])
    await expect(phone.getByText('figure-side.jpg')).toBeVisible()
    const sent = (await pictureDigests(phone)).slice(-2)
    await press(phone, 'Send it over')
    for (const device of [laptop, phone])
      await expect(listed(device, /figure-side\.jpg.*as the side photo/)).toBeVisible()
    for (const [k, name] of ['figure-front.jpg', 'figure-side.jpg'].entries()) {
      const arrived = await savedBy(laptop, `Save ${name}`)
      expect(sha(arrived)).toBe(sent[k])
    }
  })

  await test.step('the garment, in the form of a backup', async () => {
    await phone.getByText('One garment', { exact: true }).click()
    await phone.getByLabel('with the photos that are still kept here: 1').check()
    await press(phone, 'Send it over')
    await expect(listed(laptop, /New on the rail: garments 1, rounds 1\./)).toBeVisible()
    await expect(listed(laptop, /Photo, front, .* Kept\./)).toBeVisible()
    await readsWell(laptop)
    for (const device of [laptop, phone]) await onlyItsOwnAddresses(device)
  })

  await test.step('leaving closes the connection, and what came is hers', async () => {
    await laptop.getByRole('link', { name: 'Read them in Measure' }).click()
    await expect(laptop.getByText('figure-front.jpg')).toBeVisible()
    await expect(laptop.getByText('figure-side.jpg')).toBeVisible()
    await expect(phone.getByText('The connection is gone', { exact: false })).toBeVisible()
    expect(await garmentOf(laptop)).toEqual(await garmentOf(phone))
    expect(await keptPixels(laptop)).toHaveLength(1)
    expect(await keptPixels(laptop)).toEqual(await keptPixels(phone))
  })
})

test('by typing: a slip is found in its group, and the words that differ close it', async ({
  page: laptop,
}) => {
  await begin(laptop)
  await press(laptop, 'Show a code here')
  const code = await written(laptop)
  await begin(phone)
  await press(phone, 'Read the code of the other')
  const groups = code.split(' ')
  await type(phone, groups.with(2, 'zzzzz').join(' '))
  await expect(phone.getByText('Group 3 (ZZZZZ) does not fit.', { exact: false })).toBeVisible()
  await type(phone, code)
  await press(laptop, 'Read its answer')
  await type(laptop, code)
  await expect(laptop.getByText('Both devices show a first code.', { exact: false })).toBeVisible()
  await type(laptop, await written(phone))
  await expect(laptop.getByRole('list', { name: 'Four words' })).toBeVisible()
  await expect.poll(() => words(phone)).toEqual(await words(laptop))
  await press(phone, 'They differ')
  await expect(phone.getByText('not joined with each other', { exact: false })).toBeVisible()
  await expect(laptop.getByText('The connection is gone', { exact: false })).toBeVisible()
  for (const device of [laptop, phone]) await onlyItsOwnAddresses(device)
})

test('a device that does not know the secret is refused, and no word is shown', async ({
  page: laptop,
}) => {
  // The phone makes its answer as it should, and then proves with another secret.
  await phone.addInitScript(() => {
    const { subtle } = crypto
    const own = subtle.sign.bind(subtle)
    Object.defineProperty(subtle, 'sign', {
      value: async (how: AlgorithmIdentifier, key: CryptoKey, data: BufferSource) => {
        const mark = new Uint8Array(await own(how, key, data))
        const text = new TextDecoder().decode(data)
        if (text.includes('proof of the')) mark[0] = (mark[0] ?? 0) ^ 1
        return mark.buffer
      },
    })
  })
  await joinedByTyping(laptop)
  const refusal = laptop.getByText('does not know the secret of this code', { exact: false })
  await expect(refusal).toBeVisible()
  await expect(laptop.getByRole('list', { name: 'Four words' })).toHaveCount(0)
  await expect(phone.getByText('Closed.', { exact: true })).toBeVisible()
})

test('a device that is gone: the reason after a while, and the way by file', async ({
  page: laptop,
}) => {
  await begin(laptop)
  await press(laptop, 'Show a code here')
  await begin(phone)
  await press(phone, 'Read the code of the other')
  await type(phone, await written(laptop))
  const answer = await written(phone)
  await phone.close()
  await press(laptop, 'Read its answer')
  await type(laptop, answer)
  await expect(laptop.getByText('did not find each other', { exact: false })).toBeVisible()
  await expect(laptop.getByRole('link', { name: 'To the rail, for a file' })).toBeVisible()
})

test('no camera: said, and the code can be typed', async ({ page: laptop }) => {
  await laptop.addInitScript(() => {
    navigator.mediaDevices.getUserMedia = () =>
      Promise.reject(new DOMException('Requested device not found', 'NotFoundError'))
  })
  await begin(laptop)
  await press(laptop, 'Read the code of the other')
  await expect(laptop.getByText('This device shows no camera.', { exact: false })).toBeVisible()
  await expect(laptop.getByLabel(/^Or type the code/)).toBeVisible()
})
