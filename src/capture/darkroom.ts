/** Photos opened, taken and covered by a worker, so that the page stays quick. Nothing leaves the device. */
import type { LiveFrame } from './camera.ts'
import type { PhotoOutcome } from './photo.ts'
import { PHOTO_WORDS } from './photo.words.ts'

/** Picture px. */
export interface Patch {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}
export type DarkroomTask =
  | { readonly do: 'decode'; readonly file: Blob }
  | { readonly do: 'develop'; readonly frame: LiveFrame }
  | { readonly do: 'patch'; readonly jpeg: Blob; readonly patch: Patch }
export interface DarkroomAnswer {
  readonly id: number
  readonly result: { readonly photo?: PhotoOutcome; readonly jpeg?: Blob }
  readonly problem?: string
}

export interface Darkroom {
  /** A file she chose; a file that cannot be used comes back with a sentence. */
  decode(file: Blob): Promise<PhotoOutcome>
  /** A frame of the live picture, given away. */
  develop(frame: LiveFrame): Promise<PhotoOutcome>
  /** The photo with a patch of paper in its pixels; rejects when that failed. */
  patch(jpeg: Blob, patch: Patch): Promise<Blob>
  close(): void
}

/** The worker starts with the first task and rests until the next one. */
export function openDarkroom(): Darkroom {
  let worker: Worker | undefined
  let next = 0
  const open = new Map<number, (answer: DarkroomAnswer) => void>()

  function fail(problem: string): void {
    for (const [id, settle] of open) settle({ id, result: {}, problem })
    open.clear()
    worker?.terminate()
    worker = undefined
  }
  function begun(): Worker {
    const made = new Worker(new URL('./darkroom-worker.ts', import.meta.url), { type: 'module' })
    made.onmessage = ({ data }: MessageEvent<DarkroomAnswer>) => {
      open.get(data.id)?.(data)
      open.delete(data.id)
    }
    made.onerror = (event) => {
      event.preventDefault()
      fail(event.message || 'not-started')
    }
    return made
  }
  function asked(task: DarkroomTask, transfer: Transferable[] = []): Promise<DarkroomAnswer> {
    worker ??= begun()
    const id = next++
    const answer = new Promise<DarkroomAnswer>((settle) => open.set(id, settle))
    worker.postMessage({ id, task }, transfer)
    return answer
  }
  const photo = async (task: DarkroomTask, transfer?: Transferable[]): Promise<PhotoOutcome> =>
    (await asked(task, transfer)).result.photo ?? { ok: false, reason: PHOTO_WORDS.noRoomReload }
  return {
    decode: (file) => photo({ do: 'decode', file }),
    develop: (frame) => photo({ do: 'develop', frame }, [frame]),
    patch: async (jpeg, patch) => {
      const { result, problem } = await asked({ do: 'patch', jpeg, patch })
      if (!result.jpeg) throw new Error(`photo patch: ${problem ?? 'no picture came back'}`)
      return result.jpeg
    },
    close: () => fail('closed'),
  }
}
