/**
 * The draped-sleeve blouse: woven, wide sleeve cut in one with the body, half pieces on the fold.
 * The back is drawn first; the front takes its underarm and its overarm length, so that overarm
 * and side seams are equal by construction. x = 0 is the fold, y = 0 the nape level, mm.
 *
 * Source: quarter-girth drafting with an arc struck for the sleeve edge, common practice, no
 * published source; the slid centre of the front arc is worked out below.
 * Not for: set-in or raglan sleeves, knits, children's nightwear.
 */
import type { Body } from '../../measurements/confirmed.ts'
import { knows, lengthOf, measured } from '../../measurements/confirmed.ts'
import type { MeasurementId } from '../../measurements/catalogue.ts'
import { dot, norm, point, subtract, unit, type Point } from '../../geometry/point.ts'
import { fixed, found, minus, over, plus, type Amount } from '../../units/amount.ts'
import { mm, type Mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import { cutAtLevel, guidesOn, neckCurve, sideCurve } from '../curves.ts'
import { Sheet } from '../sheet.ts'

export const BLOUSE_NEEDS: readonly MeasurementId[] = [
  'bustGirth',
  'waistGirth',
  'hipGirth',
  'waistToHip',
  'napeToWaist',
  'waistToBustLevel',
  'apexSpacing',
]
export const BLOUSE_USES: readonly MeasurementId[] = [
  'napeToArmpitLevel',
  'upperArmGirth',
  'headGirth',
  'neckBaseGirth',
  'slipThroughGirth',
  'sideNeckOverBladeToWaist',
  'sideNeckOverApexToWaist',
  'sideNeckToSleeveEdge',
  'highBustGirth',
  'highHipGirth',
  'waistToHighHip',
]

/** Under this much difference a waist needs no shaping. Common practice, no source. */
const NO_SHAPING = 8
/** Mouth a single dart holds: back 25–32, front 38–44 mm (common practice and a public draft). */
export const DART_MOST = { back: mm(32), front: mm(44) } as const
/** The side may take a little more before a second dart is asked for. Common practice, no source. */
const SIDE_MOST = 25
/** A lower dart tip stays this far from the hem. Common practice, no source. */
const TIP_TO_HEM = 25
/** With both lengths kept, the overarm must reach this far past the foot of the underarm. */
const SLIDE_ROOM = 15

/** What the front takes over from the back. */
export interface BackNumbers {
  readonly overarm: Mm
  readonly underarmLevel: Mm
}

export function drawBack(body: Body, choices: Choices): { sheet: Sheet; numbers: BackNumbers } {
  const s = new Sheet('back')
  s.start('A', 'the nape, at the top of the centre-back fold')
  levels(s, body, choices)
  s.measure('N', 'A', 'right', choice(choices, 'neckHalfWidth'), 'half the neck width')
  s.measure('S', 'N', 'up', choice(choices, 'sideNeckRise'), 'the side-neck point')
  const taped = knows(body, 'sideNeckToSleeveEdge')
  const overarm = taped ? measured(body, 'sideNeckToSleeveEdge') : s.across('S', 'U')
  strikeSleeveEdge(s, overarm)
  s.curve(
    'A',
    'S',
    neckCurve(s.at('A'), s.at('S'), s.at('T')),
    neckGuides(s, 'A'),
    'neck',
    'edge',
    'square to the fold and square to the overarm seam',
  )
  s.join('S', 'T', 'overarm', 'seam', 'sewn to the front')
  s.arc(s.has('K') ? 'K' : 'S', 'T', 'U', 'sleeveEdge', 'edge', 'square to the overarm seam')
  shapeWaist(s, body, choices, 'back')
  sideAndHem(s, body)
  return { sheet: s, numbers: { overarm: overarm.mm, underarmLevel: mm(s.at('U').y) } }
}

export function drawFront(body: Body, choices: Choices, back: BackNumbers): Sheet {
  const s = new Sheet('front')
  s.start('A', 'the nape level, at the top of the centre-front fold')
  levels(s, body, choices)
  s.measure('F', 'A', 'down', choice(choices, 'frontNeckDrop'), 'the neck edge at the centre front')
  s.measure('N', 'A', 'right', choice(choices, 'neckHalfWidth'), 'half the neck width')
  s.measure(
    'S',
    'N',
    'up',
    plus(choice(choices, 'sideNeckRise'), frontRaise(body, choices)),
    'the side-neck point',
  )
  strikeSleeveEdge(
    s,
    found('the overarm of the back', back.overarm, [
      ...s.restsOf('U'),
      'neckHalfWidth',
      'sideNeckRise',
    ]),
  )
  s.curve(
    'F',
    'S',
    neckCurve(s.at('F'), s.at('S'), s.at('T')),
    neckGuides(s, 'F'),
    'neck',
    'edge',
    'square to the fold and square to the overarm seam',
  )
  s.join('S', 'T', 'overarm', 'seam', 'sewn to the back')
  s.arc(s.has('K') ? 'K' : 'S', 'T', 'U', 'sleeveEdge', 'edge', 'square to the overarm seam')
  shapeWaist(s, body, choices, 'front')
  sideAndHem(s, body)
  return s
}

/** Waist, bust, underarm, overarm end, hip and hem, all squared out from the fold. */
function levels(s: Sheet, body: Body, choices: Choices): void {
  const added = (a: Amount): Amount =>
    choices.lengthAdded === 0 ? a : plus(a, choice(choices, 'lengthAdded'))
  s.measure('C', 'A', 'down', added(measured(body, 'napeToWaist')), '', 'waist line')
  s.measure('D', 'C', 'up', added(measured(body, 'waistToBustLevel')), '', 'bust line')
  if (knows(body, 'napeToArmpitLevel'))
    s.measure(
      'E',
      'A',
      'down',
      plus(measured(body, 'napeToArmpitLevel'), choice(choices, 'underarmDrop')),
      'the depth of the arm opening',
      'underarm line',
    )
  else
    s.measure(
      'E',
      'D',
      'up',
      fixed(mm(UNDERARM_GUESS)),
      'the depth of the arm opening, while the armpit is not taped',
      'underarm line',
    )
  s.measure(
    'U',
    'E',
    'right',
    quarter(body, 'bustGirth', choice(choices, 'easeBust')),
    'the underarm point',
  )
  if (choices.overarmDrop !== 0)
    s.measure(
      'G',
      'A',
      choices.overarmDrop < 0 ? 'up' : 'down',
      { ...choice(choices, 'overarmDrop'), mm: mm(Math.abs(choices.overarmDrop)) },
      'the level where the overarm ends',
    )
  s.measure('H', 'C', 'down', measured(body, 'waistToHip'), '', 'hip line')
  s.measure(
    'X',
    'H',
    'right',
    quarter(body, 'hipGirth', choice(choices, 'easeHip')),
    'the side at the hip',
  )
  s.measure('L', 'C', 'down', choice(choices, 'lengthBelowWaist'), 'the hem at the fold')
}
/** Without an armpit reading the underarm lies this far above the bust line; for a muslin only. */
const UNDERARM_GUESS = 25

const quarter = (body: Body, id: MeasurementId, ease: Amount): Amount =>
  plus(over(measured(body, id), 4), ease)

/** Over the apex less over the blade, when both are taped; at most the choice's own range is raised. */
function frontRaise(body: Body, choices: Choices): Amount {
  if (!(knows(body, 'sideNeckOverApexToWaist') && knows(body, 'sideNeckOverBladeToWaist')))
    return choice(choices, 'frontRaise')
  const balance = minus(
    measured(body, 'sideNeckOverApexToWaist'),
    measured(body, 'sideNeckOverBladeToWaist'),
  )
  return balance.mm > RAISE_MOST ? fixed(mm(RAISE_MOST)) : balance
}
/** More than this is no raise but a side bust dart. Common practice, no source. */
export const RAISE_MOST = 20

/**
 * The overarm S–T of length L and the sleeve edge, an arc square to it that ends in U. Where L is
 * the distance S–U the centre is S. Otherwise the centre K slides along the overarm: with u the
 * unit vector S→T, |U − (S + t·u)| = L − t gives t = (L² − |SU|²) / (2(L − u·SU)).
 */
function strikeSleeveEdge(s: Sheet, overarm: Amount): void {
  s.compass('T', 'S', overarm, s.has('G') ? 'G' : 'A', 'the end of the overarm')
  const [sn, u] = [s.at('S'), subtract(s.at('U'), s.at('S'))]
  if (Math.abs(norm(u) - overarm.mm) < 1e-9) return
  const along = unit(subtract(s.at('T'), sn))
  const slid = slideOf(overarm.mm, u, along)
  s.slide('K', 'S', 'T', found('', mm(slid), s.restsOf('U')), 'the centre of the sleeve edge')
}
function slideOf(overarm: number, toUnderarm: Point, along: Point): number {
  const room = overarm - dot(along, toUnderarm)
  if (room <= 0)
    throw new Error(`sleeve edge: an overarm of ${overarm} mm does not reach past the underarm`)
  return (overarm ** 2 - dot(toUnderarm, toUnderarm)) / (2 * room)
}

/** The least overarm length for which a sleeve edge can be struck, and whether this one does. */
export function overarmTooShort(
  sideNeck: Point,
  underarm: Point,
  end: Point,
  overarm: number,
): boolean {
  const [u, along] = [subtract(underarm, sideNeck), unit(subtract(end, sideNeck))]
  return overarm < dot(along, u) + SLIDE_ROOM
}

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
function shapeWaist(s: Sheet, body: Body, choices: Choices, piece: 'back' | 'front'): void {
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

function sideAndHem(s: Sheet, body: Body): void {
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

const neckGuides = (s: Sheet, from: 'A' | 'F') => {
  const path = neckCurve(s.at(from), s.at('S'), s.at('T'))
  return { base: from, along: 'right' as const, guides: guidesOn(path, [0.25, 0.5, 0.75]) }
}
