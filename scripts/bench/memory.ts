/**
 * Much work on one device: 200 rounds with 6 photos each in a real Chromium and its IndexedDB, as
 * 20 garments of 10 rounds. How long the rail of all and a comparison with matched photos take,
 * beside opening the one round of a device that holds nothing else; and whether the heap grows
 * while she looks at one comparison after another.
 *
 *   npm run bench:memory -- [--repeats N]
 *
 * Numbers and photos are invented: one picture of tests/photos kept under many names, with a reading
 * as long as a real one. Ends with RESULT {…}.
 */
import { readFileSync } from 'node:fs'
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core'
import { preview } from 'vite'
import type { Joint } from '../../src/capture/person.ts'
import { close } from '../../src/rounds/redraft.ts'
import { firstRound, nextRound, withPhoto, type Round } from '../../src/rounds/round.ts'
import { body, bookOf, INVENTED_ON, MIDDLE } from '../../tests/bodies.ts'
import { CHROMIUM_FLAGS, findChromium } from '../chromium.mjs'

const [GARMENTS, ROUNDS, VIEWS] = [
  20,
  10,
  ['front', 'side', 'back', 'closeUp', 'closeUp', 'closeUp'],
] as const
/** So often is she taken through all comparisons while the heap is watched. */
const WALKS = 3
const asked = process.argv.indexOf('--repeats')
const repeats = asked > 0 ? Number(process.argv[asked + 1]) : 5

const sha = (k: number): string => k.toString(16).padStart(64, '0')
const JOINTS: Readonly<Record<string, readonly [number, number]>> = {
  nose: [540, 300],
  left_ear: [560, 300],
  right_ear: [520, 300],
  left_shoulder: [640, 470],
  right_shoulder: [440, 470],
  left_hip: [600, 780],
  right_hip: [480, 780],
  left_knee: [600, 1080],
  right_knee: [480, 1080],
}
const joints: Readonly<Record<string, Joint>> = Object.fromEntries(
  Object.entries(JOINTS).map(([name, [x, y]]) => [name, { at: { x, y }, score: 1 }]),
)

/** A garment with its rounds, and the names of their photos. */
function garment(id: string, count: number, from: number) {
  const rounds: Round[] = []
  const photos: { sha256: string; view: string; roundId: string }[] = []
  for (let k = 0; k < count; k++) {
    const last = rounds.at(-1)
    const own = `${id}-r${k + 1}`
    const fresh = last
      ? nextRound(last, own, INVENTED_ON)
      : firstRound({ id: own, garmentId: id }, 'blouse', body(), INVENTED_ON)
    let round = close(fresh, INVENTED_ON)
    for (const [i, view] of VIEWS.entries()) {
      const sha256 = sha(from + k * VIEWS.length + i)
      photos.push({ sha256, view, roundId: own })
      round = withPhoto(round, { view, sha256, addedOn: INVENTED_ON })
    }
    rounds.push(round)
  }
  const name = `Invented ${id}`
  const hung = { v: 1, id, garment: 'blouse', name, hungOn: INVENTED_ON, order: from }
  return { hung, rounds, photos }
}

/** Rows as the store keeps them, written behind the page's back. */
async function filled(page: Page, garments: readonly ReturnType<typeof garment>[]): Promise<void> {
  const jpeg = readFileSync(new URL('../../tests/photos/figure-front.jpg', import.meta.url))
  await page.evaluate(
    async ({ garments, book, joints, jpeg, on }) => {
      const db = await new Promise<IDBDatabase>((done, failed) => {
        const asked = indexedDB.open('tapetrue')
        asked.onsuccess = () => done(asked.result)
        asked.onerror = () => failed(new Error('no database'))
      })
      const bytes = Uint8Array.from(atob(jpeg), (letter) => letter.charCodeAt(0)).buffer
      // As the store packs it (src/storage/packed-photo.ts): y, left and right of each row.
      const outline = Float64Array.from(
        Array.from({ length: 900 }, (_, k) => [
          400 + k,
          440 + 30 * Math.sin(k / 90),
          640 - 30 * Math.sin(k / 90),
        ]).flat(),
      )
      const reading = {
        size: { width: 1080, height: 1440 },
        person: { ok: true, score: 1, joints },
        card: { ok: false, reason: 'No card.' },
        points: {},
        missing: {},
        outline,
        facing: -1,
      }
      const tables = ['book', 'garments', 'rounds', 'photos', 'pixels']
      const all = db.transaction(tables, 'readwrite')
      all.objectStore('book').put({ v: 1, id: 'book', book })
      for (const { hung, rounds, photos } of garments) {
        all.objectStore('garments').put(hung)
        for (const round of rounds) {
          const row = { v: 1, id: round.id, garmentId: hung.id, savedTimes: 1, round }
          all.objectStore('rounds').put(row)
        }
        for (const { sha256, view, roundId } of photos) {
          const about = { v: 1, sha256, view, garmentId: hung.id, roundId, takenOn: on }
          const read = view === 'closeUp' ? {} : { reading: { view, ...reading } }
          all.objectStore('photos').put({ ...about, ...read })
          all.objectStore('pixels').put({ v: 1, sha256, type: 'image/jpeg', bytes })
        }
      }
      await new Promise<void>((done, failed) => {
        all.oncomplete = () => done()
        all.onerror = () => failed(new Error('not written'))
      })
      db.close()
    },
    {
      garments: garments.map((g) => ({ ...g, rounds: g.rounds.map((r) => ({ ...r })) })),
      book: bookOf(MIDDLE),
      joints,
      jpeg: jpeg.toString('base64'),
      on: INVENTED_ON,
    },
  )
}

