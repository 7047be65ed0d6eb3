/**
 * From what was pinned or cut on the body to the amount for a half piece: how it was read says
 * how much cloth that is, where it was read says how it is shared. Then what of it is applied:
 * the share of a take-in first, the most of one round after it. Sources: rules of turning pins
 * into pattern amounts, common practice; 3 mm and 1.6 mm from articles of a sewing magazine.
 */
import { mm, type Mm } from '../units/length.ts'
import type { PinPlace, ReadAs, Work } from './complaints/complaint.ts'

/**
 * fold: a tuck lies flat, read from its fold to the pin. pinch: the whole width taken out.
 * slit: the opening between two cut edges. level: from the line drawn to where it should be.
 * newLine: from the seam to the new line of pins.
 */
export const HOWS = ['fold', 'pinch', 'slit', 'level', 'newLine'] as const
export type How = (typeof HOWS)[number]

/** one: read on one side and meant for both. both: so much on each side. */
export const PIN_SIDES = ['one', 'both', 'left', 'right'] as const
export type PinSide = (typeof PIN_SIDES)[number]

export interface Pin {
  readonly how: How
  readonly where: PinPlace
  readonly side: PinSide
  readonly value: Mm
  /** On an edge: the place as a share of its length, the neck from the fold, arm edges from the underarm. */
  readonly along?: number
}

/** What may be changed: shares, limits and the most of one round. */
export interface AmountRules {
  /** Part of a pinned take-in that is applied; a muslin is mostly pinned too close. */
  readonly takeInShare: number
  readonly letOutShare: number
  /** Under this a change is lost in the cutting, mm. */
  readonly smallest: number
  /** Left and right nearer than this are one amount, their mean, mm. */
  readonly sameSides: number
  /** Most of one round where it is not that of the complaint: by complaint, mm or degrees. */
  readonly caps: Readonly<Record<string, number>>
}
export const STANDARD_RULES: AmountRules = {
  takeInShare: 0.87,
  letOutShare: 1,
  smallest: 3,
  sameSides: 6,
  caps: {},
}

/** All the cloth that is to go or to come, mm, where it was read. */
export const clothOf = ({ how, value }: Pick<Pin, 'how' | 'value'>): Mm =>
  how === 'fold' ? mm(2 * value) : value

const CENTRES: readonly PinPlace[] = ['cf', 'cb', 'centre']
/** A slit or tuck that runs down from the shoulder lies inside the half and is no seam. */
const SEAMS: readonly PinPlace[] = ['side', 'seam']
const ROUND: readonly PinPlace[] = ['allRound', 'waist', 'bust', 'hip']

/**
 * The amount on the half piece, mm; at a seam the amount on each of the two edges.
 * - an upright tuck on the centre line is shared by two halves; one inside a half is not, and is
 *   repeated on the other side;
 * - a level tuck across a centre runs through both halves and keeps its depth on each;
 * - at a seam the two edges share it; from the seam to a new line is already that of an edge;
 * - round the body four edges share it: two side seams, back and front.
 */
export function halfAmount(pin: Pin, readAs: ReadAs): Mm {
  const size = Math.abs(clothOf(pin))
  return mm(size * shareOf(pin, readAs))
}

function shareOf({ how, where }: Pin, readAs: ReadAs): number {
  const [centre, seam, round] = [
    CENTRES.includes(where),
    SEAMS.includes(where),
    ROUND.includes(where),
  ]
  switch (readAs) {
    case 'length':
    case 'asRead':
      return 1
    case 'perPiece':
      // From the seam to the new pins is already one piece; an opening or a fold is two.
      return how === 'newLine' || how === 'level' ? 1 : 1 / 2
    case 'onePiece':
      if (how === 'newLine') return 1
      return centre || round ? 1 / 2 : 1
    case 'half':
      if (how === 'newLine') return 1
      return centre || round || seam ? 1 / 2 : 1
    case 'across':
      if (how === 'newLine') return 1
      if (round) return 1 / 4
      return centre || seam ? 1 / 2 : 1
  }
}

export interface Settled {
  readonly raw: Mm
  readonly applied: Mm
  /** What the share let stand, mm: it is not held back, it was pinned too close. */
  readonly eased: Mm
  /** Past the most of one round: watched on the next muslin, mm. */
  readonly heldBack: Mm
}

/** Pinned cloth is shared; a level that was read and a seam that was slit are not. */
export const isPinned = (how: How): boolean =>
  how === 'fold' || how === 'pinch' || how === 'newLine'

/** Part of what was read that is wanted. */
export const shareOfRead = (how: How, moves: Work['moves'], rules: AmountRules): number =>
  moves === 'in' && isPinned(how) ? rules.takeInShare : moves === 'out' ? rules.letOutShare : 1

/** Share first, then the most of one round. Nothing of an amount too small to cut. */
export function settled(
  raw: Mm,
  how: How,
  moves: Work['moves'],
  cap: number | undefined,
  rules: AmountRules = STANDARD_RULES,
): Settled {
  if (raw < rules.smallest) return { raw, applied: mm(0), eased: mm(0), heldBack: mm(0) }
  const shared = raw * shareOfRead(how, moves, rules)
  const applied = cap === undefined ? shared : Math.min(shared, cap)
  return { raw, applied: mm(applied), eased: mm(raw - shared), heldBack: mm(shared - applied) }
}
