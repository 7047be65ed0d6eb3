/**
 * Operations on a drawn half piece, as they are recorded: what turns, slides or moves, and by how
 * much. Amounts only, no drawn point, so that a later tape reading carries them along. Those that
 * a choice of the construction can say are choices and stand here not at all.
 */
import type { AnyDart, HalfId } from '../../draft/piece.ts'
import type { Mm } from '../../units/length.ts'

export type TurnEdge = 'neck' | 'armhole' | 'sleeveEdge'
export type WedgeLevel = 'chest' | 'blade' | 'nape' | 'waist' | 'belowWaist'
export type NamedPlace = 'shoulderTip' | 'sideNeck' | 'neckAtCentre' | 'underarm'

export type Operation =
  /** A wedge closed at an edge about bust tip or blade; a dart takes it up. Negative opens. */
  | {
      readonly op: 'ROT'
      readonly piece: HalfId
      readonly edge: TurnEdge
      /** Place on the edge as a share of its length, neck from the fold, arm edges from the underarm. */
      readonly along: number
      readonly width: Mm
      readonly into: AnyDart
    }
  /** Length at the centre, nothing at the far edge; negative overlaps. */
  | { readonly op: 'WEDGE'; readonly piece: HalfId; readonly level: WedgeLevel; readonly by: Mm }
  /** Width at the level across chest or back. */
  | { readonly op: 'STRIP'; readonly piece: HalfId; readonly by: Mm }
  /** Front length over the bust, and the side dart with it. */
  | { readonly op: 'DROP'; readonly by: Mm }
  /** Width of the front at the bust tip, with length and dart; negative for a smaller bust. */
  | { readonly op: 'BUST'; readonly by: Mm }
  /** One named point: along its seam outwards, and square to it downwards, mm. */
  | {
      readonly op: 'MOVE'
      /** Both halves alike, so that their seams stay equal; or one of them. */
      readonly piece: HalfId | 'both'
      readonly point: NamedPlace
      readonly out: Mm
      readonly down: Mm
      /** The shoulder tip takes the underarm along, so that the armhole keeps its size. */
      readonly carries?: true
    }
  /** The seam over shoulder or arm swung forward about the side neck: front less, back more. */
  | { readonly op: 'SWAP'; readonly by: Mm }
  /** A dart moved as it is, its intake kept. */
  | {
      readonly op: 'GROUP'
      readonly piece: HalfId
      readonly dart: AnyDart
      readonly out: Mm
      readonly down: Mm
    }
  /** The tip of a dart moved back along its axis; negative towards the bust tip. */
  | { readonly op: 'DARTLEN'; readonly piece: HalfId; readonly dart: AnyDart; readonly by: Mm }
  /** What a dart takes in. */
  | { readonly op: 'DARTSHAPE'; readonly piece: HalfId; readonly dart: AnyDart; readonly by: Mm }
  /** Part of the front waist dart turned into the side dart, mm at the waist. */
  | { readonly op: 'SPLIT'; readonly width: Mm }

export type OpKind = Operation['op']
