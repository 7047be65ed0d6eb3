/** Side seam, bust dart on it, hem and centre of the draped blouse. */
import { knows, lengthOf, type Body } from '../../measurements/confirmed.ts'
import { movedPath, pathEnd, splitPath, type Path } from '../../geometry/path.ts'
import { point, type Point } from '../../geometry/point.ts'
import { cubic, line } from '../../geometry/segment.ts'
import { found } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { refuse } from '../cannot-draw.ts'
import type { Choices } from '../choices.ts'
import { cutAtLevel, guidesOn, sideCurve } from '../curves.ts'
import type { Sheet } from '../sheet.ts'
import { dartRests } from './blouse-levels.ts'
import { frontTip, share, type TorsoNumbers, type HalfId } from './blouse-numbers.ts'
import { openBelow } from './waist-plan.ts'
import { TORSO_WORDS as W } from './torso.words.ts'

/** The mouth of a bust dart keeps this far below the underarm, mm. Common practice, no source. */
const MOUTH_BELOW_UNDERARM = 25
/** and ends this far above the waist, mm: below it a bodice that is cut off there has none. Judgement. */
const MOUTH_ABOVE_WAIST = 10
/** Less side seam than this between underarm and waist is no seam, mm. Common practice, no source. */
const LEAST_SIDE = 20
/** Levels nearer together than this are drawn as one, mm. */
const ONE_LEVEL = 5

export function drawSide(
  s: Sheet,
  body: Body,
  choices: Choices,
  n: TorsoNumbers,
  half: HalfId,
): void {
  const opened = half === 'front' ? n.bustDart : 0
  const hem = s.at('L').y
  const left = s.at('W').y - opened - s.at('U').y
  if (!(left >= LEAST_SIDE))
    refuse(
      'sideTooShort',
      ['napeToWaist', 'napeToArmpitLevel', 'underarmDrop', 'lengthAdded'],
      left,
      LEAST_SIDE,
    )
  const closed = cutAtLevel(
    sideCurve(closedPoints(s, body, choices, n, half, opened)),
    hem - opened,
  )
  const path = opened > 0 ? openDart(s, body, choices, n, closed) : closed
  s.measure(
    'Y',
    'L',
    'right',
    found('', mm(pathEnd(path).x), [...s.restsOf('X'), ...s.restsOf('L')]),
    W.hemAtSide,
  )
  s.curve(
    'U',
    'Y',
    path,
    {
      base: 'E',
      along: 'down',
      guides: guidesOn(
        path.filter((x) => x.kind === 'cubic'),
        [0.5, 1],
      ),
    },
    'side',
    'seam',
    W.sideThrough(opened > 0, hem > s.at('X').y),
  )
  s.join('Y', 'L', 'hem', 'hem', W.squareToFold)
  drawCentre(s, n.waist[half].centre, half)
}

/** What the side passes through with the bust dart closed: underarm, bust, waist, high hip, hip, hem. */
function closedPoints(
  s: Sheet,
  body: Body,
  choices: Choices,
  n: TorsoNumbers,
  half: HalfId,
  opened: number,
): Point[] {
  const up = (p: Point): Point => point(p.x, p.y - opened)
  const [u, w, x, hem] = [s.at('U'), up(s.at('W')), up(s.at('X')), s.at('L').y - opened]
  // Plumb as far as the mouth of a bust dart, so that the bust keeps its width above and below it.
  const bust = n.bustDart > 0 ? mouthLevel(s, w.y - n.rise) : w.y - n.rise
  return [
    u,
    ...(bust - u.y > ONE_LEVEL && w.y - bust > ONE_LEVEL ? [point(u.x, bust)] : []),
    w,
    ...highHip(body, choices, n, half, w, x, hem),
    x,
    ...(hem > x.y ? [point(x.x, hem)] : []),
  ]
}

/** Where the mouth of the bust dart begins: at the bust line, or farther from the underarm. */
const mouthLevel = (s: Sheet, bustLine: number): number =>
  Math.max(bustLine, s.at('E').y + MOUTH_BELOW_UNDERARM)

/** How much higher than the bust line the mouth of a bust dart is drawn, so that it ends above the waist. */
export const mouthRaised = ({ bustDart, rise }: TorsoNumbers): number =>
  bustDart > 0 ? Math.max(0, MOUTH_ABOVE_WAIST - rise) : 0

