/**
 * Builds the page of the camera road with the app's own configuration and serves it, with the
 * photographs, on 127.0.0.1. A build rather than a development server: nothing is reloaded while
 * a body is measured, and the policy of the built app holds here as well.
 */
import { createReadStream, existsSync, mkdtempSync, rmSync, statSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { extname, join, resolve, sep } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'
import { arucoModule } from '../aruco-module.mjs'
import { CAMERA_ROAD } from './mode.mjs'

const root = fileURLToPath(new URL('../../', import.meta.url))
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.wasm': 'application/wasm',
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.png': 'image/png',
}
export const PHOTOS = '/photos/'

export interface Served {
  readonly origin: string
  readonly page: string
  close(): void
}

/** @param photos folder whose files are served under PHOTOS */
export async function serveCamera(photos: string): Promise<Served> {
  const outDir = mkdtempSync(join(tmpdir(), 'camera-road-'))
  try {
    const input = join(root, 'scripts/estimate/index.html')
    await build({
      root,
      mode: CAMERA_ROAD,
      logLevel: 'error',
      plugins: [arucoModule()],
      build: { outDir, emptyOutDir: true, minify: false, rollupOptions: { input } },
    })
  } catch (problem) {
    rmSync(outDir, { recursive: true, force: true })
    throw problem
  }
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname)
    const [base, name] = path.startsWith(PHOTOS)
      ? [photos, path.slice(PHOTOS.length)]
      : [outDir, path]
    const file = resolve(join(base, name))
    const within = file.startsWith(resolve(base) + sep)
    if (!within || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end()
      return
    }
    const type = TYPES[extname(file).toLowerCase()] ?? 'application/octet-stream'
    response.writeHead(200, { 'Content-Type': type })
    createReadStream(file).pipe(response)
  })
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const { port } = server.address() as AddressInfo
  const origin = `http://127.0.0.1:${port}`
  return {
    origin,
    page: `${origin}/scripts/estimate/index.html`,
    close: () => {
      server.close()
      server.closeAllConnections()
      rmSync(outDir, { recursive: true, force: true })
    },
  }
}
