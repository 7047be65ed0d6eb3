/** Browser side of the camera bench's timing: the whole road beside the bare model, and what is left over. */
import { memory } from '@tensorflow/tfjs-core'
import { filesUnder, openDetector } from '../../../src/capture/detector.ts'
import { decodePhoto } from '../../../src/capture/photo.ts'
import type { Picture } from '../../../src/capture/picture.ts'
import type { BodyAnswer, PhotoTask } from '../../estimate/page.ts'

export interface Timing {
  /** Reading the photos end to end, decoding and estimates included, ms; best of the rounds. */
  readonly roadMs: number
  /** The pose model alone on the same pictures, ms; best of the rounds. */
  readonly modelMs: number
  readonly ratio: number
  /** Of the road: opening the files and writing them anew without metadata, ms. */
  readonly decodeMs: number
  /** Photos read in a row, and tensors held by the model before and after. */
  readonly inARow: number
  readonly tensorsBefore: number
  readonly tensorsAfter: number
  readonly bytesBefore: number
  readonly bytesAfter: number
}

const ROUNDS = 3

/** @param measure the whole road, in the worker as in the app */
export async function timeBody(
  tasks: readonly PhotoTask[],
  inARow: number,
  measure: (tasks: readonly PhotoTask[]) => Promise<BodyAnswer>,
): Promise<Timing> {
  const pictures: Picture[] = []
  let start = performance.now()
  for (const { url } of tasks) {
    const photo = await decodePhoto(await (await fetch(url)).blob())
    if (photo.ok) pictures.push(photo.picture)
  }
  const decodeMs = Math.round(performance.now() - start)
  const model = await openDetector(filesUnder(new URL('/', location.href).href))
  let [roadMs, modelMs] = [Infinity, Infinity]
  // In turns, so that a busy moment of the machine meets both alike.
  for (let round = 0; round < ROUNDS; round++) {
    start = performance.now()
    for (const picture of pictures) await model.find(picture)
    if (round > 0) modelMs = Math.min(modelMs, performance.now() - start)
    start = performance.now()
    await measure(tasks)
    if (round > 0) roadMs = Math.min(roadMs, performance.now() - start)
  }
  const before = memory()
  for (let k = 0; k < inARow; k++) {
    const picture = pictures[k % pictures.length]
    const person = picture && (await model.find(picture))
    if (picture && person) await model.hasCompany(picture, person)
  }
  const after = memory()
  model.close()
  return {
    roadMs: Math.round(roadMs),
    modelMs: Math.round(modelMs),
    ratio: Math.round((100 * roadMs) / modelMs) / 100,
    decodeMs,
    inARow,
    tensorsBefore: before.numTensors,
    tensorsAfter: after.numTensors,
    bytesBefore: before.numBytes,
    bytesAfter: after.numBytes,
  }
}
