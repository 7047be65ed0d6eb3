/**
 * The photos of a muslin taken in one sitting: read while she stands, the head covered in the pixels
 * that are kept, each laid to its round. A photo that could not be read is kept as it is.
 */
import type { Camera } from '../../capture/camera.ts'
import type { Darkroom } from '../../capture/darkroom.ts'
import { VIEWS, type View } from '../../capture/reading.ts'
import type { Round } from '../../rounds/round.ts'
import type { LiveTools, Read, Shot, Shots } from '../measure/photos/live-desk.svelte.ts'
import { headPatch } from '../measure/photos/patch.ts'
import { VIEW_WORDS } from '../measure/photos/words.ts'
import type { Session } from '../session.svelte.ts'

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

const UNCOVERED = (view: View): string =>
  `The head could not be covered in the ${view} photo. It is kept, under paper on the screen only.`
const NOT_KEPT = 'A photo was not kept. Take it once more.'

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
      const jpeg = covered && read ? await this.#coveredOf(shot, read) : shot.photo.jpeg
      if (!jpeg) problem = UNCOVERED(view)
      const about = { view, garmentId: round.garmentId, roundId: round.id }
      const sha256 = await session.keepPhoto(jpeg ?? shot.photo.jpeg, about)
      const kept =
        sha256 !== undefined &&
        (await session.notePhoto(round, view, sha256)) &&
        (!read ||
          (await session.noteRead(sha256, {
            reading: read.reading,
            ...(read.sight && { muslin: read.sight }),
          })))
      if (!kept) return { count, problem: session.problem ?? NOT_KEPT }
      URL.revokeObjectURL(shot.url)
      count += 1
    }
    return { count, problem }
  }

  /** Only where somebody was found: a guess at the head would lie over the neck of the muslin. */
  #coveredOf({ photo }: Shot, { reading }: Read): Promise<Blob | undefined> {
    if (!reading.person.ok) return Promise.resolve(photo.jpeg)
    const patch = headPatch(photo.picture, reading)
    return this.#workers.darkroom.patch(photo.jpeg, patch).catch(() => undefined)
  }
}

/** "Front and back of muslin 2 are kept." */
export function keptSaid(shots: Shots, round: number): string {
  const views = VIEWS.filter((view) => shots[view]).map((view) => VIEW_WORDS[view].toLowerCase())
  const last = views.pop()
  if (last === undefined) return ''
  const all = views.length > 0 ? `${views.join(', ')} and ${last}` : last
  return `Kept with round ${round}: ${all}.`
}
