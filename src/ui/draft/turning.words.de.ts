import { capital } from '../../units/capital.ts'
import type * as English from './turning.words.ts'

export const GROUP_WORDS: typeof English.GROUP_WORDS = {
  ease: 'Mehrweite',
  neck: 'Hals',
  arm: 'Schulter, Arm',
  length: 'Länge',
  skirt: 'Rock',
  waist: 'Taille und Abnäher',
  opening: 'Öffnung',
  construction: 'Konstruktion',
}

export const OPENING_WORDS: typeof English.OPENING_WORDS = {
  sideZip: 'Reißverschluss in der linken Seite',
  backZip: 'Reißverschluss in der hinteren Mitte',
  buttonedFront: 'vorn geknöpft',
  neckSlit: 'Halsschlitz hinten',
  keyhole: 'Tropfenausschnitt vorn',
}
export const OPENING_SHORT: typeof English.OPENING_SHORT = {
  sideZip: 'RV Seite',
  backZip: 'RV hinten',
  buttonedFront: 'Knöpfe',
  neckSlit: 'Halsschlitz',
  keyhole: 'Tropfen',
}

export const FIT_WORDS: typeof English.FIT_WORDS = {
  easy: { word: 'bequem', does: 'Fällt locker von der Brust bis zur Hüfte.' },
  close: { word: 'anliegend', does: 'Liegt näher am Körper. Probier es zuerst im Probeteil.' },
}

export const EASE_LEVEL_WORDS: typeof English.EASE_LEVEL_WORDS = {
  bust: 'Brust',
  waist: 'Taille',
  highHip: 'Hohe Hüfte',
  hip: 'Hüfte',
}

export const WAIST_WAY_WORDS: typeof English.WAIST_WAY_WORDS = {
  auto: 'Erst Seite',
  twoDarts: 'Zwei Abnäher',
  centreBack: 'Hintere Mitte',
}

export const TURNING_WORDS: typeof English.TURNING_WORDS = {
  yourOwn: 'eigene',
  overarm: (length) => `Oberarmnaht ${length}`,
  belowTheWaist: (length) => `${length} unter der Taille`,
  noOpening: 'keine',
  darts: (count) => (count === 0 ? 'keine Abnäher' : `${count} Abnäher`),

  level: 'waagerecht',
  slope: (degrees, above) => `${degrees}° ${above ? 'über' : 'unter'} der Waagerechten`,
  overarmLies: (length, slope) => `Die Oberarmnaht ist ${length} lang und liegt ${slope}.`,
  tapeForShoulderBone:
    'Miss Halsumfang und Schulterlänge, um zu sehen, wie viel Stoff über dem Schulterpunkt steht.',
  underShoulderBone: (length) => `Sie liegt ${length} unter dem Schulterpunkt: Heb ihr Ende an.`,
  aboveShoulderBone: (length) => `Über dem Schulterpunkt stehen ${length} Stoff.`,
  styleFolds: 'Weiche Falten vom Hals zur Achsel gehören zu dieser Form.',
  tapeForNeck:
    'Miss von der Halsgrube bis zur Taille, um zu sehen, wie weit der Halsausschnitt unter deiner Halsgrube liegt.',
  neckLies: (length, above) =>
    `An der Mitte liegt der Halsausschnitt ${length} ${above ? 'über' : 'unter'} deiner Halsgrube.`,
  noOpeningYet: 'Keine Öffnung.',
  openingIs: (length, added) =>
    `${length === undefined ? '' : `, ${length} lang`}${added ? ', vom Schnitt dazugegeben.' : '.'}`,

  corrected: (change) => `Änderungen haben es um ${change} verstellt.`,
  source: (source) => `${source}.`,
  whatDoesItMove: 'Was ändert es?',
  whatDoesMove: (label) => `Was ändert „${label}“?`,
  tooFar: (label) =>
    `${capital(label)}: So weit treffen sich die Linien nicht mehr. Es bleibt, wie es war.`,
  doNotMeet: (words) =>
    `${capital(words)}: Mit diesen Zahlen treffen sich die Linien nicht. Es bleibt, wie es war.`,
  picked: (label, word) => `${label}: ${word}`,
  handle: (point, label) => `${point}: ${label}`,

  fit: 'Passform',
  fitPicked: (word) => `Passform: ${word}`,
  neitherFit: 'Deine eigenen Mehrweiten: weder bequem noch anliegend.',
  fullerBust:
    'Der Brustumfang ist viel größer als der Oberbrustumfang: Das Vorderteil darf etwas vom Rückenteil nehmen.',
  frontWider: (length) => `Vorn ${length} breiter`,

  sewnEase: (unit) => `Genähte Mehrweite rundum, in ${unit}`,
  easeLevel: 'Höhe',
  body: 'Körper',
  sewn: 'Genäht',
  ease: 'Mehr\u00adweite',
  besidePublished: 'Neben veröffentlichten Mehrweiten',
  publishedEase: (unit) => `Veröffentlichte Mehrweiten für gewebten Stoff, in ${unit}`,
  holdsThisEase: ' enthält diese Mehrweite',
  notGiven: 'nicht angegeben',

  waysToTakeIn: 'Wege, in der Taille Weite wegzunehmen',
  oneTooWide: (now, unit) =>
    `Ein Abnäher wäre zu breit. Jetzt: ${now}. ${unit === 'cm' ? 'Zentimeter' : 'Zoll'} auf jeder Hälfte.`,
  takenInAt: 'Weggenommen an',
  side: 'Seite',
  backDarts: 'Abnäher hinten',
  frontDarts: 'Abnäher vorn',
  centreBack: 'Hintere Mitte',
  leftLoose: 'Bleibt locker',
}
