/** Neck of the draped blouse: side-neck point and neck edge, back and front true to each other. */
import { knows, lengthOf, measured, type Body } from '../../measurements/confirmed.ts'
import { point, type Point } from '../../geometry/point.ts'
import { line } from '../../geometry/segment.ts'
import type { Path } from '../../geometry/path.ts'
import { fixed, found, minus, plus, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import { angleToOverarm, guidesOn, neckCurve } from '../curves.ts'
import type { Sheet } from '../sheet.ts'
import type { TorsoNumbers, HalfId } from './blouse-numbers.ts'
import { neckBaseHalf, shoulderSlope } from './shoulder.ts'

/** How far the side-neck point falls because the neck is wider than its base; 0 while that is not taped. */
export function neckFall(body: Body, choices: Choices): number {
  const base = neckBaseHalf(body)
  return base === undefined
    ? 0
    : Math.max(0, choices.neckHalfWidth - base) * Math.tan(shoulderSlope(body))
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
  s.measure('N', 'A', 'right', choice(choices, 'neckHalfWidth'), 'half the neck width')
  const fall = neckFall(body, choices)
  const chosen = choice(choices, 'sideNeckRise')
  const rise =
    fall > 0
      ? minus(
          chosen,
          found('the fall along the shoulder', mm(fall), [
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
    'the side-neck point',
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
      return {
        path: [line(fold, corner), line(corner, sideNeckPoint)],
        angle: angleToOverarm(sideNeckPoint, overarmEnd, corner),
      }
    }
    case 'vee':
      return {
        path: [line(fold, sideNeckPoint)],
        angle: angleToOverarm(sideNeckPoint, overarmEnd, fold),
      }
    case 'round':
    case 'boat':
    case 'scoop':
      return {
        path: neckCurve(fold, sideNeckPoint, overarmEnd, choices.neckShape),
        angle: Math.PI / 2,
      }
  }
}

export function drawFrontNeck(s: Sheet, choices: Choices): void {
  const { path } = frontNeck(s.at('F'), s.at('S'), s.at('T'), choices)
  if (choices.neckShape === 'vee') return s.join('F', 'S', 'neck', 'edge', 'straight')
  if (choices.neckShape === 'square') {
    s.measure('B', 'F', 'right', choice(choices, 'neckHalfWidth'), 'the corner of the neck')
    s.join('F', 'B', 'neck', 'edge', 'square to the fold')
    return s.join('B', 'S', 'neck', 'edge', 'up to the side neck')
  }
  s.curve(
    'F',
    'S',
    path,
    { base: 'F', along: 'right', guides: guidesOn(path, NECK_GUIDES) },
    'neck',
    'edge',
    'square to the fold and square to the overarm seam',
  )
}

/** The back neck takes the angle that the front leaves over, so that both run on in one line. */
export function drawBackNeck(s: Sheet, frontAngle: number): void {
  const path = neckCurve(s.at('A'), s.at('S'), s.at('T'), 'round', Math.PI - frontAngle)
  s.curve(
    'A',
    'S',
    path,
    { base: 'A', along: 'right', guides: guidesOn(path, NECK_GUIDES) },
    'neck',
    'edge',
    'square to the fold, running on into the front neck over the overarm seam',
  )
}
const NECK_GUIDES = [0.25, 0.5, 0.75]

/** How far below the nape level the front neck point lies, when it is taped. */
export function frontNeckPoint(body: Body): number | undefined {
  if (!knows(body, 'frontNeckToWaist')) return undefined
  return lengthOf(body, 'napeToWaist') - lengthOf(body, 'frontNeckToWaist')
}
