/** Where complaints and their corrections come from, what was seen of each, and how much it says. */
import { CITED } from './cited.ts'
import type { Evidence, SourceId } from './complaint.ts'

export const SOURCE_WORDS: Readonly<Record<SourceId, string>> = {
  R1: `${CITED.fittingDresses}; parts on grain, neck and shoulder, bust and back, armhole and sleeve seen`,
  R2: `${CITED.patternAlteration}; contents and introduction seen`,
  R3: `${CITED.garmentFitting}; first pages seen`,
  R8: `${CITED.alteration}; contents seen`,
  R12: 'Central Washington University costume text, chapters on ease and pattern alterations',
  R13: `${CITED.newDressmaker}, chapters 3 to 5`,
  R14: `${CITED.conover}, volumes 2, 4 and 9; pages seen`,
  R16: `${CITED.rosenfeld}, lesson on the kimono jacket`,
  R17: `${CITED.vincent}, technical terms`,
  R19: `${CITED.fashionService}, and its text on close-fitting patterns`,
  R20: `${CITED.liechty}; two pages and the chapter on asymmetry seen`,
  R21: 'a dress-cutting text on balance, excerpt',
  R22: 'articles of a sewing magazine on armholes, patternwork and sleeves',
  R23: 'a sewing handbook, general guidelines for pattern adjustments',
  R24: 'a pattern-making lesson site: contour amounts, blocks, cap height',
  R43: 'a public sewing blog on folds above the back waist and what looks like them',
  PUBLIC: 'public sewing tutorials and blogs',
  CP: 'common practice, no source',
  MEM: 'from memory',
}

export const EVIDENCE_WORDS: Readonly<Record<Evidence, string>> = {
  operative: 'operative text',
  partly: 'partly seen',
  heading: 'heading only',
  practice: 'common practice',
  memory: 'memory',
}
