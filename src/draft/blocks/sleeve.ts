/**
 * The set-in sleeve, drawn from the corrected armholes: a whole piece, its top at (0, 0), front to
 * the right, y down the arm, mm. Sources: cap ease and biceps ease as quoted in `choices.ts`; the
 * cap's curve is solved in `sleeve-cap.ts`. Not for: two-piece sleeves, knits.
 */
import { measured, type Body } from '../../measurements/confirmed.ts'
import { pathLength } from '../../geometry/length.ts'
import { mirroredPath, reversedPath, splitPath, placeAt, pathEnd } from '../../geometry/path.ts'
import { subtract } from '../../geometry/point.ts'
import { fixed, found, minus, over, plus, restingOn, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import { guidesOn } from '../curves.ts'
import { Sheet } from '../sheet.ts'
import { fittedCap, type FittedCap } from './cap-rule.ts'
import { CUFF_WORDS } from './cuff.words.ts'
import { capSide, type Cap } from './sleeve-cap.ts'
import { BELOW_UNDERARM, sleeveEnd, type SleeveEnd } from './sleeve-end.ts'
import { SLEEVE_WORDS as W } from './sleeve.words.ts'

export interface Armholes {
  readonly front: number
  readonly back: number
  /** From the underarm to where the armhole touches the width across. */
  readonly frontNotch: number
  readonly backNotch: number
  /** Names that shoulder, width across and underarm rest on. */
  readonly rests: readonly string[]
}

export type SleeveDrawn =
  | {
      readonly ok: true
      readonly sheet: Sheet
      readonly cap: FittedCap
      readonly end: SleeveEnd
    }
  /** No cap of this width has sides as long as the armholes. */
  | { readonly ok: false; readonly width: number; readonly armholes: number }

/** Round the sleeve at the underarm, as chosen: the upper arm and the room about it. */
export const sleeveWidth = (body: Body, choices: Choices): Amount =>
  plus(measured(body, 'upperArmGirth'), choice(choices, 'armRoom'))

export function drawSleeve(body: Body, choices: Choices, armholes: Armholes): SleeveDrawn {
  const chosen = sleeveWidth(body, choices)
  const cap = fittedCap(armholes, chosen.mm, choices.capEase)
  if (!cap) return { ok: false, width: chosen.mm, armholes: armholes.front + armholes.back }
  const s = new Sheet('sleeve')
  const rests = ['upperArmGirth', 'armRoom', 'capEase', ...armholes.rests]
  const fromArmhole = (words: string, length: number): Amount => found(words, mm(length), rests)
  const width = cap.wider > 0 ? plus(chosen, fromArmhole(W.widerForLowerCap, cap.wider)) : chosen
  s.start('A', W.topOfCap)
  s.measure('B', 'A', 'down', fromArmhole(W.heightOfCap, cap.height), '', 'widthOfTheSleeve')
  s.measure('F', 'B', 'right', fromArmhole(W.frontOfWidth, cap.front), W.underarmOfFront)
  s.measure(
    'G',
    'B',
    'left',
    minus(width, fromArmhole(W.frontOfWidth, cap.front)),
    W.underarmOfBack,
  )
  s.measure(
    'C',
    'A',
    'down',
    hemDepth(choices, cap, fromArmhole),
    cuffed(choices) ? W.endAtMiddle : W.hemAtMiddle,
  )
  drawCap(s, cap, armholes, fromArmhole, choices.sleevePitch)
  const end = sleeveEnd(width.mm, s.at('C').y - cap.height, choices)
  drawSeams(s, choices, width, end)
  if (end.slit > 0) drawSlit(s, choices, end)
  return { ok: true, sheet: s, cap, end }
}

const cuffed = (choices: Choices): boolean => choices.sleeveEnd === 'cuff'

/** To the hem, or as much shorter as the cuff is high. */
function hemDepth(
  choices: Choices,
  cap: Cap,
  fromArmhole: (words: string, length: number) => Amount,
): Amount {
  const least = cap.height + BELOW_UNDERARM
  const whole = choice(choices, 'sleeveLength')
  const wanted = cuffed(choices) ? minus(whole, choice(choices, 'cuffHeight')) : whole
  return wanted.mm >= least
    ? wanted
    : restingOn(fromArmhole(W.littleBelowUnderarm, least), ['sleeveLength'])
}

function drawCap(
  s: Sheet,
  cap: Cap,
  armholes: Armholes,
  fromArmhole: (words: string, length: number) => Amount,
  pitch: number,
): void {
  const front = capSide('front', cap.front, cap.height)
  const back = reversedPath(mirroredPath(capSide('back', cap.back, cap.height)))
  const shares = [0.25, 0.5, 0.75, 1]
  s.curve(
    'G',
    'A',
    back,
    { base: 'A', along: 'down', guides: guidesOn(back, shares) },
    'cap',
    'seam',
    W.sewnToBackArmhole,
  )
  s.curve(
    'A',
    'F',
    front,
    { base: 'A', along: 'down', guides: guidesOn(front, shares) },
    'cap',
    'seam',
    W.sewnToFrontArmhole,
  )
  // Turned forward, every place of the armhole meets a place farther back on the cap.
  const marks = [
    ['K', front, pathLength(front) - armholes.frontNotch - pitch],
    ['L', back, armholes.backNotch - pitch],
    ...(pitch === 0
      ? []
      : [
          pitch > 0
            ? (['S', back, pathLength(back) - pitch] as const)
            : (['S', front, -pitch] as const),
        ]),
  ] as const
  for (const [name, path, at] of marks) {
    const inside = Math.min(Math.max(at, MARK_INSIDE), pathLength(path) - MARK_INSIDE)
    const spot = pathEnd(splitPath(path, placeAt(path, inside))[0])
    const d = subtract(spot, s.at('A'))
    const amount = (size: number): Amount => restingOn(fromArmhole('', size), ['sleevePitch'])
    s.spot(name, 'A', amount(d.x), amount(d.y), W.marks[name])
  }
}
/** A mark lies on its own side of the cap, at least this far from its ends, mm. */
const MARK_INSIDE = 2

/** Both seams equal, because both ends of the hem lie as far in from the ends of the width. */
function drawSeams(s: Sheet, choices: Choices, width: Amount, { round }: SleeveEnd): void {
  const taken =
    width.mm - choices.sleeveHem === round
      ? choice(choices, 'sleeveHem')
      : restingOn(minus(width, fixed(mm(round))), [
          'sleeveHem',
          ...(choices.sleeveEnd === 'hem' ? [] : ['sleeveSlit']),
        ])
  const half = over(taken, 2)
  s.measure(
    'D',
    'C',
    'right',
    minus(s.across('B', 'F'), half),
    cuffed(choices) ? W.endAtFrontSeam : W.hemAtFrontSeam,
  )
  s.measure(
    'E',
    'C',
    'left',
    minus(s.across('B', 'G'), half),
    cuffed(choices) ? W.endAtBackSeam : W.hemAtBackSeam,
  )
  s.join('F', 'D', 'frontSeam', 'seam', W.sewnToBackSeam)
  if (cuffed(choices)) s.join('D', 'E', 'sleeveEnd', 'seam', W.drawnUpIntoCuff)
  else s.join('D', 'E', 'hem', 'hem', W.straight)
  s.join('E', 'G', 'backSeam', 'seam', W.sewnToFrontSeam)
}

/** On the back half, where the little finger lies: half way from the middle to the underarm. Common practice, no source. */
function drawSlit(s: Sheet, choices: Choices, { slit }: SleeveEnd): void {
  s.measure('M', 'C', 'left', over(s.across('C', 'E'), 2), CUFF_WORDS.slitHalfWay)
  const long =
    slit === choices.sleeveSlit
      ? choice(choices, 'sleeveSlit')
      : found(CUFF_WORDS.shortOfUnderarm, mm(slit), ['sleeveSlit', ...s.restsOf('C')])
  s.measure('N', 'M', 'up', long, CUFF_WORDS.topOfSlit)
}
