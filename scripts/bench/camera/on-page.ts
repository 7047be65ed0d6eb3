/** Browser side of the reading bench: the pose model alone, called once on each picture. */
import { filesUnder, openDetector, type Detector } from '../../../src/capture/detector.ts'
import { decodePhoto } from '../../../src/capture/photo.ts'
import type { Picture } from '../../../src/capture/picture.ts'
import type { PhotoTask } from '../../estimate/page.ts'

let model: Promise<Detector> | undefined
let pictures: Promise<readonly Picture[]> | undefined

async function opened(tasks: readonly PhotoTask[]): Promise<readonly Picture[]> {
  const photos = []
  for (const { url } of tasks) photos.push(await decodePhoto(await (await fetch(url)).blob()))
  return photos.flatMap((photo) => (photo.ok ? [photo.picture] : []))
}

/** ms for one call on each picture; files, pictures and model are fetched the first time. */
export async function bareModelMs(tasks: readonly PhotoTask[]): Promise<number> {
  model ??= openDetector(filesUnder(new URL('/', location.href).href))
  pictures ??= opened(tasks)
  const [detector, ready] = [await model, await pictures]
  const start = performance.now()
  for (const picture of ready) await detector.find(picture)
  return Math.round(performance.now() - start)
}
