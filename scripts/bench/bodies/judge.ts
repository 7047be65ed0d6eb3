/**
 * Is a drafted garment sound, and would it be worn? Judged from the geometry of the pieces and the
 * numbers of the body; what the draft says of itself counts only as `stop` findings. Every
 * failing is a reason with a name. Limits: common practice, no source, where none is given.
 */
import type { Choices } from '../../../src/draft/choices.ts'
import { pieceOf, type Draft } from '../../../src/draft/draft.ts'
import { edge, namedPoint, outline, type HalfId, type Piece } from '../../../src/draft/piece.ts'
import { pathLength } from '../../../src/geometry/length.ts'
import { flatten, pathStart } from '../../../src/geometry/path.ts'
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
  type Shape,
} from './measured.ts'
import { numberOf, type Numbers } from './numbers.ts'

/** Reasons against it; a sound draft has none of the first, a wearable one none at all. */
export interface Verdict {
  readonly unsound: readonly string[]
  readonly unwearable: readonly string[]
  /** Not judged, but worth a count: what a limit that looks one way only does not see. */
  readonly beside: readonly string[]
  /** Not drawn: which sentence was given instead. */
  readonly refused?: string
}

/** Seams that are sewn together; 1.6 mm is where pattern teachers begin to warn. */
const SEAM = 0.5
const JOINED = 1e-3
/** Over the upper arm: 51 mm and more in published sleeve drafts. */
const ARM_ROOM = 50
/** Underarm below the armpit: set in at 15 (published block) to cut in one at 38 and more. */
const UNDERARM = { cutInOne: { least: 10, most: 80 }, setIn: { least: 10, most: 60 } }
/** A sleeve may be tight over the arm by no less than this: 25 mm is called the least. */
const SLEEVE_ROOM = 25
/** Cap heights that are worn: a flat shirt cap to a high one; the triangle of a lesson gives 147. From memory. */
const CAP = { least: 60, most: 200 }
/** The two seams of a sleeve may differ by what the elbow takes, from memory. */
const SLEEVE_SEAMS = 5
/** What one dart holds, mm: back 25–32, front 38–44 (common practice and a public draft). */
const DART: Readonly<Record<HalfId, number>> = { back: 32, front: 44 }
/** Full angle at a tip that still presses flat, degrees, and what rounding may add. */
const TIP = 22.1
const EASE_SLACK = 1
const HEAD_ROOM = 20

export function judge(draft: Draft, body: Numbers): Verdict {
  const [back, front] = [shapeOf(pieceOf(draft, 'back')), shapeOf(pieceOf(draft, 'front'))]
  return {
    unsound: [
      ...draft.pieces.flatMap(soundness),
      ...seams(back, front),
      ...sleeveSeams(draft),
      ...skirtSeams(draft),
    ],
    unwearable: [
      ...underarm(back, front, body, draft.choices),
      ...armhole(draft, body),
      ...darts('back', back),
      ...darts('front', front),
      ...ease(back, front, body, draft.choices),
      ...skirtEase(draft, body),
      ...gettingIn(draft, back, front, body),
      ...frontNeck(front, body),
      ...draft.findings.flatMap((f) => (f.severity === 'stop' ? [`stop: ${f.id}`] : [])),
    ],
    beside: beside(draft, back, front, body),
  }
}

const when = (failing: boolean, reason: string): string[] => (failing ? [reason] : [])

function soundness(piece: Piece): string[] {
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
  const names = (['overarm', 'shoulder', 'side'] as const).filter((name) => has(back.piece, name))
  return names.flatMap((name) => {
    const gap = Math.abs(sewnLength(back.piece, name) - sewnLength(front.piece, name))
    return when(!(gap <= SEAM), `${name} seams are unequal`)
  })
}
const has = (piece: Piece, name: string): boolean => piece.edges.some((e) => e.name === name)

/** The armhole with whatever sleeve is set into it: both halves, as sewn. */
const roundArmhole = (draft: Draft): number =>
  (['back', 'front'] as const).reduce(
    (sum, half) => sum + sewnLength(pieceOf(draft, half), 'armhole'),
    0,
  )

function sleeveSeams(draft: Draft): string[] {
  const sleeve = draft.pieces.find(({ id }) => id === 'sleeve')
  if (!sleeve) return []
  const long = (name: 'frontSeam' | 'backSeam' | 'cap'): number =>
    pathLength(edge(sleeve, name).path)
  const eased = long('cap') - roundArmhole(draft)
  return [
    ...when(!(Math.abs(long('frontSeam') - long('backSeam')) <= SLEEVE_SEAMS), 'sleeve seams'),
    ...when(!(eased >= -SEAM), 'cap is shorter than the armhole'),
  ]
}

