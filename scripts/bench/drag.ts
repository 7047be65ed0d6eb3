/**
 * From the hand to the screen: in a real Chromium slowed down four times, a ruler and a point of
 * the draft are dragged on the Draft screen of every garment, and for each move of the pointer the
 * time is taken until what it did is painted. Acts are told apart: taking, letting go and arrow keys,
 * from the event to the next paint as the browser itself takes it (W3C Event Timing, in steps of 8 ms).
 *
 *   npm run bench:drag -- [--slow N] [--moves N] [--garment ID] [--phone]
 *
 * Needs a built app. Ends with RESULT {GARMENT: {ruler, point: {moves, acts: {n, medianMs, p95Ms, worstMs}}}}.
 */
import { chromium, type Page } from 'playwright-core'
import { preview } from 'vite'
import { GARMENT_IDS, GARMENTS } from '../../src/draft/garments.ts'
import type { GarmentId } from '../../src/draft/draft.ts'
import { bookOf, INVENTED_ON, MIDDLE } from '../../tests/bodies.ts'
import { CHROMIUM_FLAGS, findChromium } from '../chromium.mjs'
import { HEADERS } from '../headers.mjs'

const flag = (name: string, standard: number): number => {
  const at = process.argv.indexOf(name)
  return at > 0 ? Number(process.argv[at + 1]) : standard
}
const [SLOW, MOVES] = [flag('--slow', 4), flag('--moves', 60)]
const phone = process.argv.includes('--phone')
const SIZE = phone ? { width: 390, height: 844 } : { width: 1440, height: 900 }
/** Goal for every move: what a hand does not feel as lag. */
const GOAL = 50
const named = process.argv[process.argv.indexOf('--garment') + 1]
const garments = process.argv.includes('--garment')
  ? GARMENT_IDS.filter((id) => id === named)
  : GARMENT_IDS

/** A tape book and one garment of each kind, written behind the page's back. */
async function filled(page: Page): Promise<void> {
  await page.evaluate(
    async ({ book, hung }) => {
      const db = await new Promise<IDBDatabase>((done, failed) => {
        const asked = indexedDB.open('tapetrue')
        asked.onsuccess = () => done(asked.result)
        asked.onerror = () => failed(new Error('no database'))
      })
      const all = db.transaction(['book', 'garments'], 'readwrite')
      all.objectStore('book').put({ v: 1, id: 'book', book })
      for (const one of hung) all.objectStore('garments').put(one)
      await new Promise((done) => (all.oncomplete = done))
      db.close()
    },
    {
      book: bookOf(MIDDLE),
      hung: GARMENT_IDS.map((id, order) => ({
        v: 1,
        id: `bench-${id}`,
        garment: id,
        name: `Invented ${GARMENTS[id].name}`,
        hungOn: INVENTED_ON,
        order,
      })),
    },
  )
}

/** What `watch` writes down in the page, ms. */
interface Seen {
  readonly moves: number[]
  readonly acts: number[]
}

/** Writes down for each move of the pointer when what it did stood on the screen, and how long each act took. */
const watch = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const seen: Seen = { moves: [], acts: [] }
    Object.assign(window, { seen })
    const after = new MessageChannel()
    const waiting: number[] = []
    // A message sent in a frame is handled once that frame has been painted.
    after.port1.onmessage = () => {
      for (const at of waiting.splice(0)) seen.moves.push(performance.now() - at)
    }
    window.addEventListener(
      'pointermove',
      ({ timeStamp: at }) =>
        requestAnimationFrame(() => {
          waiting.push(at)
          after.port2.postMessage(undefined)
        }),
      true,
    )
    const acts: readonly string[] = ['pointerdown', 'pointerup', 'keydown']
    const asked: PerformanceObserverInit & { durationThreshold: number } = {
      type: 'event',
      durationThreshold: 16,
    }
    new PerformanceObserver((list) => {
      for (const { name, duration } of list.getEntries())
        if (acts.includes(name)) seen.acts.push(duration)
    }).observe(asked)
  })
const seen = (page: Page): Promise<Seen> =>
  page.evaluate(() => {
    const { seen } = window as unknown as { seen: Seen }
    return { moves: seen.moves.splice(0), acts: seen.acts.splice(0) }
  })

interface Taken {
  readonly n: number
  readonly medianMs: number
  readonly p95Ms: number
  readonly worstMs: number
}
interface Dragged {
  readonly moves: Taken
  /** Of those that took 16 ms and more. */
  readonly acts: Taken
}
function taken(times: readonly number[]): Taken {
  const sorted = times.toSorted((a, b) => a - b)
  const share = (part: number): number =>
    Math.round(sorted[Math.floor(part * (sorted.length - 1))]!)
  return { n: sorted.length, medianMs: share(0.5), p95Ms: share(0.95), worstMs: share(1) }
}

async function dragged(page: Page, what: string, axis: 'x' | 'y', reach: number): Promise<Dragged> {
  const place = page.locator(what).first()
  await place.scrollIntoViewIfNeeded()
  const box = await place.boundingBox()
  if (!box) throw new Error(`bench: no ${what} on the screen`)
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  const at = (share: number): readonly [number, number] => [
    x + (axis === 'x' ? share * reach : 0),
    y + (axis === 'y' ? share * reach : 0),
  ]
  await page.mouse.move(x, y)
  await page.mouse.down()
  // There and back, as a hand looks for its place.
  for (let i = 1; i <= MOVES; i++) {
    await page.mouse.move(...at(Math.sin((2 * Math.PI * i) / 30)))
    await page.waitForTimeout(16)
  }
  await page.mouse.up()
  await page.waitForTimeout(1500)
  await place.focus()
  for (const key of KEYS) {
    await page.keyboard.press(key)
    await page.waitForTimeout(700)
  }
  const { moves, acts } = await seen(page)
  return { moves: taken(moves), acts: taken(acts) }
}
/** There and back on either axis. */
const KEYS = ['ArrowUp', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowDown']

async function measured(page: Page, address: string, id: GarmentId) {
  await page.goto(`${address}#/g/bench-${id}/draft`)
  await page.locator('g.handle').first().waitFor()
  await watch(page)
  const session = await page.context().newCDPSession(page)
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOW })
  const point = await dragged(page, 'g.handle.y', 'y', 30)
  const ruler = await dragged(page, '.knob .ruler', 'x', 60)
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 })
  return { ruler, point }
}

const server = await preview({
  logLevel: 'warn',
  preview: { host: '127.0.0.1', port: 0, headers: HEADERS },
})
const address = server.resolvedUrls?.local[0] ?? ''
const executablePath = findChromium()
if (!executablePath) throw new Error('bench: no Chromium on this machine; set CHROMIUM')
const browser = await chromium.launch({ executablePath, args: CHROMIUM_FLAGS })
try {
  const page = await browser.newPage({ viewport: SIZE })
  await page.goto(address)
  await page.getByRole('heading').first().waitFor()
  await filled(page)
  await page.reload()
  const result: Record<string, Record<string, Dragged>> = {}
  for (const id of garments) {
    result[id] = await measured(page, address, id)
    for (const [what, dragged] of Object.entries(result[id]))
      for (const [kind, t] of Object.entries<Taken>({ ...dragged }))
        console.log(
          `${id}, ${what}, ${SLOW} times slower: ${t.n} ${kind}, median ${t.medianMs} ms, 95 in 100 under ${t.p95Ms}, worst ${t.worstMs}${t.p95Ms > GOAL ? ` (over ${GOAL})` : ''}`,
        )
  }
  console.log(`RESULT ${JSON.stringify(result)}`)
} finally {
  await browser.close()
  await server.close()
}
