/** Serves the built app on this machine only, prints the address, opens a browser where there is one. */
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { preview } from 'vite'
import { HEADERS } from './headers.mjs'

const DEFAULT_PORT = 4173
const onPath = (/** @type {string} */ name) =>
  (process.env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, name)))

/** A desktop to open a browser on: macOS and Windows have one, Linux says so by a display. */
const desktop =
  process.platform === 'darwin' ||
  process.platform === 'win32' ||
  (Boolean(process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY) && onPath('xdg-open'))

const server = await preview({
  logLevel: 'warn',
  preview: {
    host: '127.0.0.1',
    port: Number(process.env.PORT ?? DEFAULT_PORT),
    open: desktop && !process.env.CI,
    headers: HEADERS,
  },
})
console.log(
  `Tapetrue is at ${server.resolvedUrls?.local[0] ?? 'an unknown address'} (this machine only). Stop it with Ctrl+C.`,
)