const SKIRT = { back: 'skirtBack', front: 'skirtFront' } as const
const skirtOf = (draft: Draft, half: HalfId): Piece | undefined =>
  draft.pieces.find(({ id }) => id === SKIRT[half])

/** Bodice and skirt along the waist, what the bias gives counted in, and the sides of the skirt. */
function skirtSeams(draft: Draft): string[] {
  const [back, front] = [skirtOf(draft, 'back'), skirtOf(draft, 'front')]
  if (!back || !front) return []
  const circle = draft.choices.skirt.endsWith('Circle')
  const give = circle ? draft.choices.biasGive : 0
  const off = (['back', 'front'] as const).map((half) => {
    const [above, below] = [pieceOf(draft, half), half === 'back' ? back : front]
    return Math.abs(sewnLength(above, 'waist') - sewnLength(below, 'waist') - give)
  })
  const side = Math.abs(sewnLength(back, 'side') - sewnLength(front, 'side'))
  return [
    ...when(!(Math.max(...off) <= SEAM), 'waist seams are unequal'),
    ...when(!(side <= SEAM), 'skirt side seams are unequal'),
  ]
}

/** Round the hip, darts ended above it; a circle is wide enough by its cut or is said to be not. */
function skirtEase(draft: Draft, body: Numbers): string[] {
  const [back, front] = [skirtOf(draft, 'back'), skirtOf(draft, 'front')]
  if (!back || !front) return []
  const below = numberOf(body, 'waistToHip')
  if (below >= Math.min(namedPoint(back, 'L').y, namedPoint(front, 'L').y)) return []
  const need = numberOf(body, 'hipGirth') + 4 * draft.choices.easeHip - EASE_SLACK
  const angle = (piece: Piece): number => {
    const [o, w] = [namedPoint(piece, 'O'), namedPoint(piece, 'W')]
    return Math.atan2(w.x - o.x, w.y - o.y)
  }
  const width = (piece: Piece): number =>
    piece.points['O'] && piece.edgeDarts.length === 0
      ? angle(piece) * (below - namedPoint(piece, 'O').y)
      : sewnWidth(shapeOf(piece), below)
  return when(!(2 * (width(back) + width(front)) >= need), 'ease at the hip of the skirt')
}

/** Room for the arm in what is set in or left without a sleeve. */
function armhole(draft: Draft, body: Numbers): string[] {
  if (!has(pieceOf(draft, 'back'), 'armhole')) return []
  const arm = numberOf(body, 'upperArmGirth')
  const sleeve = draft.pieces.find(({ id }) => id === 'sleeve')
  if (!sleeve) return when(!(roundArmhole(draft) >= arm), 'armhole is smaller than the arm')
  const [b, f, g] = ['B', 'F', 'G'].map((name) => namedPoint(sleeve, name))
  if (!b || !f || !g) throw new Error('judge: a sleeve without its width')
  return [
    ...when(!(f.x - g.x >= arm + SLEEVE_ROOM), 'sleeve is narrow'),
    ...when(!(b.y >= CAP.least), 'cap is flat'),
    ...when(!(b.y <= CAP.most), 'cap is high'),
  ]
}

function underarm(back: Shape, front: Shape, body: Numbers, choices: Choices): string[] {
  const cutInOne = has(back.piece, 'sleeveEdge')
  const [b, f] = [namedPoint(back.piece, 'U'), namedPoint(front.piece, 'U')]
  const wanted = numberOf(body, 'bustGirth') / 2 + 2 * choices.easeBust
  const deep = [b, f].map((u) => u.y - numberOf(body, 'napeToArmpitLevel'))
  const { least, most } = cutInOne ? UNDERARM.cutInOne : UNDERARM.setIn
  const need = numberOf(body, 'upperArmGirth') + ARM_ROOM
  return [
    ...when(cutInOne && !(armOpening(back, front) >= need), 'arm opening is small'),
    ...when(
      deep.some((d) => !(d >= least && d <= most)),
      'underarm is not below the armpit as it should be',
    ),
    ...when(!(Math.abs(b.x + f.x - wanted) <= EASE_SLACK), 'underarm is not at the bust width'),
  ]
}
const armOpening = (back: Shape, front: Shape): number =>
  sewnLength(back.piece, 'sleeveEdge') + sewnLength(front.piece, 'sleeveEdge')

function darts(half: HalfId, { piece }: Shape): string[] {
  return [
    ...when(
      piece.darts.some((d) => !(mouth(d) <= DART[half] + 0.05)),
      `${half} dart is wide`,
    ),
    ...when(
      piece.darts.some((d) => tipAngles(d).some((angle) => !(angle <= TIP))),
      `${half} dart is blunt`,
    ),
  ]
}

