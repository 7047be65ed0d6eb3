/**
 * The draped-sleeve blouse: woven, wide sleeve cut in one with the body, half pieces on the fold.
 * The back is drawn first; the front takes its underarm and its overarm length, so that overarm
 * and side seams are equal by construction. x = 0 is the fold, y = 0 the nape level, mm.
 *
 * Source: quarter-girth drafting with an arc struck for the sleeve edge, common practice, no
 * published source. Not for: set-in or raglan sleeves, knits, children's nightwear.
 */
import { measured, type Body } from '../../measurements/confirmed.ts'
import { found, minus, type Amount } from '../../units/amount.ts'
import { refuse } from '../cannot-draw.ts'
import { choice, type Choices } from '../choices.ts'
import { Sheet } from '../sheet.ts'
import { levels, type Underarm } from './blouse-levels.ts'
import { drawBackNeck, drawFrontNeck, frontNeck, sideNeck } from './blouse-neck.ts'
import { blouseNumbers, type TorsoNumbers, type HalfId } from './blouse-numbers.ts'
import { fittingSleeve, settleOverarm, type Overarm } from './blouse-overarm.ts'
import { drawSide } from './blouse-side.ts'
import { drawSleeveEdge, placeCorner, placeSleeveEdge } from './blouse-sleeve-edge.ts'
import { shapeWaist } from './blouse-waist.ts'
import { TORSO_WORDS as W } from './torso.words.ts'

export function drawBlouse(body: Body, chosen: Choices): { back: Sheet; front: Sheet } {
  const { choices, raised } = fittingSleeve(body, chosen)
  const numbers = blouseNumbers(body, choices)
  const overarm = settleOverarm(body, choices, numbers)
  const back = grid('back', body, choices, numbers, { ...overarm, raised })
  placeCorner(back, choices)
  placeSleeveEdge(back, choices, overarmAmount(back, body, choices, overarm))
  const front = grid('front', body, choices, numbers, { ...overarm, raised })
  placeCorner(front, choices)
  const taken = found(W.overarmOfBack, overarm.length, back.restsOf('T'))
  placeSleeveEdge(front, choices, taken)
  const { angle } = frontNeck(front.at('F'), front.at('S'), front.at('T'), choices)
  drawBackNeck(back, angle)
  drawFrontNeck(front, choices)
  for (const s of [back, front]) {
    const half = s.piece === 'back' ? 'back' : 'front'
    s.join('S', 'T', 'overarm', 'seam', half === 'back' ? W.sewnToFront : W.sewnToBack)
    drawSleeveEdge(s)
    shapeWaist(s, body, choices, numbers, half)
    drawSide(s, body, choices, numbers, half)
  }
  return { back, front }
}

function grid(
  half: HalfId,
  body: Body,
  choices: Choices,
  n: TorsoNumbers,
  overarm: Underarm,
): Sheet {
  const s = new Sheet(half)
  s.start('A', half === 'back' ? W.napeAtBackFold : W.napeLevelAtFrontFold)
  levels(s, body, choices, n, half, overarm)
  if (half === 'front')
    s.measure('F', 'A', 'down', choice(choices, 'frontNeckDrop'), W.neckAtCentreFront)
  sideNeck(s, body, choices, n, half)
  if (half === 'front') checkNeckDepth(s)
  return s
}

/** The front neck edge lies at least this far under the side neck, mm. Judgement. */
const LEAST_DEPTH = 20
function checkNeckDepth(front: Sheet): void {
  const depth = front.at('F').y - front.at('S').y
  if (depth < LEAST_DEPTH)
    refuse('neckShallow', ['frontNeckDrop', 'neckHalfWidth', 'sideNeckRise'], depth, LEAST_DEPTH)
}

function overarmAmount(back: Sheet, body: Body, choices: Choices, overarm: Overarm): Amount {
  if (overarm.by !== 'found') return measured(body, 'sideNeckToSleeveEdge')
  const rests = [...back.restsOf('S'), ...back.restsOf('U'), 'cornerRadius']
  if (overarm.length === overarm.shortest)
    return found(W.shortestPastUnderarm, overarm.length, rests)
  return choices.cornerRadius > 0
    ? minus(back.across('S', 'Q'), choice(choices, 'cornerRadius'))
    : back.across('S', 'U')
}
