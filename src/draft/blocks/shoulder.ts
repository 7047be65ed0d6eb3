/** The body's shoulder as the draft needs it: where the neck ends, how steep, where the bone lies. */
import { knows, lengthOf, measured, type Body } from '../../measurements/confirmed.ts'
import { point, type Point } from '../../geometry/point.ts'
import { fixed, over, plus, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'

/** Half the neck at its base lies this far out: a sixth of the neck base and 8 mm. Common practice. */
const BASE_PART = 6
const BASE_MORE = mm(8)
/** Mean shoulder slope of 3,183 women (body survey of Korea, 2015: 19.7°, SD 4.2°), while hers is not taped. */
const USUAL_SLOPE = (19.7 * Math.PI) / 180

export const neckBaseHalf = (body: Body): Amount | undefined =>
  knows(body, 'neckBaseGirth')
    ? plus(over(measured(body, 'neckBaseGirth'), BASE_PART), fixed(BASE_MORE))
    : undefined

/** Mean of left and right, radians: the drop is upright, the shoulder length slants. */
export function shoulderSlope(body: Body): number {
  const sides = shoulders(body).map(({ length, drop }) => Math.asin(drop / length))
  return sides.length === 0 ? USUAL_SLOPE : sides.reduce((a, b) => a + b, 0) / sides.length
}

const BOTH = [
  ['shoulderLengthLeft', 'shoulderSlopeLeft'],
  ['shoulderLengthRight', 'shoulderSlopeRight'],
] as const

function shoulders(body: Body): { length: number; drop: number }[] {
  return BOTH.flatMap(([length, drop]) => {
    if (!(knows(body, length) && knows(body, drop))) return []
    const [l, d] = [lengthOf(body, length), lengthOf(body, drop)]
    return d < l ? [{ length: l, drop: d }] : []
  })
}

/**
 * The shoulder bone on the back, from the nape level at the fold; undefined while neck base or
 * shoulder length are not taped. @param rise of the side neck above the nape level, mm
 */
export function shoulderPoint(body: Body, rise: number): Point | undefined {
  const base = neckBaseHalf(body)
  const lengths = (['shoulderLengthLeft', 'shoulderLengthRight'] as const).flatMap((id) =>
    knows(body, id) ? [lengthOf(body, id)] : [],
  )
  if (base === undefined || lengths.length === 0) return undefined
  const length = lengths.reduce((a, b) => a + b, 0) / lengths.length
  const slope = shoulderSlope(body)
  return point(base.mm + length * Math.cos(slope), -rise + length * Math.sin(slope))
}
