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
import { knows, measured } from '../../measurements/confirmed.ts'
import type { MeasurementId } from '../../measurements/catalogue.ts'
import { fixed, found, minus, plus, type Amount } from '../../units/amount.ts'
import { mm, type Mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import { guidesOn, neckCurve } from '../curves.ts'
import { Sheet } from '../sheet.ts'
import { strikeSleeveEdge } from './sleeve-edge.ts'
import { quarter, shapeWaist, sideAndHem } from './waist-and-side.ts'

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

const neckGuides = (s: Sheet, from: 'A' | 'F') => {
  const path = neckCurve(s.at(from), s.at('S'), s.at('T'))
  return { base: from, along: 'right' as const, guides: guidesOn(path, [0.25, 0.5, 0.75]) }
}
