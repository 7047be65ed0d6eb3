/**
 * Is a drafted blouse sound, and would it be worn? Judged from the geometry of the pieces and the
 * numbers of the body; what the draft says of itself counts only as `stop` findings. Every
 * failing is a reason with a name. Limits: common practice, no source, where none is given.
 */
import type { Choices } from '../../../src/draft/choices.ts'
import { pieceOf, type Draft } from '../../../src/draft/draft.ts'
import { edge, namedPoint, outline, type PieceId } from '../../../src/draft/piece.ts'
import { flatten } from '../../../src/geometry/path.ts'
import { selfIntersections } from '../../../src/geometry/self-intersection.ts'
import type { MeasurementId } from '../../../src/measurements/catalogue.ts'
import {
  gaps,
  legs,
  mouth,
  sewnLength,
  sewnWidth,
  shapeOf,
  tipAngles,
  type Drawn,
  type Shape,
} from './measured.ts'
import { numberOf, type Numbers } from './numbers.ts'

/** Reasons against it; a sound draft has none of the first, a wearable one none at all. */
export interface Verdict {
  readonly unsound: readonly string[]
  readonly unwearable: readonly string[]
}

/** Seams that are sewn together; 1.6 mm is where pattern teachers begin to warn. */
const SEAM = 0.5
const JOINED = 1e-3
/** Over the upper arm: 51 mm and more in published sleeve drafts. */
const ARM_ROOM = 50
/** Underarm below the armpit: set in at 15 (published block) to cut in one at 38 and more. */
const UNDERARM = { least: 10, most: 80 }
/** What one dart holds, mm: back 25–32, front 38–44 (common practice and a public draft). */
const DART: Readonly<Record<PieceId, number>> = { back: 32, front: 44 }
/** Full angle at a tip that still presses flat, degrees, and what rounding may add. */
const TIP = 22.1
const EASE_SLACK = 1
const HEAD_ROOM = 20

export function judge(draft: Draft, body: Numbers): Verdict {
  const [back, front] = [shapeOf(pieceOf(draft, 'back')), shapeOf(pieceOf(draft, 'front'))]
  return {
    unsound: [...[back, front].flatMap(({ piece }) => soundness(piece)), ...seams(back, front)],
    unwearable: [
      ...underarm(back, front, body, draft.choices),
      ...[back, front].flatMap(({ piece }) => darts(piece)),
      ...ease(back, front, body, draft.choices),
      ...gettingIn(draft, back, front, body),
      ...frontNeck(front, body),
      ...draft.findings.flatMap((f) => (f.severity === 'stop' ? [`stop: ${f.id}`] : [])),
    ],
  }
}

const when = (failing: boolean, reason: string): string[] => (failing ? [reason] : [])

function soundness(piece: Drawn): string[] {
  return [
    ...when(
      gaps(piece).some((gap) => !(gap <= JOINED)),
      `${piece.id} outline is not closed`,
    ),
    ...when(selfIntersections(outline(piece)).length > 0, `${piece.id} outline crosses itself`),
    ...when(
      legs(piece).some(([a, b]) => !(Math.abs(a - b) <= SEAM)),
      `${piece.id} dart legs are unequal`,
    ),
  ]
}

function seams(back: Shape, front: Shape): string[] {
  return (['overarm', 'side'] as const).flatMap((name) => {
    const gap = Math.abs(sewnLength(back.piece, name) - sewnLength(front.piece, name))
    return when(!(gap <= SEAM), `${name} seams are unequal`)
  })
}

function underarm(back: Shape, front: Shape, body: Numbers, choices: Choices): string[] {
  const opening = sewnLength(back.piece, 'sleeveEdge') + sewnLength(front.piece, 'sleeveEdge')
  const [b, f] = [namedPoint(back.piece, 'U'), namedPoint(front.piece, 'U')]
  const wanted = numberOf(body, 'bustGirth') / 2 + 2 * choices.easeBust
  const deep = [b, f].map((u) => u.y - numberOf(body, 'napeToArmpitLevel'))
  return [
    ...when(!(opening >= numberOf(body, 'upperArmGirth') + ARM_ROOM), 'arm opening is small'),
    ...when(
      deep.some((d) => !(d >= UNDERARM.least && d <= UNDERARM.most)),
      'underarm is not below the armpit as it should be',
    ),
    ...when(!(Math.abs(b.x + f.x - wanted) <= EASE_SLACK), 'underarm is not at the bust width'),
  ]
}

function darts(piece: Drawn): string[] {
  return [
    ...when(
      piece.darts.some((d) => !(mouth(d) <= DART[piece.id] + 0.05)),
      `${piece.id} dart is wide`,
    ),
    ...when(
      piece.darts.some((d) => tipAngles(d).some((angle) => !(angle <= TIP))),
      `${piece.id} dart is blunt`,
    ),
  ]
}

/** Level of a piece, mm down the paper. */
type LevelOf = (shape: Shape) => number
const down = ({ piece }: Shape, name: string): number => namedPoint(piece, name).y

function ease(back: Shape, front: Shape, body: Numbers, choices: Choices): string[] {
  const preset: Readonly<Record<string, number | undefined>> = choices
  const check = (name: string, id: MeasurementId, quarter: number, level: LevelOf): string[] => {
    const sewn = [back, front].map((s) => ({ s, y: level(s) }))
    if (sewn.some(({ s, y }) => y >= hemTop(s))) return []
    const width = 2 * sewn.reduce((sum, { s, y }) => sum + sewnWidth(s, y), 0)
    const need = numberOf(body, id) + 4 * quarter - EASE_SLACK
    return when(!(width >= need), `ease at the ${name}`)
  }
  const highHip = numberOf(body, 'waistToHighHip')
  // Where the bust line lies above the underarm there is sleeve beside it, and room enough.
  const besideSleeve = [back, front].some((s) => down(s, 'D') <= down(s, 'U'))
  return [
    ...(besideSleeve ? [] : check('bust', 'bustGirth', choices.easeBust, (s) => down(s, 'D'))),
    ...check('waist', 'waistGirth', choices.easeWaist, (s) => down(s, 'C')),
    ...check(
      'high hip',
      'highHipGirth',
      preset['easeHighHip'] ?? choices.easeHip,
      (s) => down(s, 'C') + highHip,
    ),
    ...check('hip', 'hipGirth', choices.easeHip, (s) => down(s, 'H')),
  ]
}
const hemTop = ({ piece }: Shape): number =>
  Math.min(...flatten(edge(piece, 'hem').path).map(({ y }) => y))

function gettingIn(draft: Draft, back: Shape, front: Shape, body: Numbers): string[] {
  const { opening }: Draft & { readonly opening?: unknown } = draft
  if (opening !== undefined) return []
  const waist = 2 * [back, front].reduce((sum, s) => sum + sewnWidth(s, down(s, 'C')), 0)
  const neck = 2 * (sewnLength(back.piece, 'neck') + sewnLength(front.piece, 'neck'))
  return [
    ...when(!(waist >= numberOf(body, 'slipThroughGirth')), 'waist does not pass, no opening'),
    ...when(!(neck >= numberOf(body, 'headGirth') + HEAD_ROOM), 'neck does not pass, no opening'),
  ]
}

/** The front neck edge may not stand above the hollow of the neck: from the waist it is no farther up. */
function frontNeck(front: Shape, body: Numbers): string[] {
  const up = down(front, 'C') - down(front, 'F')
  return when(!(up <= numberOf(body, 'frontNeckToWaist')), 'front neck is above the neck point')
}
