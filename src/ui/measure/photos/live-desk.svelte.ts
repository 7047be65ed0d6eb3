/**
 * Front, side and back taken in one go: the device's camera, the frames that are looked at, the
 * count, the photos taken. Frames go to the worker and are forgotten; nothing else sees them.
 * Long, because camera, frames, clock and photos end together: whatever she does, the camera is let go.
 */
import type { Camera, LiveFrame } from '../../../capture/camera.ts'
import type { Darkroom } from '../../../capture/darkroom.ts'
import type { Fetched } from '../../../capture/detector-weights.ts'
import { livePose } from '../../../capture/live-pose.ts'
import * as live from '../../../capture/live.ts'
import type { MuslinSight } from '../../../capture/muslin-sight.ts'
import type { PhotoOutcome } from '../../../capture/photo.ts'
import type { Picture } from '../../../capture/picture.ts'
import { VIEWS, type View, type ViewReading } from '../../../capture/reading.ts'
import { letGo, openStream, severalCameras, type Facing } from './live-stream.ts'
import { LIVE_TROUBLE } from './live.words.ts'
import { toneOf } from './live-said.ts'
import { openTones, type Tones } from './tones.ts'

export type Photo = Extract<PhotoOutcome, { ok: true }>
/** What one photo says: of a muslin also what the cloth shows. */
export interface Read {
  readonly reading: ViewReading
  readonly sight?: MuslinSight
}
/** A photo of one view, and what was read from it as soon as that is known. */
export interface Shot extends Partial<Read> {
  readonly photo: Photo
  readonly url: string
}
export type Shots = Readonly<Partial<Record<View, Shot>>>
export interface LiveTools {
  readonly camera: () => Camera
  /** Ends the worker; the next call of `camera` begins another. */
  readonly dropCamera: () => void
  readonly darkroom: Pick<Darkroom, 'develop'>
  /** Reads each photo at once; absent where that has to wait: a bank-size card needs its four taps. */
  readonly read?: ((view: View, picture: Picture) => Promise<Read>) | undefined
  readonly stream?: typeof openStream
  readonly tones?: () => Tones
  readonly now?: () => number
}

/** Digits and tones follow the clock this often, ms. */
const TICK_MS = 100
/** Between two looks the page has time for everything else, ms. */
const REST_MS = 60

export class LiveDesk {
  state = $state.raw(live.beginLive())
  shots = $state.raw<Shots>({})
  stream = $state.raw<MediaStream | undefined>()
  /** Size of the camera's picture, once it is known. */
  size = $state.raw<{ width: number; height: number } | undefined>()
  facing = $state.raw<Facing>('user')
  several = $state.raw(false)
  sound = $state.raw(true)
  fetched = $state.raw<Fetched | undefined>()
  hints = $state.raw<'coming' | 'here' | 'none'>('coming')
  problem = $state.raw<string | undefined>()
  now = $state.raw(0)

  view = $derived(this.state.todo[0])
  left = $derived(live.digit(this.state.step, this.now))
  noHints = $derived(this.hints === 'none' ? LIVE_TROUBLE.noHints : undefined)
  taken = $derived(VIEWS.filter((view) => this.shots[view]))

  readonly #tools: LiveTools
  readonly #clock: () => number
  readonly #tones: Tones
  #video: HTMLVideoElement | undefined
  #timer: ReturnType<typeof setInterval> | undefined
  #lock: WakeLockSentinel | undefined
  #open = true

  /** Made while a key is pressed, so that tones may sound. */
  constructor(tools: LiveTools) {
    this.#tools = tools
    this.#clock = tools.now ?? (() => performance.now())
    this.#tones = (tools.tones ?? openTones)()
  }

  /** Starts the camera in a video element of the page; ends with `leave`. */
  async start(video: HTMLVideoElement): Promise<void> {
    this.#video = video
    this.#timer ??= setInterval(() => this.#tick(), TICK_MS)
    await this.#startStream()
    void this.#warm()
    void this.#watch()
  }

