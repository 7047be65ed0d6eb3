/**
 * Where the paper patch lies that covers the head in a shown photo, and where a step of an arrow
 * key or a finger takes a point. Picture px, y down.
 */
import { distance, type Point } from '../../../geometry/point.ts'
import type { PlacedPoint, PointName, ViewReading } from '../../../capture/reading.ts'

export interface Patch {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}
interface Size {
  readonly width: number
  readonly height: number
}

/** From the ears up to the crown and down to the chin, as shares of ear to shoulder; generous on purpose. */
const UP = 1.15
const DOWN = 0.5
const ASIDE = 0.95
/** Where nobody was found the head may be anywhere in the upper part; from trial on our own pictures. */
const UNKNOWN_SHARE = 1 / 3

/** The patch over the head; without a person, over the whole upper third. */
export function headPatch(size: Size, reading?: ViewReading): Patch {
  const unknown = { x: 0, y: 0, width: size.width, height: size.height * UNKNOWN_SHARE }
  if (!reading?.person.ok) return unknown
  const { joints } = reading.person
  const heads = ['left_ear', 'right_ear', 'nose'].flatMap((name) => joints[name]?.at ?? [])
  const shoulders = ['left_shoulder', 'right_shoulder'].flatMap((name) => joints[name]?.at ?? [])
  if (heads.length === 0 || shoulders.length === 0) return unknown
  const middle = mean(heads)
  const unit = mean(shoulders).y - middle.y
  if (unit <= 0) return unknown
  const xs = heads.map((p) => p.x)
  const left = Math.max(0, Math.min(middle.x - ASIDE * unit, ...xs))
  const right = Math.min(size.width, Math.max(middle.x + ASIDE * unit, ...xs))
  const top = Math.max(0, middle.y - UP * unit)
  return { x: left, y: top, width: right - left, height: middle.y + DOWN * unit - top }
}

const mean = (points: readonly Point[]): Point => ({
  x: points.reduce((sum, p) => sum + p.x, 0) / points.length,
  y: points.reduce((sum, p) => sum + p.y, 0) / points.length,
})

/** Half the width of the part shown, as a share of its height: room for the names beside the body. */
const HALF_SHOWN = 0.42

/** The part of the picture worth showing large: crown to knee. Without a person, all of it. */
export function partShown(size: Size, reading?: ViewReading): Patch {
  const whole = { x: 0, y: 0, width: size.width, height: size.height }
  if (!reading?.person.ok) return whole
  const { joints } = reading.person
  const knees = ['left_knee', 'right_knee'].flatMap((name) => joints[name]?.at ?? [])
  if (knees.length === 0) return whole
  const top = headPatch(size, reading).y
  const foot = Math.min(size.height, mean(knees).y)
  if (foot <= top) return whole
  const half = HALF_SHOWN * (foot - top)
  const left = Math.max(0, mean(knees).x - half)
  const right = Math.min(size.width, mean(knees).x + half)
  return right <= left ? whole : { x: left, y: top, width: right - left, height: foot - top }
}

/** A place that has to lie in the part shown. */
export const inside = (at: Point, { x, y, width, height }: Patch): Point => ({
  x: Math.min(x + width, Math.max(x, at.x)),
  y: Math.min(y + height, Math.max(y, at.y)),
})

/** Which way an arrow key goes; undefined for any other key. */
export function arrow(key: string, far: boolean): Point | undefined {
  const step = far ? 10 : 1
  switch (key) {
    case 'ArrowLeft':
      return { x: -step, y: 0 }
    case 'ArrowRight':
      return { x: step, y: 0 }
    case 'ArrowUp':
      return { x: 0, y: -step }
    case 'ArrowDown':
      return { x: 0, y: step }
    default:
      return undefined
  }
}

/** The point a finger at `at` means: the nearest one within reach. */
export function nearestWithin<N>(
  places: readonly (readonly [N, Point])[],
  at: Point,
  reach: number,
): N | undefined {
  const near = places
    .map(([name, place]) => ({ name, far: distance(place, at) }))
    .filter(({ far }) => far <= reach)
    .sort((a, b) => a.far - b.far)
  return near[0]?.name
}

/** The card's corners clockwise from its top left, in the order they were tapped or moved. */
export function cornerGuess({ width, height }: Size): readonly Point[] {
  // A bank-size card is 85.6 by 54 mm, about a twentieth of a standing body's height.
  const w = height * 0.05
  const h = w * 0.63
  const [x, y] = [width / 2, height * 0.45]
  return [
    { x: x - w / 2, y: y - h / 2 },
    { x: x + w / 2, y: y - h / 2 },
    { x: x + w / 2, y: y + h / 2 },
    { x: x - w / 2, y: y + h / 2 },
  ]
}

export const placesOf = (reading: ViewReading): readonly (readonly [PointName, PlacedPoint])[] =>
  Object.entries(reading.points) as [PointName, PlacedPoint][]
