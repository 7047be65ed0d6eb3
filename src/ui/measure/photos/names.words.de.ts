import type {
  ESTIMATE_WORDS as EnglishEstimates,
  POINT_WORDS as EnglishPoints,
  VIEW_PHOTO_WORDS as EnglishPhotos,
  VIEW_WORDS as EnglishViews,
} from './names.words.ts'

export const VIEW_WORDS: typeof EnglishViews = {
  front: 'Vorn',
  side: 'Seite',
  back: 'Hinten',
}
export const VIEW_PHOTO_WORDS: typeof EnglishPhotos = {
  front: 'Foto von vorn',
  side: 'Foto von der Seite',
  back: 'Foto von hinten',
}

export const POINT_WORDS: typeof EnglishPoints = {
  nape: 'Nackenpunkt',
  waistBack: 'Taille hinten',
  waistFront: 'Taille vorn',
  bustLevel: 'Brusthöhe',
  apexLeft: 'Linker Brustpunkt',
  apexRight: 'Rechter Brustpunkt',
  sideNeckLeft: 'Linker Halspunkt',
  sideNeckRight: 'Rechter Halspunkt',
  shoulderLeft: 'Linker Schulterpunkt',
  shoulderRight: 'Rechter Schulterpunkt',
  bustLeft: 'Brust, linke Seite',
  bustRight: 'Brust, rechte Seite',
  bustFront: 'Brust vorn',
  bustBack: 'Brust hinten',
  waistLeft: 'Taille, linke Seite',
  waistRight: 'Taille, rechte Seite',
  hipLeft: 'Hüfte, linke Seite',
  hipRight: 'Hüfte, rechte Seite',
  hipFront: 'Hüfte vorn',
  hipBack: 'Hüfte hinten',
}

export const ESTIMATE_WORDS: typeof EnglishEstimates = {
  napeToWaist: 'Rückenlänge',
  waistToBustLevel: 'Taille bis Brusthöhe',
  apexSpacing: 'Brustpunktabstand',
  sideNeckToApex: 'Brusttiefe',
  sideNeckOverApexToWaist: 'Vorderlänge über Brust',
  shoulderLength: 'Schulterlänge, beide Seiten',
  shoulderLengthLeft: 'Schulterlänge, links',
  shoulderLengthRight: 'Schulterlänge, rechts',
  shoulderSlopeLeft: 'Schulterabfall, links',
  shoulderSlopeRight: 'Schulterabfall, rechts',
  acrossBack: 'Rückenbreite',
  napeToArmpitLevel: 'Rückenhöhe',
  waistToHip: 'Hüfttiefe',
  bustBreadth: 'Breite der Brust',
  waistBreadth: 'Breite der Taille',
  hipBreadth: 'Breite der Hüfte',
  bustDepth: 'Tiefe der Brust',
  waistDepth: 'Tiefe der Taille',
  hipDepth: 'Tiefe der Hüfte',
  bustGirth: 'Brustumfang',
  waistGirth: 'Taillenumfang',
  hipGirth: 'Hüftumfang',
}
