/**
 * The photos of a muslin taken in one sitting: read while she stands, the head covered in the pixels
 * that are kept, each laid to its round. A photo that could not be read is kept as it is.
 */
import type { Camera } from '../../capture/camera.ts'
import type { Darkroom } from '../../capture/darkroom.ts'
import { VIEWS, type View } from '../../capture/reading.ts'
import type { Round } from '../../rounds/round.ts'
import type { LiveTools, Read, Shots } from '../measure/photos/live-desk.svelte.ts'
import type { Session } from '../session.svelte.ts'
import { headCovered } from './covered-head.ts'
import { TAKE_WORDS } from './photos.words.ts'

interface Workers {
  readonly camera: () => Camera
  readonly dropCamera: () => void
  readonly darkroom: Darkroom
}
export interface Kept {
  readonly count: number
  /** Why one was not kept, or was kept without its head covered. */
  readonly problem: string | undefined
}

/** One sitting: its tools, and what becomes of the shots when it ends. */
export class Sitting {
  readonly #workers: Workers
  /** The last reading begun of each view: the last photo is still being read when she leaves. */
  readonly #underway = new Map<View, Promise<Read>>()

  constructor(workers: Workers) {
    this.#workers = workers
  }

  tools(): LiveTools {
    const { camera, dropCamera, darkroom } = this.#workers
    return {
      camera,
      dropCamera,
      darkroom,
      read: (view, picture) => {
        const reading = camera().muslin(view, picture)
        this.#underway.set(view, reading)
        return reading
      },
    }
  }

  /** Keeps every shot with the round, first to last; stops at the first the store does not take. */
  async keep(session: Session, round: Round, shots: Shots, covered: boolean): Promise<Kept> {
    let [count, problem] = [0, undefined as string | undefined]
    for (const view of VIEWS) {
      const shot = shots[view]
      if (!shot) continue
      const read = shot.reading
        ? (shot as Read)
        : await this.#underway.get(view)?.catch(() => undefined)
      const jpeg =
        covered && read
          ? await headCovered(this.#workers.darkroom, shot.photo, read.reading)
          : shot.photo.jpeg
      if (!jpeg) problem = TAKE_WORDS.uncovered(view)
      const sha256 = await session.addPhoto(jpeg ?? shot.photo.jpeg, round, { view })
      const kept =
        sha256 !== undefined &&
        (!read ||
          (await session.noteRead(sha256, {
            reading: read.reading,
            ...(read.sight && { muslin: read.sight }),
          })))
      if (!kept) return { count, problem: session.problem ?? TAKE_WORDS.notKept }
      URL.revokeObjectURL(shot.url)
      count += 1
    }
    return { count, problem }
  }
}

/** Which views were kept, in one sentence; empty where none was. */
export function keptSaid(shots: Shots, round: number): string {
  const views = VIEWS.filter((view) => shots[view])
  return views.length === 0 ? '' : TAKE_WORDS.kept(views, round)
}
