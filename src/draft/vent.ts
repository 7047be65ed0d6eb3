/**
 * Vents: the side seam of back and front left open from the hem up, its edges turned in. They set
 * the hem free to walk in and to pull over the hips. Source: opening vents left in the side seams
 * of a blouse, a dressmaking course of 1922; lengths are common practice.
 */
import { pathLength } from '../geometry/length.ts'
import { placeAt, splitPath } from '../geometry/path.ts'
import { found } from '../units/amount.ts'
import { mm } from '../units/length.ts'
import type { Choices } from './choices.ts'
import { choice } from './choices.ts'
import { edge, type Piece } from './piece.ts'
import type { Step } from './step.ts'
import { FINISHING_WORDS as W } from './finishing.words.ts'

/** A vent ends at least this far below the top of its seam, mm. Judgement. */
const SEAM_LEFT = 150

export interface Vented {
  readonly pieces: readonly Piece[]
  readonly steps: readonly Step[]
}

/** How long the vent is on this side seam: as chosen, or as long as the seam allows. */
export const ventOn = (piece: Piece, choices: Choices): number =>
  Math.max(0, Math.min(choices.ventLength, pathLength(edge(piece, 'side').path) - SEAM_LEFT))

/** Halves whose side seams are left open at the hem; nothing changes while the choice is nought. */
export function vented(halves: readonly Piece[], choices: Choices): Vented {
  const long = Math.min(...halves.map((p) => ventOn(p, choices)))
  if (!(long > 0)) return { pieces: halves, steps: [] }
  const pieces = halves.map((piece): Piece => {
    const { path } = edge(piece, 'side')
    const [, open] = splitPath(path, placeAt(path, pathLength(path) - long))
    return {
      ...piece,
      inner: [...piece.inner, { name: 'vent', words: W.ventLeftOpen, path: open }],
    }
  })
  const said =
    long === choices.ventLength
      ? choice(choices, 'ventLength')
      : found(W.asLongAsSideAllows, mm(long))
  const steps = pieces.map((piece): Step => ({
    verb: 'open',
    piece: piece.id,
    words: W.ventInSideSeam,
    long: said,
    why: W.sideSewnDownToHere,
    lights: piece.inner.slice(-1).map((i) => i.path),
  }))
  return { pieces, steps }
}
