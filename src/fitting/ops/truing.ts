/**
 * After an operation: shoulders equal, neck and armhole in one line over the shoulder and under
 * the arm, corners on the fold square. Only ends of curves are drawn anew, and only by what is
 * out. Rules: truing as pattern teachers publish it; 1° and half a millimetre are ours.
 */
import { endTangent, pathEnd, pathStart, startTangent, type Path } from '../../geometry/path.ts'
import {
  add,
  cross,
  distance,
  dot,
  point,
  rotate,
  scale,
  subtract,
  unit,
  type Point,
} from '../../geometry/point.ts'
import { cubic } from '../../geometry/segment.ts'
import { edge, overShoulder, sewnLength, withEdge, type Piece } from '../../draft/piece.ts'
import { armEdge, has, overEdge } from '../landmarks.ts'
import { ramp, shiftedPiece } from './field.ts'
import type { Halves } from './outcome.ts'

/** Less than this is left as it is: half a degree, and a hundredth of a millimetre. */
const TURN_LEAST = Math.PI / 720
const LENGTH_LEAST = 0.01

/** Only what the operation put out is drawn anew; what was so before stays so. */
export function truedAfter(before: Halves, after: Halves): Halves {
  const even = shouldersEven(after)
  const square = { back: squaredAtFold(even.back), front: squaredAtFold(even.front) }
  const steps = [
    [neckSum, neckRuns],
    [shoulderSum, overShoulders],
    [underarmSum, underArm],
  ] as const
  return steps.reduce<Halves>((halves, [sum, run]) => {
    const [was, is] = [sum(before), sum(halves)]
    if (was === undefined || is === undefined || Math.abs(is - was) < TURN_LEAST) return halves
    return run(halves, is - Math.PI)
  }, square)
}

const angle = (a: Point, b: Point): number => Math.abs(Math.atan2(cross(a, b), dot(a, b)))
const flip = (p: Point): Point => point(-p.x, -p.y)

/** The back shoulder as long as the front once its dart is folded: its tip slides along it. */
function shouldersEven({ back, front }: Halves): Halves {
  const name = overEdge(back)
  if (!has(front, name)) return { back, front }
  const off = sewnLength(front, name) - sewnLength(back, name)
  if (Math.abs(off) < LENGTH_LEAST) return { back, front }
  const over = edge(back, name).path
  const last = over[over.length - 1]
  if (last?.kind !== 'line') return { back, front }
  const way = unit(subtract(last.to, last.from))
  const by = scale(way, off)
  const [from, tip] = [last.from, last.to]
  const low = pathEnd(edge(back, armEdge(back)).path)
  const moved = shiftedPiece(back, (p) => {
    const out = ramp(dot(subtract(p, from), way), 0, distance(from, tip))
    const down = 1 - ramp(p.y, tip.y, (tip.y + low.y) / 2)
    return add(p, scale(by, out * down))
  })
  return { back: moved, front }
}

const neckAt = (piece: Piece): number =>
  angle(flip(endTangent(edge(piece, 'neck').path)), startTangent(overShoulder(piece).path))
const neckSum = ({ back, front }: Halves): number => neckAt(back) + neckAt(front)

/** Front and back neck against the shoulder: 180° together; each takes half of what is out. */
function neckRuns({ back, front }: Halves, off: number): Halves {
  const bends = (piece: Piece): boolean => edge(piece, 'neck').path.at(-1)?.kind === 'cubic'
  const share = bends(front) && bends(back) ? 0.5 : 1
  const turn = (piece: Piece): Piece =>
    bends(piece)
      ? withEdge(piece, 'neck', endTurned(edge(piece, 'neck').path, -off * share))
      : piece
  return { back: turn(back), front: turn(front) }
}

const shoulderSum = ({ back, front }: Halves): number | undefined => {
  if (!has(back, 'armhole') || !has(front, 'armhole')) return undefined
  const at = (piece: Piece): number =>
    angle(flip(endTangent(edge(piece, 'shoulder').path)), startTangent(edge(piece, 'armhole').path))
  return at(back) + at(front)
}
function overShoulders({ back, front }: Halves, off: number): Halves {
  const turn = (piece: Piece): Piece =>
    withEdge(piece, 'armhole', startTurned(edge(piece, 'armhole').path, off / 2))
  return { back: turn(back), front: turn(front) }
}

const underarmSum = ({ back, front }: Halves): number | undefined => {
  if (!has(back, 'armhole') || !has(front, 'armhole')) return undefined
  const at = (piece: Piece): number =>
    angle(flip(endTangent(edge(piece, 'armhole').path)), startTangent(edge(piece, 'side').path))
  return at(back) + at(front)
}
function underArm({ back, front }: Halves, off: number): Halves {
  const turn = (piece: Piece): Piece =>
    withEdge(piece, 'armhole', endTurned(edge(piece, 'armhole').path, -off / 2))
  return { back: turn(back), front: turn(front) }
}

/** Neck and hem leave the fold square. */
function squaredAtFold(piece: Piece): Piece {
  if (edge(piece, 'centre').role !== 'fold') return piece
  const [neck, hem] = [edge(piece, 'neck').path, edge(piece, 'hem').path]
  const straight = neck.length === 1 && neck[0]?.kind === 'line'
  const up = Math.atan2(startTangent(neck).y, startTangent(neck).x)
  const necked =
    !straight && Math.abs(up) > TURN_LEAST && neck[0]?.kind === 'cubic'
      ? withEdge(piece, 'neck', startTurned(neck, -up))
      : piece
  return Math.abs(endTangent(hem).y) > Math.sin(TURN_LEAST)
    ? withEdge(necked, 'hem', hemSquare(hem))
    : necked
}

/** The last stretch of the hem bends into the fold square. */
function hemSquare(hem: Path): Path {
  const last = hem[hem.length - 1]
  if (!last) return hem
  const [from, to] = [last.kind === 'arc' ? pathStart([last]) : last.from, pathEnd(hem)]
  const third = distance(from, to) / 3
  const out = last.kind === 'line' ? unit(subtract(to, from)) : startTangent([last])
  return [
    ...hem.slice(0, -1),
    cubic(from, add(from, scale(out, third)), point(to.x + third, to.y), to),
  ]
}

/** The last handle turned about the end, clockwise on the page. */
function endTurned(path: Path, by: number): Path {
  const last = path[path.length - 1]
  if (last?.kind !== 'cubic') return path
  const c2 = rotate(last.c2, last.to, by)
  return [...path.slice(0, -1), cubic(last.from, last.c1, c2, last.to)]
}
function startTurned(path: Path, by: number): Path {
  const [first, ...rest] = path
  if (first?.kind !== 'cubic') return path
  return [cubic(first.from, rotate(first.c1, first.from, by), first.c2, first.to), ...rest]
}
