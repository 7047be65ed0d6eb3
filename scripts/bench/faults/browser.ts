/** A Chromium of its own with a profile on the disk, that can be killed like a phone that goes out. */
import { spawn, type ChildProcess } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Browser, type Page } from 'playwright-core'
import { CHROMIUM_FLAGS, findChromium } from '../../chromium.mjs'

export interface Device {
  readonly page: Page
  readonly browser: Browser
  /** SIGKILL to every process of this browser, at once. */
  kill(): Promise<void>
  /** Closed as she would close it. */
  close(): Promise<void>
}

export const newProfile = (): string => mkdtempSync(join(tmpdir(), 'faults-'))
export const removeProfile = (profile: string): void =>
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 })

const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms))
const START_MS = 30_000

export async function device(profile: string, flags: readonly string[] = []): Promise<Device> {
  const executable = findChromium()
  if (!executable) throw new Error('no Chromium or Chrome is found here')
  const port = join(profile, 'DevToolsActivePort')
  rmSync(port, { force: true })
  const child = spawn(
    executable,
    [
      ...CHROMIUM_FLAGS,
      '--headless=new',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      '--hide-crash-restore-bubble',
      ...flags,
      'about:blank',
    ],
    { detached: true, stdio: 'ignore' },
  )
  const exited = new Promise<void>((done) => child.once('exit', () => done()))
  const until = Date.now() + START_MS
  while (!existsSync(port) || readFileSync(port, 'utf8').split('\n').length < 2) {
    if (Date.now() > until) throw new Error('the browser did not start')
    await pause(40)
  }
  const [number] = readFileSync(port, 'utf8').split('\n')
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${number}`)
  const context = browser.contexts()[0]
  if (!context) throw new Error('the browser has no window')
  const page = context.pages()[0] ?? (await context.newPage())
  page.setDefaultTimeout(START_MS)
  return {
    page,
    browser,
    kill: async () => {
      killGroup(child)
      await exited
      await browser.close().catch(() => undefined)
    },
    close: async () => {
      const session = await browser.newBrowserCDPSession()
      await session.send('Browser.close').catch(() => undefined)
      await Promise.race([exited, pause(10_000).then(() => killGroup(child))])
      await exited
    },
  }
}

/** The browser leads a process group of its own, so only what it started is ended. */
function killGroup({ pid }: ChildProcess): void {
  try {
    if (pid !== undefined) process.kill(-pid, 'SIGKILL')
  } catch {
    // It has ended by itself.
  }
}

/** A window and not a tab behind the first one: a browser lets hidden tabs rest. */
export async function anotherWindow(page: Page): Promise<Page> {
  const context = page.context()
  const opened = context.waitForEvent('page')
  const cdp = await context.newCDPSession(page)
  await cdp.send('Target.createTarget', { url: 'about:blank', newWindow: true })
  return opened
}
