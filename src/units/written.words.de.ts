import type {
  FEET_NAMES as EnglishFeet,
  UNIT_NAMES as EnglishUnits,
  WRITTEN_WORDS as English,
} from './written.words.ts'

const HOW = 'Schreib 41,3 cm, 413 mm oder 16 1/4 in.'

export const WRITTEN_WORDS: typeof English = {
  nothing: `Es steht nichts da. ${HOW}`,
  belowZero: (without) =>
    `Eine Länge kann nicht unter null liegen. Schreib „${without}“ ohne das Minus.`,
  unreadable: (shown) => `„${shown}“ lässt sich nicht als Länge lesen. ${HOW}`,
  afterFeet: (shown) =>
    `„${shown}“: Hinter der Zahl der Fuß stehen 0 bis 11 7/8 Zoll. Schreib 5' 2 1/2" oder 62 1/2 in.`,
  twoNumbers: (shown, first) =>
    `„${shown}“ sind zwei Zahlen. Schreib einen Bruch wie ${first} 3/8 oder ein Komma wie ${first},3.`,
  noMark: (shown, fraction) =>
    `„${shown}“: ${fraction} steht auf keinem Zolllineal. Schreib Halbe, Viertel, Achtel oder Sechzehntel, etwa 16 1/4.`,
}

export const UNIT_NAMES: typeof EnglishUnits = new Map([
  ['zentimeter', 'cm'],
  ['millimeter', 'mm'],
  ['meter', 'm'],
  ['zoll', 'in'],
  ['inch', 'in'],
])
export const FEET_NAMES: typeof EnglishFeet = "'|ft\\.?|fuß|fuss"
