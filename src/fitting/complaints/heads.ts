/**
 * What every page may say of a complaint without its signs, tests and causes: name, kind, place in
 * the order of corrections. Apart from the entries, because the first page needs only these.
 */
import type { ComplaintId } from './complaint.ts'

/** Kind of change: at most one group of each in a round. */
export type Kind = 'length' | 'shape' | 'girth'

/** Places in the order of corrections, 0 first. */
export const ORDER = {
  making: 0,
  length: 1,
  balance: 2,
  shoulder: 3,
  bust: 4,
  armhole: 5,
  girth: 6,
  sleeve: 7,
  edge: 8,
} as const

export interface Head {
  readonly name: string
  readonly kind: Kind
  readonly order: number
}
const head = (name: string, kind: Kind, order: number): Head => ({ name, kind, order })

// prettier-ignore
export const HEADS: Readonly<Record<ComplaintId, Head>> = {
  N1: head('Front neck edge gapes', 'shape', ORDER.shoulder),
  N2: head('Neck too tight', 'shape', ORDER.shoulder),
  N3: head('Back neck stands away', 'shape', ORDER.shoulder),
  N4: head('Roll below the back neck', 'shape', ORDER.shoulder),
  N5: head('Neck too wide', 'shape', ORDER.shoulder),
  N6: head('Shoulder seam stands up at the neck', 'shape', ORDER.shoulder),
  N7: head('Slides back', 'length', ORDER.balance),
  N8: head('Falls forward', 'length', ORDER.balance),
  SH1: head('Sloping shoulders', 'shape', ORDER.shoulder),
  SH2: head('Square shoulders', 'shape', ORDER.shoulder),
  SH3: head('Shoulder seam hangs over the arm', 'shape', ORDER.shoulder),
  SH4: head('Shoulder too short', 'shape', ORDER.shoulder),
  SH5: head('Shoulder seam too far back', 'shape', ORDER.shoulder),
  SH6: head('Shoulder seam too far forward', 'shape', ORDER.shoulder),
  SH7: head('Peak or dent at the shoulder point', 'shape', ORDER.shoulder),
  SH8: head('One shoulder lower', 'shape', ORDER.shoulder),
  B1: head('Pulls across the bust', 'shape', ORDER.bust),
  B2: head('Rides up in front', 'length', ORDER.balance),
  B3: head('Too big at the bust', 'shape', ORDER.bust),
  B4: head('Dart points past the bust tip', 'shape', ORDER.bust),
  B5: head('Dart too high or too low', 'shape', ORDER.bust),
  B6: head('Darts point to the middle or the side of the bust', 'shape', ORDER.bust),
  B7: head('Dart end bubbles', 'shape', ORDER.bust),
  B8: head('Gaping armhole', 'shape', ORDER.armhole),
  B9: head('Level fold above the bust', 'length', ORDER.balance),
  B10: head('Upright folds beside the front armhole', 'shape', ORDER.armhole),
  B11: head('Tight across the chest', 'shape', ORDER.armhole),
  B12: head('Front gapes between the buttons', 'shape', ORDER.bust),
  B13: head('Baggy under the bust', 'girth', ORDER.girth),
  B14: head('Sags below the bust in front', 'length', ORDER.balance),
  B15: head('Drags from the neck point to the bust', 'length', ORDER.balance),
  A1: head('Armhole too tight', 'shape', ORDER.armhole),
  A2: head('Armhole too low or too big', 'shape', ORDER.armhole),
  A3: head('Back armhole gapes', 'shape', ORDER.armhole),
  A4: head('Upright folds at the back armhole', 'shape', ORDER.armhole),
  A5: head('Crease in the front armhole', 'shape', ORDER.armhole),
  K1: head('Tight across the shoulder blades', 'shape', ORDER.bust),
  K2: head('Sway back', 'length', ORDER.balance),
  K3: head('Rides up at the back', 'length', ORDER.balance),
  K4: head('Drags from the blade to the side', 'shape', ORDER.bust),
  K5: head('Loose folds across the upper back', 'length', ORDER.balance),
  K6: head('Back waist too loose', 'girth', ORDER.girth),
  K7: head('Rounded base of the neck', 'length', ORDER.balance),
  W1: head('Waist too high', 'length', ORDER.length),
  W2: head('Folds all round above the waist', 'length', ORDER.length),
  W3: head('Waist too tight', 'girth', ORDER.girth),
  W4: head('Waist too loose', 'girth', ORDER.girth),
  W5: head('Waist tilts down in front', 'length', ORDER.balance),
  W6: head('Side seam swings forward', 'girth', ORDER.girth),
  W7: head('Side seam swings backward', 'girth', ORDER.girth),
  W8: head('Side seam bows', 'girth', ORDER.girth),
  W9: head('Hip too tight', 'girth', ORDER.girth),
  W10: head('Front hem kicks up', 'length', ORDER.balance),
  W11: head('Hem uneven', 'length', ORDER.edge),
  W12: head('Waist dart bulges below the waist', 'girth', ORDER.girth),
  L1: head('Folds from the top of the cap to the underarm', 'girth', ORDER.sleeve),
  L2: head('Level fold across the top of the cap', 'girth', ORDER.sleeve),
  L3: head('Upper arm tight', 'girth', ORDER.sleeve),
  L4: head('Sleeve twists', 'girth', ORDER.sleeve),
  L5: head('Arm cannot be lifted', 'girth', ORDER.sleeve),
  L6: head('Cap puckers', 'girth', ORDER.sleeve),
  L7: head('Cap tight on the armhole', 'girth', ORDER.sleeve),
  L8: head('Sleeve binds at the elbow', 'girth', ORDER.sleeve),
  L9: head('Sleeve hem unlevel', 'girth', ORDER.sleeve),
  D1: head('Sleeve stands out like a wing', 'girth', ORDER.sleeve),
  D2: head('Sleeve pulls across the shoulder', 'girth', ORDER.sleeve),
  D3: head('Arm cannot be lifted', 'girth', ORDER.sleeve),
  D4: head('Too much cloth under the arm', 'girth', ORDER.sleeve),
  D5: head('Drape falls to one side', 'girth', ORDER.sleeve),
  D6: head('One sees into the sleeve', 'girth', ORDER.sleeve),
  D7: head('Sleeve edge grips the arm', 'girth', ORDER.sleeve),
  D8: head('Sleeve edge ripples', 'girth', ORDER.edge),
  X1: head('Garment twists', 'girth', ORDER.making),
  X2: head('Everything too tight', 'girth', ORDER.making),
  X3: head('Everything too loose', 'girth', ORDER.making),
  X4: head('Right in muslin, not in cloth', 'girth', ORDER.making),
}
