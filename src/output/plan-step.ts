/** One step of the sewing plan, plain data: what is sewn where, how long, how, and what to mind. */
import type { AnyDart, EdgeName, Piece, PieceId, Side } from '../draft/piece.ts'
import type { Mm } from '../units/length.ts'
import type { Pass } from './pass.ts'

export type PlanKind =
  | 'prepare'
  | 'stay'
  | 'interface'
  | 'darts'
  | 'opening'
  | 'seam'
  | 'edge'
  | 'hang'
  | 'tryOn'
  | 'sleeve'
  | 'hem'
  | 'last'

/** What is lit on the drawing while the step is done. */
export type Lit =
  | { readonly piece: PieceId; readonly edge: EdgeName }
  | { readonly piece: PieceId; readonly dart: AnyDart }
  | { readonly piece: PieceId; readonly line: Piece['inner'][number]['name'] }

/** Rows that are sewn along the whole of it, and edges of it that are overcast. */
export interface Thread {
  readonly rows: number
  readonly overcast: number
}
export const sewnRows = (rows: number): Thread => ({ rows, overcast: 0 })

export interface PlanStep {
  /** Stays the same when the plan is made again, so that ticks are kept. */
  readonly id: string
  readonly kind: PlanKind
  readonly title: string
  readonly lit: readonly Lit[]
  /** Length of one of them, sewn; left and right are two of `times`. */
  readonly long?: Mm
  /** Where her left and right are not alike: each of them, as worn. */
  readonly sides?: Readonly<Record<Side, Mm>>
  readonly times?: number
  readonly allowance?: Mm
  readonly passes: readonly Pass[]
  readonly thread?: Thread
  readonly press?: Pass
  /** Cautions and advice that belong here. */
  readonly mind?: readonly string[]
  /** Nothing is sewn before this has gone by. */
  readonly hours?: number
}
