/** The built app served as `npm start` serves it, with a place to spoil an answer. */
import { readFileSync, statSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join, normalize } from 'node:path'
import { HEADERS } from '../../headers.mjs'

const DIST = new URL('../../../dist/', import.meta.url).pathname
const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json',
  '.wasm': 'application/wasm',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
}

/** What is sent in place of the file. */
export type Spoil = (path: string, file: Buffer) => Buffer

export interface Host {
  readonly origin: string
  spoil: Spoil | undefined
  close(): void
}

export async function host(): Promise<Host> {
  const state: { spoil: Spoil | undefined } = { spoil: undefined }
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://host').pathname
    const file = normalize(join(DIST, path === '/' ? 'index.html' : path))
    const there = file.startsWith(DIST) && statSync(file, { throwIfNoEntry: false })?.isFile()
    if (!there) {
      response.writeHead(404).end()
      return
    }
    for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value)
    response.setHeader('Content-Type', KINDS[extname(file)] ?? 'application/octet-stream')
    const whole = readFileSync(file)
    response.end(state.spoil ? state.spoil(path, whole) : whole)
  })
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  return Object.assign(state, {
    origin,
    close: () => {
      server.closeAllConnections()
      server.close()
    },
  })
}
