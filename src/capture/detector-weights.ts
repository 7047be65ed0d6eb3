/**
 * The weight files of the pose model, fetched with a count of bytes and kept in the browser's own
 * cache, so that they cross the net once. HASHES.json beside them says how large each file is and
 * names its content: new weights have a new name in the cache.
 * Format: TensorFlow.js graph model, `modelTopology` and `weightsManifest` (its own documentation).
 */
import type { DetectorFiles, WeightSource } from './detector.ts'

/** Bytes, so far and in all. */
export interface Fetched {
  readonly loaded: number
  readonly total: number
}
type Handler = Exclude<WeightSource, string>
type Artifacts = Awaited<ReturnType<NonNullable<Handler['load']>>>
type Manifest = readonly {
  readonly paths: readonly string[]
  readonly weights: NonNullable<Artifacts['weightSpecs']>
}[]
interface Listed {
  readonly bytes: number
  readonly sha256: string
}

const CACHE = 'pose-model'

/** Rejects when a file does not arrive; what had arrived is kept. */
export async function fetchWeights(
  files: DetectorFiles,
  onFetched?: (fetched: Fetched) => void,
): Promise<DetectorFiles> {
  const { detector, landmarks } = files
  if (typeof detector !== 'string' || typeof landmarks !== 'string') return files
  const list = await listed(new URL('HASHES.json', detector))
  let loaded = 0
  const total = Object.values(list).reduce((sum, file) => sum + file.bytes, 0)
  const get = (url: URL): Promise<Uint8Array<ArrayBuffer>> =>
    bytesOf(url, list[nameOf(url)], (count) => {
      loaded += count
      onFetched?.({ loaded: Math.min(loaded, total), total })
    })
  return {
    ...files,
    detector: await graphModel(new URL(detector), get),
    landmarks: await graphModel(new URL(landmarks), get),
  }
}

async function graphModel(
  url: URL,
  get: (url: URL) => Promise<Uint8Array<ArrayBuffer>>,
): Promise<Handler> {
  const { weightsManifest, ...json } = JSON.parse(
    new TextDecoder().decode(await get(url)),
  ) as Artifacts & { weightsManifest: Manifest }
  const parts: Uint8Array<ArrayBuffer>[] = []
  for (const path of weightsManifest.flatMap((group) => group.paths))
    parts.push(await get(new URL(path, url)))
  const weightSpecs = weightsManifest.flatMap((group) => group.weights)
  const weightData = await new Blob(parts).arrayBuffer()
  return { load: async () => ({ ...json, weightSpecs, weightData }) }
}

async function listed(url: URL): Promise<Readonly<Record<string, Listed>>> {
  const response = await answered(url)
  const { files } = (await response.json()) as { files: Record<string, Listed> }
  return files
}

async function bytesOf(
  url: URL,
  file: Listed | undefined,
  onBytes: (count: number) => void,
): Promise<Uint8Array<ArrayBuffer>> {
  if (!file) throw new Error(`pose model: ${url.pathname} is not on the list`)
  const cache = await ownCache()
  const key = new URL(`?${file.sha256}`, url).href
  const kept = await cache?.match(key)
  const bytes = await counted(kept ?? (await answered(url)), onBytes)
  if (!(await isWhole(bytes, file))) {
    await cache?.delete(key)
    throw new Error(`pose model: ${url.pathname} arrived damaged`)
  }
  if (!kept)
    // A full disk or a private window keeps nothing: then it is fetched again another time.
    await cache?.put(key, new Response(bytes)).catch(() => undefined)
  return bytes
}

/** Spoilt weights would still give numbers; without a secure page only the length can be held. */
async function isWhole(bytes: Uint8Array<ArrayBuffer>, file: Listed): Promise<boolean> {
  if (bytes.length !== file.bytes) return false
  const subtle: SubtleCrypto | undefined = globalThis.crypto?.subtle
  if (!subtle) return true
  const hash = new Uint8Array(await subtle.digest('SHA-256', bytes))
  return Array.from(hash, (b) => b.toString(16).padStart(2, '0')).join('') === file.sha256
}

async function answered(url: URL): Promise<Response> {
  const response = await fetch(url)
  if (!response.ok) throw new Error(`pose model: ${url.pathname} answered ${response.status}`)
  return response
}

async function counted(
  response: Response,
  onBytes: (count: number) => void,
): Promise<Uint8Array<ArrayBuffer>> {
  const parts: Uint8Array<ArrayBuffer>[] = []
  const reader = response.body?.getReader()
  if (!reader) return new Uint8Array(await response.arrayBuffer())
  for (;;) {
    const { done, value } = await reader.read()
    if (done) return new Uint8Array(await new Blob(parts).arrayBuffer())
    parts.push(value)
    onBytes(value.length)
  }
}

/** There is none where the page is not served safely; asking may throw where storage is denied. */
async function ownCache(): Promise<Cache | undefined> {
  try {
    return await globalThis.caches?.open(CACHE)
  } catch {
    return undefined
  }
}

const nameOf = (url: URL): string => url.pathname.split('/').at(-1) ?? ''
