/** What was seen of each source of the complaints, sources that are named by kind, and how much was seen. */
import type { Evidence } from './complaint.ts'

export const SOURCE_WORDS = {
  R1: (cited: string) =>
    `${cited}; parts on grain, neck and shoulder, bust and back, armhole and sleeve seen`,
  R2: (cited: string) => `${cited}; contents and introduction seen`,
  R3: (cited: string) => `${cited}; first pages seen`,
  R8: (cited: string) => `${cited}; contents seen`,
  R12: 'Central Washington University costume text, chapters on ease and pattern alterations',
  R13: (cited: string) => `${cited}, chapters 3 to 5`,
  R14: (cited: string) => `${cited}, volumes 2, 4 and 9; pages seen`,
  R16: (cited: string) => `${cited}, lesson on the kimono jacket`,
  R17: (cited: string) => `${cited}, technical terms`,
  R19: (cited: string) => `${cited}, and its text on close-fitting patterns`,
  R20: (cited: string) => `${cited}; two pages and the chapter on asymmetry seen`,
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
