/** The camera road as the screens see it: photographs in, readings out, the model in a worker. */
import { wrap } from 'comlink'
import type { Point } from '../geometry/point.ts'
import type { CameraRoad } from './camera-worker.ts'
import type { Picture } from './picture.ts'
import type { View, ViewReading } from './reading.ts'

/** Which card gives the scale; a plain bank-size card needs the four corners tapped. */
export type CardQuestion =
  { readonly how: 'sheet' } | { readonly how: 'id1'; readonly taps: readonly Point[] }

export interface Camera {
  /** Loads the model ahead of the first photograph; rejects when the files or WebAssembly fail. */
  warm(): Promise<void>
  /** Never refuses as a whole: what was not found stands in the reading as a reason. */
  read(view: View, picture: Picture, card: CardQuestion): Promise<ViewReading>
  close(): void
}

/** `baseUrl` is the absolute address the page was served from, with a slash at the end. */
export function openCamera(baseUrl: string): Camera {
  const worker = new Worker(new URL('./camera-worker.ts', import.meta.url), { type: 'module' })
  const road = wrap<CameraRoad>(worker)
  return {
    warm: () => road.warm(baseUrl),
    read: (view, picture, card) => road.read(baseUrl, view, picture, card),
    close: () => worker.terminate(),
  }
}
