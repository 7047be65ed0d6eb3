/**
 * The set-in sleeve, drawn from the corrected armholes: a whole piece, its top at (0, 0), front to
 * the right, y down the arm, mm. Sources: cap ease and biceps ease as quoted in `choices.ts`; the
 * cap's curve is solved in `sleeve-cap.ts`. Not for: two-piece sleeves, knits.
 */
import { measured, type Body } from '../../measurements/confirmed.ts'
import { pathLength } from '../../geometry/length.ts'
import { mirroredPath, reversedPath, splitPath, placeAt, pathEnd } from '../../geometry/path.ts'
import { subtract } from '../../geometry/point.ts'
import { found, minus, over, plus, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import { guidesOn } from '../curves.ts'
import { Sheet } from '../sheet.ts'
import { capSide, solveCap, type Cap } from './sleeve-cap.ts'

export interface Armholes {
  readonly front: number
  readonly back: number
  /** From the underarm to where the armhole touches the width across. */
  readonly frontNotch: number
  readonly backNotch: number
}

/** Ease lies in front and back alike. Common practice, no source. */
const FRONT_EASE = 0.5

export type SleeveDrawn =
  | { readonly ok: true; readonly sheet: Sheet; readonly cap: Cap }
  /** No cap of this width has sides as long as the armholes. */
  | { readonly ok: false; readonly width: number; readonly armholes: number }

const sleeveWidth = (body: Body, choices: Choices): Amount =>
  plus(measured(body, 'upperArmGirth'), choice(choices, 'armRoom'))

/** The cap for these armholes, each with its part of the ease; undefined where none is wide enough. */
export const capFor = (
  body: Body,
  choices: Choices,
  front: number,
  back: number,
): Cap | undefined =>
  solveCap(
    front + choices.capEase * FRONT_EASE,
    back + choices.capEase * (1 - FRONT_EASE),
    sleeveWidth(body, choices).mm,
  )

export function drawSleeve(body: Body, choices: Choices, armholes: Armholes): SleeveDrawn {
  const width = sleeveWidth(body, choices)
  const cap = capFor(body, choices, armholes.front, armholes.back)
  if (!cap) return { ok: false, width: width.mm, armholes: armholes.front + armholes.back }
  const s = new Sheet('sleeve')
  const rests = ['upperArmGirth', 'armRoom', 'capEase', 'bustGirth', 'napeToArmpitLevel']
  const fromArmhole = (words: string, length: number): Amount => found(words, mm(length), rests)
  s.start('A', 'the top of the cap, at the shoulder seam')
  s.measure(
    'B',
    'A',
    'down',
    fromArmhole('the height of the cap', cap.height),
    '',
    'width of the sleeve',
  )
  s.measure(
    'F',
    'B',
    'right',
    fromArmhole('the front of the width', cap.front),
    'the underarm of the front',
  )
  s.measure(
    'G',
    'B',
    'left',
    minus(width, fromArmhole('the front of the width', cap.front)),
    'the underarm of the back',
  )
  s.measure('C', 'A', 'down', choice(choices, 'sleeveLength'), 'the hem at the middle')
  drawCap(s, cap, armholes, fromArmhole)
  drawSeams(s, choices, width)
  return { ok: true, sheet: s, cap }
}

function drawCap(
  s: Sheet,
  cap: Cap,
  armholes: Armholes,
  fromArmhole: (words: string, length: number) => Amount,
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
    'level at both ends, sewn to the back armhole',
  )
  s.curve(
    'A',
    'F',
    front,
    { base: 'A', along: 'down', guides: guidesOn(front, shares) },
    'cap',
    'seam',
    'level at both ends, sewn to the front armhole',
  )
  for (const [name, path, at] of [
    ['K', front, pathLength(front) - armholes.frontNotch],
    ['L', back, armholes.backNotch],
  ] as const) {
    const spot = pathEnd(splitPath(path, placeAt(path, at))[0])
    const d = subtract(spot, s.at('A'))
    s.spot(
      name,
      'A',
      fromArmhole('', d.x),
      fromArmhole('', d.y),
      name === 'K'
        ? 'the front notch: from here to the underarm nothing is eased'
        : 'the back notch',
    )
  }
}

/** Both seams equal, because both ends of the hem lie as far in from the ends of the width. */
function drawSeams(s: Sheet, choices: Choices, width: Amount): void {
  const taken = choice(choices, 'sleeveHem')
  const half = over(taken, 2)
  s.measure('D', 'C', 'right', minus(s.across('B', 'F'), half), 'the hem at the front seam')
  s.measure('E', 'C', 'left', minus(s.across('B', 'G'), half), 'the hem at the back seam')
  if (!(s.at('D').x > 0 && s.at('E').x < 0))
    throw new Error(`sleeve: a hem of ${width.mm - taken.mm} mm is narrower than nothing`)
  s.join('F', 'D', 'frontSeam', 'seam', 'sewn to the back seam')
  s.join('D', 'E', 'hem', 'hem', 'straight')
  s.join('E', 'G', 'backSeam', 'seam', 'sewn to the front seam')
}
