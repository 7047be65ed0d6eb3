/** Decoding, drawing and covering of photos off the main thread: a photo of 50 megapixels takes seconds. */
import type { DarkroomAnswer, DarkroomTask } from './darkroom.ts'
import { decodePhoto, patched, photoOf } from './photo.ts'

async function done(task: DarkroomTask): Promise<DarkroomAnswer['result']> {
  switch (task.do) {
    case 'decode':
      return { photo: await decodePhoto(task.file) }
    case 'develop':
      return { photo: await photoOf(task.bitmap) }
    case 'patch':
      return { jpeg: await patched(task.jpeg, task.patch) }
  }
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
