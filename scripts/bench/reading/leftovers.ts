/** What is still held after many photos in a row: tensors of the worker, heap, blobs, their addresses. */
import type { CDPSession, Page, Worker } from 'playwright-core'
import { readThree } from './in-app.ts'

export interface Leftovers {
  readonly inARow: number
  readonly tensors: readonly [number, number]
  readonly tensorBytes: readonly [number, number]
  readonly heapMb: readonly [number, number]
  readonly blobs: readonly [number, number]
  readonly addresses: readonly [number, number]
}

declare global {
  interface Window {
    benchAddresses?: Set<string>
  }
}

/** @returns each as it was before and after; the page has read at least once */
export async function leftBehind(page: Page, photos: number): Promise<Leftovers> {
  await page.evaluate(countAddresses)
  const session = await page.context().newCDPSession(page)
  // The addresses of the photos on the table now were made before the counting began.
  await readThree(page)
  const before = await held(page, session)
  const rounds = Math.ceil(photos / 3)
  for (let k = 0; k < rounds; k++) await readThree(page)
  const after = await held(page, session)
  const pair = (of: (at: Held) => number): readonly [number, number] => [of(before), of(after)]
  return {
    inARow: 3 * rounds,
    tensors: pair((at) => at.tensors),
    tensorBytes: pair((at) => at.bytes),
    heapMb: pair((at) => at.heapMb),
    blobs: pair((at) => at.blobs),
    addresses: pair((at) => at.addresses),
  }
}

function countAddresses(): void {
  const open = new Set<string>()
  const [make, revoke] = [URL.createObjectURL.bind(URL), URL.revokeObjectURL.bind(URL)]
  URL.createObjectURL = (what) => {
    const address = make(what)
    open.add(address)
    return address
  }
  URL.revokeObjectURL = (address) => {
    open.delete(address)
    revoke(address)
  }
  window.benchAddresses = open
}

interface Held {
  readonly tensors: number
  readonly bytes: number
  readonly heapMb: number
  readonly blobs: number
  readonly addresses: number
}

async function held(page: Page, session: CDPSession): Promise<Held> {
  await session.send('HeapProfiler.collectGarbage')
  const { usedSize } = await session.send('Runtime.getHeapUsage')
  const { numTensors, numBytes } = await tensorsOf(page.workers())
  const addresses = await page.evaluate(() => window.benchAddresses?.size ?? NaN)
  const heapMb = Math.round(usedSize / 1e5) / 10
  return { tensors: numTensors, bytes: numBytes, heapMb, blobs: await blobs(session), addresses }
}

/** The tensor library keeps its engine at the worker's own global object. */
async function tensorsOf(
  workers: readonly Worker[],
): Promise<{ numTensors: number; numBytes: number }> {
  for (const worker of workers) {
    const memory = await worker.evaluate(() => {
      const { _tfengine } = globalThis as unknown as {
        _tfengine?: { memory(): { numTensors: number; numBytes: number } }
      }
      const { numTensors, numBytes } = _tfengine?.memory() ?? {}
      return numTensors === undefined || numBytes === undefined ? null : { numTensors, numBytes }
    })
    if (memory) return memory
  }
  throw new Error('no worker of the page holds the model')
}

/** Blobs and files the page can still reach. */
async function blobs(session: CDPSession): Promise<number> {
  const asked = await session.send('Runtime.evaluate', { expression: 'Blob.prototype' })
  const prototypeObjectId = asked.result.objectId
  if (prototypeObjectId === undefined) throw new Error('the page has no Blob')
  const { objects } = await session.send('Runtime.queryObjects', { prototypeObjectId })
  if (objects.objectId === undefined) throw new Error('the blobs could not be counted')
  const length = await session.send('Runtime.callFunctionOn', {
    objectId: objects.objectId,
    functionDeclaration: 'function () { return this.length }',
    returnByValue: true,
  })
  await session.send('Runtime.releaseObject', { objectId: objects.objectId })
  return Number(length.result.value)
}
