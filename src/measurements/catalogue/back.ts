/** Lengths down the back. The cord at the waist stays on; the nape bone is marked first. */
import { observer, own, seen, type MeasureRule } from '../measure.ts'
import { SOURCE_WORDS } from '../measure.words.ts'
import { CLAUSES, SURVEYS } from '../sources.ts'
import { BACK_WORDS as W } from './back.words.ts'

const length = { kind: 'length', readingsNeeded: 2 } as const

export const BACK = {
  napeToWaist: {
    ...length,
    ...W.napeToWaist,
    id: 'napeToWaist',
    definition: 'napeToWaist/natural-waist-on-skin',
    tolerance: observer(5),
    plausible: seen(283, 481),
    iso: `${CLAUSES.napeToWaist}, ${SOURCE_WORDS.toOurWaist}`,
  },
  sideNeckOverBladeToWaist: {
    ...length,
    ...W.sideNeckOverBladeToWaist,
    id: 'sideNeckOverBladeToWaist',
    definition: 'sideNeckOverBladeToWaist/natural-waist',
    tolerance: own(10),
    plausible: seen(360, 515, SURVEYS.korea),
  },
  napeToArmpitLevel: {
    ...length,
    ...W.napeToArmpitLevel,
    id: 'napeToArmpitLevel',
    definition: 'napeToArmpitLevel/down-centre-back',
    tolerance: own(8),
    plausible: seen(102, 249),
  },
} as const satisfies Record<string, MeasureRule>
