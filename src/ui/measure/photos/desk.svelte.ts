/**
 * The photos that lie on the table: chosen, read, their points put right, accepted. Holds pixels
 * only while the page is open; what is kept goes through the session. Long, because a photo that is
 * exchanged takes its taps, reading and address with it.
 */
import { estimatesFrom } from '../../../capture/estimates-from.ts'
import type { Camera, CardQuestion } from '../../../capture/camera.ts'
import type { CardSize } from '../../../capture/card.ts'
import { shareLevels } from '../../../capture/levels.ts'
import { openDarkroom, type Darkroom } from '../../../capture/darkroom.ts'
import type { Fetched } from '../../../capture/detector-weights.ts'
import type { Picture } from '../../../capture/picture.ts'
import {
  movePoint,
  VIEWS,
  type PointName,
  type Readings,
  type View,
  type ViewReading,
} from '../../../capture/reading.ts'
import type { Point } from '../../../geometry/point.ts'
import { SCALE_BY, type ScaleBy } from './scale-by.ts'
import type { Shots } from './live-desk.svelte.ts'
import { headPatch } from './patch.ts'
import { DESK_WORDS as W } from './photos.words.ts'

/** A file she chose: being opened, refused with a sentence, or open. */
export type Chosen =
  | { readonly how: 'opening'; readonly name: string }
  | { readonly how: 'refused'; readonly name: string; readonly reason: string }
  | {
      readonly how: 'open'
      readonly name: string
      readonly picture: Picture
      readonly jpeg: Blob
      readonly url: string
    }
type Open = Extract<Chosen, { how: 'open' }>
type PerView<T> = Readonly<Partial<Record<View, T>>>

const CORNERS = 4

export class PhotoDesk {
  chosen = $state.raw<PerView<Chosen>>({})
  readings = $state.raw<Readings>({})
  taps = $state.raw<PerView<readonly Point[]>>({})
  card = $state<ScaleBy>('sheet')
  /** A rectangle she measured herself, where that gives the scale. */
  own = $state.raw<CardSize | undefined>()
  view = $state<View>('front')
  reading = $state(false)
  /** Points were accepted as they lie now. */
  accepted = $state(false)
  /** The head is covered on the screen and in the pixels that are kept. */
  covered = $state(true)
  /** How much of the model has arrived; undefined when nothing is being fetched. */
  fetched = $state.raw<Fetched | undefined>()
  status = $state('')
  problem = $state<string | undefined>()

  /** Readings with the levels one photo lends another, as they are shown and measured. */
  shared = $derived(shareLevels(this.readings))
  outcomes = $derived(estimatesFrom(this.readings))
  /** A plain card or paper: she taps its corners, where our sheet is found by its marker. */
  tapped = $derived(this.card !== 'sheet')
  chosenAny = $derived(VIEWS.some((view) => this.chosen[view]))
  read = $derived(VIEWS.filter((view) => this.readings[view]))
  toRead = $derived(VIEWS.filter((view) => this.photo(view) && !this.readings[view]))

  readonly #openCamera: () => Camera
  readonly darkroom: Darkroom
  #camera: Camera | undefined
  #stop: (() => void) | undefined

  constructor(open: () => Camera, darkroom: Darkroom = openDarkroom()) {
    this.#openCamera = open
    this.darkroom = darkroom
  }

