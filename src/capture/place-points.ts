/**
 * Makes the reading of one photograph from what the model and the card search found: outline,
 * points, and a reason for each point that could not be placed. Pure; the same input always gives
 * the same reading.
 */
import type { Point } from '../geometry/point.ts'
import type { CardOutcome } from './card.ts'
import { crownOf } from './body-height.ts'
import { refused } from './fault.ts'
import { dotPoint, findDots, type Dot } from './dots.ts'
import { bodyFrame, type BodyFrame } from './frame.ts'
import { placeFrontOrBack } from './points-front-back.ts'
import { placeSide } from './points-side.ts'
import type { Person } from './person.ts'
import { faultOf } from './photo-faults.ts'
import type { Picture } from './picture.ts'
import type { PlacedPoint, PointName, View, ViewReading } from './reading.ts'

/** Joints the model is less sure of than this are outside the picture or hidden. */
const LEAST_SCORE = 0.3
const NEEDED = ['nose', 'shoulder', 'hip', 'knee', 'ankle'] as const

export function placePoints(
  view: View,
  picture: Picture,
  person: Person | undefined,
  card: CardOutcome,
): ViewReading {
  const size = { width: picture.width, height: picture.height }
  const lens = picture.focalPx === undefined ? {} : { focalPx: picture.focalPx }
  const bare = {
    view,
    size,
    ...lens,
    card,
    points: {},
    missing: {},
    outline: [],
    facing: -1,
  } as const
  if (!person) {
    const lies = picture.width > picture.height
    return { ...bare, person: refused(lies ? 'noPersonTurned' : 'noPerson') }
  }
  const fault = faultOf(view, picture, person)
  if (fault !== undefined) return { ...bare, person: refused(fault) }
  const frame = bodyFrame(person.joints)
  if (!frame || !NEEDED.every((name) => inside(person, name, size)))
    return { ...bare, person: refused('notWhole') }
  const found = { ok: true, score: person.score, joints: person.joints } as const
  const placed =
    view === 'side'
      ? placeSide(picture, person, card, frame)
      : placeFrontOrBack(view, picture, person, card, frame)
  const crown = crownOf(person.mask, person.joints)
  const reading = { ...bare, person: found, ...placed, ...(crown === undefined ? {} : { crown }) }
  return withDots(reading, picture, person, frame)
}

/** A card hangs or is held nearer than the body's middle: there a pixel is longer by about this. */
const BODY_BEHIND_CARD = 1.05
/** Without a card: the usual torso, shoulder to hip joint, mm (proportions.ts, bench). */
const USUAL_TORSO_MM = 490

/** The dots she wears are the points themselves. */
function withDots(
  reading: ViewReading,
  picture: Picture,
  person: Person,
  frame: BodyFrame,
): ViewReading {
  const { view, card, facing } = reading
  const mmPerPx = card.ok ? card.card.mmPerPx * BODY_BEHIND_CARD : USUAL_TORSO_MM / frame.torso
  const dots = Object.entries(findDots(view, picture, person.mask, frame, mmPerPx, facing))
  const points: Partial<Record<PointName, PlacedPoint>> = { ...reading.points }
  const missing: Partial<Record<PointName, string>> = { ...reading.missing }
  for (const [name, dot] of dots as [PointName, Dot][]) {
    points[name] = dotPoint(name, dot, mmPerPx)
    delete missing[name]
  }
  return { ...reading, points, missing }
}

/** One of the two joints is enough: from the side the far one is hidden. */
function inside(person: Person, name: string, size: { width: number; height: number }): boolean {
  const holds = (at: Point): boolean =>
    at.x >= 0 && at.y >= 0 && at.x <= size.width && at.y <= size.height
  return [name, `left_${name}`, `right_${name}`].some((key) => {
    const joint = person.joints[key]
    return joint !== undefined && joint.score >= LEAST_SCORE && holds(joint.at)
  })
}