/** Level of a piece, mm down the paper. */
type LevelOf = (shape: Shape) => number
const down = ({ piece }: Shape, name: string): number => namedPoint(piece, name).y

function ease(back: Shape, front: Shape, body: Numbers, choices: Choices): string[] {
  const check = (name: string, id: MeasurementId, quarter: number, level: LevelOf): string[] => {
    const ends = (s: Shape): boolean =>
      level(s) >= hemTop(s) - AT_HEM || (has(s.piece, 'waist') && level(s) > down(s, 'C'))
    if ([back, front].some(ends)) return []
    const width = round(back, front, level)
    const need = numberOf(body, id) + 4 * quarter - EASE_SLACK
    return when(!(width >= need), `ease at the ${name}`)
  }
  const highHip = numberOf(body, 'waistToHighHip')
  // Where the bust line lies above the underarm there is sleeve beside it, and room enough.
  const besideSleeve = [back, front].some((s) => down(s, 'D') <= down(s, 'U'))
  return [
    ...(besideSleeve ? [] : check('bust', 'bustGirth', choices.easeBust, (s) => down(s, 'D'))),
    ...check('waist', 'waistGirth', choices.easeWaist, (s) => down(s, 'C')),
    ...(has(back.piece, 'waist')
      ? []
      : [
          ...check('high hip', 'highHipGirth', choices.easeHighHip, (s) => down(s, 'C') + highHip),
          ...check('hip', 'hipGirth', choices.easeHip, (s) => down(s, 'H')),
        ]),
  ]
}
/** A level this near the hem is the hem: widths are read a hair below their level, mm. */
const AT_HEM = 0.01
/** The foot of a half; a bodice ends at its waist and is measured along it. */
const hemTop = ({ piece }: Shape): number =>
  has(piece, 'hem') ? Math.min(...flatten(edge(piece, 'hem').path).map(({ y }) => y)) : Infinity

/** An opening lets the waist pass where it lies across it, and the neck by both its edges. */
function gettingIn(draft: Draft, back: Shape, front: Shape, body: Numbers): string[] {
  const level = down(back, 'C')
  const waist = round(back, front, (s) => down(s, 'C'))
  const waistOpens = draft.openings.some(({ from, to }) => from < level && level < to)
  const neck = 2 * (sewnLength(back.piece, 'neck') + sewnLength(front.piece, 'neck'))
  const neckOpens = draft.openings
    .filter(
      ({ edge: name, piece, from }) => name === 'centre' && from <= neckAt(piece, back, front),
    )
    .reduce((sum, { from, to }) => sum + 2 * (to - from), 0)
  return [
    ...when(!waistOpens && !(waist >= numberOf(body, 'slipThroughGirth')), 'waist does not pass'),
    ...when(!(neck + neckOpens >= numberOf(body, 'headGirth') + HEAD_ROOM), 'neck does not pass'),
  ]
}
/** Sewn width of the whole garment at a level. */
const round = (back: Shape, front: Shape, level: LevelOf): number =>
  2 *
  [back, front].reduce((sum, s) => {
    const ends = has(s.piece, 'waist') && Math.abs(level(s) - down(s, 'C')) < EASE_SLACK
    return sum + (ends ? sewnLength(s.piece, 'waist') : sewnWidth(s, level(s)))
  }, 0)

function beside(draft: Draft, back: Shape, front: Shape, body: Numbers): string[] {
  const waist = numberOf(body, 'waistGirth') + 4 * draft.choices.easeWaist
  const loose = round(back, front, (s) => down(s, 'C')) - waist
  const hem = has(back.piece, 'hem') ? round(back, front, (s) => hemTop(s) - EASE_SLACK) : Infinity
  const closed = draft.openings.every(({ to }) => to < hemTop(back))
  return [
    ...draft.openings.map(({ kind }) => `opening: ${kind}`),
    ...draft.findings.flatMap((f) => (f.severity === 'note' ? [`note: ${f.id}`] : [])),
    ...when(loose > LOOSE, `waist is looser than chosen by more than ${LOOSE} mm`),
    ...when(
      closed && hem < numberOf(body, 'slipThroughGirth'),
      'closed hem is smaller than the slip-through girth',
    ),
  ]
}
const LOOSE = 20

/** Level of the neck edge at the centre. */
const neckAt = (half: HalfId, back: Shape, front: Shape): number =>
  pathStart(edge((half === 'back' ? back : front).piece, 'neck').path).y + EASE_SLACK

/** The front neck edge may not stand above the hollow of the neck: from the waist it is no farther up. */
function frontNeck(front: Shape, body: Numbers): string[] {
  const up = down(front, 'C') - down(front, 'F')
  return when(!(up <= numberOf(body, 'frontNeckToWaist')), 'front neck is above the neck point')
}
