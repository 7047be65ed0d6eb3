/**
 * What every page may say of a complaint without its signs, tests and causes: name, kind, place in
 * the order of corrections. Apart from the entries, because the first page needs only these.
 */
import type { ComplaintId } from './complaint.ts'
import { HEAD_WORDS } from './heads.words.ts'

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
const head = (id: ComplaintId, kind: Kind, order: number): Head => ({
  name: HEAD_WORDS[id],
  kind,
  order,
})

// prettier-ignore
export const HEADS: Readonly<Record<ComplaintId, Head>> = {
  N1: head('N1', 'shape', ORDER.shoulder),
  N2: head('N2', 'shape', ORDER.shoulder),
  N3: head('N3', 'shape', ORDER.shoulder),
  N4: head('N4', 'shape', ORDER.shoulder),
  N5: head('N5', 'shape', ORDER.shoulder),
  N6: head('N6', 'shape', ORDER.shoulder),
  N7: head('N7', 'length', ORDER.balance),
  N8: head('N8', 'length', ORDER.balance),
  SH1: head('SH1', 'shape', ORDER.shoulder),
  SH2: head('SH2', 'shape', ORDER.shoulder),
  SH3: head('SH3', 'shape', ORDER.shoulder),
  SH4: head('SH4', 'shape', ORDER.shoulder),
  SH5: head('SH5', 'shape', ORDER.shoulder),
  SH6: head('SH6', 'shape', ORDER.shoulder),
  SH7: head('SH7', 'shape', ORDER.shoulder),
  SH8: head('SH8', 'shape', ORDER.shoulder),
  B1: head('B1', 'shape', ORDER.bust),
  B2: head('B2', 'length', ORDER.balance),
  B3: head('B3', 'shape', ORDER.bust),
  B4: head('B4', 'shape', ORDER.bust),
  B5: head('B5', 'shape', ORDER.bust),
  B6: head('B6', 'shape', ORDER.bust),
  B7: head('B7', 'shape', ORDER.bust),
  B8: head('B8', 'shape', ORDER.armhole),
  B9: head('B9', 'length', ORDER.balance),
  B10: head('B10', 'shape', ORDER.armhole),
  B11: head('B11', 'shape', ORDER.armhole),
  B12: head('B12', 'shape', ORDER.bust),
  B13: head('B13', 'girth', ORDER.girth),
  B14: head('B14', 'length', ORDER.balance),
  B15: head('B15', 'length', ORDER.balance),
  A1: head('A1', 'shape', ORDER.armhole),
  A2: head('A2', 'shape', ORDER.armhole),
  A3: head('A3', 'shape', ORDER.armhole),
  A4: head('A4', 'shape', ORDER.armhole),
  A5: head('A5', 'shape', ORDER.armhole),
  K1: head('K1', 'shape', ORDER.bust),
  K2: head('K2', 'length', ORDER.balance),
  K3: head('K3', 'length', ORDER.balance),
  K4: head('K4', 'shape', ORDER.bust),
  K5: head('K5', 'length', ORDER.balance),
  K6: head('K6', 'girth', ORDER.girth),
  K7: head('K7', 'length', ORDER.balance),
  W1: head('W1', 'length', ORDER.length),
  W2: head('W2', 'length', ORDER.length),
  W3: head('W3', 'girth', ORDER.girth),
  W4: head('W4', 'girth', ORDER.girth),
  W5: head('W5', 'length', ORDER.balance),
  W6: head('W6', 'girth', ORDER.girth),
  W7: head('W7', 'girth', ORDER.girth),
  W8: head('W8', 'girth', ORDER.girth),
  W9: head('W9', 'girth', ORDER.girth),
  W10: head('W10', 'length', ORDER.balance),
  W11: head('W11', 'length', ORDER.edge),
  W12: head('W12', 'girth', ORDER.girth),
  L1: head('L1', 'girth', ORDER.sleeve),
  L2: head('L2', 'girth', ORDER.sleeve),
  L3: head('L3', 'girth', ORDER.sleeve),
  L4: head('L4', 'girth', ORDER.sleeve),
  L5: head('L5', 'girth', ORDER.sleeve),
  L6: head('L6', 'girth', ORDER.sleeve),
  L7: head('L7', 'girth', ORDER.sleeve),
  L8: head('L8', 'girth', ORDER.sleeve),
  L9: head('L9', 'girth', ORDER.sleeve),
  D1: head('D1', 'girth', ORDER.sleeve),
  D2: head('D2', 'girth', ORDER.sleeve),
  D3: head('D3', 'girth', ORDER.sleeve),
  D4: head('D4', 'girth', ORDER.sleeve),
  D5: head('D5', 'girth', ORDER.sleeve),
  D6: head('D6', 'girth', ORDER.sleeve),
  D7: head('D7', 'girth', ORDER.sleeve),
  D8: head('D8', 'girth', ORDER.edge),
  X1: head('X1', 'girth', ORDER.making),
  X2: head('X2', 'girth', ORDER.making),
  X3: head('X3', 'girth', ORDER.making),
  X4: head('X4', 'girth', ORDER.making),
}
