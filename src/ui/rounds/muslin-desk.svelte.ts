/**
 * Photos of muslins being read: one after the other, in the worker of the camera road, with a stop.
 * What was read is kept with the photo at once, so nothing is read twice.
 */
import { pageCamera, type Camera } from '../../capture/camera.ts'
import { openDarkroom, type Darkroom } from '../../capture/darkroom.ts'
import type { Fetched } from '../../capture/detector-weights.ts'
import { linesOf } from '../../capture/muslin-lines.ts'
import type { View } from '../../capture/reading.ts'
import type { Session } from '../session.svelte.ts'
import { headCovered } from './covered-head.ts'
import { READING_WORDS, TAKE_WORDS } from './photos.words.ts'

export interface ToRead {
  readonly sha256: string
  readonly view: View
  readonly round: number
}

export class MuslinDesk {
  reading = $state.raw(false)
  fetched = $state.raw<Fetched | undefined>()
  status = $state.raw('')
  problem = $state.raw<string | undefined>()
  /** A head that is found is covered in the pixels that are kept. */
  covered = $state(true)
  readonly #session: Session
  readonly #openCamera: () => Camera
  readonly #openDarkroom: () => Darkroom
  #camera: Camera | undefined
  #darkroom: Darkroom | undefined
  /** Counts the runs: what an earlier one still brings is not listened to. */
  #run = 0

  constructor(
    session: Session,
    camera: () => Camera = pageCamera,
    darkroom: () => Darkroom = openDarkroom,
  ) {
    this.#session = session
    this.#openCamera = camera
    this.#openDarkroom = darkroom
  }

  camera = (): Camera => (this.#camera ??= this.#openCamera())
  dropCamera = (): void => {
    this.#camera?.close()
    this.#camera = undefined
  }
  get darkroom(): Darkroom {
    return (this.#darkroom ??= this.#openDarkroom())
  }

  async read(photos: readonly ToRead[]): Promise<void> {
    if (this.reading || photos.length === 0) return
    const run = (this.#run += 1)
    const stopped = (): boolean => run !== this.#run
    this.reading = true
    this.problem = undefined
    this.status = READING_WORDS.fetching
    try {
      const camera = this.camera()
      await camera.warm((fetched) => {
        if (!stopped()) this.fetched = fetched
      })
      for (const [k, photo] of photos.entries()) {
        if (stopped()) return
        this.fetched = undefined
        this.status = READING_WORDS.reading(k + 1, photos.length, photo.round)
        const refused = await this.#one(camera, photo)
        if (stopped()) return
        if (refused !== undefined) this.problem = refused
      }
      this.status = this.problem === undefined ? READING_WORDS.read : ''
    } catch {
      if (stopped()) return
      this.status = ''
      this.problem = READING_WORDS.failed
      this.dropCamera()
    } finally {
      if (!stopped()) {
        this.reading = false
        this.fetched = undefined
      }
    }
  }

  /** Why this photo was not read, or undefined. */
  async #one(camera: Camera, { sha256, view }: ToRead): Promise<string | undefined> {
    const blob = await this.#session.readPhoto(sha256)
    if (!blob) return READING_WORDS.gone
    const opened = await this.darkroom.decode(blob)
    if (!opened.ok) return opened.reason
    const { reading, sight } = await camera.muslin(view, opened.picture)
    const [kept] = await this.#session.keptPhotos({ named: [sha256] })
    const old = kept?.muslin
    const traced = (old?.lines ?? []).filter((line) => line.by === 'hand')
    const muslin = { ...old, ...sight, lines: linesOf([...traced, ...sight.lines]) }
    const read = { reading, muslin }
    const jpeg = this.covered ? await headCovered(this.darkroom, opened, reading) : opened.jpeg
    const done =
      jpeg && jpeg !== opened.jpeg
        ? await this.#session.keepCovered(sha256, jpeg, read)
        : await this.#session.noteRead(sha256, read)
    if (!done) return this.#session.problem
    return jpeg ? undefined : TAKE_WORDS.uncovered(view)
  }

  stop = (): void => {
    this.#run += 1
    this.reading = false
    this.fetched = undefined
    this.status = READING_WORDS.stopped
    this.dropCamera()
  }
  leave = (): void => {
    this.#run += 1
    this.dropCamera()
    this.#darkroom?.close()
    this.#darkroom = undefined
  }
}
