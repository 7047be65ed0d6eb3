/**
 * How tape measurements of women go together: means and pooled within-population covariance of
 * 20 variables, mm (weight in kg), computed by us from two surveys: ANSUR 1988, 2208 women of
 * the US Army (public domain), and the 7th Korean body survey, 2015, women of 15 to 69 (derived
 * statistics only). Waists are the natural waist in both; a waist at the navel is another
 * measurement (girth 66 mm larger and back length 75 mm longer, ANSUR 1988) and never enters.
 *
 * Four variables are not in our catalogue. They stay, because the published conditional spreads
 * are those of the whole set and the tests check against them.
 */
import type { MeasurementId } from './catalogue.ts'
import type { Matrix } from './conditional.ts'

export interface TapeVariable {
  readonly name: string
  /** The measurements that are this variable, each with the one definition it holds for. */
  readonly is: readonly (readonly [id: MeasurementId, definition: string])[]
  readonly meanAnsur1988: number
  readonly meanKorea2015: number
}

export const TAPE_VARIABLES: readonly TapeVariable[] = [
  {
    name: 'stature',
    is: [['stature', 'stature/no-shoes']],
    meanAnsur1988: 1629.4,
    meanKorea2015: 1587.0,
  },
  { name: 'weight-in-kg', is: [], meanAnsur1988: 62.0, meanKorea2015: 56.7 },
  {
    name: 'bust',
    is: [['bustGirth', 'bustGirth/level-over-apex']],
    meanAnsur1988: 907.1,
    meanKorea2015: 871.1,
  },
  {
    name: 'underbust',
    is: [['underbustGirth', 'underbustGirth/below-breast']],
    meanAnsur1988: 769.7,
    meanKorea2015: 759.5,
  },
  {
    name: 'high-bust',
    is: [['highBustGirth', 'highBustGirth/under-arms-above-bust']],
    meanAnsur1988: 887.0,
    meanKorea2015: 868.6,
  },
  {
    name: 'waist',
    is: [['waistGirth', 'waistGirth/natural']],
    meanAnsur1988: 725.5,
    meanKorea2015: 753.8,
  },
  {
    name: 'hip',
    is: [['hipGirth', 'hipGirth/fullest-seat']],
    meanAnsur1988: 966.9,
    meanKorea2015: 930.3,
  },
  {
    name: 'bust-point-distance',
    is: [['apexSpacing', 'apexSpacing/straight']],
    meanAnsur1988: 184.8,
    meanKorea2015: 175.1,
  },
  {
    name: 'neck-side-to-bust-point',
    is: [['sideNeckToApex', 'sideNeckToApex/on-skin']],
    meanAnsur1988: 268.0,
    meanKorea2015: 252.9,
  },
  {
    name: 'nape-to-waist',
    is: [['napeToWaist', 'napeToWaist/natural-waist-on-skin']],
    meanAnsur1988: 367.3,
    meanKorea2015: 402.2,
  },
  {
    name: 'front-neck-to-waist',
    is: [['frontNeckToWaist', 'frontNeckToWaist/natural-waist']],
    meanAnsur1988: 311.7,
    meanKorea2015: 353.7,
  },
  {
    name: 'shoulder-length',
    is: [
      ['shoulderLengthLeft', 'shoulderLengthLeft/side-neck-to-bone'],
      ['shoulderLengthRight', 'shoulderLengthRight/side-neck-to-bone'],
    ],
    meanAnsur1988: 144.7,
    meanKorea2015: 114.9,
  },
  {
    name: 'across-back',
    is: [['acrossBack', 'acrossBack/mid-armhole']],
    meanAnsur1988: 376.2,
    meanKorea2015: 368.0,
  },
  {
    name: 'scye-depth',
    is: [['napeToArmpitLevel', 'napeToArmpitLevel/down-centre-back']],
    meanAnsur1988: 185.7,
    meanKorea2015: 172.1,
  },
  {
    name: 'armscye',
    is: [['armholeGirth', 'armholeGirth/over-shoulder-bone']],
    meanAnsur1988: 371.3,
    meanKorea2015: 391.4,
  },
  {
    name: 'neck-base',
    is: [['neckBaseGirth', 'neckBaseGirth/nape-to-front-neck-point']],
    meanAnsur1988: 346.2,
    meanKorea2015: 377.1,
  },
  {
    name: 'upper-arm',
    is: [['upperArmGirth', 'upperArmGirth/at-armpit-arm-hanging']],
    meanAnsur1988: 291.6,
    meanKorea2015: 263.6,
  },
  { name: 'sleeve', is: [], meanAnsur1988: 547.2, meanKorea2015: 546.2 },
  { name: 'wrist', is: [], meanAnsur1988: 151.2, meanKorea2015: 146.6 },
  { name: 'biacromial', is: [], meanAnsur1988: 362.6, meanKorea2015: 357.8 },
]

