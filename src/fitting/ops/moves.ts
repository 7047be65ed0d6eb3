/**
 * Points and widths that move while the paper round them gives way smoothly: shoulder tip, side
 * neck, neck at the centre, underarm, width across, and the seam over the shoulder swung forward.
 * Formulas: a point goes where it is told; seams that end there keep their lengths where they are
 * swung about their other end. Common practice; sources in `complaints/`.
 */
import {
  add,
  distance,
  dot,
  point,
  rotate,
  scale,
  subtract,
  unit,
  type Point,
} from '../../geometry/point.ts'
import { pathEnd, pathStart } from '../../geometry/path.ts'
import { edge, type HalfId, type Piece } from '../../draft/piece.ts'
import { mm } from '../../units/length.ts'
import { turnOf } from '../rotation.ts'
import { armEdge, has, overEdge } from '../landmarks.ts'
import { ramp, shiftedPiece, within01, type Field } from './field.ts'
import type { Operation } from './operation.ts'
import { halfOf, made, refused, withHalf, type Halves, type Made } from './outcome.ts'

/** Side seam that must be left between underarm and what lies under it, as a multiple of the move. */
const ROOM = 1.3

type Move = Extract<Operation, { op: 'MOVE' }>

export function moved(halves: Halves, op: Move): Made {
  if (op.piece !== 'both') return movedOn(halves, op, op.piece)
  const back = movedOn(halves, op, 'back')
  return back.ok ? movedOn(back.halves, op, 'front') : back
}

function movedOn(halves: Halves, op: Move, id: HalfId): Made {
  const piece = halfOf(halves, id)
  switch (op.point) {
    case 'shoulderTip':
      return tipMoved(halves, piece, op)
    case 'sideNeck':
      return made(withHalf(halves, sideNeckMoved(piece, op.out, op.down)))
    case 'neckAtCentre':
      return made(withHalf(halves, shiftedPiece(piece, neckField(piece, op.down))))
    case 'underarm': {
      const low = sideRoom(halves)
      if (op.down > 0 && low < op.down * ROOM)
        return refused({ id: 'sideTooShort', piece: piece.id, by: mm(op.down) })
      return made(withHalf(halves, shiftedPiece(piece, underarmField(piece, op.out, op.down, low))))
    }
  }
}

const shoulderOf = (piece: Piece): { neck: Point; tip: Point; way: Point } => {
  const path = edge(piece, overEdge(piece)).path
  const [neck, tip] = [pathStart(path), pathEnd(path)]
  return { neck, tip, way: unit(subtract(tip, neck)) }
}
const armEnds = (piece: Piece): { tip: Point; under: Point } => {
  const path = edge(piece, armEdge(piece)).path
  return { tip: pathStart(path), under: pathEnd(path) }
}
/** Where the armhole touches the width across; half way down where no letter says it. */
export const acrossPoint = (piece: Piece): Point => {
  const { tip, under } = armEnds(piece)
  return piece.points['Z'] ?? point(Math.min(tip.x, under.x), (tip.y + under.y) / 2)
}

/** Depth of side below the underarm that may be pressed together: to a dart's mouth, or the bust line. */
const sideRoom = ({ back, front }: Halves): number => Math.min(roomOn(back), roomOn(front))
function roomOn(piece: Piece): number {
  const { under } = armEnds(piece)
  const mouth = piece.edgeDarts.find((d) => d.edge === 'side')
  if (mouth) return mouth.upper.y - under.y
  const waist = piece.points['W']
  return waist ? (waist.y - under.y) / 2 : 0
}

function tipMoved(halves: Halves, piece: Piece, { out, down, carries }: Move): Made {
  if (!has(piece, 'armhole')) return refused({ id: 'noTip', piece: piece.id })
  const { neck, tip, way } = shoulderOf(piece)
  if (out < 0 && -out > distance(neck, tip) / 2)
    return refused({ id: 'noPlace', piece: piece.id, edge: 'shoulder' })
  const size = distance(neck, tip)
  const turn = turnOf(down, size)
  if (turn === undefined) return refused({ id: 'noPlace', piece: piece.id, edge: 'shoulder' })
  const swung = subtract(rotate(tip, neck, turn), tip)
  const by = add(swung, scale(way, out))
  const { under } = armEnds(piece)
  const across = acrossPoint(piece)
  const full = Math.min(tip.x, across.x)
  const inner = carries ? neck.x : middleX(piece)
  const low = sideRoom(halves)
  if (carries && down > 0 && low < down * ROOM)
    return refused({ id: 'sideTooShort', piece: piece.id, by: mm(down) })
  const field: Field = (p) => {
    const x = carries ? within01((p.x - inner) / (full - inner)) : ramp(p.x, inner, full)
    const y = carries ? 1 - ramp(p.y, under.y, under.y + low) : 1 - ramp(p.y, tip.y, across.y)
    // The underarm goes straight down by as much on both halves, so that the sides stay equal.
    const share = carries ? ramp(p.y, tip.y, across.y) : 0
    const shift = add(scale(by, 1 - share), scale(point(0, down), share))
    return add(p, scale(shift, x * y))
  }
  return made(withHalf(halves, shiftedPiece(piece, field)))
}
/** Outer leg of a shoulder dart, or the middle of the shoulder: what lies inside it stays. */
function middleX(piece: Piece): number {
  const dart = piece.edgeDarts.find((d) => d.edge === 'shoulder')
  const { neck, tip } = shoulderOf(piece)
  return dart ? Math.max(dart.upper.x, dart.lower.x) : (neck.x + tip.x) / 2
}

