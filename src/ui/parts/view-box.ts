/**
 * The part of a drawing that is in view: fitted whole, drawn closer round a point, pushed along.
 * Millimetres of the drawing throughout; the frame only knows its own shape (width over height).
 */
import { boxHeight, boxWidth, type Box } from '../../geometry/box.ts'
import type { Point } from '../../geometry/point.ts'

/** Closer than this a pencil line is wider than what it is to show. Common practice, no source. */
const CLOSEST = 40

/** The smallest box of the frame's shape round `box`, its content in the middle. */
export function fitted(box: Box, shape: number): Box {
  const [wide, high] = [boxWidth(box), boxHeight(box)]
  if (!(wide > 0 && high > 0 && shape > 0))
    throw new Error(`view: a box of ${wide} by ${high} mm cannot fill a frame of shape ${shape}`)
  const width = Math.max(wide, high * shape)
  return around(middle(box), width, width / shape)
}

/** Draws `factor` times closer (below 1: further off) and keeps `at` where it is in the frame. */
export function closer(view: Box, factor: number, at: Point, whole: Box): Box {
  const width = clamp(boxWidth(view) / factor, boxWidth(whole) / CLOSEST, boxWidth(whole))
  const k = width / boxWidth(view)
  return within(
    {
      left: at.x - (at.x - view.left) * k,
      right: at.x + (view.right - at.x) * k,
      top: at.y - (at.y - view.top) * k,
      bottom: at.y + (view.bottom - at.y) * k,
    },
    whole,
  )
}

/** Pushes the view along by millimetres of the drawing; it never leaves the whole. */
export function pushed(view: Box, dx: number, dy: number, whole: Box): Box {
  return within(
    { left: view.left + dx, right: view.right + dx, top: view.top + dy, bottom: view.bottom + dy },
    whole,
  )
}

/** The view that shows `part` as large as the frame allows. */
export const closeOn = (part: Box, whole: Box): Box => {
  const shape = boxWidth(whole) / boxHeight(whole)
  const view = fitted(part, shape)
  return closer(view, 1, middle(view), whole)
}

/** How many times larger than whole it is shown. */
export const closeness = (view: Box, whole: Box): number => boxWidth(whole) / boxWidth(view)
export const middle = (b: Box): Point => ({ x: (b.left + b.right) / 2, y: (b.top + b.bottom) / 2 })

function around(at: Point, width: number, height: number): Box {
  return {
    left: at.x - width / 2,
    right: at.x + width / 2,
    top: at.y - height / 2,
    bottom: at.y + height / 2,
  }
}
function within(view: Box, whole: Box): Box {
  const [width, height] = [boxWidth(view), boxHeight(view)]
  const left = clamp(view.left, whole.left, whole.right - width)
  const top = clamp(view.top, whole.top, whole.bottom - height)
  return { left, top, right: left + width, bottom: top + height }
}
const clamp = (n: number, low: number, high: number): number => Math.min(Math.max(n, low), high)