  async #startStream(): Promise<void> {
    letGo(this.stream)
    this.stream = undefined
    this.problem = undefined
    const outcome = await (this.#tools.stream ?? openStream)(this.facing)
    if (!outcome.ok) {
      this.problem = outcome.reason
      return
    }
    const { stream } = outcome
    // She may have left while the browser asked her.
    if (!this.#open || !this.#video) return letGo(stream)
    this.stream = stream
    for (const track of stream.getTracks())
      track.addEventListener('ended', () => {
        if (this.stream === stream) this.#lost(LIVE_TROUBLE.lost)
      })
    this.#video.srcObject = stream
    await this.#video.play().catch(() => undefined)
    this.several = await severalCameras()
    this.#lock = await navigator.wakeLock?.request('screen').catch(() => undefined)
    if (!this.#open) void this.#lock?.release()
  }
  again = (): Promise<void> => this.#startStream()
  async turnCamera(): Promise<void> {
    this.facing = this.facing === 'user' ? 'environment' : 'user'
    this.#move(live.breakOff(this.state))
    await this.#startStream()
  }
  sized(width: number, height: number): void {
    if (width > 0 && height > 0) this.size = { width, height }
  }
  /** The page is out of sight: no camera runs that she cannot see. */
  hidden(): void {
    if (this.stream) this.#lost(LIVE_TROUBLE.away)
  }
  #lost(problem: string): void {
    letGo(this.stream)
    this.stream = undefined
    this.problem = problem
    this.#move(live.breakOff(this.state))
  }

  async #warm(): Promise<void> {
    try {
      await this.#tools.camera().warm((fetched) => (this.fetched = fetched))
      this.hints = 'here'
    } catch {
      this.#noHints()
    }
  }
  #noHints(): void {
    this.hints = 'none'
    this.fetched = undefined
    this.#tools.dropCamera()
  }
  /** She can do without the hints, or fetch the model another time. */
  stopFetching(): void {
    this.#noHints()
  }

  /** Looks at one frame after the other for as long as the hints are wanted. */
  async #watch(): Promise<void> {
    while (this.#open) {
      await new Promise((rested) => setTimeout(rested, REST_MS))
      if (this.hints !== 'here' || !this.#wanted()) continue
      const frame = await this.#frame()
      if (!frame) continue
      try {
        const sight = await this.#tools.camera().look(frame)
        this.#move(live.watch(this.state, livePose(sight), this.#clock()))
      } catch {
        if (this.#open) this.#noHints()
      }
    }
  }
  #wanted(): boolean {
    const { phase } = this.state.step
    return (
      this.stream !== undefined && phase !== 'taken' && phase !== 'done' && phase !== 'shooting'
    )
  }
  /** A frame at the camera's own size; drawn and read by the workers, not here. */
  async #frame(): Promise<LiveFrame | undefined> {
    const video = this.#video
    if (!video || video.videoWidth === 0 || video.readyState < video.HAVE_CURRENT_DATA)
      return undefined
    try {
      // A VideoFrame copies nothing; browsers without it draw a bitmap.
      return 'VideoFrame' in window ? new VideoFrame(video) : await createImageBitmap(video)
    } catch {
      return undefined
    }
  }

  #tick(): void {
    this.#move(live.tick(this.state, this.#clock()))
  }
  #move(next: live.LiveState): void {
    const [was, before] = [this.state.step, this.now]
    this.now = this.#clock()
    this.state = next
    const tone = toneOf(was, next.step, before, this.now)
    if (tone) this.#tones.play(tone)
    if (next.step.phase === 'shooting' && was.phase !== 'shooting') void this.#shoot()
  }

  async #shoot(): Promise<void> {
    const view = this.view
    try {
      const frame = this.stream && (await this.#frame())
      if (!view || !frame) throw new Error('live: no picture to take')
      const outcome = await this.#tools.darkroom.develop(frame)
      if (!this.#open) return
      if (!outcome.ok) throw new Error(outcome.reason)
      this.problem = undefined
      this.#keep(view, { photo: outcome, url: URL.createObjectURL(outcome.jpeg) })
      this.#move(live.took(this.state, this.#clock()))
      void this.#read(view, outcome)
    } catch {
      if (!this.#open) return
      this.problem ??= LIVE_TROUBLE.noPicture
      this.#move(live.missed(this.state))
    }
  }
  #keep(view: View, shot: Shot): void {
    const old = this.shots[view]
    if (old) URL.revokeObjectURL(old.url)
    this.shots = { ...this.shots, [view]: shot }
  }
  async #read(view: View, photo: Photo): Promise<void> {
    if (!this.#tools.read || this.hints !== 'here') return
    try {
      const read = await this.#tools.read(view, photo.picture)
      const shot = this.shots[view]
      if (shot?.photo === photo) this.shots = { ...this.shots, [view]: { ...shot, ...read } }
    } catch {
      // The photo is there; it can be read afterwards, where a failure is said.
    }
  }

  count(): void {
    this.#move(live.countDown(this.state, this.#clock()))
  }
  stopCount(): void {
    this.#move(live.breakOff(this.state))
  }
  takeAgain(view: View): void {
    this.#move(live.takeAgain(this.state, view))
  }
  setSound(on: boolean): void {
    this.sound = on
    this.#tones.on = on
  }

  /** Lets the camera go and hands over what was taken. */
  leave(): Shots {
    this.#open = false
    clearInterval(this.#timer)
    letGo(this.stream)
    this.stream = undefined
    if (this.#video) this.#video.srcObject = null
    void this.#lock?.release()
    this.#tones.close()
    return this.shots
  }
}
