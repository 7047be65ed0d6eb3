/**
 * Two photographs of different muslins brought to the same scale, place and upright. What holds
 * them together: the edges of the trunk where both are seen, the joints of shoulders and hips, and
 * the scale by the two cards. An edge that lies elsewhere because the muslin is another counts
 * less the farther it lies (trimmed least squares). Says how far shoulders and hips stay apart.
 * Pure; px of the two pictures, mm only where a card gave a scale.
 */
import { bodyFrame, type BodyFrame } from './frame.ts'
import type { ViewReading } from './reading.ts'
import { scaleAt, type Scale } from './scale.ts'
import { distance, type Point } from '../geometry/point.ts'
import { mm, type Mm } from '../units/length.ts'
import {
  after,
  carried,
  inverse,
  onto,
  ontoLine,
  scaleBy,
  solved,
  turnBy,
  type Condition,
  type Similarity,
} from './similarity.ts'
import { MATCH_WORDS } from './photo-match.words.ts'
import { trunkEdge, type TrunkEdge } from './trunk-edges.ts'

export interface PhotoMatch {
  /** From px of the later picture to px of the earlier one. */
  readonly onto: Similarity
  /** Of the earlier picture, where the body is; undefined without a card in either picture. */
  readonly mmPerPx: number | undefined
  /** Which picture's card gave the scale. */
  readonly card: 'both' | 'earlier' | 'later' | 'none'
  /** How far shoulder joints and hip edges still lie apart, in px of the earlier picture. */
  readonly apartPx: Readonly<Record<'shoulders' | 'hips', number>>
  /** The same in mm, where there is a scale. */
  readonly apart: Readonly<Record<'shoulders' | 'hips', Mm>> | undefined
  /** Later over earlier by the cards against the match; 1 when they agree. Only with two cards. */
  readonly cardsDisagree: number | undefined
  readonly turn: number
}
export type PhotoMatchOutcome =
  | { readonly ok: true; readonly match: PhotoMatch }
  | { readonly ok: false; readonly reason: string }

/** Where the trunk's edges are compared, in torsos below the shoulder joints. Tuned on 8 rendered pairs. */
const ZONE = { from: 0, to: 1.05 } as const
/** The edge it is laid against is taken a little longer, so that no end is lost. */
const BEYOND = 0.15
/**
 * In torsos (about 490 mm): the joints stray by 16 mm between two pictures (models-notes/blazepose.md:
 * 4 to 16), an edge by 4 mm; an edge farther off than 20 mm hardly counts at first, than 6 mm at last.
 */
const JOINT_SD = 0.033
const EDGE_SD = 0.008
const [NEAR_AT_FIRST, NEAR_AT_LAST] = [0.04, 0.0125]
/** Rows next to each other say the same thing: both edges together count as so many places. */
const EDGE_PLACES = 60
const ROUNDS = 30
const JOINTS = ['left_shoulder', 'right_shoulder', 'left_hip', 'right_hip'] as const
/** The hips lie as far below the shoulder joints as the hip joints (proportions.ts, HIP). */
const HIPS = { at: 1, within: 0.1 } as const
/** Fewer seen rows than this on both edges together are no edge to match by. */
const LEAST_ROWS = 40

export function matchPhotos(earlier: ViewReading, later: ViewReading): PhotoMatchOutcome {
  if (earlier.view !== later.view) return { ok: false, reason: MATCH_WORDS.otherView }
  const [a, b] = [standing(earlier), standing(later)]
  if (!a) return { ok: false, reason: MATCH_WORDS.nobody.earlier }
  if (!b) return { ok: false, reason: MATCH_WORDS.nobody.later }
  // Counted in torsos from the shoulders, both pictures are alike to begin with.
  const scales = [scaleAt(earlier, 0, 0), scaleAt(later, 0, 0)] as const
  const ratio = cardRatio(scales, a, b)
  const joints = a.joints.flatMap((q, k) => {
    const p = b.joints[k]
    return p && q ? onto(p, q, 1 / JOINT_SD ** 2) : []
  })
  let fit = solved(joints)
  if (!fit) return { ok: false, reason: MATCH_WORDS.nobody.later }
  for (let k = 0; k < ROUNDS; k++) {
    const near = NEAR_AT_FIRST * (NEAR_AT_LAST / NEAR_AT_FIRST) ** (k / (ROUNDS - 1))
    const edges = edgeConditions(fit, a.edges, b.edges, near)
    const byCards: Condition[] = ratio ? [scaleCondition(fit, ratio)] : []
    fit = solved([...joints, ...edges, ...byCards]) ?? fit
  }
  const found = fit
  const joint = (k: number): number | undefined => {
    const [p, q] = [b.joints[k], a.joints[k]]
    return p && q && distance(carried(found, p), q)
  }
  // Across by the edges, which are seen sharply; down by the joints, for an edge slides there.
  const across = [0, 1].map((side) => edgeApart(found, a.edges[side], b.edges[side]))
  const down = [2, 3].map((k) => {
    const [p, q] = [b.joints[k], a.joints[k]]
    return p && q && Math.abs(carried(found, p).y - q.y)
  })
  const hips = across.some((d) => d !== undefined)
    ? Math.hypot(mean(across), mean(down))
    : mean([joint(2), joint(3)])
  const apartPx = {
    shoulders: a.frame.torso * mean([joint(0), joint(1)]),
    hips: a.frame.torso * hips,
  }
  const onA = after(inverse(a.toTorso), after(found, b.toTorso))
  return { ok: true, match: said(onA, scales, apartPx) }
}

