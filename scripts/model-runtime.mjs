/**
 * Serves the WebAssembly files of the installed @tensorflow/tfjs-backend-wasm under wasm/, in
 * development and in the build, so that code and binaries are always of one version.
 */
import { createReadStream, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'

const FILES = ['tfjs-backend-wasm.wasm', 'tfjs-backend-wasm-simd.wasm']
const folder = dirname(createRequire(import.meta.url).resolve('@tensorflow/tfjs-backend-wasm'))

/** @returns {import('vite').Plugin} */
export function copyModelRuntime() {
  return {
    name: 'model-runtime',
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        const file = FILES.find((name) => request.url?.split('?')[0]?.endsWith(`/wasm/${name}`))
        if (!file) return next()
        response.setHeader('Content-Type', 'application/wasm')
        createReadStream(join(folder, file)).pipe(response)
      })
    },
    generateBundle() {
      for (const name of FILES)
        this.emitFile({
          type: 'asset',
          fileName: `wasm/${name}`,
          source: readFileSync(join(folder, name)),
        })
    },
  }
}
