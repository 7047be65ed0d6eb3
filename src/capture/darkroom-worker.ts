/** Decoding, drawing and covering of photos off the main thread: a photo of 50 megapixels takes seconds. */
import type { LiveFrame } from './camera.ts'
import type { DarkroomAnswer, DarkroomTask } from './darkroom.ts'
import { decodePhoto, patched, photoOf } from './photo.ts'

async function done(task: DarkroomTask): Promise<DarkroomAnswer['result']> {
  switch (task.do) {
    case 'decode':
      return { photo: await decodePhoto(task.file) }
    case 'develop':
      return { photo: await photoOf(await bitmapOf(task.frame)) }
    case 'patch':
      return { jpeg: await patched(task.jpeg, task.patch) }
  }
}

async function bitmapOf(frame: LiveFrame): Promise<ImageBitmap> {
  if (!('displayWidth' in frame)) return frame
  const bitmap = await createImageBitmap(frame)
  frame.close()
  return bitmap
}

addEventListener('message', ({ data }: MessageEvent<{ id: number; task: DarkroomTask }>) => {
  const answer = (answer: DarkroomAnswer, transfer: Transferable[] = []): void =>
    postMessage(answer, { transfer })
  done(data.task).then(
    (result) => {
      const { photo } = result
      answer({ id: data.id, result }, photo?.ok ? [photo.picture.data.buffer as ArrayBuffer] : [])
    },
    (problem: unknown) => answer({ id: data.id, result: {}, problem: String(problem) }),
  )
})
