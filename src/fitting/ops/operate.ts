/** Carries out one recorded operation on the halves and trues every seam after it. */
import { pieceOf, withPiece, type Draft } from '../../draft/draft.ts'
import { outline } from '../../draft/piece.ts'
import { checkJoined } from '../../geometry/path.ts'
import { selfIntersections } from '../../geometry/self-intersection.ts'
import type { Why } from '../refusal.ts'
import { dropped, wedged } from './across.ts'
import { dartIntake, dartLength, dartMoved } from './dart-moves.ts'
import { bustChanged } from './full-bust.ts'
import { moved, seamSwapped, strip } from './moves.ts'
import type { Operation } from './operation.ts'
import type { Halves, Made } from './outcome.ts'
import { truedAfter } from './truing.ts'
import { split, turnedAt } from './turn.ts'

export type Operated =
  | { readonly ok: true; readonly draft: Draft; readonly notes: readonly string[] }
  | { readonly ok: false; readonly why: Why }

/** An amount of nothing changes nothing. */
const amountOf = (op: Operation): number => {
  switch (op.op) {
    case 'ROT':
    case 'SPLIT':
      return op.width
    case 'MOVE':
    case 'GROUP':
      return Math.abs(op.out) + Math.abs(op.down)
    default:
      return op.by
  }
}

export function operated(draft: Draft, op: Operation): Operated {
  if (amountOf(op) === 0) return { ok: true, draft, notes: [] }
  const halves: Halves = { back: pieceOf(draft, 'back'), front: pieceOf(draft, 'front') }
  const made = run(halves, op)
  if (!made.ok) return made
  const true_ = truedAfter(halves, made.halves)
  for (const piece of [true_.back, true_.front])
    checkJoined(outline(piece), `${piece.id} after ${op.op}`)
  for (const piece of [true_.back, true_.front])
    if (selfIntersections(outline(piece)).length > 0)
      return { ok: false, why: { id: 'cannotDraw', edge: 'side' } }
  return {
    ok: true,
    draft: withPiece(withPiece(draft, true_.back), true_.front),
    notes: made.notes,
  }
}

function run(halves: Halves, op: Operation): Made {
  switch (op.op) {
    case 'ROT':
      return turnedAt(halves, op)
    case 'WEDGE':
      return wedged(halves, op)
    case 'STRIP':
      return strip(halves, op)
    case 'DROP':
      return dropped(halves, op.by)
    case 'BUST':
      return bustChanged(halves, op.by)
    case 'MOVE':
      return moved(halves, op)
    case 'SWAP':
      return seamSwapped(halves, op.by)
    case 'GROUP':
      return dartMoved(halves, op)
    case 'DARTLEN':
      return dartLength(halves, op)
    case 'DARTSHAPE':
      return dartIntake(halves, op)
    case 'SPLIT':
      return split(halves, op.width)
  }
}
