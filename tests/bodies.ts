/**
 * Invented bodies for tests and demonstrations. Nobody was measured: the numbers were made up
 * to lie apart in size and proportion, and every one passes the tape book as two equal readings.
 */
import { addTape, emptyBook, type Book } from '../src/measurements/book.ts'
import {
  isMeasurementId,
  MEASUREMENT_IDS,
  type MeasurementId,
} from '../src/measurements/catalogue.ts'
import { confirm, type Confirmed } from '../src/measurements/confirmed.ts'
import { mm } from '../src/units/length.ts'

export type InventedNumbers = Readonly<Record<MeasurementId, number>>
export const INVENTED_ON = '2026-11-25'

/** Invented, bust 940 mm: the body most tests start from. */
export const MIDDLE: InventedNumbers = {
  bustGirth: 940,
  highBustGirth: 900,
  underbustGirth: 810,
  waistGirth: 780,
  highHipGirth: 910,
  waistToHighHip: 100,
  hipGirth: 1000,
  waistToHip: 200,
  neckBaseGirth: 372,
  headGirth: 560,
  upperArmGirth: 290,
  armholeGirth: 395,
  slipThroughGirth: 1010,
  napeToWaist: 400,
  sideNeckOverBladeToWaist: 424,
  sideNeckOverApexToWaist: 426,
  sideNeckToApex: 266,
  frontNeckToWaist: 346,
  waistToBustLevel: 165,
  napeToArmpitLevel: 186,
  armpitToWaist: 200,
  apexSpacing: 184,
  acrossBack: 360,
  acrossChest: 330,
  shoulderLengthLeft: 125,
  shoulderLengthRight: 125,
  shoulderSlopeLeft: 42,
  shoulderSlopeRight: 42,
  sideNeckToSleeveEdge: 330,
  waistToFloor: 1020,
  stature: 1640,
  flatBustWidth: 520,
  flatWaistWidth: 480,
  flatHemWidth: 560,
  flatBackLength: 620,
}

/** Invented, bust 800 mm: small and short. */
export const SMALL: InventedNumbers = {
  ...MIDDLE,
  bustGirth: 800,
  highBustGirth: 785,
  underbustGirth: 700,
  waistGirth: 640,
  highHipGirth: 780,
  waistToHighHip: 90,
  hipGirth: 870,
  waistToHip: 180,
  neckBaseGirth: 345,
  headGirth: 540,
  upperArmGirth: 250,
  armholeGirth: 360,
  slipThroughGirth: 900,
  napeToWaist: 372,
  sideNeckOverBladeToWaist: 394,
  sideNeckOverApexToWaist: 388,
  sideNeckToApex: 236,
  frontNeckToWaist: 318,
  waistToBustLevel: 155,
  napeToArmpitLevel: 170,
  armpitToWaist: 190,
  apexSpacing: 165,
  acrossBack: 335,
  acrossChest: 305,
  shoulderLengthLeft: 115,
  shoulderLengthRight: 115,
  shoulderSlopeLeft: 38,
  shoulderSlopeRight: 38,
  sideNeckToSleeveEdge: 300,
  waistToFloor: 940,
  stature: 1530,
  flatBustWidth: 450,
  flatWaistWidth: 410,
  flatHemWidth: 500,
  flatBackLength: 570,
}

/** Invented, bust 1020 mm: tall, long in the back, sloping shoulders. */
export const TALL: InventedNumbers = {
  ...MIDDLE,
  bustGirth: 1020,
  highBustGirth: 965,
  underbustGirth: 870,
  waistGirth: 850,
  highHipGirth: 990,
  waistToHighHip: 110,
  hipGirth: 1090,
  waistToHip: 215,
  neckBaseGirth: 390,
  headGirth: 575,
  upperArmGirth: 310,
  armholeGirth: 425,
  slipThroughGirth: 1090,
  napeToWaist: 430,
  sideNeckOverBladeToWaist: 456,
  sideNeckOverApexToWaist: 460,
  sideNeckToApex: 285,
  frontNeckToWaist: 376,
  waistToBustLevel: 178,
  napeToArmpitLevel: 198,
  armpitToWaist: 216,
  apexSpacing: 196,
  acrossBack: 385,
  acrossChest: 352,
  shoulderLengthLeft: 134,
  shoulderLengthRight: 134,
  shoulderSlopeLeft: 54,
  shoulderSlopeRight: 54,
  sideNeckToSleeveEdge: 360,
  waistToFloor: 1110,
  stature: 1770,
  flatBustWidth: 560,
  flatWaistWidth: 520,
  flatHemWidth: 600,
  flatBackLength: 660,
}

