/**
 * What the draped blouse has below the underarm: waist, dart, side seam, hem and fold. Rules:
 * common practice, no source, but for the widths a dart holds.
 */
import type { MeasurementId } from '../../measurements/catalogue.ts'
import { knows, lengthOf, measured, type Body } from '../../measurements/confirmed.ts'
import { point, type Point } from '../../geometry/point.ts'
import { found, minus, over, plus, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import { cutAtLevel, guidesOn, sideCurve } from '../curves.ts'
import type { Sheet } from '../sheet.ts'

/** Under this much difference a waist needs no shaping. Common practice, no source. */
const NO_SHAPING = 8
/** Mouth a single dart holds: back 25–32, front 38–44 mm (common practice and a public draft). */
export const DART_MOST = { back: mm(32), front: mm(44) } as const
/** The side may take a little more before a second dart is asked for. Common practice, no source. */
const SIDE_MOST = 25
/** A lower dart tip stays this far from the hem. Common practice, no source. */
const TIP_TO_HEM = 25

/** A quarter of a girth and its ease. */
export const quarter = (body: Body, id: MeasurementId, ease: Amount): Amount =>
  plus(over(measured(body, id), 4), ease)

/**
 * What the side takes in at the waist, the same on back and front so that the side seams stay
 * equal: half the surplus up to the choice, more only where a dart would grow past what it holds.
 */
function takenAtSide(surplus: number, choices: Choices): number {
  const wanted = Math.min(surplus / 2, choices.sideIntake)
  const forDarts = surplus - Math.min(DART_MOST.back, DART_MOST.front)
  return Math.min(Math.max(wanted, forDarts), Math.max(SIDE_MOST, wanted))
}

/** W at the waist and the dart: the side takes its share, the dart the rest. */
export function shapeWaist(s: Sheet, body: Body, choices: Choices, piece: 'back' | 'front'): void {
  const waist = quarter(body, 'waistGirth', choice(choices, 'easeWaist'))
  const surplus = s.at('U').x - waist.mm
  const why = 'the side at the waist'
  if (surplus < 0) return s.measure('W', 'C', 'right', waist, why)
  if (surplus <= NO_SHAPING) return s.measure('W', 'C', 'right', s.across('E', 'U'), why)
  const side = takenAtSide(surplus, choices)
  const dart = found('the dart’s width', mm(surplus - side), [
    ...s.restsOf('U'),
    'waistGirth',
    'easeWaist',
    'sideIntake',
  ])
  s.measure('W', 'C', 'right', plus(waist, dart), why)
  const hemRoom = s.at('L').y - s.at('C').y - TIP_TO_HEM
  const low = (id: 'backDartLow' | 'frontDartLow'): Amount =>
    choices[id] <= hemRoom
      ? choice(choices, id)
      : found('short of the hem', mm(hemRoom), ['lengthBelowWaist'])
  const rise = mm(s.at('C').y - s.at('D').y)
  if (piece === 'front') {
    s.measure('apex', 'D', 'right', over(measured(body, 'apexSpacing'), 2), 'the bust tip')
    s.measure(
      'M',
      'C',
      'right',
      over(measured(body, 'apexSpacing'), 2),
      'the middle of the dart, under the apex',
    )
    const up = minus(found('apex to waist', rise, s.restsOf('D')), choice(choices, 'frontDartTip'))
    return s.dart('M', dart, up, low('frontDartLow'), 'legs equal in pairs')
  }
  s.measure('M', 'C', 'right', over(s.across('C', 'W'), 2), 'the middle of the dart')
  const up = minus(
    found('waist to bust line', rise, s.restsOf('D')),
    choice(choices, 'backDartTip'),
  )
  s.dart('M', dart, up, low('backDartLow'), 'legs equal in pairs')
}

/** Less side seam than this between underarm and waist is no seam. Common practice, no source. */
const LEAST_SIDE = 20

export function sideAndHem(s: Sheet, body: Body): void {
  const [u, d, w, x, hem] = [s.at('U'), s.at('D'), s.at('W'), s.at('X'), s.at('L').y]
  const through = [u, ...(d.y - u.y > 1 ? [point(u.x, d.y)] : []), w, ...highHip(s, body), x]
  if (!(w.y - u.y >= LEAST_SIDE))
    throw new Error(
      `${s.piece}: the underarm at ${u.y} mm leaves no side above the waist at ${w.y} mm`,
    )
  const below = hem > x.y ? [point(x.x, hem)] : []
  const side = cutAtLevel(sideCurve([...through, ...below]), hem)
  const foot = side.at(-1)
  if (!foot) throw new Error(`${s.piece}: the hem at ${hem} mm lies above the underarm`)
  const y = foot.kind === 'arc' ? undefined : foot.to
  if (!y) throw new Error(`${s.piece}: the side seam ends in an arc`)
  s.measure(
    'Y',
    'L',
    'right',
    found('', mm(y.x), [...s.restsOf('X'), ...s.restsOf('L')]),
    'the hem at the side',
  )
  s.curve(
    'U',
    'Y',
    side,
    { base: 'E', along: 'down', guides: guidesOn(side, [0.5, 1]) },
    'side',
    'seam',
    `through W${hem > x.y ? ' and X' : ''}, smooth`,
  )
  s.join('Y', 'L', 'hem', 'hem', 'square to the fold')
  s.join('L', s.piece === 'back' ? 'A' : 'F', 'centre', 'fold', 'cut on the fold')
}

function highHip(s: Sheet, body: Body): Point[] {
  if (!(knows(body, 'highHipGirth') && knows(body, 'waistToHighHip'))) return []
  const y = s.at('C').y + lengthOf(body, 'waistToHighHip')
  const x = lengthOf(body, 'highHipGirth') / 4 + (s.at('X').x - lengthOf(body, 'hipGirth') / 4)
  return y > s.at('C').y + 5 && y < s.at('H').y - 5 ? [point(x, y)] : []
}
