/**
 * Lengths as she reads them. Centimetres to 1 mm, inches to the step she chose. A printed
 * number is always a whole count of steps (1 mm, 1/8 in or 1/16 in), and a change is the
 * difference of two such counts, so columns of before, after and change add up.
 */
import { FORMAT_WORDS } from './format.words.ts'
import { mm, MM_PER_INCH, type Mm } from './length.ts'
import { decimals } from './number.ts'

export type DisplayUnit = 'cm' | 'inch'

export interface UnitChoice {
  readonly unit: DisplayUnit
  /** The fineness of her inch ruler: eighths or sixteenths. Unused while the unit is cm. */
  readonly inchStep: 8 | 16
}

/** A printed length in pieces, for tables that keep a slot of fixed width for the fraction. */
export interface LengthParts {
  readonly sign: '' | '−' | '+'
  /** Whole inches, or centimetres with their one decimal; '' where an inch length is all fraction. */
  readonly whole: string
  /** Reduced, as in '3/8'; '' when there is none, and always '' in centimetres. */
  readonly fraction: string
  readonly unit: 'cm' | 'in'
}

/** Below a millionth of a step a half step is a half step, whatever floating point made of it. */
const HALF_STEP_SLACK = 1e-6
/** One decimal of a centimetre is one millimetre. */
const STEPS_PER_CM = 10

/** The printed length, unit included: "41.3 cm", "16 1/4 in", "−0.5 cm". */
export function formatLength(length: Mm, choice: UnitChoice): string {
  return `${formatNumber(length, choice)}${FORMAT_WORDS.gap}${unitMark(choice)}`
}

/**
 * A length of a construction step, unit included. In centimetres half a millimetre is kept
 * ("26.85 cm"), because a step is measured from points that were themselves measured, and whole
 * millimetres would add up to more than a pencil line. In inches it is the printed length.
 */
export function formatStep(length: Mm, choice: UnitChoice): string {
  const halves = Math.round(length * 2)
  return choice.unit === 'cm' && halves % 2 !== 0
    ? `${decimals(Math.abs(halves) / 20, 2)}${FORMAT_WORDS.gap}cm`
    : formatLength(mm(choice.unit === 'cm' ? halves / 2 : length), choice)
}

/** The printed length without its unit: "41.3", "16 1/4". */
export function formatNumber(length: Mm, choice: UnitChoice): string {
  return joinParts(partsOf(stepsOf(length, choice), choice))
}

/** The printed length in pieces. */
export function formatParts(length: Mm, choice: UnitChoice): LengthParts {
  return partsOf(stepsOf(length, choice), choice)
}

/** The length that the printed number says. */
export function printedMm(length: Mm, choice: UnitChoice): Mm {
  return mm(stepsOf(length, choice) * stepMm(choice))
}

/** What changed, as the difference of the two printed numbers: "+0.5 cm", "−1/8 in", "same". */
export function formatChange(before: Mm, after: Mm, choice: UnitChoice): string {
  const steps = stepsOf(after, choice) - stepsOf(before, choice)
  if (steps === 0) return FORMAT_WORDS.same
  const plus = steps > 0 ? '+' : ''
  return `${plus}${joinParts(partsOf(steps, choice))}${FORMAT_WORDS.gap}${unitMark(choice)}`
}

/** How a length is said by the change of two printed numbers, in pieces; sign '' means "same". */
export function changeParts(before: Mm, after: Mm, choice: UnitChoice): LengthParts {
  const steps = stepsOf(after, choice) - stepsOf(before, choice)
  const parts = partsOf(steps, choice)
  return steps > 0 ? { ...parts, sign: '+' } : parts
}

/** "All in inches": in a sentence the mark “in” would be read as another word. */
export const unitName = ({ unit }: UnitChoice): string =>
  unit === 'cm' ? 'cm' : FORMAT_WORDS.inches
export const unitMark = (choice: UnitChoice): 'cm' | 'in' => (choice.unit === 'cm' ? 'cm' : 'in')

const stepMm = (choice: UnitChoice): number =>
  choice.unit === 'cm' ? 1 : MM_PER_INCH / choice.inchStep

/** Whole steps, halves rounded away from zero on both sides so that −x prints as the mirror of x. */
function stepsOf(length: Mm, choice: UnitChoice): number {
  if (!Number.isFinite(length)) throw new Error(`format: ${length} is not a length`)
  const steps = Math.floor(Math.abs(length) / stepMm(choice) + 0.5 + HALF_STEP_SLACK)
  return length < 0 && steps > 0 ? -steps : steps
}

function partsOf(steps: number, choice: UnitChoice): LengthParts {
  const sign = steps < 0 ? '−' : ''
  const count = Math.abs(steps)
  if (choice.unit === 'cm') {
    return { sign, whole: decimals(count / STEPS_PER_CM, 1), fraction: '', unit: 'cm' }
  }
  const whole = Math.floor(count / choice.inchStep)
  const fraction = reduced(count % choice.inchStep, choice.inchStep)
  return { sign, whole: whole === 0 && fraction !== '' ? '' : `${whole}`, fraction, unit: 'in' }
}

function joinParts({ sign, whole, fraction }: LengthParts): string {
  return `${sign}${[whole, fraction].filter((piece) => piece !== '').join(' ')}`
}

/** "6/16" is read as "3/8": an inch ruler has marks, not sixteenths of a count. */
function reduced(over: number, under: number): string {
  if (over === 0) return ''
  let [top, bottom] = [over, under]
  while (top % 2 === 0) {
    top /= 2
    bottom /= 2
  }
  return `${top}/${bottom}`
}
