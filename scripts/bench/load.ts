/**
 * What a first visit fetches before the rail can be used: the scripts, as a host would send them
 * with gzip, in a real Chromium. Twice: on a device that holds nothing, and on one where the
 * invented example hangs, whose drawings bring the constructions along.
 *
 *   npm run bench:load
 *
 * The service worker is left out: it fetches the rest once the page stands. Ends with RESULT {…}.
 */
import { createServer, type Server } from 'node:http'
import { readFileSync } from 'node:fs'
import { extname, join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { chromium, type Page } from 'playwright-core'
import { CHROMIUM_FLAGS, findChromium } from '../chromium.mjs'

const DIST = new URL('../../dist/', import.meta.url).pathname
/** What a first visit may cost, kB of script. */
const GOAL_KB = 150
/** Level 6: what a host sends unless it is told otherwise (from memory). */
const GZIP = { level: 6 }
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
}

/** The built folder as a host sends it; a path that is not there is answered so. */
function host(): Promise<{ readonly url: string; readonly server: Server }> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://host')
    const path = pathname === '/' ? 'index.html' : pathname.slice(1)
    try {
      const body = readFileSync(join(DIST, path))
      const type = TYPES[extname(path)] ?? 'application/octet-stream'
      response.writeHead(200, { 'content-type': type, 'content-encoding': 'gzip' })
      response.end(gzipSync(body, GZIP))
    } catch {
      response.writeHead(404).end()
    }
  })
  return new Promise((ready) => {
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      if (typeof address !== 'object' || !address) throw new Error('load bench: no port')
      ready({ url: `http://127.0.0.1:${address.port}/`, server })
    })
  })
}

interface Fetched {
  readonly name: string
  readonly bytes: number
}

/** Every script of one opening of the page, until `there`; bytes of the body as they came. */
async function scripts(page: Page, url: string, there: (page: Page) => Promise<void>) {
  const session = await page.context().newCDPSession(page)
  const names = new Map<string, string>()
  const fetched: Fetched[] = []
  session.on('Network.responseReceived', ({ requestId, response, type }) => {
    if (type === 'Script' || response.mimeType === 'text/javascript')
      names.set(requestId, new URL(response.url).pathname.split('/').at(-1) ?? response.url)
  })
  session.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
    const name = names.get(requestId)
    if (name !== undefined) fetched.push({ name, bytes: encodedDataLength })
  })
  await session.send('Network.enable')
  await session.send('Network.setCacheDisabled', { cacheDisabled: true })
  await page.goto(url)
  await there(page)
  await session.detach()
  return [...fetched].sort((a, b) => b.bytes - a.bytes)
}

const kb = (bytes: number): number => Math.round(bytes / 100) / 10
const sum = (list: readonly Fetched[]): number => list.reduce((all, { bytes }) => all + bytes, 0)
function told(what: string, list: readonly Fetched[]): void {
  console.log(`${what}: ${kb(sum(list))} kB in ${list.length} scripts`)
  for (const { name, bytes } of list) console.log(`  ${kb(bytes).toFixed(1).padStart(6)}  ${name}`)
}

const executablePath = findChromium()
if (!executablePath) {
  console.log('load bench: no Chromium on this machine, nothing measured')
  console.log(`RESULT ${JSON.stringify({ skipped: 'no Chromium' })}`)
  process.exit(0)
}
const { url, server } = await host()
const browser = await chromium.launch({ executablePath, args: CHROMIUM_FLAGS })
try {
  const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage()
  const look = (p: Page) => p.getByRole('button', { name: 'Look at the example' })
  const hangs = (p: Page) => p.getByRole('article', { name: /Invented example/ })
  const first = await scripts(page, url, (p) => look(p).click({ trial: true }))
  told('A device that holds nothing', first)

  await look(page).click()
  await hangs(page).waitFor()
  const again = await scripts(page, url, (p) => hangs(p).getByRole('link').click({ trial: true }))
  told('A garment hangs', again)
  const result = {
    firstKb: kb(sum(first)),
    firstScripts: first.length,
    hungKb: kb(sum(again)),
    goalKb: GOAL_KB,
    withinGoal: kb(sum(first)) <= GOAL_KB,
  }
  console.log(`RESULT ${JSON.stringify(result)}`)
} finally {
  await browser.close()
  server.close()
}
