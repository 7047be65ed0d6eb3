/** Signed area inside a closed path by Green's theorem, exact for all three kinds of segment. */
import { cross, type Point } from './point.ts'
import type { Path } from './path.ts'
import { at, type Segment } from './segment.ts'

/** Positive when the path runs clockwise on the page. mm². */
export const area = (closed: Path): number => closed.reduce((sum, s) => sum + under(s), 0)

/** ½∮(x dy − y dx) along one segment. */
function under(s: Segment): number {
  const chord = (a: Point, b: Point): number => cross(a, b) / 2
  switch (s.kind) {
    case 'line':
      return chord(s.from, s.to)
    case 'arc':
      return chord(at(s, 0), at(s, 1)) + (s.radius * s.radius * (s.sweep - Math.sin(s.sweep))) / 2
    case 'cubic': {
      const { from: a, c1: b, c2: c, to: d } = s
      // Twentieths: the Bernstein products of a cubic and its derivative, integrated.
      return (
        (6 * cross(a, b) +
          3 * cross(a, c) +
          cross(a, d) +
          3 * cross(b, c) +
          3 * cross(b, d) +
          6 * cross(c, d)) /
        20
      )
    }
  }
}
