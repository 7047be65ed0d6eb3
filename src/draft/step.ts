/**
 * One step of a construction: what was placed, from where, by which amount. Drawing, numbers and
 * written instructions are three readings of the steps.
 */
import type { Radians } from '../units/angle.ts'
import type { Path } from '../geometry/path.ts'
import type { Amount } from '../units/amount.ts'
import type { EdgeDart, EdgeName, LevelName, PieceId, Side } from './piece.ts'

export type Direction = 'down' | 'up' | 'right' | 'left'

/** A point of a curve told by ruler: so far square from the base point, then so far square again. */
export interface Guide {
  readonly out: Amount
  /** Along `then`; nought is left unsaid. */
  readonly then: Direction
  readonly by: Amount
}

export type Act =
  | { readonly verb: 'start'; readonly at: string; readonly why: string }
  | {
      readonly verb: 'measure'
      readonly to: string
      readonly from: string
      readonly direction: Direction
      readonly amount: Amount
      readonly why: string
      readonly level?: LevelName
    }
  | {
      readonly verb: 'spot'
      readonly to: string
      readonly from: string
      readonly across: Amount
      readonly right: boolean
      readonly upright: Amount
      readonly down: boolean
      readonly why: string
    }
  | {
      readonly verb: 'compass'
      readonly to: string
      readonly centre: string
      readonly amount: Amount
      readonly level: string
      readonly why: string
    }
  | {
      readonly verb: 'slide'
      readonly to: string
      readonly from: string
      readonly along: string
      readonly away: boolean
      readonly amount: Amount
      readonly why: string
    }
  | {
      readonly verb: 'join'
      readonly from: string
      readonly to: string
      readonly edge: EdgeName
      readonly why: string
    }
  | {
      readonly verb: 'arc'
      readonly centre: string
      readonly from: string
      readonly to: string
      readonly amount: Amount
      readonly edge: EdgeName
      readonly why: string
    }
  | {
      readonly verb: 'curve'
      readonly from: string
      readonly to: string
      readonly base: string
      readonly along: Direction
      readonly guides: readonly Guide[]
      readonly edge: EdgeName
      readonly why: string
    }
  | {
      readonly verb: 'dart'
      readonly at: string
      readonly width: Amount
      readonly up: Amount
      readonly down: Amount
      /** Width left at the hem where the lower tip would lie below it; 0 when the dart closes. */
      readonly atHem: Amount
      readonly why: string
    }
  | {
      readonly verb: 'edgeDart'
      readonly name: EdgeDart['name']
      readonly edge: EdgeName
      readonly upper: string
      readonly lower: string
      readonly tip: string
      readonly width: Amount
      readonly why: string
    }
  | {
      readonly verb: 'trace'
      readonly of: PieceId
      readonly edges: readonly EdgeName[]
      readonly why: string
    }
  | {
      readonly verb: 'parallel'
      readonly edge: EdgeName
      readonly to: EdgeName
      readonly by: Amount
      readonly why: string
    }
  | {
      readonly verb: 'rectangle'
      readonly long: Amount
      readonly wide: Amount
      readonly why: string
    }
  /** On a strip, about its middle: so far out on its long edge, `side` from there to either end. */
  | {
      readonly verb: 'mitre'
      readonly out: Amount
      /** Two mitres stand so far from the middle on either side; else there is one, in the middle. */
      readonly apart?: Amount
      readonly side: Amount
      /** From the edge that is sewn on to its seam line; `side` is measured there. */
      readonly sewnAt: Amount
      readonly angle: Radians
      readonly why: string
    }
  | {
      readonly verb: 'open'
      readonly words: string
      readonly long: Amount
      readonly why: string
    }
  /** A correction carried out on the drawn halves; `words` say all of it. */
  | {
      readonly verb: 'change'
      readonly words: string
      readonly amount: Amount
      readonly why: string
    }
  | {
      readonly verb: 'part'
      readonly from: EdgeName
      readonly over: string
      readonly to: EdgeName
      readonly why: string
    }
  | {
      readonly verb: 'moveDart'
      /** The dart that is folded shut, wholly or in part, and its edge. */
      readonly from: EdgeName
      readonly edge: EdgeName
      readonly at: string
      /** Where it lies: so far along the edge from a lettered point. */
      readonly along: Amount
      readonly end: string
      readonly pivot: string
      /** How wide the cut opens at its edge. */
      readonly opens: Amount
      readonly tip: Amount
      readonly why: string
    }
  /** A drop cut out at the neck on the centre: so long, widest by `half` to either side at `down`. */
  | {
      readonly verb: 'keyhole'
      readonly from: string
      readonly long: Amount
      readonly half: Amount
      readonly down: Amount
      readonly why: string
    }
  /** Where left and right are not alike: which side the steps beside it draw. */
  | {
      readonly verb: 'asWorn'
      readonly side: Side
      /** first: as it lies; other: on the other side of the paper; over: turned over once drawn. */
      readonly how: 'first' | 'other' | 'over'
      readonly why: string
    }
  | {
      readonly verb: 'cutOff'
      readonly at: string
      readonly along: LevelName
      readonly why: string
    }
  | {
      readonly verb: 'wedge'
      readonly from: string
      readonly at: Amount
      readonly edge: EdgeName
      readonly pivot: string
      readonly width: Amount
      readonly opens: Amount
      readonly shortens: Amount
      readonly why: string
    }

export type Step = Act & {
  readonly piece: PieceId
  /** Lines that light up when the step is walked. */
  readonly lights: readonly Path[]
  /** Drawn for a piece that lies turned over: out is to the left. */
  readonly turned?: true
}
