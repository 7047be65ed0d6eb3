/** Folding paper: what lies on one side of a crease, laid over to the other. */
import { movedPath, mirroredPath, turnedPath, type Path } from '../geometry/path.ts'
import { point, scale, type Point } from '../geometry/point.ts'

const ORIGIN = point(0, 0)

/** Mirrored in the line through `on` along `along`; every segment keeps its kind. */
export function reflectedPath(path: Path, on: Point, along: Point): Path {
  // Turned until the crease stands upright in x = 0, mirrored there, and turned back.
  const upright = Math.PI / 2 - Math.atan2(along.y, along.x)
  const there = turnedPath(movedPath(path, scale(on, -1)), ORIGIN, upright)
  return movedPath(turnedPath(mirroredPath(there), ORIGIN, -upright), on)
}