/** Lower triangle of the pooled covariance, in the order of the variables. */
const LOWER: Matrix = [
  [3595.63],
  [195.44, 72.21],
  [159.2, 519.52, 5463.26],
  [146.3, 428.19, 4228.44, 3925.61],
  [407.0, 422.47, 3953.05, 3239.68, 3402.54],
  [-172.57, 550.39, 5340.9, 4556.73, 4034.0, 6581.14],
  [1091.64, 440.99, 2899.43, 2339.33, 2408.17, 3156.34, 3384.08],
  [54.3, 75.9, 783.62, 590.03, 547.43, 748.38, 420.18, 305.27],
  [97.1, 126.04, 1289.56, 946.55, 883.42, 1278.89, 694.45, 189.34, 545.9],
  [653.33, 61.51, 332.69, 298.55, 269.01, 314.72, 352.0, 43.34, 118.55, 505.03],
  [416.65, 69.1, 530.18, 500.36, 436.57, 538.4, 370.79, 76.15, 170.12, 309.74, 509.4],
  [190.14, 19.57, 92.87, 73.55, 110.02, 70.5, 107.49, 16.0, 49.75, 56.42, 30.35, 100.05],
  [
    418.4, 110.51, 843.91, 657.74, 792.07, 814.42, 644.81, 106.35, 197.46, 142.3, 92.55, 101.18,
    508.62,
  ],
  [
    230.64, 51.92, 399.0, 302.46, 294.89, 406.48, 306.26, 52.52, 133.19, 164.68, 19.02, 53.88,
    106.01, 272.79,
  ],
  [
    234.45, 197.34, 1699.12, 1441.23, 1401.88, 1861.59, 1136.88, 232.88, 413.06, 160.27, 243.67,
    26.81, 297.17, 142.37, 881.73,
  ],
  [
    250.75, 109.92, 900.49, 740.06, 745.34, 918.25, 573.41, 130.54, 219.11, 63.53, 45.15, 25.34,
    206.22, 111.18, 327.52, 460.23,
  ],
  [
    22.31, 189.47, 1625.69, 1348.92, 1305.21, 1788.35, 1134.39, 223.04, 387.21, 93.15, 157.13,
    28.21, 265.24, 137.27, 634.04, 310.89, 733.34,
  ],
  [
    1203.65, 89.94, 293.0, 229.71, 329.74, 226.99, 470.24, 59.84, 85.55, 148.99, 63.91, 70.38,
    194.57, 113.56, 158.08, 168.4, 78.02, 720.31,
  ],
  [
    85.4, 47.21, 383.23, 341.73, 315.31, 432.48, 249.35, 56.11, 96.31, 44.06, 69.26, 14.62, 71.99,
    29.82, 164.12, 85.83, 145.95, 53.97, 68.65,
  ],
  [
    457.07, 65.02, 396.29, 330.16, 408.17, 368.33, 363.34, 60.1, 100.19, 115.27, 88.76, 100.18,
    228.56, 80.15, 147.64, 135.76, 129.85, 193.45, 49.96, 266.03,
  ],
]

/** Covariance of two variables by their place in `TAPE_VARIABLES`, mm² where both are lengths. */
export function covariance(i: number, j: number): number {
  const value = LOWER[Math.max(i, j)]?.[Math.min(i, j)]
  if (value === undefined) throw new Error(`tape model: no covariance of ${i} and ${j}`)
  return value
}