/** Along the shoulder, or swung about the tip so that the shoulder keeps its length. */
export function sideNeckMoved(piece: Piece, out: number, down: number): Piece {
  const { neck, tip, way } = shoulderOf(piece)
  const turn = turnOf(-down, distance(neck, tip)) ?? 0
  const by = add(subtract(rotate(neck, tip, turn), neck), scale(way, out))
  const top = neck
  const field: Field = (p) => {
    if (p.y > Math.max(pathStart(edge(piece, 'neck').path).y, top.y) + 1) return p
    // On the shoulder the move fades towards the tip, on the neck towards the centre.
    const onShoulder = dot(subtract(p, neck), way)
    const share =
      p.x >= neck.x ? 1 - within01(onShoulder / distance(neck, tip)) : ramp(p.x, 0, neck.x)
    return add(p, scale(by, share))
  }
  return shiftedPiece(piece, field)
}

const neckField = (piece: Piece, down: number): Field => {
  const neck = edge(piece, 'neck').path
  const [centre, side] = [pathStart(neck), pathEnd(neck)]
  return (p) => (p.y > centre.y + 0.5 ? p : add(p, point(0, down * (1 - ramp(p.x, 0, side.x)))))
}

const underarmField = (piece: Piece, out: number, down: number, low: number): Field => {
  const { under } = armEnds(piece)
  const across = acrossPoint(piece)
  const inner = Math.min(across.x, under.x) - 30
  return (p) => {
    const y = p.y <= under.y ? ramp(p.y, across.y, under.y) : 1 - ramp(p.y, under.y, under.y + low)
    return add(p, scale(point(out, down), y * ramp(p.x, inner, across.x)))
  }
}

/** Width at the level across, nothing at shoulder and underarm. */
export function strip(
  halves: Halves,
  { piece: id, by }: Extract<Operation, { op: 'STRIP' }>,
): Made {
  const piece = halfOf(halves, id)
  if (!has(piece, 'armhole')) return refused({ id: 'noTip', piece: piece.id })
  const { tip, under } = armEnds(piece)
  const across = acrossPoint(piece)
  if (across.x + by > under.x - LEAST_UNDER)
    return refused({ id: 'noPlace', piece: piece.id, edge: 'armhole' })
  const inner = middleX(piece)
  const field: Field = (p) => {
    const y = ramp(p.y, tip.y, across.y) * (1 - ramp(p.y, across.y, under.y))
    return add(p, point(by * y * ramp(p.x, inner, Math.min(tip.x, across.x)), 0))
  }
  return made(withHalf(halves, shiftedPiece(piece, field)))
}
/** The width across stays so far inside the underarm, mm. */
const LEAST_UNDER = 6

/** Front tip down, back tip up by as much, both swung about the side neck: forward on the body. */
export function seamSwapped(halves: Halves, by: number): Made {
  const go = (piece: Piece, down: number): Piece => {
    const { neck, tip } = shoulderOf(piece)
    const turn = turnOf(down, distance(neck, tip)) ?? 0
    const shift = subtract(rotate(tip, neck, turn), tip)
    const [across, inner] = [acrossPoint(piece), neck.x]
    const full = Math.min(tip.x, across.x)
    const reach = armEdge(piece) === 'armhole' ? across.y : (tip.y + armEnds(piece).under.y) / 2
    return shiftedPiece(piece, (p) =>
      add(
        p,
        scale(shift, within01((p.x - inner) / (full - inner)) * (1 - ramp(p.y, tip.y, reach))),
      ),
    )
  }
  return made({ back: go(halves.back, -by), front: go(halves.front, by) })
}
