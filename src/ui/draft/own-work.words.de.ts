import type * as English from './own-work.words.ts'

export const OWN_WORK_WORDS: typeof English.OWN_WORK_WORDS = {
  drawnByHand: (piece) => `Von Hand gezeichnet: ${piece}`,
  noneEntered: 'nichts eingetragen',
  allAgree: (entered) => `${entered} eingetragen, alle stimmen`,
  lieApart: (apart, entered) => `${apart} von ${entered} weichen ab`,
  differs: (line, by, longer) => `${line}: deines ist ${by} ${longer ? 'länger' : 'kürzer'}.`,
  measureYourPaper: (pencil) =>
    `Miss dein eigenes Papier an diesen Linien, um eine Rundung mit hochkant gestelltem Maßband. Bis ${pencil} ist es der Bleistift; darüber wird auf die Linie gezeigt.`,
  followsOthers: 'Dieses Teil folgt den anderen. Miss Rückenteil, Vorderteil oder Ärmel.',
  line: 'Linie',
  draftIn: (unit) => `Schnitt, ${unit}`,
  yours: 'Deines',
  apart: 'Abstand',
  yoursOf: (line) => `${line}, deines`,
  agrees: 'stimmt',
  showThe: (line) => `Zeigen: ${line}`,
  showIt: 'Zeigen',
  yoursBy: (change) => `deines ${change}`,
}

export const LIKED_FIELDS: typeof English.LIKED_FIELDS = {
  bust: 'Quer, unter den Armlöchern',
  waist: 'Quer, in der Taille',
  highHip: 'Quer, an der hohen Hüfte',
  hip: 'Quer, an der Hüfte',
  backLength: 'Hintere Mitte, Halsnaht bis Saum',
}

export const LIKED_GARMENT_WORDS: typeof English.LIKED_GARMENT_WORDS = {
  title: 'Ein Stück, das du magst',
  noneLaidFlat: 'keines aufgelegt',
  how: 'Aus Webware, geschlossen, auf den Tisch gelegt und glatt gestrichen, ohne zu ziehen. Keine Maschenware: Sie dehnt sich, und ihre Mehrweite wirkt zu klein.',
  belowTheWaist: (field, length) => `${field}, ${length} unter der Taille`,
  outside: (least, most) => `Möglich ist ${least} bis ${most}: Miss beides noch einmal.`,
  draftHasIt: 'Der Schnitt hat es.',
  draftHas: (length) => `Der Schnitt hat ${length}.`,
  drawWith: (count) => (count === 1 ? 'Damit zeichnen' : `Mit diesen ${count} zeichnen`),
  hasThatEase: 'Der Schnitt hat die Mehrweite dieses Stücks.',
  easeOfLiked: 'Mehrweite des Stücks, das du magst',
}
