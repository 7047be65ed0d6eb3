/**
 * The edits of one piece of work: what each line moves, by how much of what was pinned, and the
 * angle where a part turns. Formulas: `rotation.ts`; worked out, with the test vectors there.
 */
import type { Angle, Edit, OpName, Way, Work } from '../complaints/complaint.ts'
import { settled, type AmountRules, type How } from '../half-amount.ts'
import type { Reaches } from '../reaches.ts'
import { fullBust, openingAt, turnOf } from '../rotation.ts'
import { toDegrees } from '../../units/angle.ts'
import { mm, type Mm } from '../../units/length.ts'

export interface EditAmount {
  readonly target: string
  readonly op: OpName
  readonly way: Way
  readonly side?: 'left' | 'right'
  readonly point?: NonNullable<Edit['point']>
  /** On the half piece as read, before share and cap, mm. */
  readonly raw: Mm
  readonly applied: Mm
  /** Most of one round, mm; undefined where the edit follows from another. */
  readonly cap: number | undefined
  /** Degrees; undefined where nothing turns or a length for it is missing. */
  readonly theta: number | undefined
  readonly eased: Mm
  readonly heldBack: Mm
  /** What this edit follows from, for a dart that takes up a turn and the like. */
  readonly follows?: string
}

export interface Amounts {
  readonly edits: readonly EditAmount[]
  /** Names of lengths that would give an angle, and are not given. */
  readonly missing: readonly string[]
}

/** @param raw on the half piece, mm, before the part that each edit takes */
export function editAmounts(
  work: Work,
  raw: Mm,
  how: How,
  cap: number,
  reaches: Reaches,
  rules: AmountRules,
): Amounts {
  const missing: string[] = []
  const edits = work.edits.flatMap((e): EditAmount[] => {
    const part = e.part ?? 1
    const most = capOf(work, e, cap * part, reaches)
    const ofWhole = most === undefined ? undefined : most / part
    const share = settled(raw, readFor(work, how), work.moves, ofWhole, rules)
    const own = {
      target: e.target,
      op: e.op,
      way: e.way,
      ...(e.point === undefined ? {} : { point: e.point }),
      raw: mm(share.raw * part),
      applied: mm(share.applied * part),
      cap: most,
      eased: mm(share.eased * part),
      heldBack: mm(share.heldBack * part),
    }
    const turned = turnedBy(e.angle, own.applied, own.raw, reaches, e.op)
    missing.push(...turned.missing)
    return [{ ...own, theta: turned.theta }, ...turned.follow(own.target)]
  })
  return { edits, missing: [...new Set(missing)] }
}

/** A mark on the body is a line that was read, however it was made. */
export const readFor = ({ marked }: Work, how: How): How =>
  marked && how === 'newLine' ? 'level' : how

/** A cap in degrees is a distance at the radius; without one nothing caps it. */
function capOf(work: Work, e: Edit, cap: number, reaches: Reaches): number | undefined {
  if (work.capUnit !== 'deg') return cap
  const radius = e.angle?.kind === 'swing' ? reaches[e.angle.radius] : undefined
  return radius === undefined ? undefined : 2 * radius * Math.sin((cap * Math.PI) / 360)
}

interface Turned {
  readonly theta: number | undefined
  readonly missing: readonly string[]
  readonly follow: (from: string) => readonly EditAmount[]
}
const STILL: Turned = { theta: undefined, missing: [], follow: () => [] }

function turnedBy(
  angle: Angle | undefined,
  applied: number,
  raw: number,
  reaches: Reaches,
  op: OpName,
): Turned {
  if (!angle) return STILL
  switch (angle.kind) {
    case 'turn': {
      const r = reaches[angle.reach]
      const turn = r === undefined ? undefined : turnOf(applied, r)
      if (r === undefined || turn === undefined) return { ...STILL, missing: [angle.reach] }
      const theta = toDegrees(turn)
      const { opens } = angle
      if (!opens) return { ...STILL, theta }
      const R = reaches[opens.reach]
      const back = { ...STILL, theta, missing: R === undefined ? [opens.reach] : [] }
      if (R === undefined) return back
      const gain = openingAt(turn, R)
      const rawTurn = turnOf(raw, r)
      const whole = rawTurn === undefined ? gain : openingAt(rawTurn, R)
      return {
        ...back,
        follow: (from) => [
          following(op === 'SPLIT' ? op : 'ROT', opens.target, 'wider', whole, gain, theta, from),
        ],
      }
    }
    case 'hinge':
    case 'swing': {
      const name = angle.kind === 'hinge' ? angle.depth : angle.radius
      const depth = reaches[name]
      const turn = depth === undefined ? undefined : turnOf(applied, depth)
      return turn === undefined
        ? { ...STILL, missing: [name] }
        : { ...STILL, theta: toDegrees(turn) }
    }
    case 'sector': {
      const radius = reaches[angle.radius]
      return radius === undefined
        ? { ...STILL, missing: [angle.radius] }
        : { ...STILL, theta: ((applied / radius) * 180) / Math.PI }
    }
    case 'bust':
      return bust(applied, raw, reaches, op)
  }
}

/** Width, length and dart of a fuller or smaller bust: three outputs of one turn. */
function bust(applied: number, raw: number, reaches: Reaches, op: OpName): Turned {
  const { hingeAcross: dx, hingeUp: dy, apexToSide: L } = reaches
  if (dx === undefined || dy === undefined || L === undefined)
    return { ...STILL, missing: ['hingeAcross', 'hingeUp', 'apexToSide'] }
  const sign = op === 'SBA' ? -1 : 1
  const [made, whole] = [fullBust(sign * applied, dx, dy, L), fullBust(sign * raw, dx, dy, L)]
  if (!made) return { ...STILL, missing: ['hingeUp'] }
  const theta = Math.abs(toDegrees(made.turn))
  const size = (x: number | undefined, or: number): Mm => mm(Math.abs(x ?? or))
  const [longer, wider]: [Way, Way] = sign > 0 ? ['out', 'wider'] : ['in', 'narrower']
  return {
    theta,
    missing: [],
    follow: (from) => [
      following(
        op,
        'front.centre',
        longer,
        size(whole?.length, made.length),
        size(made.length, 0),
        theta,
        from,
      ),
      following(
        'DARTSHAPE',
        'front.bustDart',
        wider,
        size(whole?.dart, made.dart),
        size(made.dart, 0),
        theta,
        from,
      ),
    ],
  }
}

const following = (
  op: OpName,
  target: string,
  way: Way,
  raw: Mm,
  applied: Mm,
  theta: number,
  follows: string,
): EditAmount => ({
  target,
  op,
  way,
  raw,
  applied,
  cap: undefined,
  theta,
  eased: mm(0),
  heldBack: mm(0),
  follows,
})
