import type { FOLD_WORDS as EnglishFolds, PART_WORDS as EnglishParts } from './parts.words.ts'

export const PART_WORDS: typeof EnglishParts = {
  same: 'gleich',
  was: 'Vorher',
  willBe: 'Nachher',
  change: 'Diffe\u00adrenz',
  column: (head, unit) => `${head}, ${unit}`,
  dotsApart: (spacing) => `Von Punkt zu Punkt ${spacing}`,
  closer: 'Näher',
  further: 'Weiter weg',
  whole: 'Ganz',
  drawingKeys:
    'Plus und Minus holen die Zeichnung näher und weiter weg, Pfeiltasten schieben sie, 0 zeigt sie ganz.',
  readAs: (length) => `Gelesen als ${length}.`,
  type: 'tippen',
  cannotTell: 'Ich kann es nicht sagen',
  range: (label, least, most) =>
    `${label}: möglich sind ${least} bis ${most}. Schreib etwas davon.`,
  stop: 'Halt:',
  nextAct: 'Nächster Schritt',
  camera: (guess) => (guess === undefined ? 'Kamera: nicht gesehen' : `Kamera ${guess}`),
  tape: (camera, readings) => `${camera}, Maßband ${readings.join(' und ') || 'noch nicht'}`,
}

export const FOLD_WORDS: typeof EnglishFolds = {
  level: 'quer',
  rising: 'steigend',
  upright: 'senkrecht',
  falling: 'fallend',
}
