/**
 * What the proof of a draft found, each with its place and its numbers. `stop`: not for cutting.
 * `muslin`: for a muslin only. `note`: good to know.
 */
import { formatLength, type UnitChoice } from '../units/format.ts'
import type { Mm } from '../units/length.ts'

export type Severity = 'stop' | 'muslin' | 'note'

export const FINDING_WORDS = {
  overarmPair:
    'Overarm seams of back and front differ by {value}; sewn together they may differ by {limit}.',
  sidePair:
    'Side seams of back and front differ by {value}; sewn together they may differ by {limit}.',
  dartLegs:
    'The legs of the waist dart differ by {value}; sewn together they may differ by {limit}.',
  neckJoin: 'Back and front neck do not run on in one line at the overarm seam.',
  outlineCrosses:
    'The outline of this piece crosses itself. Change the number that was changed last.',
  armOpening:
    'The arm opening is {value} round; her upper arm and room to move need {limit}. Lower the underarm or lengthen the overarm.',
  upperArmUnknown: 'The upper arm is not taped, so the arm opening of {value} cannot be proved.',
  armpitUnknown:
    'The armpit level is not taped: the underarm stands {value} above the bust line. Sew a muslin with it, not cloth.',
  dartWide: 'The waist dart is {value} wide; {limit} is the most one dart holds well.',
  headUnknown:
    'The head is not taped, so it is not known whether the neck opening of {value} passes over it.',
  headOpening:
    'The neck opening is {value} round; the head needs {limit}. Widen or deepen the neck.',
  gettingInUnknown:
    'It is not known whether the waist of {value} passes over the bust and shoulders: tape the slip-through girth.',
  gettingIn:
    'The sewn waist is {value} round; {limit} must pass through it. It needs an opening at the side.',
  frontLength:
    'The front is {value} longer than the back over the body; {limit} of it lies in the raise. The rest wants a side bust dart.',
  balanceUnknown:
    'Front and back lengths over bust and blade are not taped; the front is raised by {value}, the usual amount.',
  straightWaist:
    'The waist is as wide as the bust here: the side runs straight and there is no dart.',
} as const
export type FindingId = keyof typeof FINDING_WORDS

export interface Finding {
  readonly id: FindingId
  readonly severity: Severity
  /** `front.sleeveEdge`, `back.side`: where to look on the drawing. */
  readonly place: string
  readonly value: Mm
  readonly limit: Mm
}

export const findingSentence = (f: Finding, units: UnitChoice): string =>
  FINDING_WORDS[f.id]
    .replace('{value}', formatLength(f.value, units))
    .replace('{limit}', formatLength(f.limit, units))

export const stopsCutting = (findings: readonly Finding[]): boolean =>
  findings.some((f) => f.severity === 'stop')
