/** Where a pointer is on a drawing: from pixels of the screen to millimetres of the paper. */
import { point, type Point } from '../../geometry/point.ts'

/**
 * @param event any pointer or mouse event on something drawn inside a Drawing
 * @returns its place in the drawing's millimetres, whatever the zoom; undefined when the event
 *   came from elsewhere or the drawing is not laid out
 */
export function drawnAt(event: MouseEvent): Point | undefined {
  if (!(event.target instanceof SVGElement)) return undefined
  const svg = event.target.ownerSVGElement ?? event.target
  if (!(svg instanceof SVGSVGElement)) return undefined
  const toScreen = svg.getScreenCTM()
  if (toScreen === null) return undefined
  const place = new DOMPoint(event.clientX, event.clientY).matrixTransform(toScreen.inverse())
  return point(place.x, place.y)
}
