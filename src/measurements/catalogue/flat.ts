/**
 * A garment she likes, laid flat: where the wanted ease comes from. One reading stands, because
 * the garment lies on a table with both ends in sight and does not breathe; it describes a wish,
 * never a body, so no draft width rests on it alone. A second reading, if made, must agree.
 */
import { judged, own, type MeasureRule } from '../measure.ts'
import { JUDGEMENTS } from '../sources.ts'
import { FLAT_WORDS as W } from './flat.words.ts'

const flat = { kind: 'flat', readingsNeeded: 1 } as const

export const FLAT = {
  flatBustWidth: {
    ...flat,
    ...W.flatBustWidth,
    id: 'flatBustWidth',
    definition: 'flatBustWidth/side-seam-to-side-seam',
    tolerance: own(5),
    plausible: judged(270, 1000, JUDGEMENTS.halfGirths),
  },
  flatWaistWidth: {
    ...flat,
    ...W.flatWaistWidth,
    id: 'flatWaistWidth',
    definition: 'flatWaistWidth/side-seam-to-side-seam',
    tolerance: own(5),
    plausible: judged(220, 1000, JUDGEMENTS.halfGirths),
  },
  flatHemWidth: {
    ...flat,
    ...W.flatHemWidth,
    id: 'flatHemWidth',
    definition: 'flatHemWidth/along-hem',
    tolerance: own(5),
    plausible: judged(220, 2000, JUDGEMENTS.hem),
  },
  flatBackLength: {
    ...flat,
    ...W.flatBackLength,
    id: 'flatBackLength',
    definition: 'flatBackLength/neck-seam-to-hem-centre-back',
    tolerance: own(5),
    plausible: judged(250, 1600, JUDGEMENTS.backLength),
  },
} as const satisfies Record<string, MeasureRule>
