/**
 * The darted bodice block: neck, shoulder and armhole of a half piece, set on the levels, side and
 * waist of the torso. The bust dart lies in the side; other places are reached by moving it.
 * x = 0 is the centre, y = 0 the nape level, mm. Sources: `bodice-frame.ts`.
 * Not for: knits, strapless bodices, bodies measured over thick clothes.
 */
import { measured, type Body } from '../../measurements/confirmed.ts'
import { add, point, rotate, scale, subtract, unit, type Point } from '../../geometry/point.ts'
import { cubic } from '../../geometry/segment.ts'
import type { Path } from '../../geometry/path.ts'
import { found, over, plus, restingOn, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import { guidesOn, neckCurve } from '../curves.ts'
import { Sheet } from '../sheet.ts'
import { bodiceFrame, type BodiceFrame } from './bodice-frame.ts'
import { bodiceNumbers } from './bodice-numbers.ts'
import type { HalfId, TorsoNumbers } from './blouse-numbers.ts'
import { BALANCE_IDS, levels } from './blouse-levels.ts'
import { drawSide } from './blouse-side.ts'
import { shapeWaist } from './blouse-waist.ts'
import { TORSO_WORDS as W } from './torso.words.ts'

/** Length of a back shoulder dart, mm: 60 to 80, from memory. */
const SHOULDER_DART_LONG = 70
/** Where across back and chest are taken: half way from the shoulder bone to the underarm line. */
const ACROSS_AT = 2

/** @param deeper how much deeper than chosen the underarm lies, so that a sleeve goes in, mm */
export function drawBodice(
  body: Body,
  choices: Choices,
  deeper = 0,
): { back: Sheet; front: Sheet } {
  const plain = bodiceFrame(body, choices)
  const more = found(W.deeperForTheSleeve, mm(deeper), ['upperArmGirth', 'armRoom'])
  const frame = deeper > 0 ? { ...plain, scye: plus(plain.scye, more) } : plain
  const numbers = bodiceNumbers(body, choices, frame)
  const [back, front] = [new Sheet('back'), new Sheet('front')]
  drawHalf(back, 'back', body, choices, frame, numbers)
  drawHalf(front, 'front', body, choices, frame, numbers)
  return { back, front }
}

function drawHalf(
  s: Sheet,
  half: HalfId,
  body: Body,
  choices: Choices,
  frame: BodiceFrame,
  n: TorsoNumbers,
): void {
  s.start('A', half === 'back' ? W.napeAtCentreBack : W.napeLevelAtCentreFront)
  levels(s, body, choices, n, half, { deeper: mm(0), depth: frame.scye })
  sideNeck(s, half, frame, n)
  if (half === 'front') frontNeckPoint(s, body, choices, frame)
  shoulder(s, half, choices, frame)
  neck(s, half)
  armhole(s, half, half === 'back' ? frame.acrossBack : frame.acrossChest)
  shapeWaist(s, body, choices, n, half)
  drawSide(s, body, choices, n, half)
}

function sideNeck(s: Sheet, half: HalfId, frame: BodiceFrame, n: TorsoNumbers): void {
  const width = half === 'back' ? frame.neckBack : frame.neckFront
  s.measure('N', 'A', 'right', width, W.halfNeckWidth)
  const raise = found(W.whatFrontIsHigher, mm(n.raise), [
    ...BALANCE_IDS,
    'frontShort',
    'frontRaise',
    'bustGirth',
    'easeBust',
    'apexSpacing',
    'construction',
  ])
  const rise = half === 'back' ? frame.neckRise : plus(frame.neckRise, raise)
  const size: Amount = { ...rise, mm: mm(Math.abs(rise.mm)) }
  s.measure('S', 'N', rise.mm < 0 ? 'down' : 'up', size, W.sideNeckPoint)
}

/**
 * F: by the taped front neck to waist up from the waist, else by the depth under the side neck.
 * What is added between bust and waist moves the waist, not the neck.
 */
function frontNeckPoint(s: Sheet, body: Body, choices: Choices, frame: BodiceFrame): void {
  const why = W.neckAtCentreFront
  if (!frame.neckDepth) {
    const taped = measured(body, 'frontNeckToWaist')
    const up =
      choices.lengthAdded === 0
        ? restingOn(taped, ['lengthAdded'])
        : plus(taped, choice(choices, 'lengthAdded'))
    return s.measure('F', 'C', 'up', up, why)
  }
  s.measure('B', 'S', 'left', s.across('A', 'N'), W.levelOfSideNeckAtCentre)
  s.measure('F', 'B', 'down', frame.neckDepth, why)
}

function shoulder(s: Sheet, half: HalfId, choices: Choices, frame: BodiceFrame): void {
  s.measure('R', 'S', 'down', frame.shoulderDrop, W.levelOfShoulderBone)
  const dart = half === 'back' ? choices.shoulderDart : 0
  if (dart === 0) {
    s.compass('P', 'S', frame.shoulder, 'R', W.shoulderPoint)
    return s.join('S', 'P', 'shoulder', 'seam', half === 'back' ? W.sewnToFront : W.sewnToBack)
  }
  s.compass('O1', 'S', frame.shoulder, 'R', W.shoulderEndDartClosed)
  shoulderDart(s, choices)
}

/**
 * The back shoulder opened about the tip of its dart, so that it is straight again once the dart
 * is folded: what lies outside the dart turns by the dart's angle.
 */
function shoulderDart(s: Sheet, choices: Choices): void {
  const [sn, end] = [s.at('S'), s.at('O1')]
  const along = unit(subtract(end, sn))
  const middle = add(sn, scale(subtract(end, sn), 0.5))
  const down = point(-along.y, along.x)
  const tip = add(middle, scale(down, SHOULDER_DART_LONG))
  const turn = 2 * Math.asin(choices.shoulderDart / (2 * SHOULDER_DART_LONG))
  const go = (p: Point): Point => rotate(p, tip, turn)
  const rests = [...s.restsOf('O1'), 'shoulderDart']
  const place = (name: string, p: Point, why: string): void => {
    const d = subtract(p, sn)
    s.spot(name, 'S', found('', mm(d.x), rests), found('', mm(d.y), rests), why)
  }
  s.slide('V1', 'S', 'O1', over(s.across('S', 'O1'), 2), W.innerLegOfShoulderDart)
  place('V3', tip, W.itsTip)
  place('V2', go(middle), W.itsOuterLeg)
  place('P', go(end), W.shoulderPoint)
  s.join('S', 'V1', 'shoulder', 'seam', W.toTheDart)
  s.join('V1', 'V2', 'shoulder', 'seam', W.acrossItsMouth)
  s.join('V2', 'P', 'shoulder', 'seam', W.sewnToFrontDartFolded)
  s.edgeDart(
    { name: 'shoulderDart', edge: 'shoulder' },
    { upper: 'V1', lower: 'V2', tip: 'V3' },
    choice(choices, 'shoulderDart'),
    W.foldedBeforeShoulder,
  )
}

function neck(s: Sheet, half: HalfId): void {
  const from = half === 'back' ? 'A' : 'F'
  const path = neckCurve(s.at(from), s.at('S'), s.at(s.has('V1') ? 'V1' : 'P'), 'round')
  s.curve(
    from,
    'S',
    path,
    { base: from, along: 'right', guides: guidesOn(path, [0.25, 0.5, 0.75]) },
    'neck',
    'edge',
    W.squareToCentreAndShoulder,
  )
}

/** From the shoulder, square to it, plumb past the across point, level into the underarm. */
function armhole(s: Sheet, half: HalfId, across: Amount): void {
  const [p, e] = [s.at('P'), s.at('E')]
  const middle = found(W.halfWayToUnderarmLine, mm(p.y + (e.y - p.y) / ACROSS_AT), [
    ...s.restsOf('P'),
    ...s.restsOf('E'),
  ])
  s.measure(
    'I',
    'A',
    middle.mm < 0 ? 'up' : 'down',
    { ...middle, mm: mm(Math.abs(middle.mm)) },
    half === 'back' ? W.levelAcrossBack : W.levelAcrossChest,
  )
  s.measure('Z', 'I', 'right', across, half === 'back' ? W.backWidth : W.chestWidth)
  const path = loweredArmhole(s, 0)
  s.curve(
    'P',
    'U',
    path,
    { base: 'E', along: 'up', guides: guidesOn(path, [0.25, 0.5, 0.75]) },
    'armhole',
    'edge',
    W.armholeTouchingZ,
  )
}

/** The armhole of a drawn half, or as it would run with its underarm so much lower. */
export function loweredArmhole(s: Sheet, by: number): Path {
  const [p, z, u] = [s.at('P'), s.at('Z'), s.at('U')]
  return armholePath(
    p,
    add(z, point(0, by / ACROSS_AT)),
    add(u, point(0, by)),
    subtract(p, s.at(s.has('V2') ? 'V2' : 'S')),
  )
}

/** Handles as shares of each span; from memory, drawn so that the curve lies close at Z and full under the arm. */
const HANDLE = { upper: 0.4, lower: 0.55 } as const

export function armholePath(p: Point, across: Point, u: Point, shoulder: Point): Path {
  const along = unit(shoulder)
  const square = point(-along.y, along.x)
  const [high, low] = [across.y - p.y, u.y - across.y]
  return [
    cubic(
      p,
      add(p, scale(square, HANDLE.upper * high)),
      point(across.x, across.y - HANDLE.upper * high),
      across,
    ),
    cubic(
      across,
      point(across.x, across.y + HANDLE.lower * low),
      point(u.x - HANDLE.lower * (u.x - across.x), u.y),
      u,
    ),
  ]
}
