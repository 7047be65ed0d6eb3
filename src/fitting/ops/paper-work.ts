/**
 * An operation as work on paper that is already there: what to cut or fold, from where to where,
 * by how much, then tape and draw anew. Places are measured on the paper as it lies. Source:
 * slash, spread, overlap and pivot of published alterations; common practice.
 */
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { edge, type Piece } from '../../draft/piece.ts'
import { pathLength } from '../../geometry/length.ts'
import { pathEnd, pathStart } from '../../geometry/path.ts'
import { distance } from '../../geometry/point.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import { mm } from '../../units/length.ts'
import { armEdge, onNeck, overEdge, pivotOf, sideMouth } from '../landmarks.ts'
import { hingeAt, levelOf } from './across.ts'
import { wedgeAt } from './closing.ts'
import { acrossPoint } from './moves.ts'
import type { Operation } from './operation.ts'
import { PAPER_WORDS } from './paper.words.ts'

export function paperWork(op: Operation, before: Draft, units: UnitChoice): readonly string[] {
  const say = (x: number): string => formatLength(mm(Math.abs(x)), units)
  const half = (id: 'back' | 'front'): Piece => pieceOf(before, id)
  const W = PAPER_WORDS
  switch (op.op) {
    case 'ROT': {
      const piece = half(op.piece)
      const long = pathLength(edge(piece, op.edge).path)
      const across = wedgeAt(piece, op)?.across ?? op.width
      const slant = Math.abs(across - Math.abs(op.width)) > SLANT_TOLD
      return [
        W.rule(op, say(long * op.along)),
        W.turn(op, say(across), slant ? say(op.width) : undefined),
      ]
    }
    case 'WEDGE': {
      const piece = half(op.piece)
      const y = levelOf(piece, op.level)
      const far = y === undefined ? undefined : hingeAt(piece, y, op.level)
      if (y === undefined || far === undefined) return []
      return [W.cutToHinge(say(y - onNeck(piece, 0).y), say(far)), W.wedge(op.by > 0, say(op.by))]
    }
    case 'DROP': {
      const front = half('front')
      const mouth = sideMouth(front)
      const apex = pivotOf(front)
      return [
        W.cutAlongDart(say(apex.x), mouth && say(distance(apex, mouth))),
        W.drop(op.by > 0, say(op.by)),
      ]
    }
    case 'BUST': {
      const arm = armEdge(half('front'))
      return [W.cutForBust(arm), W.bust(op.by > 0, say(op.by), arm)]
    }
    case 'MOVE':
      return (op.piece === 'both' ? (['front', 'back'] as const) : [op.piece]).map((id) =>
        W.onPiece(id, moved(op, half(id), say)),
      )
    case 'SWAP':
      return [W.swap(overEdge(half('front')), op.by > 0 ? 'front' : 'back', say(op.by))]
    case 'STRIP': {
      const piece = half(op.piece)
      const [tip, across] = [pathStart(edge(piece, 'armhole').path), acrossPoint(piece)]
      return [W.strip(op.by > 0, say(across.y - tip.y), say(across.x), say(op.by)), W.stripLine]
    }
    case 'GROUP':
      return [
        W.slide(
          op.dart,
          op.down === 0 ? undefined : { by: say(op.down), down: op.down > 0 },
          op.out === 0 ? undefined : { by: say(op.out), out: op.out > 0 },
        ),
      ]
    case 'DARTLEN':
      return [W.dartTip(op.dart, say(op.by), op.by > 0)]
    case 'DARTSHAPE':
      return [W.dartLegs(op.dart, say(op.by / 2), op.by > 0)]
    case 'SPLIT':
      return [W.split(say(op.width))]
  }
}

/** A wedge so much wider than what the edge loses is told, mm. Judgement. */
const SLANT_TOLD = 1

/** A named point: where it is now, how it goes, and which lines are drawn to it. */
function moved(
  { point, out, down, carries }: Extract<Operation, { op: 'MOVE' }>,
  piece: Piece,
  say: (x: number) => string,
): string {
  const W = PAPER_WORDS
  const seam = overEdge(piece)
  const over = edge(piece, seam).path
  const [neck, tip] = [pathStart(over), pathEnd(over)]
  const seamLong = say(distance(neck, tip))
  const places = W.alongAndSquare(
    seam,
    out === 0 ? undefined : { by: say(out), out: out > 0 },
    down === 0 ? undefined : { by: say(down), down: down > 0 },
  )
  switch (point) {
    case 'shoulderTip':
      return W.shoulderTip(
        seamLong,
        places,
        carries ? { by: say(down), down: down > 0 } : undefined,
        say(acrossPoint(piece).y - tip.y),
      )
    case 'sideNeck':
      return W.sideNeck(places, seamLong)
    case 'neckAtCentre':
      return W.neckAtCentre({ by: say(down), down: down > 0 }, say(neck.x))
    case 'underarm': {
      const arm = armEdge(piece)
      const corner = pathEnd(edge(piece, arm).path)
      return W.underarm(
        down === 0 ? undefined : { by: say(down), down: down > 0 },
        out === 0 ? undefined : { by: say(out), out: out > 0 },
        say(corner.x),
        arm,
        say(corner.y - acrossPoint(piece).y),
      )
    }
  }
}
