/** A small drawing: a view of the garment and what is to be seen on it. */
import type { Line, Mark } from './marks.ts'
import {
  drawnBy,
  into,
  inOrder,
  linesOf,
  mirrored,
  WHOLE,
  type At,
  type BaseView,
  type PartOf,
  type Window,
} from './views.ts'

export interface Sketch {
  readonly view: BaseView
  readonly window: Window
  readonly marks: readonly Mark[]
  readonly without: readonly string[]
}
type Draw = (at: At) => readonly Mark[]
export interface Framed<V extends BaseView = BaseView> {
  readonly view: V
  readonly window: Window
}
export const framed = <V extends BaseView>(view: V, ...window: number[]): Framed<V> => ({
  view,
  window: window.length === 3 ? (window as unknown as Window) : WHOLE,
})

/** @param without parts of the view that the marks draw elsewhere */
export const sketch = <V extends BaseView>(
  { view, window }: Framed<V>,
  draw: Draw,
  without: readonly PartOf<V>[] = [],
): Sketch => ({ view, window, marks: draw(into(window)), without })

/** The same marks on both halves. */
export const both =
  (draw: Draw): Draw =>
  (at) => [...draw(at), ...draw(mirrored(at))]
/** A cloth line that lies where it should not, in the units of the view. */
export const cloth = (at: At, d: string): Mark => [drawnBy(at, 'seam', d)]
/** Where it should lie. */
export const wanted = (at: At, d: string): Mark => [drawnBy(at, 'was', d)]

/** Everything of a drawing, the undermost first. */
export const linesOfSketch = ({ view, window, marks, without }: Sketch): readonly Line[] =>
  inOrder([...linesOf(view, window, without), ...marks.flat()])
