/** Photos are read without WebGL, without wasm SIMD, without wasm, and with a spoilt model. */
import type { Device } from './browser.ts'
import { must, type Tally } from './fault.ts'
import type { Host } from './host.ts'
import { openAt } from './steps.ts'

const PHOTO = new URL('../../../tests/photos/figure-front.jpg', import.meta.url).pathname
const READ_MS = 240_000

async function read({ page }: Device, origin: string): Promise<string> {
  await openAt(page, origin, '#/measure')
  await page.getByLabel('Front photo').setInputFiles(PHOTO)
  await page.getByText('figure-front.jpg', { exact: true }).waitFor()
  return readAgain(page)
}
async function readAgain(page: Device['page']): Promise<string> {
  await page.getByRole('button', { name: 'Read the photos' }).click()
  const done = page.getByText('Photos read.')
  const failed = page.getByRole('alert').filter({ hasText: /\S/ })
  await done.or(failed).first().waitFor({ timeout: READ_MS })
  return (await done.isVisible())
    ? 'Photos read.'
    : (await failed.first().innerText()).replace('Stop:', '')
}

export const FLAGS = {
  'WebGL absent': ['--disable-3d-apis', '--disable-webgl'],
  // V8 says wasm has no SIMD where the processor seems to lack SSE 4.1.
  'wasm SIMD absent': ['--js-flags=--no-enable-sse4-1'],
  'WebAssembly absent': ['--js-flags=--jitless'],
} as const

/** (module (func (result v128) i32.const 0 i8x16.splat …)): valid only where there is SIMD. */
const SIMD = [
  0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 0, 1, 123, 3, 2, 1, 0, 10, 10, 1, 8, 0, 65, 0, 253, 15,
  253, 98, 11,
]

export const readsWithout =
  (what: keyof typeof FLAGS) =>
  async (open: Device, origin: string, tally: Tally): Promise<void> => {
    const holds = await open.page.evaluate((simd) => {
      const canvas = document.createElement('canvas')
      return {
        webgl: canvas.getContext('webgl') !== null || canvas.getContext('webgl2') !== null,
        wasm: typeof WebAssembly === 'object',
        simd: typeof WebAssembly === 'object' && WebAssembly.validate(Uint8Array.from(simd)),
      }
    }, SIMD)
    const gone = {
      'WebGL absent': !holds.webgl,
      'wasm SIMD absent': !holds.simd,
      'WebAssembly absent': !holds.wasm,
    }
    await tally.try(async () => {
      must(gone[what], `the flag did not take it away here: ${JSON.stringify(holds)}`)
      const sentence = await read(open, origin)
      must(what === 'WebAssembly absent' || sentence === 'Photos read.', sentence)
      await openAt(open.page, origin, '#/measure')
      return { sentence }
    })
  }

/** A weight file cut off, then one altered at the same length; after it is whole again it reads. */
export const spoiltModel =
  (server: Host) =>
  async (open: Device, origin: string, tally: Tally): Promise<void> => {
    for (const spoil of [
      (file: Buffer) => file.subarray(0, Math.floor(file.length / 2)),
      (file: Buffer) => Buffer.from(file).fill(7, 1000, 200_000),
    ])
      await tally.try(async () => {
        server.spoil = (path, file) => (path.endsWith('.bin') ? spoil(file) : file)
        const sentence = await read(open, origin)
        must(sentence !== 'Photos read.', 'a spoilt model was used')
        server.spoil = undefined
        const again = await readAgain(open.page)
        must(again === 'Photos read.', `afterwards: ${again}`)
        await open.page.evaluate(async () => {
          for (const name of await caches.keys()) await caches.delete(name)
        })
        return { sentence }
      })
  }
