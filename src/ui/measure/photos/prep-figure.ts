/** What she wears in each photo, on the schematic figure: cord, sheet, dots. Box 200 by 420, y down. */
import type { View } from '../../../capture/reading.ts'
import { HALF, LEVEL, type Place } from '../../../measurements/figure.ts'

const MIDDLE = 100
const at = (x: number, y: number): Place => ({ x, y })
const both = (half: number, y: number): Place[] => [at(MIDDLE - half, y), at(MIDDLE + half, y)]

export interface Dressed {
  readonly cord: readonly [Place, Place]
  /** A sheet folded to half of A4 is as wide as the waist is from the front. */
  readonly sheet: {
    readonly x: number
    readonly y: number
    readonly width: number
    readonly height: number
  }
  readonly dots: readonly Place[]
}

/** 148 by 210 mm on a figure of 402 units for 1.7 m. */
const [WIDE, TALL] = [50, 35]
const sheetAt = (middle: number) => ({
  x: middle - WIDE / 2,
  y: LEVEL.waist + 3,
  width: WIDE,
  height: TALL,
})
const cord: Dressed['cord'] = [
  at(MIDDLE - HALF.waist, LEVEL.waist),
  at(MIDDLE + HALF.waist, LEVEL.waist),
]
const ridge = [
  ...both(HALF.neckSide + 2, LEVEL.neckSide + 2),
  ...both(HALF.shoulderBone, LEVEL.shoulderBone),
]

export const DRESSED: Readonly<Record<View, Dressed>> = {
  front: {
    cord,
    sheet: sheetAt(MIDDLE),
    dots: [...ridge, ...both(18, LEVEL.apex), at(MIDDLE, LEVEL.waist)],
  },
  side: {
    cord: [at(80, LEVEL.waist), at(117, LEVEL.waist)],
    sheet: sheetAt(98),
    dots: [at(113, LEVEL.nape), at(69, LEVEL.apex), at(102, LEVEL.hip)],
  },
  back: {
    cord,
    sheet: sheetAt(MIDDLE),
    dots: [
      at(MIDDLE, LEVEL.nape),
      ...both(HALF.shoulderBone, LEVEL.shoulderBone),
      at(MIDDLE, LEVEL.waist),
    ],
  },
}
