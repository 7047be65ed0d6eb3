/** Neck of the draped blouse: side-neck point and neck edge, back and front true to each other. */
import { knows, lengthOf, measured, type Body } from '../../measurements/confirmed.ts'
import {
  add,
  between,
  distance,
  point,
  rotate,
  scale,
  subtract,
  unit,
  type Point,
} from '../../geometry/point.ts'
import { cubic, line } from '../../geometry/segment.ts'
import { pathStart, type Path } from '../../geometry/path.ts'
import { fixed, found, minus, plus, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import { angleToOverarm, guidesOn, neckCurve } from '../curves.ts'
import type { Sheet } from '../sheet.ts'
import type { TorsoNumbers, HalfId } from './blouse-numbers.ts'
import { neckBaseHalf, shoulderSlope } from './shoulder.ts'
import { TORSO_WORDS as W } from './torso.words.ts'

/** How far the side-neck point falls because the neck is wider than its base; 0 while that is not taped. */
export function neckFall(body: Body, choices: Choices): number {
  const base = neckBaseHalf(body)
  return base === undefined
    ? 0
    : Math.max(0, choices.neckHalfWidth - base.mm) * Math.tan(shoulderSlope(body))
}
/** How far S of the back lies above the nape level, mm; below it when negative. */
export const sideNeckRise = (body: Body, choices: Choices): number =>
  choices.sideNeckRise - neckFall(body, choices)

/** N and S. The front is raised by its balance, taped or usual. */
export function sideNeck(
  s: Sheet,
  body: Body,
  choices: Choices,
  n: TorsoNumbers,
  half: HalfId,
): void {
  s.measure('N', 'A', 'right', choice(choices, 'neckHalfWidth'), W.halfNeckWidth)
  const fall = neckFall(body, choices)
  const chosen = choice(choices, 'sideNeckRise')
  const rise =
    fall > 0
      ? minus(
          chosen,
          found(W.fallAlongShoulder, mm(fall), [
            'neckBaseGirth',
            'neckHalfWidth',
            'shoulderLengthLeft',
            'shoulderLengthRight',
            'shoulderSlopeLeft',
            'shoulderSlopeRight',
          ]),
        )
      : chosen
  const up = half === 'front' ? raised(rise, body, choices, n) : rise
  s.measure(
    'S',
    'N',
    up.mm < 0 ? 'down' : 'up',
    up.mm < 0 ? { ...up, mm: mm(-up.mm) } : up,
    W.sideNeckPoint,
  )
}
function raised(rise: Amount, body: Body, choices: Choices, n: TorsoNumbers): Amount {
  if (n.balance === undefined) return plus(rise, choice(choices, 'frontRaise'))
  if (n.bustDart > 0) return plus(rise, fixed(mm(n.raise)))
  return plus(
    rise,
    minus(measured(body, 'sideNeckOverApexToWaist'), measured(body, 'sideNeckOverBladeToWaist')),
  )
}

/** The front neck edge from F to S, and the angle it makes with the overarm there. */
export function frontNeck(
  fold: Point,
  sideNeckPoint: Point,
  overarmEnd: Point,
  choices: Choices,
): { path: Path; angle: number } {
  switch (choices.neckShape) {
    case 'square': {
      const corner = point(sideNeckPoint.x, fold.y)
      const up = runsOn(corner, sideNeckPoint, overarmEnd)
      return { path: [line(fold, corner), ...up.path], angle: up.angle }
    }
    case 'vee':
      return runsOn(fold, sideNeckPoint, overarmEnd)
    case 'round':
    case 'boat':
    case 'scoop':
      return {
        path: neckCurve(fold, sideNeckPoint, overarmEnd, choices.neckShape),
        angle: Math.PI / 2,
      }
  }
}

/**
 * A straight line to the side neck, when it stands near enough to square on the overarm seam; else
 * its last part bends until it does. Steeper or flatter, the back neck, which takes the angle left
 * over, would turn back on itself.
 */
function runsOn(
  from: Point,
  sideNeckPoint: Point,
  overarmEnd: Point,
): { path: Path; angle: number } {
  const angle = angleToOverarm(sideNeckPoint, overarmEnd, from)
  const kept = Math.min(OFF_SQUARE.most, Math.max(OFF_SQUARE.least, angle))
  if (kept === angle) return { path: [line(from, sideNeckPoint)], angle }
  const bent = Math.min(BENT.most, distance(from, sideNeckPoint) * BENT.share) / 2
  const inwards = rotate(unit(subtract(overarmEnd, sideNeckPoint)), point(0, 0), kept)
  // The line runs to a knee on the end direction and is rounded there, so it bends one way only.
  const knee = add(sideNeckPoint, scale(inwards, bent))
  const straight = add(knee, scale(unit(subtract(from, knee)), bent))
  return {
    path: [
      line(from, straight),
      cubic(
        straight,
        between(straight, knee, 2 / 3),
        between(sideNeckPoint, knee, 2 / 3),
        sideNeckPoint,
      ),
    ],
    angle: kept,
  }
}
/** How far off square a neck line may stand on the overarm seam: 20°. Judgement. */
const OFF_SQUARE = { least: (70 * Math.PI) / 180, most: (110 * Math.PI) / 180 } as const
/** The bent part of the line, of its length and at most, mm. Judgement. */
const BENT = { share: 0.4, most: 60 } as const

export function drawFrontNeck(s: Sheet, choices: Choices): void {
  const { path } = frontNeck(s.at('F'), s.at('S'), s.at('T'), choices)
  if (choices.neckShape === 'vee') return straightNeck(s, 'F', path)
  if (choices.neckShape === 'square') {
    s.measure('B', 'F', 'right', choice(choices, 'neckHalfWidth'), W.cornerOfNeck)
    s.join('F', 'B', 'neck', 'edge', W.squareToFold)
    return straightNeck(s, 'B', path.slice(1))
  }
  s.curve(
    'F',
    'S',
    path,
    { base: 'F', along: 'right', guides: guidesOn(path, NECK_GUIDES) },
    'neck',
    'edge',
    W.squareToFoldAndOverarm,
  )
}

function straightNeck(s: Sheet, from: 'F' | 'B', path: Path): void {
  if (path.length === 1) return s.join(from, 'S', 'neck', 'edge', W.straightUpToSideNeck)
  s.curve(
    from,
    'S',
    path,
    {
      base: from,
      along: 'right',
      guides: [pathStart(path.slice(1)), ...guidesOn(path.slice(1), [0.5])],
    },
    'neck',
    'edge',
    W.straightThenBending,
  )
}

/** The back neck takes the angle that the front leaves over, so that both run on in one line. */
export function drawBackNeck(s: Sheet, frontAngle: number): void {
  const from = backNeckPoint(s)
  const path = neckCurve(s.at(from), s.at('S'), s.at('T'), 'round', Math.PI - frontAngle)
  s.curve(
    from,
    'S',
    path,
    { base: from, along: 'right', guides: guidesOn(path, NECK_GUIDES) },
    'neck',
    'edge',
    W.runningOnIntoFrontNeck,
  )
}

/**
 * Where the back neck edge starts at the fold: at the nape, or lower when a wide neck puts the
 * side neck at the nape level or under it, because a neck edge cannot fall towards the shoulder.
 */
function backNeckPoint(s: Sheet): 'A' | 'A1' {
  const lower = LEAST_RISE + s.at('S').y - s.at('A').y
  if (lower <= 0) return 'A'
  const fall = found(W.lowAsSideNeck, mm(lower), s.restsOf('S'))
  s.measure('A1', 'A', 'down', fall, W.neckAtCentreBack)
  return 'A1'
}
/** The side neck stands at least so much above the neck edge at the centre back, mm. Judgement. */
const LEAST_RISE = 6
const NECK_GUIDES = [0.25, 0.5, 0.75]

/** How far below the nape level the front neck point lies, when it is taped. */
export function frontNeckPoint(body: Body): number | undefined {
  if (!knows(body, 'frontNeckToWaist')) return undefined
  return lengthOf(body, 'napeToWaist') - lengthOf(body, 'frontNeckToWaist')
}
