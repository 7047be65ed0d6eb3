import type { HOW_READ as EnglishHow, PLACE_WORDS as EnglishPlaces } from './pin.words.ts'

export const HOW_READ: typeof EnglishHow = {
  pinch: { word: 'ganze Falte', hint: 'Die ganze Stoffbreite, die die Nadeln wegnehmen.' },
  fold: {
    word: 'Bruch bis Nadel',
    hint: 'Die Falte liegt flach: vom Bruch bis zur Nadel. Zählt doppelt.',
  },
  slit: {
    word: 'Einschnitt',
    hint: 'Einschneiden und aufspringen lassen: der Abstand der beiden Schnittkanten.',
  },
  level: {
    word: 'Linie zu Linie',
    hint: 'Von der Linie auf dem Probeteil bis dorthin, wo sie liegen soll.',
  },
  newLine: {
    word: 'Naht bis Nadeln',
    hint: 'Von der Naht bis zur neuen Nadellinie, auf einem Teil.',
  },
}

export const PLACE_WORDS: typeof EnglishPlaces = {
  cf: 'vordere Mitte',
  cb: 'hintere Mitte',
  side: 'Seitennaht',
  seam: 'eine Naht',
  allRound: 'rundum',
  neck: 'Halsausschnitt',
  shoulder: 'Schulternaht',
  overarm: 'Oberarmnaht',
  armhole: 'Armloch',
  sleeveEdge: 'Ärmelkante',
  centre: 'Mittellinie',
  hem: 'Saum',
  waist: 'Taillenlinie',
  bust: 'Brustlinie',
  hip: 'Hüftlinie',
  dart: 'Abnäher',
  cap: 'Armkugel',
  sleeve: 'Ärmel',
  inside: 'mitten im Teil',
}