/** Invented, bust 1140 mm: fuller in front, shoulders unlike left and right. */
export const FULL: InventedNumbers = {
  ...MIDDLE,
  bustGirth: 1140,
  highBustGirth: 1040,
  underbustGirth: 960,
  waistGirth: 990,
  highHipGirth: 1110,
  waistToHighHip: 105,
  hipGirth: 1180,
  waistToHip: 205,
  neckBaseGirth: 405,
  headGirth: 565,
  upperArmGirth: 350,
  armholeGirth: 455,
  slipThroughGirth: 1200,
  napeToWaist: 410,
  sideNeckOverBladeToWaist: 436,
  sideNeckOverApexToWaist: 462,
  sideNeckToApex: 312,
  frontNeckToWaist: 370,
  waistToBustLevel: 158,
  napeToArmpitLevel: 198,
  armpitToWaist: 196,
  apexSpacing: 216,
  acrossBack: 392,
  acrossChest: 362,
  shoulderLengthLeft: 126,
  shoulderLengthRight: 129,
  shoulderSlopeLeft: 36,
  shoulderSlopeRight: 44,
  sideNeckToSleeveEdge: 340,
  waistToFloor: 1010,
  stature: 1640,
  flatBustWidth: 620,
  flatWaistWidth: 590,
  flatHemWidth: 680,
  flatBackLength: 640,
}

/** Invented, bust 1300 mm: the largest the tests draft for. */
export const LARGE: InventedNumbers = {
  ...MIDDLE,
  bustGirth: 1300,
  highBustGirth: 1180,
  underbustGirth: 1110,
  waistGirth: 1160,
  highHipGirth: 1290,
  waistToHighHip: 105,
  hipGirth: 1350,
  waistToHip: 210,
  neckBaseGirth: 430,
  headGirth: 575,
  upperArmGirth: 400,
  armholeGirth: 510,
  slipThroughGirth: 1360,
  napeToWaist: 418,
  sideNeckOverBladeToWaist: 446,
  sideNeckOverApexToWaist: 486,
  sideNeckToApex: 340,
  frontNeckToWaist: 382,
  waistToBustLevel: 150,
  napeToArmpitLevel: 212,
  armpitToWaist: 188,
  apexSpacing: 240,
  acrossBack: 424,
  acrossChest: 392,
  shoulderLengthLeft: 130,
  shoulderLengthRight: 130,
  shoulderSlopeLeft: 40,
  shoulderSlopeRight: 40,
  sideNeckToSleeveEdge: 350,
  waistToFloor: 1010,
  stature: 1650,
  flatBustWidth: 710,
  flatWaistWidth: 690,
  flatHemWidth: 780,
  flatBackLength: 660,
}

/** Invented, bust 880 mm: long waist over a short stature, narrow across the chest. */
export const LONG_WAISTED: InventedNumbers = {
  ...MIDDLE,
  bustGirth: 880,
  highBustGirth: 860,
  underbustGirth: 765,
  waistGirth: 720,
  highHipGirth: 850,
  hipGirth: 930,
  waistToHip: 185,
  neckBaseGirth: 362,
  upperArmGirth: 272,
  armholeGirth: 378,
  slipThroughGirth: 960,
  napeToWaist: 416,
  sideNeckOverBladeToWaist: 440,
  sideNeckOverApexToWaist: 436,
  sideNeckToApex: 256,
  frontNeckToWaist: 358,
  waistToBustLevel: 182,
  napeToArmpitLevel: 182,
  armpitToWaist: 218,
  apexSpacing: 176,
  acrossBack: 350,
  acrossChest: 312,
  shoulderLengthLeft: 119,
  shoulderLengthRight: 119,
  shoulderSlopeLeft: 34,
  shoulderSlopeRight: 34,
  waistToFloor: 950,
  stature: 1570,
}

export const INVENTED_BODIES: readonly (readonly [name: string, numbers: InventedNumbers])[] = [
  ['small', SMALL],
  ['long-waisted', LONG_WAISTED],
  ['middle', MIDDLE],
  ['tall', TALL],
  ['full', FULL],
  ['large', LARGE],
]

/** A tape book holding two equal readings of every number given. */
export function bookOf(numbers: Partial<InventedNumbers>): Book {
  let book = emptyBook()
  for (const [id, value] of Object.entries(numbers)) {
    if (!isMeasurementId(id) || value === undefined) throw new Error(`bookOf: ${id} ${value}`)
    book = addTape(addTape(book, id, mm(value), INVENTED_ON), id, mm(value), INVENTED_ON)
  }
  return book
}

/** The middle body with some numbers exchanged, through the real book and the real confirmation. */
export function body(
  over: Partial<InventedNumbers> = {},
  base: InventedNumbers = MIDDLE,
): Confirmed {
  const result = confirm(bookOf({ ...base, ...over }), MEASUREMENT_IDS, [])
  if (!result.ok) throw new Error(`body: ${result.missing.map(({ why }) => why).join(' ')}`)
  return result.body
}

/** A body of which only these were taped. */
export function bodyOf(numbers: Partial<InventedNumbers>): Confirmed {
  const result = confirm(bookOf(numbers), [], MEASUREMENT_IDS)
  if (!result.ok) throw new Error('bodyOf: nothing was taped')
  return result.body
}