  /** The one camera road of this page, for the live hints as well. */
  camera = (): Camera => (this.#camera ??= this.#openCamera())
  dropCamera = (): void => {
    this.#camera?.close()
    this.#camera = undefined
  }

  photo(view: View): Open | undefined {
    const chosen = this.chosen[view]
    return chosen?.how === 'open' ? chosen : undefined
  }

  async choose(view: View, file: File): Promise<void> {
    this.#drop(view)
    const opening: Chosen = { how: 'opening', name: file.name }
    this.chosen = { ...this.chosen, [view]: opening }
    const outcome = await this.darkroom.decode(file)
    // She may have chosen another file, or left, while this one was being opened.
    if (this.chosen[view] !== opening) return
    const name = file.name
    const chosen: Chosen = outcome.ok
      ? { how: 'open', name, ...outcome, url: URL.createObjectURL(outcome.jpeg) }
      : { how: 'refused', name, reason: outcome.reason }
    this.chosen = { ...this.chosen, [view]: chosen }
    if (outcome.ok) this.view = view
    this.status = outcome.ok ? W.opened[view] : ''
  }

  /** Photos taken here: on the table as if they had been chosen, with what was read from them. */
  lay(shots: Shots): void {
    for (const view of VIEWS) {
      const shot = shots[view]
      if (!shot) continue
      this.#drop(view)
      const { photo, url, reading } = shot
      const open: Open = { how: 'open', name: W.takenHere, ...photo, url }
      this.chosen = { ...this.chosen, [view]: open }
      if (reading && this.card === 'sheet') this.#show(reading)
      this.view = VIEWS.find((v) => this.photo(v)) ?? view
    }
    const count = VIEWS.filter((view) => shots[view]).length
    if (count > 0) this.status = W.onTable(count)
  }

  /** The photo as it is kept: with the head covered in its pixels, unless she switched that off. */
  async toKeep(view: View): Promise<Blob | undefined> {
    const photo = this.photo(view)
    if (!photo || !this.covered) return photo?.jpeg
    return this.darkroom.patch(photo.jpeg, headPatch(photo.picture, this.readings[view]))
  }

  pickCard(card: ScaleBy, own?: CardSize): void {
    this.card = card
    this.own = own
    this.readings = {}
    this.accepted = false
    this.status = ''
  }
  setTaps(view: View, taps: readonly Point[]): void {
    this.taps = { ...this.taps, [view]: taps.slice(0, CORNERS) }
  }

  /** Why the photos cannot be read yet; undefined when they can. */
  whyNotRead = $derived.by((): string | undefined => {
    if (VIEWS.some((view) => this.chosen[view]?.how === 'opening')) return W.opening
    if (this.toRead.length === 0) return this.read.length > 0 ? W.allRead : W.chooseFirst
    if (this.card === 'own' && !this.own) return W.bothSides
    const untapped = this.toRead.find((view) => (this.taps[view]?.length ?? 0) < CORNERS)
    return this.tapped && untapped ? W.tapFirst[untapped] : undefined
  })

  async readAll(): Promise<void> {
    if (this.whyNotRead !== undefined || this.reading) return
    this.reading = true
    this.problem = undefined
    this.status = W.fetching
    const stopped = new Promise<'stopped'>((resolve) => {
      this.#stop = () => resolve('stopped')
    })
    try {
      const done = await Promise.race([this.#readEach(this.camera()), stopped])
      this.status = done === 'stopped' ? W.stopped : done
    } catch {
      this.status = ''
      this.problem = W.failed
      this.dropCamera()
    } finally {
      this.reading = false
      this.fetched = undefined
    }
  }

  async #readEach(camera: Camera): Promise<string> {
    await camera.warm((fetched) => (this.fetched = fetched))
    this.fetched = undefined
    for (const view of this.toRead) {
      const photo = this.photo(view)
      if (!photo || camera !== this.#camera) continue
      this.status = W.reading[view]
      const reading = await camera.read(view, photo.picture, this.#question(view))
      if (this.photo(view) === photo) this.#show(reading)
    }
    return W.done
  }
  #question(view: View): CardQuestion {
    const size = this.card === 'own' ? this.own : SCALE_BY[this.card]
    return size
      ? { how: 'id1', taps: $state.snapshot(this.taps[view] ?? []), size }
      : { how: 'sheet' }
  }
  #show(reading: ViewReading): void {
    this.readings = { ...this.readings, [reading.view]: reading }
    this.accepted = false
    if (this.read.length === 1) this.view = reading.view
  }

  move(view: View, name: PointName, at: Point): void {
    const own = this.readings[view]
    if (!own) return
    this.readings = { ...this.readings, [view]: movePoint(own, name, at) }
    this.accepted = false
  }

  stop(): void {
    this.#stop?.()
    this.dropCamera()
  }

  #drop(view: View): void {
    const photo = this.photo(view)
    if (photo) URL.revokeObjectURL(photo.url)
    this.chosen = { ...this.chosen, [view]: undefined }
    this.readings = without(this.readings, view)
    this.taps = without(this.taps, view)
    this.accepted = false
  }
  /** Takes every photo off the table; numbers and kept photos stay where they are. */
  clear(): void {
    for (const view of VIEWS) this.#drop(view)
    this.chosen = {}
  }
  leave(): void {
    this.stop()
    this.clear()
    this.darkroom.close()
  }
}

function without<T>(all: PerView<T>, view: View): PerView<T> {
  const { [view]: _gone, ...rest } = all
  return rest
}
