/**
 * Amounts that follow from lengths alone, where nothing is pinned: a dart's tip, the spacing of
 * the bust tips, a cap against its armhole, a dart too wide for one. Limits: 22° and 44 mm,
 * common practice and a public draft.
 */
import { DART_ANGLE_MOST, DART_MOST } from '../../draft/blocks/waist-plan.ts'
import type { ComplaintId } from '../complaints/complaint.ts'
import { radians } from '../../units/angle.ts'
import type { Reaches } from '../reaches.ts'
import { openingAt, turnOf } from '../rotation.ts'
import { JUDGE_WORDS } from './judge.words.ts'

export type Derived =
  | { readonly kind: 'amount'; readonly raw: number }
  /** The lengths say that nothing is wrong there. */
  | { readonly kind: 'enough'; readonly why: string; readonly raw?: undefined }

/** The amount under nought goes the other way, where the complaint is open to both. */
export function derivedAmount(id: ComplaintId, r: Reaches): Derived | undefined {
  switch (id) {
    case 'B4': {
      const short = minus(r.dartTipWanted, r.dartTip)
      return above(short, JUDGE_WORDS.enough.tip)
    }
    case 'B6': {
      const apart = minus(r.apexSpacing, r.apexSpacingDraft)
      return apart === undefined || apart === 0 ? undefined : { kind: 'amount', raw: apart / 2 }
    }
    case 'B7':
      return tooWide(r)
    case 'L6':
      return above(minus(capEase(r), r.capEaseWanted), JUDGE_WORDS.enough.capOver)
    case 'L7':
      return above(minus(r.capEaseWanted, capEase(r)), JUDGE_WORDS.enough.capUnder)
    default:
      return undefined
  }
}
const above = (raw: number | undefined, enough: string): Derived | undefined =>
  raw === undefined
    ? undefined
    : raw > 0
      ? { kind: 'amount', raw }
      : { kind: 'enough', why: enough }
const minus = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? undefined : a - b

export function capEase(r: Reaches): number | undefined {
  const halves = r.frontArmhole !== undefined && r.backArmhole !== undefined
  const armhole = r.armhole ?? (halves ? (r.frontArmhole ?? 0) + (r.backArmhole ?? 0) : undefined)
  return r.capEase ?? minus(r.cap, armhole)
}

/** A dart past 22° or 44 mm gives half of its angle to a second one. */
function tooWide({ frontWaistDart: mouth, apexToWaist: leg }: Reaches): Derived | undefined {
  if (mouth === undefined || leg === undefined) return undefined
  const turn = turnOf(mouth, leg)
  if (turn === undefined) return undefined
  if (turn <= DART_ANGLE_MOST && mouth <= DART_MOST.front)
    return { kind: 'enough', why: JUDGE_WORDS.enough.dart }
  return { kind: 'amount', raw: openingAt(radians(turn / 2), leg) }
}