/** At the high hip darts and centre seam may still be open; the side makes room for the wider half. */
function highHip(
  body: Body,
  choices: Choices,
  n: TorsoNumbers,
  half: HalfId,
  w: Point,
  x: Point,
  hem: number,
): Point[] {
  if (!(knows(body, 'highHipGirth') && knows(body, 'waistToHighHip'))) return []
  const below = lengthOf(body, 'waistToHighHip')
  if (below < ONE_LEVEL || w.y + below > x.y - ONE_LEVEL) return []
  const [toHem, toHip] = [hem - w.y, x.y - w.y]
  const open = Math.max(
    openBelow(n.waist.back, choices.backDartLow, toHem, toHip, below),
    openBelow(n.waist.front, choices.frontDartLow, toHem, toHip, below),
  )
  const quarter = lengthOf(body, 'highHipGirth') / 4 + choices.easeHighHip
  return [point(quarter + share(choices, half) + open, w.y + below)]
}

/** Cuts the closed side below the underarm, moves what lies under it down, and puts the dart between. */
function openDart(s: Sheet, body: Body, choices: Choices, n: TorsoNumbers, closed: Path): Path {
  const opened = n.bustDart
  const waist = s.at('W').y - opened
  const level = Math.min(mouthLevel(s, waist - n.rise), waist - MOUTH_ABOVE_WAIST)
  const [above, below] = splitAtLevel(closed, level)
  const mouth = pathEnd(above)
  const width = found(W.theBustDart, mm(opened), dartRests(n))
  const rests = [...s.restsOf('D'), ...s.restsOf('E'), ...s.restsOf('W')]
  s.measure('J', 'E', 'down', found('', mm(level - s.at('E').y), rests), W.levelOfBustDart)
  s.measure('J1', 'J', 'right', found('', mm(mouth.x), s.restsOf('U')), W.upperEndOfBustDart)
  s.measure('J2', 'J1', 'down', width, W.itsLowerEnd)
  s.measure('J3', 'J1', 'down', found(W.halfOfIt, mm(opened / 2), dartRests(n)), W.itsMiddle)
  const reach = mouth.x - s.at('apex').x - frontTip(body, choices)
  s.measure(
    'J4',
    'J3',
    'left',
    found('', mm(reach), [
      ...s.restsOf('apex'),
      ...s.restsOf('W'),
      'frontDartTip',
      'highBustGirth',
    ]),
    W.itsTipShortOfBustTip,
  )
  s.edgeDart(
    { name: 'bustDart', edge: 'side' },
    { upper: 'J1', lower: 'J2', tip: 'J4' },
    width,
    W.foldedBeforeSide,
  )
  return [
    ...above,
    line(mouth, point(mouth.x, mouth.y + opened)),
    ...movedPath(below, point(0, opened)),
  ]
}

function splitAtLevel(path: Path, y: number): readonly [Path, Path] {
  const index = path.findIndex((seg) => seg.kind === 'cubic' && seg.to.y >= y)
  const seg = path[index]
  if (seg?.kind !== 'cubic') throw new Error(`side seam: no place at the level ${y} mm`)
  return splitPath(path, { index, t: (y - seg.from.y) / (seg.to.y - seg.from.y) })
}

/** On the fold, or a shaped centre-back seam from the bust line to the hip. */
function drawCentre(s: Sheet, taken: number, half: HalfId): void {
  const top = half === 'front' ? 'F' : s.has('A1') ? 'A1' : 'A'
  if (taken === 0) return s.join('L', top, 'centre', 'fold', W.onTheFold)
  s.measure(
    'C1',
    'C',
    'right',
    found(W.centreBackSeam, mm(taken), s.restsOf('W')),
    W.centreBackAtWaist,
  )
  const [l, h, c, d] = [s.at('L'), s.at('H'), s.at('C1'), s.at('D')]
  const long = l.y > h.y
  if (long) s.join('L', 'H', 'centre', 'seam', W.straight)
  const path = [...swung(long ? h : l, c), ...swung(c, d)]
  s.curve(
    long ? 'H' : 'L',
    'D',
    path,
    { base: 'C', along: 'up', guides: guidesOn(path, [0.25, 0.5, 0.75]) },
    'centre',
    'seam',
    W.throughC1,
  )
  s.join('D', top, 'centre', 'seam', W.straight)
}
/** Upright at both ends; handles at the thirds, so the level grows evenly along it. */
function swung(from: Point, to: Point): Path {
  const third = (to.y - from.y) / 3
  return [cubic(from, point(from.x, from.y + third), point(to.x, to.y - third), to)]
}
