/**
 * A straight or flared skirt for the waist of a corrected bodice, half pieces on the fold. x = 0 is
 * the centre, y = 0 the waist, mm. Hip level, hip width and length are her own; the waist is the
 * bodice's. Source: quarter-girth drafting, common practice, no source; hem square to the side so
 * that it hangs level. Not for: skirts without a waist seam, gathered skirts.
 */
import { lengthOf, knows, measured, type Body } from '../../measurements/confirmed.ts'
import { add, distance, point, quarterTurn, scale, type Point } from '../../geometry/point.ts'
import { endTangent, pathEnd, type Path } from '../../geometry/path.ts'
import { cubic } from '../../geometry/segment.ts'
import { found, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import { cutAtLevel, guidesOn, sideCurve } from '../curves.ts'
import type { HalfId } from '../piece.ts'
import { Sheet } from '../sheet.ts'
import { quarter } from './blouse-levels.ts'
import { share } from './blouse-numbers.ts'
import { skirtPlan, type SkirtHalf, type SkirtWaist } from './skirt-plan.ts'
import { SKIRT_WORDS as W } from './skirt.words.ts'

/** A dart ends this far above the hip and the hem, mm, as on a bodice. */
const TIP_SHORT = 15
/** The side seam is shifted by no more than this to make both halves equal, mm. */
const SHIFTED = 3
/** Levels nearer together than this are drawn as one, mm. */
const ONE_LEVEL = 5

export function skirtHalves(
  body: Body,
  choices: Choices,
  waists: Readonly<Record<HalfId, SkirtWaist>>,
): Readonly<Record<HalfId, SkirtHalf>> {
  const hip = lengthOf(body, 'hipGirth') / 4 + choices.easeHip
  const shown = Math.min(lengthOf(body, 'waistToHip'), choices.lengthBelowWaist)
  return skirtPlan(
    waists,
    { back: hip + share(choices, 'back'), front: hip + share(choices, 'front') },
    choices,
    { back: dartDepth(choices, 'back', shown), front: dartDepth(choices, 'front', shown) },
  )
}
/** From the waist down to the tip of a dart. */
const dartDepth = (choices: Choices, half: HalfId, toHip: number): number =>
  Math.max(
    TIP_SHORT,
    Math.min(choices[half === 'back' ? 'backDartLow' : 'frontDartLow'], toHip - TIP_SHORT),
  )

/** @param rests what the waist of the bodice rests on */
export function drawSkirt(
  half: HalfId,
  body: Body,
  choices: Choices,
  waists: Readonly<Record<HalfId, SkirtWaist>>,
  rests: readonly string[],
): Sheet {
  const plans = skirtHalves(body, choices, waists)
  const plan = plans[half]
  const s = new Sheet(half === 'back' ? 'skirtBack' : 'skirtFront')
  const fromBodice = (words: string, length: number): Amount =>
    found(words, mm(length), [...rests, 'hipGirth', 'easeHip'])
  s.start('C', W.waistAtCentre)
  s.measure(
    'W',
    'C',
    'right',
    fromBodice(W.waistOfBodiceAndDarts, plan.width),
    W.sideAtWaist,
    'waistLine',
  )
  s.measure('H', 'C', 'down', measured(body, 'waistToHip'), '', 'hipLine')
  const hip = quarter(body, 'hipGirth', 'easeHip', choices, half)
  s.measure(
    'X',
    'H',
    'right',
    Math.abs(plan.hip - hip.mm) < 1e-9
      ? hip
      : fromBodice(
          plan.hip > hip.mm + SHIFTED ? W.noNarrowerThanWaist : W.quarterForEqualSides,
          plan.hip,
        ),
    W.sideAtHip,
  )
  s.measure('L', 'C', 'down', choice(choices, 'lengthBelowWaist'), W.hemAtCentre)
  waistWithDarts(s, half, choices, plan, fromBodice)
  sideAndHem(s, body, choices, plans)
  s.join('L', 'C', 'centre', 'fold', W.onTheFold)
  return s
}

function waistWithDarts(
  s: Sheet,
  half: HalfId,
  choices: Choices,
  { darts }: SkirtHalf,
  fromBodice: (words: string, length: number) => Amount,
): void {
  const low = half === 'back' ? 'backDartLow' : 'frontDartLow'
  let [drawnTo, taken] = ['C', 0]
  for (const [i, { at, mouth }] of darts.entries()) {
    const [inner, outer, middle, tip] = (['1', '2', '3', '4'] as const).map(
      (n) => `${i === 0 ? 'M' : 'O'}${n}`,
    ) as [string, string, string, string]
    const width = fromBodice(darts.length === 1 ? W.theDart : W.dartOf(i + 1), mouth)
    s.measure(inner, 'C', 'right', fromBodice('', at + taken), W.whereDartBegins)
    s.measure(outer, inner, 'right', width, W.otherEndOfDart)
    s.measure(middle, inner, 'right', fromBodice(W.halfOfIt, mouth / 2), W.itsMiddle)
    const depth = dartDepth(choices, half, Math.min(s.at('H').y, s.at('L').y))
    s.measure(
      tip,
      middle,
      'down',
      depth === choices[low] ? choice(choices, low) : found(W.shortOfHip, mm(depth), [low]),
      W.itsTip,
    )
    s.join(drawnTo, inner, 'waist', 'seam', W.toTheDart)
    s.join(inner, outer, 'waist', 'seam', W.acrossItsMouth)
    s.edgeDart(
      { name: i === 0 ? 'waistDart' : 'waistDart2', edge: 'waist' },
      { upper: inner, lower: outer, tip },
      width,
      W.foldedBeforeWaist,
    )
    drawnTo = outer
    taken += mouth
  }
  s.join(drawnTo, 'W', 'waist', 'seam', W.sewnToBodice)
}

function sideAndHem(
  s: Sheet,
  body: Body,
  choices: Choices,
  plans: Readonly<Record<HalfId, SkirtHalf>>,
): void {
  const [w, x, l] = [s.at('W'), s.at('X'), s.at('L')]
  const below = l.y - x.y
  const flare = choices.skirt === 'flared' && below > 0 ? choices.skirtFlare : 0
  const foot = below > 0 ? flareFoot(x, below, flare) : undefined
  const through = [w, ...highHip(body, choices, plans, x), x, ...(foot ? [foot] : [])]
  const whole = sideCurve(through, foot ? flare / (foot.y - x.y) : 0)
  const path = below > 0 ? whole : cutAtLevel(whole, l.y)
  const end = pathEnd(path)
  const rests = [...s.restsOf('X'), ...s.restsOf('L'), 'skirt', 'skirtFlare']
  s.spot('Y', 'C', found('', mm(end.x), rests), found('', mm(end.y), rests), W.hemAtSide)
  s.curve(
    'W',
    'Y',
    path,
    { base: 'C', along: 'down', guides: guidesOn(path, [0.5, 1]) },
    'side',
    'seam',
    W.sideThrough(below > 0),
  )
  if (flare === 0) return s.join('Y', 'L', 'hem', 'hem', W.squareToFold)
  const hem = squareHem(path, l)
  s.curve(
    'Y',
    'L',
    hem,
    { base: 'L', along: 'right', guides: guidesOn(hem, [0.25, 0.5, 0.75]) },
    'hem',
    'hem',
    W.squareToSideAndFold,
  )
}

/** As far along the flared side as the centre is long, so that the hem hangs level. */
function flareFoot(x: Point, below: number, flare: number): Point {
  const long = Math.hypot(below, flare)
  return point(x.x + (flare * below) / long, x.y + (below * below) / long)
}

function squareHem(side: Path, centre: Point): Path {
  const foot = pathEnd(side)
  const inwards = quarterTurn(endTangent(side))
  const handle = distance(foot, centre) / 3
  return [cubic(foot, add(foot, scale(inwards, handle)), add(centre, point(handle, 0)), centre)]
}

/** Beside darts that are still open there the side stands farther out, on both halves alike. */
function highHip(
  body: Body,
  choices: Choices,
  plans: Readonly<Record<HalfId, SkirtHalf>>,
  x: Point,
): Point[] {
  if (!(knows(body, 'highHipGirth') && knows(body, 'waistToHighHip'))) return []
  const below = lengthOf(body, 'waistToHighHip')
  if (below < ONE_LEVEL || below > x.y - ONE_LEVEL) return []
  const openOf = (h: HalfId): number => {
    const depth = dartDepth(choices, h, x.y)
    return plans[h].darts.reduce((sum, d) => sum + d.mouth * Math.max(0, 1 - below / depth), 0)
  }
  const narrower =
    lengthOf(body, 'highHipGirth') / 4 +
    choices.easeHighHip -
    (lengthOf(body, 'hipGirth') / 4 + choices.easeHip)
  // The same way in from the hip on both halves, so that the side seams stay equal.
  const inFrom = Math.min(0, narrower + Math.max(openOf('back'), openOf('front')))
  return [point(x.x + inFrom, below)]
}
