/** The published works behind the complaints and their corrections, as they are cited. */
export const CITED = {
  fittingDresses: 'USDA, Fitting Dresses, bulletin, revised May 1946',
  patternAlteration: 'USDA ARS, Home Economics Research Report 32, Pattern Alteration, 1965',
  garmentFitting:
    'Washington State University Extension E.M. 2246, H. L. Roberts, Garment Fitting, 1962',
  alteration: 'Montana Extension Bulletin 265, L. V. Hilyard, Pattern Alteration, 1950',
  newDressmaker: 'The New Dressmaker, 1921',
  conover: 'Conover, A Complete Course in Dressmaking, 1922',
  rosenfeld: 'Rosenfeld, The Practical Designer, 1918',
  vincent: 'Vincent’s Systems of Cutting, about 1900',
  fashionService: 'Woman’s Institute, Fitting the Muslin Model, Fashion Service, 1925',
  liechty: 'Liechty, Pottberg and Rasband, Fitting & Pattern Alteration, 1986',
} as const
