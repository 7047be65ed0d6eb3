/**
 * Where the limits and definitions of the catalogue come from: citations, the same in every language.
 * Nothing of it is shown but the clauses of the standard.
 */
/** Two surveys of women together. */
export const BOTH_SURVEYS =
  'women of the 7th Korean body survey, 2015 (3224), and of ANSUR 1988 (2208)'
export const widened = (smallest: number, largest: number, source: string): string =>
  `${smallest} to ${largest} mm among ${source}, widened by a tenth below and a third above`

export const SURVEYS = {
  korea: 'women of the 7th Korean body survey, 2015',
  koreaAtAbdomen: 'women of the 7th Korean body survey, 2015, at the abdomen',
  ansur2: 'the 1986 women of ANSUR II',
  chestLessWaist: 'the women of ANSUR 1988 (2208), chest height less waist height',
  axillaLessWaist: 'the women of ANSUR 1988 (2208), axilla height less waist height',
} as const

const HIP_DEPTHS = '77 to 301 mm from waist to hip in the same surveys'
export const JUDGEMENTS = {
  slipThrough: `judgement: 852 to 1225 mm round the shoulders among the women of ANSUR II, widened as for ${BOTH_SURVEYS}`,
  /** Half of a girth with ease: about half the smallest and largest bust above, and more. */
  halfGirths: 'judgement: half of the girths above, with ease',
  hem: 'judgement: from a narrow blouse to a flared skirt',
  backLength: 'judgement: from a short blouse to a long dress',
  shoulderDrop:
    'judgement: 18.7 to 59.2 mm holds 98 of 100 women of the 7th Korean body survey, 2015; widened',
  sleeveEdge: 'judgement: from just past the shoulder to the wrist of a long arm',
  highHip: `judgement: about half of ${HIP_DEPTHS}`,
  stature: 'judgement: 1394 to 1870 mm in the same surveys, widened',
} as const

/** The clause numbers of ISO 8559-1 come from a third-party page and are to be verified. */
const ISO = 'ISO 8559-1:2017'
export const CLAUSES = {
  bust: `${ISO}, 5.3.4 bust girth`,
  underbust: `${ISO}, 5.3.8 under-bust girth`,
  highHip: `${ISO}, 5.3.12 top hip girth`,
  hip: `${ISO}, 5.3.13 hip girth`,
  neckBase: `${ISO}, 5.3.3 neck base girth`,
  upperArm: `${ISO}, 5.3.16 upper arm girth`,
  napeToWaist: `${ISO}, 5.4.5 back neck point to waist`,
} as const