const mean = (list: readonly (number | undefined)[]): number => {
  const known = list.flatMap((value) => value ?? [])
  return known.reduce((sum, value) => sum + value, 0) / Math.max(1, known.length)
}

/** How far two edges lie apart at the hips, median over the places where both are seen. */
function edgeApart(
  fit: Similarity,
  earlier: TrunkEdge | undefined,
  later: TrunkEdge | undefined,
): number | undefined {
  const apart = (later?.points ?? []).flatMap((p) => {
    if (Math.abs(p.y - HIPS.at) > HIPS.within) return []
    const here = carried(fit, p)
    const line = earlier?.at(here.y)
    return line ? [Math.abs(here.x - line.x)] : []
  })
  return apart.sort((x, y) => x - y)[apart.length >> 1]
}

/** By two places she marked in both photos, the upper first: no scale, and nothing to judge it by. */
export function matchByMarks(
  earlier: readonly [Point, Point],
  later: readonly [Point, Point],
): PhotoMatchOutcome {
  const fit = solved(later.flatMap((p, k) => onto(p, earlier[k] ?? p, 1)))
  if (!fit || distance(...later) === 0 || distance(...earlier) === 0)
    return { ok: false, reason: MATCH_WORDS.samePlace }
  return { ok: true, match: said(fit, [undefined, undefined], { shoulders: 0, hips: 0 }) }
}

interface Standing {
  readonly frame: BodyFrame
  readonly toTorso: Similarity
  readonly joints: readonly (Point | undefined)[]
  readonly edges: readonly TrunkEdge[]
}

function standing(reading: ViewReading): Standing | undefined {
  if (!reading.person.ok) return undefined
  const { joints } = reading.person
  const frame = bodyFrame(joints)
  if (!frame) return undefined
  const { torso, shoulder } = frame
  const toTorso = { a: 1 / torso, b: 0, dx: -shoulder.x / torso, dy: -shoulder.y / torso }
  const go = (p: Point): Point => carried(toTorso, p)
  return {
    frame,
    toTorso,
    joints: JOINTS.map((name) => joints[name] && go(joints[name].at)),
    edges: (['left', 'right'] as const).map((side) => inTorsos(reading, side, frame, toTorso)),
  }
}

/** The same edge counted in torsos. */
function inTorsos(
  { outline }: ViewReading,
  side: 'left' | 'right',
  { level, torso }: BodyFrame,
  toTorso: Similarity,
): TrunkEdge {
  const edge = trunkEdge(outline, side, level(ZONE.from - BEYOND), level(ZONE.to + BEYOND))
  const back = inverse(toTorso)
  return {
    points: edge.points.map((p) => carried(toTorso, p)),
    at: (y) => {
      const found = edge.at(carried(back, { x: 0, y }).y)
      return found && { x: found.x / torso + toTorso.dx, lean: found.lean }
    },
  }
}

function edgeConditions(
  fit: Similarity,
  earlier: readonly TrunkEdge[],
  later: readonly TrunkEdge[],
  near: number,
): Condition[] {
  const found = later.flatMap((edge, side) =>
    edge.points.flatMap((p) => {
      if (p.y < ZONE.from || p.y > ZONE.to) return []
      const here = carried(fit, p)
      const line = earlier[side]?.at(here.y)
      if (!line) return []
      const long = Math.hypot(1, line.lean)
      const off = (here.x - line.x) / long
      const n = { x: 1 / long, y: -line.lean / long }
      return [{ p, q: { x: line.x, y: here.y }, n, keeps: 1 / (1 + (off / near) ** 2) ** 2 }]
    }),
  )
  if (found.length < LEAST_ROWS) return []
  const each = EDGE_PLACES / found.length / EDGE_SD ** 2
  return found.map(({ p, q, n, keeps }) => ontoLine(p, q, n, each * keeps))
}

interface CardRatio {
  readonly ratio: number
  readonly sd: number
}

/** What the two cards say of later over earlier, in torsos. */
function cardRatio(
  [a, b]: readonly [Scale | undefined, Scale | undefined],
  earlier: Standing,
  later: Standing,
): CardRatio | undefined {
  if (!a || !b) return undefined
  const ratio = (b.mmPerPx * later.frame.torso) / (a.mmPerPx * earlier.frame.torso)
  return { ratio, sd: Math.hypot(a.sdShare, b.sdShare) }
}

/** The scale along the present turn should be the cards'. */
function scaleCondition(fit: Similarity, { ratio, sd }: CardRatio): Condition {
  const long = scaleBy(fit)
  return {
    factors: [fit.a / long / ratio, fit.b / long / ratio, 0, 0],
    sum: 1,
    weight: 1 / sd ** 2,
  }
}

function said(
  onto: Similarity,
  [a, b]: readonly [Scale | undefined, Scale | undefined],
  apartPx: PhotoMatch['apartPx'],
): PhotoMatch {
  const byLater = b && b.mmPerPx / scaleBy(onto)
  const mmPerPx = a && byLater ? Math.sqrt(a.mmPerPx * byLater) : (a?.mmPerPx ?? byLater)
  const card = a ? (b ? 'both' : 'earlier') : b ? 'later' : 'none'
  const apart = mmPerPx !== undefined && {
    shoulders: mm(apartPx.shoulders * mmPerPx),
    hips: mm(apartPx.hips * mmPerPx),
  }
  const cardsDisagree = a && byLater ? byLater / a.mmPerPx : undefined
  const turn = turnBy(onto)
  return { onto, mmPerPx, card, apartPx, apart: apart || undefined, cardsDisagree, turn }
}
