/**
 * The view of one drawing and the gestures that move it: drag, pinch, wheel, double tap, keys.
 * Pixels come in, millimetres of the drawing are kept. One instance belongs to one Drawing,
 * or to several of one size that are looked at together.
 */
import { boxHeight, boxWidth, type Box } from '../../geometry/box.ts'
import { distance, type Point } from '../../geometry/point.ts'
import { closeness, closeOn, closer, fitted, middle, pushed } from './view-box.ts'

/** One key press or wheel notch; three of them double. Common practice, no source. */
const NOTCH = 2 ** (1 / 3)
/** A double tap without a lit place comes this much closer. */
const TAP_CLOSER = 2.5
/** One arrow press pushes the paper along by this share of what is in view. */
const PUSH_SHARE = 0.1
/** A pointer that moved less than this many pixels has tapped, not dragged. */
const DRAG_FROM = 6
/** A wheel turn of this many pixels is one notch, as most wheels report. From memory. */
const WHEEL_NOTCH = 100

export class PanZoom {
  #fit: () => Box
  #lit: () => Box | undefined
  width = $state(1)
  height = $state(1)
  #view = $state.raw<Box>()
  // Never drawn, so it need not be reactive.
  // eslint-disable-next-line svelte/prefer-svelte-reactivity
  #pointers = new Map<number, Point>()
  #dragging = false

  constructor(fit: () => Box, lit: () => Box | undefined) {
    this.#fit = fit
    this.#lit = lit
  }

  /** A frame that is not laid out yet has no size; until then it is taken as square. */
  #shape = $derived(this.width > 0 && this.height > 0 ? this.width / this.height : 1)
  whole = $derived.by(() => fitted(this.#fit(), this.#shape))
  /** What is in view. A frame or a piece that changed shape keeps the place she was looking at. */
  view = $derived.by(() => {
    if (this.#view === undefined) return this.whole
    const near = fitted(this.#view, this.#shape)
    return closer(near, 1, middle(near), this.whole)
  })
  /** Millimetres of the drawing under one screen pixel. */
  px = $derived(boxWidth(this.view) / Math.max(1, this.width))
  isWhole = $derived(closeness(this.view, this.whole) < 1.001)

  showWhole = () => (this.#view = undefined)
  closer = (notches = 1, at: Point = middle(this.view)) =>
    (this.#view = closer(this.view, NOTCH ** notches, at, this.whole))
  push = (dx: number, dy: number) => (this.#view = pushed(this.view, dx, dy, this.whole))

  /** @returns whether the key meant something here */
  key(key: string): boolean {
    const [dx, dy] = [boxWidth(this.view) * PUSH_SHARE, boxHeight(this.view) * PUSH_SHARE]
    if (key === '+' || key === '=') this.closer()
    else if (key === '-' || key === '_') this.closer(-1)
    else if (key === '0') this.showWhole()
    else if (key === 'ArrowLeft') this.push(-dx, 0)
    else if (key === 'ArrowRight') this.push(dx, 0)
    else if (key === 'ArrowUp') this.push(0, -dy)
    else if (key === 'ArrowDown') this.push(0, dy)
    else return false
    return true
  }

  wheel(pixels: number, at: Point) {
    this.closer(-pixels / WHEEL_NOTCH, this.#drawn(at))
  }

  /** A double tap makes the lit place large, or the place under the finger; once more, the whole. */
  doubleTap(at: Point) {
    const lit = this.#lit()
    if (!this.isWhole) this.showWhole()
    else if (lit) this.#view = closeOn(lit, this.whole)
    else this.#view = closer(this.view, TAP_CLOSER, this.#drawn(at), this.whole)
  }

  down(id: number, at: Point) {
    if (this.#pointers.size === 0) this.#dragging = false
    this.#pointers.set(id, at)
  }

  /** @returns true from the moment the pointer drags the paper, so that the page may capture it */
  move(id: number, at: Point): boolean {
    const before = this.#pointers.get(id)
    if (before === undefined) return false
    const other = [...this.#pointers].find(([key]) => key !== id)?.[1]
    if (!this.#dragging && !other && distance(before, at) < DRAG_FROM) return false
    this.#dragging = true
    this.#pointers.set(id, at)
    if (other) this.#pinch(before, at, other)
    else this.push((before.x - at.x) * this.px, (before.y - at.y) * this.px)
    return true
  }

  up(id: number) {
    this.#pointers.delete(id)
  }

  #pinch(before: Point, at: Point, other: Point) {
    const centre = { x: (before.x + other.x) / 2, y: (before.y + other.y) / 2 }
    const factor = distance(at, other) / Math.max(1, distance(before, other))
    this.#view = closer(this.view, factor, this.#drawn(centre), this.whole)
    this.push((-(at.x - before.x) / 2) * this.px, (-(at.y - before.y) / 2) * this.px)
  }

  /** The place of the drawing under a pixel of the frame. */
  #drawn = (at: Point): Point => ({
    x: this.view.left + at.x * this.px,
    y: this.view.top + at.y * this.px,
  })
}
