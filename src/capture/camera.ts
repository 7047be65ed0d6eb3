/** The camera road as the screens see it: photographs in, readings out, the model in a worker. */
import { proxy, transfer, wrap } from 'comlink'
import type { Point } from '../geometry/point.ts'
import type { CameraRoad } from './camera-worker.ts'
import type { CardSize } from './card.ts'
import type { Fetched } from './detector-weights.ts'
import type { Sight } from './live-pose.ts'
import type { MuslinSight } from './muslin-sight.ts'
import type { Picture } from './picture.ts'
import type { View, ViewReading } from './reading.ts'

/**
 * Which card gives the scale; a plain card needs its four corners tapped. It is of bank size unless
 * another size is given: A4, Letter, or a rectangle she measured (card.ts).
 */
export type CardQuestion =
  | { readonly how: 'sheet' }
  | { readonly how: 'id1'; readonly taps: readonly Point[]; readonly size?: CardSize }

/** A frame as the page takes it from a video; the worker does the drawing and closes it. */
export type LiveFrame = ImageBitmap | VideoFrame

export interface MuslinRead {
  readonly reading: ViewReading
  readonly sight: MuslinSight
}

/** Every call rejects when the worker breaks or is closed; none is left waiting. */
export interface Camera {
  /** Loads the model ahead of the first photograph; rejects when the files or WebAssembly fail. */
  warm(onFetched?: (fetched: Fetched) => void): Promise<void>
  /** Never refuses as a whole: what was not found stands in the reading as a reason. */
  read(view: View, picture: Picture, card: CardQuestion): Promise<ViewReading>
  /** The photo of a muslin: the same reading, and what it shows of the cloth. */
  muslin(view: View, picture: Picture): Promise<MuslinRead>
  /** One frame of the live picture, given away: its joints, or undefined when nobody is seen. */
  look(frame: LiveFrame): Promise<Sight | undefined>
  close(): void
}

/** The page's own, which knows where its model lies. */
export const pageCamera = (): Camera => openCamera(new URL('./', location.href).href)

/** `baseUrl` is the absolute address the page was served from, with a slash at the end. */
export function openCamera(baseUrl: string): Camera {
  const worker = new Worker(new URL('./camera-worker.ts', import.meta.url), { type: 'module' })
  const road = wrap<CameraRoad>(worker)
  const open = new Set<(problem: Error) => void>()
  let broken: Error | undefined
  const fail = (problem: Error): void => {
    broken ??= problem
    for (const reject of open) reject(problem)
    open.clear()
  }
  // A worker that cannot start, or throws outside a call, answers nothing more.
  worker.onerror = (event) => {
    event.preventDefault()
    fail(new Error(`camera worker: ${event.message || 'did not start'}`))
  }
  worker.onmessageerror = () => fail(new Error('camera worker: a message could not be read'))

  function asked<T>(call: () => Promise<T>): Promise<T> {
    if (broken) return Promise.reject(broken)
    return new Promise((resolve, reject) => {
      open.add(reject)
      void call()
        .then(resolve, reject)
        .finally(() => open.delete(reject))
    })
  }
  return {
    warm: (onFetched) => asked(() => road.warm(baseUrl, onFetched && proxy(onFetched))),
    read: (view, picture, card) => asked(() => road.read(baseUrl, view, picture, card)),
    muslin: (view, picture) => asked(() => road.muslin(baseUrl, view, picture)),
    look: (frame) => asked(() => road.look(baseUrl, transfer(frame, [frame]))),
    close: () => {
      worker.terminate()
      fail(new Error('camera worker: closed'))
    },
  }
}
