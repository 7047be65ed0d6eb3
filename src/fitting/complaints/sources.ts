/** Where the complaints and their corrections come from; what was seen of each is said beside it. */
export const SOURCES = {
  R1: 'USDA, Fitting Dresses, bulletin, revised May 1946; parts on grain, neck and shoulder, bust and back, armhole and sleeve seen',
  R2: 'USDA ARS, Home Economics Research Report 32, Pattern Alteration, 1965; contents and introduction seen',
  R3: 'Washington State University Extension E.M. 2246, H. L. Roberts, Garment Fitting, 1962; first pages seen',
  R8: 'Montana Extension Bulletin 265, L. V. Hilyard, Pattern Alteration, 1950; contents seen',
  R12: 'Central Washington University costume text, chapters on ease and pattern alterations',
  R13: 'The New Dressmaker, 1921, chapters 3 to 5',
  R14: 'Conover, A Complete Course in Dressmaking, 1922, volumes 2, 4 and 9; pages seen',
  R16: 'Rosenfeld, The Practical Designer, 1918, lesson on the kimono jacket',
  R17: 'Vincent’s Systems of Cutting, about 1900, technical terms',
  R19: 'Woman’s Institute, Fitting the Muslin Model, Fashion Service, 1925, and its text on close-fitting patterns',
  R20: 'Liechty, Pottberg and Rasband, Fitting & Pattern Alteration, 1986; two pages and the chapter on asymmetry seen',
  R21: 'a dress-cutting text on balance, excerpt',
  R22: 'articles of a sewing magazine on armholes, patternwork and sleeves',
  R23: 'a sewing handbook, general guidelines for pattern adjustments',
  R24: 'a pattern-making lesson site: contour amounts, blocks, cap height',
  R43: 'a public sewing blog on folds above the back waist and what looks like them',
  PUBLIC: 'public sewing tutorials and blogs',
  CP: 'common practice, no source',
  MEM: 'from memory',
} as const
export type SourceId = keyof typeof SOURCES
