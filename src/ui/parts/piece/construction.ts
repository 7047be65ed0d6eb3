/** Construction lines of the steps: straight ones overshoot every crossing, as a pencil does. */
import { add, distance, heading, scale, subtract, unit } from '../../../geometry/point.ts'
import { arc, line, type Segment } from '../../../geometry/segment.ts'
import type { Path } from '../../../geometry/path.ts'
import type { Step } from '../../../draft/step.ts'

/** How far a ruled line runs past its ends, mm. House drawing. */
const OVERSHOOT = 9

/** What was ruled or swung to find the points, each run past its ends. */
export const constructionLines = (steps: readonly Step[]): readonly Path[] =>
  steps.flatMap((s): Path[] => {
    switch (s.verb) {
      case 'compass':
        return s.lights.flatMap((path) => [path.map(runOn), path.flatMap(swing)])
      case 'measure':
      case 'slide':
      case 'arc':
        return s.lights.map((path) => path.map(runOn))
      default:
        return []
    }
  })

/** The mark a compass leaves about the end of its radius. */
function swing(radius: Segment): Segment[] {
  if (radius.kind !== 'line') return []
  const long = distance(radius.from, radius.to)
  const reach = SWING / long
  return [arc(radius.from, long, heading(radius.from, radius.to) - reach, 2 * reach)]
}
/** Length of that mark to each side, mm. House drawing. */
const SWING = 22

function runOn(s: Segment): Segment {
  switch (s.kind) {
    case 'line': {
      const by = scale(unit(subtract(s.to, s.from)), OVERSHOOT)
      return line(subtract(s.from, by), add(s.to, by))
    }
    case 'arc': {
      const more = (OVERSHOOT / s.radius) * Math.sign(s.sweep)
      return arc(s.centre, s.radius, s.start - more, s.sweep + 2 * more)
    }
    case 'cubic':
      return s
  }
}
