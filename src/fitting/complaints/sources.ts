/** Where the complaints and their corrections come from; what was seen of each is said beside it. */
import type { SourceId } from './complaint.ts'
import { SOURCE_WORDS as W } from './sources.words.ts'

export const SOURCES: Readonly<Record<SourceId, string>> = {
  R1: W.R1('USDA, Fitting Dresses, bulletin, revised May 1946'),
  R2: W.R2('USDA ARS, Home Economics Research Report 32, Pattern Alteration, 1965'),
  R3: W.R3('Washington State University Extension E.M. 2246, H. L. Roberts, Garment Fitting, 1962'),
  R8: W.R8('Montana Extension Bulletin 265, L. V. Hilyard, Pattern Alteration, 1950'),
  R12: W.R12,
  R13: W.R13('The New Dressmaker, 1921'),
  R14: W.R14('Conover, A Complete Course in Dressmaking, 1922'),
  R16: W.R16('Rosenfeld, The Practical Designer, 1918'),
  R17: W.R17('Vincent’s Systems of Cutting, about 1900'),
  R19: W.R19('Woman’s Institute, Fitting the Muslin Model, Fashion Service, 1925'),
  R20: W.R20('Liechty, Pottberg and Rasband, Fitting & Pattern Alteration, 1986'),
  R21: W.R21,
  R22: W.R22,
  R23: W.R23,
  R24: W.R24,
  R43: W.R43,
  PUBLIC: W.PUBLIC,
  CP: W.CP,
  MEM: W.MEM,
}
