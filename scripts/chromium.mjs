/** Finds a Chromium or Chrome on this machine, and the flags that keep it quiet and local. */
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome']
const FIXED = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
]

/** @returns {string | undefined} path of the browser, or undefined when there is none */
export function findChromium() {
  if (process.env.CHROMIUM) return process.env.CHROMIUM
  const folders = (process.env.PATH ?? '').split(delimiter)
  const onPath = folders.flatMap((folder) => NAMES.map((name) => join(folder, name)))
  return [...onPath, ...FIXED].find((path) => existsSync(path))
}

export const CHROMIUM_FLAGS = [
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]
