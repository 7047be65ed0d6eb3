/** Levels and widths of the draped blouse: the grid on which both halves are drawn. */
import { knows, measured, type Body } from '../../measurements/confirmed.ts'
import type { MeasurementId } from '../../measurements/catalogue.ts'
import { fixed, found, minus, over, plus, restingOn, type Amount } from '../../units/amount.ts'
import { mm, type Mm } from '../../units/length.ts'
import { choice, type ChoiceId, type Choices } from '../choices.ts'
import type { Sheet } from '../sheet.ts'
import type { TorsoNumbers, HalfId } from './blouse-numbers.ts'
import { overarmEnd } from './blouse-sleeve-edge.ts'
import { TORSO_WORDS as W } from './torso.words.ts'

/** Without an armpit reading the underarm lies this far above the bust line; for a muslin only. */
export const UNDERARM_GUESS = 25
export const BALANCE_IDS = ['sideNeckOverApexToWaist', 'sideNeckOverBladeToWaist'] as const

/** A quarter of a girth with its ease; the front's share is added there and taken from the back. */
export function quarter(
  body: Body,
  girth: MeasurementId,
  ease: ChoiceId,
  choices: Choices,
  half: HalfId,
): Amount {
  const own = plus(over(measured(body, girth), 4), choice(choices, ease))
  if (choices.frontShare === 0) return restingOn(own, ['frontShare'])
  return (half === 'front' ? plus : minus)(own, choice(choices, 'frontShare'))
}

/** What the width of the bust dart rests on. */
export const dartRests = (n: TorsoNumbers): readonly string[] => [
  ...BALANCE_IDS,
  ...(n.dartRests ?? []),
]

/** Where the underarm lies: struck at a level below the nape, or by the armpit and so much deeper. */
export interface Underarm {
  readonly underarm?: Mm
  readonly deeper: Mm
  /** How much higher than chosen the overarm ends, so that it stays above the underarm. */
  readonly raised?: Mm
  /** Nape to underarm line as another construction has it. */
  readonly depth?: Amount
}

export function levels(
  s: Sheet,
  body: Body,
  choices: Choices,
  n: TorsoNumbers,
  half: HalfId,
  underarm: Underarm,
): void {
  const opened = half === 'front' ? n.bustDart : 0
  const added = (a: Amount): Amount =>
    choices.lengthAdded === 0
      ? restingOn(a, ['lengthAdded'])
      : plus(a, choice(choices, 'lengthAdded'))
  const dart = (words: string, size: number, a: Amount): Amount =>
    opened === 0 ? a : plus(a, found(words, mm(size), dartRests(n)))
  s.measure(
    'C',
    'A',
    'down',
    dart(W.theBustDart, opened, added(measured(body, 'napeToWaist'))),
    '',
    'waistLine',
  )
  s.measure(
    'D',
    'C',
    'up',
    dart(W.halfTheBustDart, opened / 2, added(measured(body, 'waistToBustLevel'))),
    '',
    'bustLine',
  )
  underarmLevel(s, body, choices, opened, underarm)
  s.measure(
    'U',
    'E',
    'right',
    quarter(body, 'bustGirth', 'easeBust', choices, half),
    W.underarmPoint,
  )
  const chosen = overarmEnd(choices, half)
  const end = underarm.raised ? restingOn(chosen, ['napeToArmpitLevel', 'underarmDrop']) : chosen
  if (end.mm !== 0)
    s.measure(
      'G',
      'A',
      end.mm < 0 ? 'up' : 'down',
      { ...end, mm: mm(Math.abs(end.mm)) },
      W.levelOfOverarmEnd,
    )
  s.measure('H', 'C', 'down', measured(body, 'waistToHip'), '', 'hipLine')
  s.measure('X', 'H', 'right', quarter(body, 'hipGirth', 'easeHip', choices, half), W.sideAtHip)
  s.measure('L', 'C', 'down', choice(choices, 'lengthBelowWaist'), W.hemAtFold)
}

function underarmLevel(
  s: Sheet,
  body: Body,
  choices: Choices,
  opened: number,
  { underarm: struck, deeper, depth: own }: Underarm,
): void {
  if (own) return s.measure('E', 'A', 'down', own, W.depthOfArmhole, 'underarmLine')
  if (struck !== undefined) {
    const depth = found(W.whereStruckArcMeetsSide, struck, [
      'sideNeckToSleeveEdge',
      'bustGirth',
      'easeBust',
      'cornerRadius',
    ])
    return s.measure('E', 'A', 'down', depth, W.depthOfArmOpening, 'underarmLine')
  }
  if (knows(body, 'napeToArmpitLevel')) {
    const chosen = plus(measured(body, 'napeToArmpitLevel'), choice(choices, 'underarmDrop'))
    const arm = ['upperArmGirth', 'armRoom'] as const
    const depth =
      deeper > 0 ? plus(chosen, found(W.deeperForTheArm, deeper, arm)) : restingOn(chosen, arm)
    return s.measure('E', 'A', 'down', depth, W.depthOfArmOpening, 'underarmLine')
  }
  // The front's bust line may stand lower by half a dart; the underarm stays level with the back.
  s.measure(
    'E',
    'D',
    'up',
    fixed(mm(UNDERARM_GUESS + opened / 2)),
    W.depthWhileArmpitUntaped,
    'underarmLine',
  )
}
