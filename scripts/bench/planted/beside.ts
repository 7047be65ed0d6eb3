/**
 * What she may tell beside the fault, or instead of one.
 *
 * Misleading: a true sight that the same fault brings about elsewhere, whose first remedy would
 * change a second thing or take the same cloth twice. Which goes with which follows the causes
 * that the trade list itself names last ("bust tight lifting", "whole waist too long"), the
 * amounts are own reasoning: a side effect shows at half to all of the fault.
 *
 * Nothing: the draft is right, and what is seen comes from sewing, cloth, style or movement.
 */
import type { GarmentId } from '../../../src/draft/draft.ts'
import type { Pin, Sign } from './sign.ts'

const sign = (
  id: string,
  cause: number | undefined,
  where: Pin['where'],
  how: Pin['how'],
  value: number,
): Sign => ({
  id,
  pin: { where, side: 'both', how, value },
  causes: cause === undefined ? [] : [cause],
  weight: 0,
})

/** By the complaint of the fault itself; `v` is its own pin, mm. */
const BESIDE: Readonly<Record<string, (v: number) => readonly Sign[]>> = {
  // A tight bust holds the blouse up, and its strain reaches to the armholes.
  B1: (v) => [sign('W1', 3, 'allRound', 'level', v / 2), sign('B11', 3, 'shoulder', 'slit', v / 4)],
  // A tip that stands off lets the side sag and the armhole stand away.
  SH1: (v) => [sign('A2', 2, 'armhole', 'newLine', v), sign('B8', 4, 'armhole', 'pinch', v)],
  // The same missing length pulls the shirt back and the side seam forward.
  B2: (v) => [sign('N7', 1, 'cf', 'level', v), sign('W6', 1, 'side', 'level', v / 2)],
  // A dart that ends too high runs over the fullest part.
  B5: (v) => [
    sign('B4', 2, 'dart', 'level', Math.abs(v)),
    sign('B3', 3, 'side', 'pinch', Math.abs(v) / 2),
  ],
  // A narrow back pulls the armhole into the arm.
  K1: (v) => [
    sign('A1', 3, 'armhole', 'newLine', v / 2),
    sign('SH4', 2, 'shoulder', 'slit', v / 2),
  ],
  // The same long waist lies in folds at the back, where they are seen most.
  W2: (v) => [sign('K2', 3, 'cb', 'pinch', v)],
  // A long shoulder folds beside the armhole.
  SH3: (v) => [sign('B10', 2, 'armhole', 'pinch', v / 2), sign('A4', 2, 'armhole', 'pinch', v / 2)],
  // Tight hips push the cloth up into the small of the back.
  W9: (v) => [sign('K2', 2, 'cb', 'pinch', v / 2)],
  // An armhole that is too high pushes the shoulder up.
  A1: (v) => [sign('SH2', undefined, 'shoulder', 'slit', v / 2)],
  // The missing dart stands away at the neck edge too, but less.
  B8: (v) => [sign('SH1', undefined, 'shoulder', 'newLine', v / 2)],
  // A wide side lets the underarm sag.
  B3: (v) => [sign('A2', 3, 'armhole', 'newLine', v / 2)],
}

export const misleading = (fault: Sign): readonly Sign[] =>
  BESIDE[fault.id]?.(fault.pin.value) ?? []

export interface Nothing extends Sign {
  /** An edge sewn longer than drafted, mm. */
  readonly stretched?: {
    readonly edge: 'front.neck' | 'front.armhole' | 'back.neck'
    readonly by: number
  }
}

/** Sights on a muslin from the true numbers, each with the cause that leaves the draft alone. */
export const NOTHINGS: Readonly<Record<GarmentId, readonly Nothing[]>> = (() => {
  const neck: Nothing = {
    ...sign('N1', 4, 'neck', 'pinch', 8),
    stretched: { edge: 'front.neck', by: 9 },
  }
  const offGrain = sign('X1', 1, 'side', 'level', 12)
  const biasDrop = sign('W11', 3, 'side', 'level', 8)
  // She feels it tight, and the opened seam stays shut.
  const noGap = sign('B1', undefined, 'side', 'slit', 0)
  // The level lines stand where they should.
  const level = sign('W1', undefined, 'allRound', 'level', 0)
  const dartSewn = sign('B7', 2, 'dart', 'pinch', 4)
  const blouse = [
    neck,
    offGrain,
    biasDrop,
    noGap,
    level,
    // Soft folds under a draped arm: the style; pinned away the arm cannot lift.
    sign('D4', 1, 'armhole', 'pinch', 25),
  ]
  const fitted = [
    neck,
    offGrain,
    noGap,
    level,
    dartSewn,
    {
      ...sign('B8', 5, 'armhole', 'pinch', 8),
      stretched: { edge: 'front.armhole' as const, by: 8 },
    },
    // A fold at the back armhole that goes when the arms cross: room to reach.
    sign('A4', undefined, 'armhole', 'pinch', 8),
  ]
  return { blouse, block: fitted, sleeveless: fitted, sleeve: fitted, dress: fitted }
})()
