/** Lengths down the front, all by mirror. The apex is the point that stands out most from the side. */
import { own, seen, type MeasureRule } from '../measure.ts'
import { SURVEYS } from '../sources.ts'
import { FRONT_WORDS as W } from './front.words.ts'

const length = { kind: 'length', readingsNeeded: 2 } as const

export const FRONT = {
  sideNeckOverApexToWaist: {
    ...length,
    ...W.sideNeckOverApexToWaist,
    id: 'sideNeckOverApexToWaist',
    definition: 'sideNeckOverApexToWaist/natural-waist',
    tolerance: own(5),
    plausible: seen(346, 530, SURVEYS.korea),
  },
  sideNeckToApex: {
    ...length,
    ...W.sideNeckToApex,
    id: 'sideNeckToApex',
    definition: 'sideNeckToApex/on-skin',
    tolerance: own(5),
    plausible: seen(185, 384),
  },
  frontNeckToWaist: {
    ...length,
    ...W.frontNeckToWaist,
    id: 'frontNeckToWaist',
    definition: 'frontNeckToWaist/natural-waist',
    tolerance: own(5),
    plausible: seen(238, 460),
  },
  apexSpacing: {
    ...length,
    ...W.apexSpacing,
    id: 'apexSpacing',
    definition: 'apexSpacing/straight',
    tolerance: own(5),
    plausible: seen(111, 285),
  },
} as const satisfies Record<string, MeasureRule>
