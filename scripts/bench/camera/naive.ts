/**
 * What the card's own scale alone would say: straight distances between the same points, as if all of
 * the body hung in the plane of the card. The camera bench puts it beside the estimates. mm.
 */
import { distance } from '../../../src/geometry/point.ts'
import { shareLevels } from '../../../src/capture/levels.ts'
import type { PlacedPoint, PointName, Readings, View } from '../../../src/capture/reading.ts'
import type { EstimateId } from '../../../src/measurements/estimate.ts'

type Pair = readonly [View, PointName, PointName, 'straight' | 'across' | 'down']
const PAIRS: Readonly<Partial<Record<EstimateId, readonly Pair[]>>> = {
  napeToWaist: [
    ['side', 'nape', 'waistBack', 'straight'],
    ['back', 'nape', 'waistBack', 'straight'],
  ],
  waistToBustLevel: [['side', 'bustLevel', 'waistFront', 'down']],
  apexSpacing: [['front', 'apexLeft', 'apexRight', 'straight']],
  sideNeckToApex: [
    ['side', 'sideNeckLeft', 'bustLevel', 'straight'],
    ['side', 'sideNeckRight', 'bustLevel', 'straight'],
  ],
  shoulderLength: [
    ['front', 'sideNeckLeft', 'shoulderLeft', 'straight'],
    ['front', 'sideNeckRight', 'shoulderRight', 'straight'],
    ['back', 'sideNeckLeft', 'shoulderLeft', 'straight'],
    ['back', 'sideNeckRight', 'shoulderRight', 'straight'],
  ],
  ...Object.fromEntries(
    (['bust', 'waist', 'hip'] as const).flatMap((level) => [
      [
        `${level}Breadth`,
        (['front', 'back'] as const).map(
          (view) => [view, `${level}Left`, `${level}Right`, 'across'] as const,
        ),
      ],
      [`${level}Depth`, [['side', `${level}Front`, `${level}Back`, 'across'] as const]],
    ]),
  ),
}

export function naiveLengths(readings: Readings): Partial<Record<EstimateId, number>> {
  const shared = shareLevels(readings)
  const lengths: Partial<Record<EstimateId, number>> = {}
  for (const [id, pairs] of Object.entries(PAIRS) as [EstimateId, readonly Pair[]][]) {
    const found = pairs.flatMap((pair) => lengthOf(shared, pair) ?? [])
    if (found.length > 0) lengths[id] = found.reduce((sum, v) => sum + v, 0) / found.length
  }
  for (const level of ['bust', 'waist', 'hip'] as const) {
    const [b, d] = [lengths[`${level}Breadth`], lengths[`${level}Depth`]]
    if (b !== undefined && d !== undefined) lengths[`${level}Girth`] = ellipse(b / 2, d / 2)
  }
  return lengths
}

function lengthOf(readings: Readings, [view, from, to, how]: Pair): number | undefined {
  const reading = readings[view]
  if (!reading?.card.ok) return undefined
  const sure = (point: PlacedPoint | undefined) => (point?.by === 'guess' ? undefined : point?.at)
  const [a, b] = [sure(reading.points[from]), sure(reading.points[to])]
  if (!a || !b) return undefined
  const px =
    how === 'straight'
      ? distance(a, b)
      : how === 'across'
        ? Math.abs(a.x - b.x)
        : Math.abs(a.y - b.y)
  return px * reading.card.card.mmPerPx
}

/** Perimeter of an ellipse, Ramanujan's second formula (any handbook). */
function ellipse(a: number, b: number): number {
  const h = ((a - b) / (a + b)) ** 2
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)))
}
