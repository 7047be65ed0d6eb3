/** Choices on the Draft page: their groups and what the draft says of each, fit, ease, openings. */
import type { Fit } from '../../draft/choices.ts'
import type { EaseLevel } from '../../draft/ease.ts'
import type { OpeningKind } from '../../draft/opening.ts'
import type { OptionWord } from '../../draft/options.ts'
import type { GroupId } from './choice-groups.ts'

export const GROUP_WORDS: Readonly<Record<GroupId, string>> = {
  ease: 'Ease',
  neck: 'Neck',
  arm: 'Shoulder, arm',
  length: 'Length',
  skirt: 'Skirt',
  waist: 'Waist and darts',
  opening: 'Opening',
  construction: 'Construction',
}

export const OPENING_WORDS: Readonly<Record<OpeningKind, string>> = {
  sideZip: 'zip in the left side',
  backZip: 'zip at the centre back',
  buttonedFront: 'buttoned front',
  neckSlit: 'slit at the back neck',
  keyhole: 'keyhole at the front neck',
}
/** At the right of a closed group, where there is little room. */
export const OPENING_SHORT: Readonly<Record<OpeningKind, string>> = {
  sideZip: 'side zip',
  backZip: 'back zip',
  buttonedFront: 'buttons',
  neckSlit: 'neck slit',
  keyhole: 'keyhole',
}

export const FIT_WORDS: Readonly<Record<Fit, { readonly word: string; readonly does: string }>> = {
  easy: { word: 'easy', does: 'Hangs loose from bust to hip.' },
  close: { word: 'close', does: 'Lies nearer the body. Try it in a muslin first.' },
}

export const EASE_LEVEL_WORDS: Readonly<Record<EaseLevel, string>> = {
  bust: 'Bust',
  waist: 'Waist',
  highHip: 'High hip',
  hip: 'Hip',
}

export const WAIST_WAY_WORDS: Readonly<Record<OptionWord<'surplus'>, string>> = {
  auto: 'Side first',
  twoDarts: 'Two darts',
  centreBack: 'Centre back',
}

export const TURNING_WORDS = {
  // A group in few words, at the right of its head.
  yourOwn: 'your own',
  overarm: (length: string): string => `overarm ${length}`,
  belowTheWaist: (length: string): string => `${length} below the waist`,
  noOpening: 'none',
  darts: (count: number): string => (count === 0 ? 'no darts' : `${count} darts`),

  // Sentences over its rulers.
  level: 'level',
  slope: (degrees: string, above: boolean): string =>
    `${degrees}° ${above ? 'above' : 'below'} the level`,
  overarmLies: (length: string, slope: string): string =>
    `The overarm is ${length} long and lies ${slope}.`,
  tapeForShoulderBone:
    'Tape neck base and shoulder length to see how much cloth stands above the shoulder bone.',
  underShoulderBone: (length: string): string =>
    `It lies ${length} under the shoulder bone: raise its end.`,
  aboveShoulderBone: (length: string): string =>
    `${length} of cloth stands above the shoulder bone.`,
  // Said once: a dressmaker used to set-in sleeves would take the folds for a fault.
  styleFolds: 'Soft folds from neck to underarm belong to this style.',
  tapeForNeck:
    'Tape front neck to waist to see how far the neck edge lies below your front neck point.',
  neckLies: (length: string, above: boolean): string =>
    `At the centre the neck edge lies ${length} ${above ? 'above' : 'below'} your front neck point.`,
  noOpeningYet: 'No opening.',
  /** After the name of an opening. */
  openingIs: (length: string | undefined, added: boolean): string =>
    `${length === undefined ? '' : `, ${length} long`}${added ? ', added by the draft.' : '.'}`,

  // A choice on its ruler.
  corrected: (change: string): string => `Corrections turned it by ${change}.`,
  source: (source: string): string => `${source}.`,
  whatDoesItMove: 'What does it move?',
  whatDoesMove: (label: string): string => `What does ${label} move?`,
  tooFar: (label: string): string =>
    `${label}: that far the lines no longer meet. It stays as it was.`,
  doNotMeet: (words: string): string =>
    `${words}: with these numbers the lines do not meet. It stays as it was.`,
  picked: (label: string, word: string): string => `${label}: ${word}`,
  handle: (point: string, label: string): string => `${point}: ${label}`,

  fit: 'Fit',
  fitPicked: (word: string): string => `fit: ${word}`,
  neitherFit: 'Your own eases: neither easy nor close.',
  fullerBust: 'The bust is much fuller than the high bust: the front may take some of the back.',
  frontWider: (length: string): string => `Front wider by ${length}`,

  sewnEase: (unit: string): string => `Sewn ease round the body, in ${unit}`,
  easeLevel: 'Level',
  body: 'Body',
  sewn: 'Sewn',
  ease: 'Ease',
  besidePublished: 'Beside published ease',
  publishedEase: (unit: string): string => `Published ease for woven cloth, in ${unit}`,
  holdsThisEase: ' holds this ease',
  notGiven: 'not given',

  waysToTakeIn: 'Ways to take the waist in',
  oneTooWide: (now: string, unit: 'cm' | 'inch'): string =>
    `One dart would be too wide. Now: ${now}. ${unit === 'cm' ? 'Centimetres' : 'Inches'} on each half piece.`,
  takenInAt: 'Taken in at',
  side: 'Side',
  backDarts: 'Back darts',
  frontDarts: 'Front darts',
  centreBack: 'Centre back',
  leftLoose: 'Left loose',
}
