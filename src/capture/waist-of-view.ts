/**
 * Where the waist lies in one photograph: the elastic if one is tied, else the narrowest level of
 * the outline (front and back only), else nothing but a usual place to start dragging from.
 */
import type { CardOutcome } from './card.ts'
import type { FaultId } from './fault.ts'
import type { BodyFrame } from './frame.ts'
import { paperSeen } from './paper-seen.ts'
import type { Picture } from './picture.ts'
import { WAIST, WAIST_ZONE } from './proportions.ts'
import type { OutlineRow, View } from './reading.ts'
import type { FromId } from './seen.ts'
import { findBand, type Hidden } from './waist-band.ts'
import { narrowestLevel } from './waist-level.ts'

export interface WaistOfView {
  /** Height at the left edge of the trunk in the picture, in its middle, at its right edge. */
  readonly left: number
  readonly middle: number
  readonly right: number
  readonly sdPx: number
  readonly from: FromId
  readonly by: 'camera' | 'guess'
  readonly reason?: FaultId
}

/** An elastic is read to about a pixel in the middle of the trunk; its ends lie on the turn. */
const BAND_SD_PX = 1.2
/** Without a card the outline is judged at the usual torso, shoulder to hip joint, mm (same bench). */
const USUAL_TORSO_MM = 490
/**
 * Paper round the black square of the sheet, in sides of the square: A5 upright has 24 mm beside it
 * and 79 below, A5 across 55 mm beside and 24 above.
 */
const PAPER = {
  sheet: { beside: 0.45, above: 0.24, below: 0.8 },
  id1: { beside: 0.05, above: 0.05, below: 0.05 },
} as const

export function waistOfView(
  view: View,
  picture: Picture,
  card: CardOutcome,
  frame: BodyFrame,
  trunk: readonly OutlineRow[],
  seenFrom: number,
): WaistOfView {
  const [from, to] = WAIST_ZONE.band.map((share) => Math.round(frame.level(share)))
  const hidden = behind(picture, card)
  const band = findBand(picture, trunk, {
    from: from ?? 0,
    to: to ?? 0,
    seen: view === 'side' ? 'besideArm' : 'across',
    ...(hidden ? { hidden } : {}),
  })
  if (band) {
    const { left, middle, right } = band
    return {
      left,
      middle,
      right,
      sdPx: BAND_SD_PX,
      from: 'elastic',
      by: 'camera',
    }
  }
  const usual = frame.level(WAIST[view].at)
  const guess = { left: usual, middle: usual, right: usual, sdPx: WAIST[view].sd * frame.torso }
  const start = { ...guess, from: 'startHere', by: 'guess' } as const
  if (view === 'side') return { ...start, reason: 'noBandSide' }
  const mmPerPx = card.ok ? card.card.mmPerPx : USUAL_TORSO_MM / frame.torso
  const [top, bottom] = WAIST_ZONE.narrowest.map((share) => frame.level(share))
  const level = narrowestLevel(trunk, Math.max(top ?? 0, seenFrom), bottom ?? 0, mmPerPx)
  if (!level.ok) return { ...start, reason: 'noIndent' }
  const { y } = level
  const sdPx = level.sdMm / mmPerPx
  return {
    left: y,
    middle: y,
    right: y,
    sdPx,
    from: 'narrowest',
    by: 'camera',
  }
}

/** What a card hung in front of the trunk hides, its paper included, as far as it is seen. */
function behind(picture: Picture, outcome: CardOutcome): Hidden | undefined {
  if (!outcome.ok) return undefined
  const { corners, kind } = outcome.card
  const seen = kind === 'sheet' ? paperSeen(picture, outcome.card) : undefined
  const [xs, ys] = [corners.map((p) => p.x), corners.map((p) => p.y)]
  const side = Math.max(...xs) - Math.min(...xs)
  const { beside, above, below } = PAPER[kind]
  return {
    left: seen?.left ?? Math.min(...xs) - beside * side,
    right: seen?.right ?? Math.max(...xs) + beside * side,
    top: seen?.top ?? Math.min(...ys) - above * side,
    bottom: seen?.bottom ?? Math.max(...ys) + below * side,
  }
}