async function device(
  browser: Browser,
  url: string,
  garments: readonly ReturnType<typeof garment>[],
) {
  const context: BrowserContext = await browser.newContext({ serviceWorkers: 'block' })
  const page = await context.newPage()
  await page.goto(url)
  await page.getByRole('heading', { level: 1 }).waitFor()
  await filled(page, garments)
  return { context, page }
}

const median = (list: readonly number[]): number =>
  [...list].sort((a, b) => a - b)[(list.length - 1) >> 1] ?? NaN
async function timed(act: () => Promise<void>): Promise<number> {
  const all: number[] = []
  for (let k = 0; k <= repeats; k++) {
    const start = performance.now()
    await act()
    // The first fills the browser's own caches.
    if (k > 0) all.push(performance.now() - start)
  }
  return median(all)
}
/** The page opened from nothing at an address, until `there`. */
const opening = (page: Page, address: string, there: () => Promise<void>) => async () => {
  await page.goto('about:blank')
  await page.goto(address)
  await there()
}

async function heapMb(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page)
  await session.send('HeapProfiler.collectGarbage')
  const { usedSize } = await session.send('Runtime.getHeapUsage')
  await session.detach()
  return usedSize / 1e6
}

const executablePath = findChromium()
if (!executablePath) {
  console.log('memory bench: no Chromium on this machine, nothing measured')
  console.log(`RESULT ${JSON.stringify({ skipped: 'no Chromium' })}`)
  process.exit(0)
}
const server = await preview({ logLevel: 'warn', preview: { host: '127.0.0.1', port: 0 } })
const browser = await chromium.launch({ executablePath, args: CHROMIUM_FLAGS })
try {
  const url = server.resolvedUrls?.local[0] ?? ''
  const compare = (id: string): string => `${url}#/g/${id}/compare`
  const matched = (page: Page) => async () =>
    page.getByText(/^No card: sizes are made alike/).waitFor()

  const one = await device(browser, url, [garment('g0', 1, 0)])
  const oneMs = await timed(
    opening(one.page, compare('g0'), () =>
      one.page.getByAltText('Muslin 1 from the front').waitFor(),
    ),
  )
  await one.context.close()

  const garments = Array.from({ length: GARMENTS }, (_, k) =>
    garment(`g${k}`, ROUNDS, k * ROUNDS * VIEWS.length),
  )
  const { page, context } = await device(browser, url, garments)
  const last = garments.at(-1)?.hung.name ?? ''
  const listMs = await timed(opening(page, url, () => page.getByText(last).first().waitFor()))
  const compareMs = await timed(opening(page, compare('g7'), matched(page)))

  const heaps: number[] = []
  for (let walk = 0; walk < WALKS; walk++) {
    for (const { hung } of garments) {
      await page.evaluate((hash) => void (location.hash = hash), `/g/${hung.id}/compare`)
      await matched(page)()
      await page.getByLabel('Below').selectOption({ index: walk })
      await matched(page)()
    }
    heaps.push(await heapMb(page))
    console.log(
      `walk ${walk + 1} through ${garments.length} comparisons: heap ${heaps.at(-1)?.toFixed(1)} MB`,
    )
  }
  await context.close()
  const hundredth = (value: number): number => Math.round(value * 100) / 100
  const result = {
    rounds: GARMENTS * ROUNDS,
    photos: GARMENTS * ROUNDS * VIEWS.length,
    oneRoundMs: Math.round(oneMs),
    listRatio: hundredth(listMs / oneMs),
    compareRatio: hundredth(compareMs / oneMs),
    heapMb: heaps.map(hundredth),
    heapGrowth: hundredth((heaps.at(-1) ?? NaN) / (heaps[0] ?? NaN)),
  }
  console.log(`RESULT ${JSON.stringify(result)}`)
} finally {
  await browser.close()
  await server.close()
}
