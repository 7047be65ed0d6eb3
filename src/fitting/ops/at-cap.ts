/**
 * Every operation at the most of one round, each way it may go: what a bench and a property ask
 * of all of them. Caps: the complaints that lead there.
 */
import { mm, type Mm } from '../../units/length.ts'
import type { GarmentId } from '../../draft/draft.ts'
import { PINNED_AT, PINNED_ON_BACK } from '../landmarks.ts'
import type { Operation } from './operation.ts'

export interface AtCap {
  readonly name: string
  readonly operation: Operation
}

export function operationsAtCap(garment: GarmentId): readonly AtCap[] {
  const arm = garment === 'blouse' ? 'sleeveEdge' : 'armhole'
  const overarm = garment === 'blouse'
  const both = (name: string, cap: number, of: (by: Mm) => Operation): AtCap[] => [
    { name: `${name}+`, operation: of(mm(cap)) },
    { name: `${name}-`, operation: of(mm(-cap)) },
  ]
  const move =
    (point: 'shoulderTip' | 'sideNeck' | 'neckAtCentre' | 'underarm') =>
    (out: number, down: number, carries?: true): Operation => ({
      op: 'MOVE',
      piece: 'both',
      point,
      out: mm(out),
      down: mm(down),
      ...(carries ? { carries } : {}),
    })
  return [
    ...both('ROT neck into waist dart', 15, (by) => ({
      op: 'ROT',
      piece: 'front',
      edge: 'neck',
      along: PINNED_AT.neck,
      width: by,
      into: 'waistDart',
    })),
    ...both('ROT neck into bust dart', 15, (by) => ({
      op: 'ROT',
      piece: 'front',
      edge: 'neck',
      along: PINNED_AT.neck,
      width: by,
      into: 'bustDart',
    })),
    ...both('ROT arm into waist dart', 15, (by) => ({
      op: 'ROT',
      piece: 'front',
      edge: arm,
      along: PINNED_AT[arm],
      width: by,
      into: 'waistDart',
    })),
    ...both('ROT arm into bust dart', 15, (by) => ({
      op: 'ROT',
      piece: 'front',
      edge: arm,
      along: PINNED_AT[arm],
      width: by,
      into: 'bustDart',
    })),
    ...both('ROT back neck into shoulder dart', 12, (by) => ({
      op: 'ROT',
      piece: 'back',
      edge: 'neck',
      along: PINNED_AT.neck,
      width: by,
      into: 'shoulderDart',
    })),
    ...both('ROT back arm into shoulder dart', 10, (by) => ({
      op: 'ROT',
      piece: 'back',
      edge: arm,
      along: PINNED_ON_BACK[arm],
      width: by,
      into: 'shoulderDart',
    })),
    ...both('ROT back arm into waist dart', 10, (by) => ({
      op: 'ROT',
      piece: 'back',
      edge: arm,
      along: PINNED_ON_BACK[arm],
      width: by,
      into: 'waistDart',
    })),
    ...both('WEDGE chest', 13, (by) => ({ op: 'WEDGE', piece: 'front', level: 'chest', by })),
    ...both('WEDGE blade', 15, (by) => ({ op: 'WEDGE', piece: 'back', level: 'blade', by })),
    ...both('WEDGE nape', 19, (by) => ({ op: 'WEDGE', piece: 'back', level: 'nape', by })),
    ...both('WEDGE waist', 20, (by) => ({ op: 'WEDGE', piece: 'back', level: 'waist', by })),
    ...both('WEDGE below waist', 20, (by) => ({
      op: 'WEDGE',
      piece: 'front',
      level: 'belowWaist',
      by,
    })),
    ...both('STRIP front', 10, (by) => ({ op: 'STRIP', piece: 'front', by })),
    ...both('STRIP back', 15, (by) => ({ op: 'STRIP', piece: 'back', by })),
    ...both('DROP', 20, (by) => ({ op: 'DROP', by })),
    ...both('BUST', 20, (by) => ({ op: 'BUST', by })),
    ...both('MOVE shoulder tip', 13, (by) => move('shoulderTip')(0, by, true)),
    ...both('MOVE shoulder tip along', 13, (by) => move('shoulderTip')(by, 0)),
    ...both('MOVE side neck', 20, (by) => move('sideNeck')(by, 0)),
    ...both('MOVE side neck of the front up and down', 13, (by) => ({
      op: 'MOVE',
      piece: 'front',
      point: 'sideNeck',
      out: mm(0),
      down: by,
    })),
    ...both('MOVE neck at the centre', 10, (by) => move('neckAtCentre')(0, by)),
    ...both('MOVE underarm', 15, (by) => move('underarm')(0, by)),
    ...both(overarm ? 'SWAP overarm' : 'SWAP shoulder', 13, (by) => ({ op: 'SWAP', by })),
    ...both('GROUP bust dart', 25, (by) => ({
      op: 'GROUP',
      piece: 'front',
      dart: 'bustDart',
      out: mm(0),
      down: by,
    })),
    ...both('GROUP waist dart across', 20, (by) => ({
      op: 'GROUP',
      piece: 'front',
      dart: 'waistDart',
      out: by,
      down: mm(0),
    })),
    ...both('GROUP waist dart up and down', 25, (by) => ({
      op: 'GROUP',
      piece: 'front',
      dart: 'waistDart',
      out: mm(0),
      down: by,
    })),
    ...both('DARTLEN waist dart', 20, (by) => ({
      op: 'DARTLEN',
      piece: 'front',
      dart: 'waistDart',
      by,
    })),
    ...both('DARTLEN bust dart', 20, (by) => ({
      op: 'DARTLEN',
      piece: 'front',
      dart: 'bustDart',
      by,
    })),
    ...both('DARTSHAPE front', 19, (by) => ({
      op: 'DARTSHAPE',
      piece: 'front',
      dart: 'waistDart',
      by,
    })),
    ...both('DARTSHAPE back', 20, (by) => ({
      op: 'DARTSHAPE',
      piece: 'back',
      dart: 'waistDart',
      by,
    })),
    { name: 'SPLIT', operation: { op: 'SPLIT', width: mm(15) } },
  ]
}
