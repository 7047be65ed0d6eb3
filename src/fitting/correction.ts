/**
 * A correction is one recorded decision about inputs: what was seen, what is believed to cause
 * it, by how much a named thing changes. It never stores drawn points, so a later tape reading
 * carries it along, and replaying the list on the same numbers gives the same pieces.
 */
import type { ChoiceId } from '../draft/choices.ts'
import type { HalfEdgeName, HalfId, Side } from '../draft/piece.ts'
import type { Mm } from '../units/length.ts'
import type { ComplaintId } from './complaints/complaint.ts'
import type { Operation } from './ops/operation.ts'
import type { Pinned } from './pinned.ts'

export interface Because {
  readonly complaint: ComplaintId
  /** The cause she settled on, by its id within the complaint. */
  readonly cause: string
  readonly pinned: Pinned
  /** What is left of the pinned amount for the next muslin; 0 when all of it was used. */
  readonly watch: Mm
  readonly round: number
}

export type Correction =
  /** Turns one choice of the construction by so much; `side` on one side of the body only. */
  | {
      readonly v: 1
      readonly id: string
      readonly kind: 'turn-choice'
      readonly choice: ChoiceId
      readonly by: Mm
      readonly side?: Side
      readonly because: Because
    }
  /**
   * Closes a wedge, `width` wide at the edge and nothing at the apex; the waist dart takes it up.
   * `along` is the place on the edge as a share of its length, counted from the underarm.
   */
  | {
      readonly v: 1
      readonly id: string
      readonly kind: 'close-wedge'
      readonly piece: HalfId
      readonly edge: HalfEdgeName
      readonly along: number
      readonly width: Mm
      readonly because: Because
    }
  /** Carries out one operation on the halves; `side` on one side of the body only. */
  | {
      readonly v: 1
      readonly id: string
      readonly kind: 'operate'
      readonly operation: Operation
      readonly side?: Side
      readonly because: Because
    }
  /** Takes an earlier correction back; nothing is ever deleted. */
  | {
      readonly v: 1
      readonly id: string
      readonly kind: 'withdraw'
      readonly correction: string
      readonly round: number
    }

/** The side a correction is for, where it is for one only. */
export const sideOf = (c: Correction): Side | undefined =>
  c.kind === 'operate' || c.kind === 'turn-choice' ? c.side : undefined

/** The corrections still in force, in the order they were decided. */
export function inForce(list: readonly Correction[]): Correction[] {
  const withdrawn = new Set(list.flatMap((c) => (c.kind === 'withdraw' ? [c.correction] : [])))
  return list.filter((c) => c.kind !== 'withdraw' && !withdrawn.has(c.id))
}
