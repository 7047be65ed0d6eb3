/**
 * Where tape points usually lie against the model's joints. Heights are counted from the middle of
 * the two shoulder joints in lengths "shoulder to hip joint" (about 500 mm), down positive; `sd` is
 * how far single bodies stray from it. Breadths are ratios as named.
 * Source of every number: mean and standard deviation over our bench of 16 rendered bodies, three
 * views, two pictures each (models-notes/blazepose.md). They place a point to start from; they
 * carry how the model defines its joints and are not anthropometry of living women.
 */
import type { View } from './reading.ts'

export interface Share {
  readonly at: number
  readonly sd: number
}
const share = (at: number, sd: number): Share => ({ at, sd })

export const WAIST: Readonly<Record<View, Share>> = {
  front: share(0.658, 0.027),
  side: share(0.679, 0.03),
  back: share(0.671, 0.03),
}
export const BUST: Readonly<Record<View, Share>> = {
  front: share(0.294, 0.051),
  side: share(0.338, 0.042),
  back: share(0.32, 0.049),
}
export const HIP: Readonly<Record<View, Share>> = {
  front: share(1.006, 0.039),
  side: share(1.012, 0.036),
  back: share(1.019, 0.038),
}

/** Nape from the side without a contour: below the ear, above the shoulders; the mean of the two strays by the last. */
export const NAPE_BELOW_EAR = share(0.256, 0.023)
export const NAPE_ABOVE_SHOULDER = share(0.123, 0.023)
export const NAPE_BY_JOINTS_SD = 0.018
/** Nape from the back: the two ways agree no better than each alone. */
export const NAPE_BACK = share(-0.169, 0.0177)

/** Side neck point seen from the side: towards the face from the nape, and below it. */
export const SIDE_NECK_BEFORE_NAPE = share(0.08, 0.0125)
export const SIDE_NECK_BELOW_NAPE = share(0.0205, 0.0065)

/** Side neck and shoulder points from front and back. */
export const SIDE_NECK_HEIGHT = { front: share(-0.162, 0.018), back: share(-0.137, 0.0165) }
/** Spacing of the side neck points in breadths of the neck where it is narrowest. */
export const SIDE_NECK_SPREAD = { front: share(1.461, 0.086), back: share(1.435, 0.076) }
export const SHOULDER_HEIGHT = { front: share(-0.066, 0.0145), back: share(-0.04, 0.016) }
/** Spacing of the shoulder points in spacings of the shoulder joints. */
export const SHOULDER_SPREAD = { front: share(1.128, 0.026), back: share(1.157, 0.057) }

/** Spacing of the apexes in breadths of the trunk at bust level, as a photo shows both. */
export const APEX_SPREAD = share(0.72, 0.056)

/** Search zones, in the same lengths. */
export const WAIST_ZONE = { band: [0.4, 1.0], narrowest: [0.52, 0.92], startOfTrunk: 0.62 } as const
export const APEX_ZONE = [0.1, 0.6] as const
export const BUST_ZONE = [0.15, 0.5] as const
export const HIP_ZONE = [0.75, 1.25] as const
