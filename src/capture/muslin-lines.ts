/**
 * The level and plumb lines she drew on a muslin, as a photo shows them: how far each leans from
 * level or plumb, and how far a level lies below the shoulder joints. Tilts are told in the
 * picture as it stands, so they hold as far as the camera stood level.
 */
import { distance, type Point } from '../geometry/point.ts'
import { mm, type Mm } from '../units/length.ts'
import { bodyFrame } from './frame.ts'
import type { ViewReading } from './reading.ts'
import { scaleAt } from './scale.ts'

export const MUSLIN_LINES = ['bustLine', 'waistLine', 'hipLine', 'centre'] as const
export type MuslinLineName = (typeof MUSLIN_LINES)[number]

export interface MuslinLine {
  readonly name: MuslinLineName
  /** Ends in picture px: a level from left to right, the centre from top to bottom. */
  readonly from: Point
  readonly to: Point
  /** camera: seen in the photo. hand: traced by her; nothing else moves it. */
  readonly by: 'camera' | 'hand'
}

export const isPlumb = (name: MuslinLineName): boolean => name === 'centre'

/** From left to right, or from top to bottom, whichever way it was traced. */
export function tracedLine(name: MuslinLineName, a: Point, b: Point): MuslinLine {
  const turned = isPlumb(name) ? a.y > b.y : a.x > b.x
  return turned ? { name, from: b, to: a, by: 'hand' } : { name, from: a, to: b, by: 'hand' }
}

/**
 * Degrees off level or plumb. A level is positive where it falls towards the right of the picture,
 * the centre where its foot lies to the right of its top.
 */
export function tiltOf({ name, from, to }: MuslinLine): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  return ((isPlumb(name) ? Math.atan2(dx, dy) : Math.atan2(dy, dx)) * 180) / Math.PI
}

/** How far the middle of a level lies below the shoulder joints; undefined without a card or a person. */
export function belowShoulders(line: MuslinLine, reading: ViewReading): Mm | undefined {
  if (isPlumb(line.name) || !reading.person.ok) return undefined
  const frame = bodyFrame(reading.person.joints)
  const y = (line.from.y + line.to.y) / 2
  const scale = frame && scaleAt(reading, 0, 0, y)
  return frame && scale ? mm((y - frame.shoulder.y) * scale.mmPerPx) : undefined
}

/** One of each name: what she traced stands before what the camera saw, the longer before the shorter. */
export function linesOf(found: readonly MuslinLine[]): readonly MuslinLine[] {
  const before = (a: MuslinLine, b: MuslinLine): number =>
    a.by === b.by
      ? distance(b.from, b.to) - distance(a.from, a.to)
      : Number(b.by === 'hand') - Number(a.by === 'hand')
  return MUSLIN_LINES.flatMap(
    (name) => [...found].filter((l) => l.name === name).sort(before)[0] ?? [],
  )
}
