/**
 * Points that stand for a choice: dragged on the drawing, they turn it. Each lies so that moving
 * it along its axis by a millimetre turns the choice by a known amount, by construction.
 */
import type { ChoiceId } from './choices.ts'
import type { Draft } from './draft.ts'
import { GARMENTS } from './garments.ts'
import type { PairedId, Piece } from './piece.ts'

export interface Handle {
  readonly point: string
  readonly choice: ChoiceId
  /** The direction on the paper in which it is dragged. */
  readonly axis: 'x' | 'y'
  /** How far the point moves along it when the choice grows by a millimetre. */
  readonly rate: number
}

/** The first whose choice the garment reads, and whose point rests on it, stands. */
const HANDLES: Readonly<Partial<Record<PairedId, readonly Handle[]>>> = {
  back: [
    { point: 'T', choice: 'overarmDrop', axis: 'y', rate: 1 },
    { point: 'N', choice: 'neckHalfWidth', axis: 'x', rate: 1 },
    { point: 'Z', choice: 'acrossEase', axis: 'x', rate: 1 },
    { point: 'U', choice: 'underarmDrop', axis: 'y', rate: 1 },
    { point: 'X', choice: 'easeHip', axis: 'x', rate: 1 },
    { point: 'L', choice: 'lengthBelowWaist', axis: 'y', rate: 1 },
  ],
  front: [
    { point: 'F', choice: 'frontNeckDrop', axis: 'y', rate: 1 },
    { point: 'T', choice: 'overarmDrop', axis: 'y', rate: 1 },
    { point: 'N', choice: 'neckHalfWidth', axis: 'x', rate: 1 },
    { point: 'Z', choice: 'acrossEase', axis: 'x', rate: 1 },
    { point: 'U', choice: 'underarmDrop', axis: 'y', rate: 1 },
    { point: 'X', choice: 'easeHip', axis: 'x', rate: 1 },
    { point: 'L', choice: 'lengthBelowWaist', axis: 'y', rate: 1 },
  ],
  sleeve: [
    { point: 'C', choice: 'sleeveLength', axis: 'y', rate: 1 },
    { point: 'D', choice: 'sleeveHem', axis: 'x', rate: -0.5 },
  ],
  skirtBack: [{ point: 'L', choice: 'lengthBelowWaist', axis: 'y', rate: 1 }],
  skirtFront: [{ point: 'L', choice: 'lengthBelowWaist', axis: 'y', rate: 1 }],
}

/** The handles of a piece as it is drawn; none on a piece of one side, which follows both. */
export function handlesOf(draft: Draft, piece: Piece): readonly Handle[] {
  const reads = GARMENTS[draft.garment].choices
  const own = HANDLES[piece.id as PairedId] ?? []
  return own.filter(
    ({ point, choice }) =>
      reads.includes(choice) &&
      piece.points[point] !== undefined &&
      (draft.restsOn[`${piece.id}.${point}`] ?? []).includes(choice),
  )
}

/** What the choice is when the point has been dragged so far along its axis. */
export const draggedTo = (handle: Handle, from: number, along: number, step: number): number =>
  Math.round((from + along / handle.rate) / step) * step
