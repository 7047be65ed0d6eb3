/**
 * Where in a photo a length was read: the lines that are drawn over it when the tape says
 * otherwise. Straight from point to point; the length itself follows the body between them.
 */
import type { MeasurementId } from '../measurements/catalogue.ts'
import type { Point } from '../geometry/point.ts'
import type { PointName, View, ViewReading } from './reading.ts'

type Ends = readonly [PointName, PointName]
type LinesIn = Readonly<Partial<Record<View, readonly Ends[]>>>

const BUST: Ends = ['bustLeft', 'bustRight']
const WAIST: Ends = ['waistLeft', 'waistRight']
const HIP: Ends = ['hipLeft', 'hipRight']
const LEFT_SHOULDER: Ends = ['sideNeckLeft', 'shoulderLeft']
const RIGHT_SHOULDER: Ends = ['sideNeckRight', 'shoulderRight']
const TO_APEXES: readonly Ends[] = [
  ['sideNeckLeft', 'apexLeft'],
  ['sideNeckRight', 'apexRight'],
]

const LINES: Readonly<Partial<Record<MeasurementId, LinesIn>>> = {
  napeToWaist: { side: [['nape', 'waistBack']] },
  waistToBustLevel: { front: [BUST, WAIST], side: [['bustFront', 'waistFront']] },
  apexSpacing: { front: [['apexLeft', 'apexRight']] },
  sideNeckToApex: { front: TO_APEXES },
  sideNeckOverApexToWaist: { front: [...TO_APEXES, WAIST] },
  shoulderLengthLeft: { front: [LEFT_SHOULDER], back: [LEFT_SHOULDER] },
  shoulderLengthRight: { front: [RIGHT_SHOULDER], back: [RIGHT_SHOULDER] },
  shoulderSlopeLeft: { front: [LEFT_SHOULDER], back: [LEFT_SHOULDER] },
  shoulderSlopeRight: { front: [RIGHT_SHOULDER], back: [RIGHT_SHOULDER] },
  waistToHip: { front: [WAIST, HIP] },
  bustGirth: { front: [BUST], side: [['bustFront', 'bustBack']] },
  waistGirth: { front: [WAIST], side: [['waistFront', 'waistBack']] },
  hipGirth: { front: [HIP], side: [['hipFront', 'hipBack']] },
}

/** The lines in picture px; none where the view does not show the length or a point is unseen. */
export function photoLines(
  { view, points }: Pick<ViewReading, 'view' | 'points'>,
  id: MeasurementId,
): readonly (readonly [Point, Point])[] {
  return (LINES[id]?.[view] ?? []).flatMap(([a, b]) => {
    const [from, to] = [points[a], points[b]]
    const seen = from && to && from.by !== 'guess' && to.by !== 'guess'
    return seen ? [[from.at, to.at] as const] : []
  })
}
