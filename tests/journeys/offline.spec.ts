/**
 * The built app without a net, in a sub-folder of any host, and with the headers a host must add.
 * Sources: W3C Service Workers, Permissions Policy, Content Security Policy Level 3.
 */
import { createReadStream, existsSync, statSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join } from 'node:path'
import type { Page } from '@playwright/test'
import { expect, test } from './journey.ts'
import { goTo } from './walk.ts'

// The app is kept for use without a net, as on her device.
test.use({ serviceWorkers: 'allow' })

const DIST = new URL('../../dist/', import.meta.url).pathname
const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
}

const kept = (page: Page) =>
  page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready
    return active?.state
  })

/** Every leaf of the guide in its order, each with all of its pictures and both faces. */
async function readThrough(page: Page): Promise<void> {
  const leaves = page.getByRole('navigation', { name: 'Leaves of the guide' }).getByRole('link')
  const count = await leaves.count()
  expect(count).toBeGreaterThan(5)
  for (let k = 0; k < count; k += 1) {
    await leaves.nth(k).click()
    await expect(leaves.nth(k)).toHaveAttribute('aria-current', 'page')
    const blank = await page.evaluate(async () => {
      const pictures = [...document.images]
      for (const picture of pictures) picture.loading = 'eager'
      const shown = await Promise.allSettled(pictures.map((picture) => picture.decode()))
      await document.fonts.ready
      const faces = [...document.fonts].filter(({ status }) => status !== 'loaded')
      return [
        ...pictures.filter((_, i) => shown[i]?.status !== 'fulfilled').map(({ src }) => src),
        ...faces.map(({ family }) => family),
      ]
    })
    expect(blank).toEqual([])
  }
}

test('after one visit every place opens without a net', async ({ page, context }) => {
  await page.goto('/')
  await expect.poll(() => kept(page)).toBe('activated')
  await context.setOffline(true)
  await page.reload()
  await expect(page.getByRole('heading', { name: 'On the rail' })).toBeVisible()
  await page.getByRole('button', { name: 'Hang a blouse' }).click()
  for (const place of ['Measure', 'Draft', 'Fit', 'Compare', 'Cut'] as const) {
    await goTo(page, place)
    await expect(page.locator('h1')).toBeVisible()
  }
  const cached = await page.evaluate(async () => {
    const urls: string[] = []
    for (const name of await caches.keys())
      for (const request of await (await caches.open(name)).keys()) urls.push(request.url)
    return urls
  })
  expect(cached.length).toBeGreaterThan(10)
  // The page and the worker have one each, and all languages the same two.
  expect(cached.filter((url) => /\/pdf-writer-[^/]*\.js/.test(url))).toHaveLength(2)
  const ours = cached.filter((url) => !/\/guide\/(?:de\/)?pictures\//.test(url))
  expect(ours.filter((url) => /\.(jpe?g|heic|webp)|^blob:|models\//.test(url))).toEqual([])

  await page.getByText('More', { exact: true }).click()
  await page.getByRole('link', { name: /^Guide/ }).click()
  await readThrough(page)
})

test('the headers of npm start', async ({ request }) => {
  const headers = (await request.get('/')).headers()
  expect(headers['permissions-policy']).toContain('camera=(self), microphone=()')
  expect(headers['referrer-policy']).toBe('no-referrer')
  expect(headers['content-security-policy']).toContain("frame-ancestors 'none'")
  expect(headers['content-security-policy']).not.toMatch(/unsafe-inline|'unsafe-eval'/)
})

test.describe('in a sub-folder', () => {
  const FOLDER = '/her/own/corner/'
  let server: Server
  test.beforeAll(async () => {
    server = createServer((request, response) => {
      const path = new URL(request.url ?? '/', 'http://host').pathname
      const name = path.startsWith(FOLDER) ? path.slice(FOLDER.length) || 'index.html' : undefined
      const file = name === undefined ? undefined : join(DIST, name)
      if (!file?.startsWith(DIST) || !existsSync(file) || !statSync(file).isFile())
        return response.writeHead(404).end()
      response.setHeader('Content-Type', KINDS[extname(file)] ?? 'application/octet-stream')
      createReadStream(file).pipe(response)
    })
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  })
  test.afterAll(() => server.close())

  test('the static folder works, and asks nothing outside of it', async ({ page }) => {
    const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
    const outside: string[] = []
    page.on('request', (request) => {
      if (!request.url().startsWith(origin + FOLDER) && !/^(blob|data):/.test(request.url()))
        outside.push(request.url())
    })
    await page.goto(origin + FOLDER)
    await page.getByRole('button', { name: 'Hang a blouse' }).click()
    await goTo(page, 'Measure')
    await expect(page.locator('h1')).toBeVisible()
    await expect.poll(() => kept(page)).toBe('activated')
    await page.goto(`${origin}${FOLDER}guide/index.html`)
    await readThrough(page)
    expect(outside).toEqual([])
  })
})
