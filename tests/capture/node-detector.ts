/** The pose model in plain Node: committed weights, WebAssembly of the installed package. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import { openDetector, type Detector, type WeightSource } from '../../src/capture/detector.ts'

const MODELS = fileURLToPath(new URL('../../public/models/', import.meta.url))

interface ModelFile {
  readonly modelTopology: object
  readonly weightsManifest: readonly { readonly weights: readonly object[] }[]
}

function weights(name: string): WeightSource {
  const load = (): Promise<object> => {
    const file = JSON.parse(readFileSync(`${MODELS}${name}.json`, 'utf8')) as ModelFile
    const bytes = readFileSync(`${MODELS}${name}.bin`)
    return Promise.resolve({
      ...file,
      weightSpecs: file.weightsManifest.flatMap((group) => group.weights),
      weightData: bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength),
    })
  }
  return { load } as WeightSource
}

export function nodeDetector(): Promise<Detector> {
  const wasm = dirname(createRequire(import.meta.url).resolve('@tensorflow/tfjs-backend-wasm'))
  return openDetector({
    detector: weights('blazepose-detector'),
    landmarks: weights('blazepose-full'),
    wasm: `${wasm}/`,
  })
}
