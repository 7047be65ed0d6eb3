/**
 * A typed length becomes millimetres, or a question, or a sentence that says what to write.
 * Nothing ambiguous is guessed: a bare number takes her unit only where that unit alone gives
 * a length that can be meant.
 */
import { formatLength, type UnitChoice } from './format.ts'
import { mm, MM_PER_INCH, type Mm } from './length.ts'
import { decimals, plainNumber } from './number.ts'
import { PARSE_WORDS } from './parse.words.ts'
import { readWritten, type Written, type WrittenUnit } from './written.ts'

export interface PlausibleRange {
  readonly min: Mm
  readonly max: Mm
}
/** One way to understand what was typed, for a key she can choose. */
export interface Reading {
  readonly label: string
  readonly value: Mm
}
export type ParsedLength =
  /** `read` says how it was understood: "39.1 cm". */
  | { readonly ok: true; readonly value: Mm; readonly read: string }
  /** With `ask` the text has one or more possible meanings; without it, none. */
  | { readonly ok: false; readonly reason: string; readonly ask?: readonly Reading[] }

interface Candidate {
  readonly count: number
  readonly unit: WrittenUnit
}

const MM_PER: Readonly<Record<WrittenUnit, number>> = { mm: 1, cm: 10, m: 1000, in: MM_PER_INCH }
/** A long sewing tape is 3 m; nothing in this work is measured beyond it. Common practice, no source. */
const LONGEST_TAPE = mm(3000)
const ALL_UNITS: readonly WrittenUnit[] = ['cm', 'in', 'mm', 'm']

/**
 * Reads a length typed in a field. `plausible` is what the field can hold; give it wherever it
 * is known, because without it a bare number can only be taken in her unit.
 */
export function parseLength(
  text: string,
  choice: UnitChoice,
  plausible?: PlausibleRange,
): ParsedLength {
  const written = readWritten(text)
  if (written.kind === 'refused') return { ok: false, reason: written.reason }
  if (written.kind === 'grouped') return askGrouped(text, written, choice, plausible)
  const { value: count, unit } = written
  if (unit) return explicit({ count, unit }, choice, plausible)
  const { fraction } = written
  // She who reads inches means inches by every fraction; a centimetre can be said to be halved.
  if (fraction === 'fine' || (fraction === 'coarse' && choice.unit === 'inch'))
    return explicit({ count, unit: 'in' }, choice, plausible)
  return bare(text, count, choice, plausible)
}

/** The unit is written, so the length is plain; only an unlikely one is asked about. */
function explicit(
  meant: Candidate,
  choice: UnitChoice,
  plausible: PlausibleRange | undefined,
): ParsedLength {
  const value = lengthOf(meant)
  if (value > LONGEST_TAPE) return tooLong(meant, choice)
  if (!plausible || lies(value, plausible)) return { ok: true, value, read: said(meant) }
  const others = ALL_UNITS.filter((unit) => unit !== meant.unit)
    .map((unit) => ({ count: meant.count, unit }))
    .filter((candidate) => lies(lengthOf(candidate), plausible))
  const asWritten = value > 0 ? [meant] : []
  return asked(
    [...others, ...asWritten],
    choice,
    PARSE_WORDS.outside(said(meant), rangeSaid(plausible, choice)),
  )
}

function bare(
  text: string,
  count: number,
  choice: UnitChoice,
  plausible: PlausibleRange | undefined,
): ParsedLength {
  const own: Candidate = { count, unit: herUnit(choice) }
  if (!plausible) return explicit(own, choice, undefined)
  const possible = unitsHersFirst(choice)
    .map((unit) => ({ count, unit }))
    .filter((candidate) => lies(lengthOf(candidate), plausible))
  const [first] = possible
  if (!first) {
    return {
      ok: false,
      reason: PARSE_WORDS.outsideInEveryUnit(
        text.trim(),
        rangeSaid(plausible, choice),
        formatLength(plausible.min, choice),
      ),
    }
  }
  if (possible.length === 1 && first.unit === own.unit) {
    return { ok: true, value: lengthOf(first), read: said(first) }
  }
  const reason =
    possible.length > 1
      ? PARSE_WORDS.moreThanOneUnit(text.trim())
      : PARSE_WORDS.outsideInHerUnit(said(own), rangeSaid(plausible, choice))
  return asked(possible, choice, reason)
}

function askGrouped(
  text: string,
  written: Extract<Written, { kind: 'grouped' }>,
  choice: UnitChoice,
  plausible: PlausibleRange | undefined,
): ParsedLength {
  const units = written.unit
    ? [written.unit]
    : plausible
      ? unitsHersFirst(choice)
      : [herUnit(choice)]
  const fits = units
    .flatMap((unit) => [
      { count: written.asDecimal, unit },
      { count: written.asThousands, unit },
    ])
    .filter((candidate) => lengthOf(candidate) <= LONGEST_TAPE)
  const likely = plausible ? fits.filter((c) => lies(lengthOf(c), plausible)) : fits
  return asked(
    likely.length > 0 ? likely : fits,
    choice,
    PARSE_WORDS.thousandsOrDecimals(text.trim()),
  )
}

function asked(candidates: readonly Candidate[], choice: UnitChoice, reason: string): ParsedLength {
  if (candidates.length === 0) return { ok: false, reason }
  const values = candidates.map(lengthOf)
  const ask = candidates
    .filter((candidate, i) => values.indexOf(lengthOf(candidate)) === i)
    .map((candidate) => ({ label: label(candidate, choice), value: lengthOf(candidate) }))
  return { ok: false, reason, ask }
}

const tooLong = (meant: Candidate, choice: UnitChoice): ParsedLength => ({
  ok: false,
  reason: PARSE_WORDS.tooLong(
    said(meant),
    formatLength(LONGEST_TAPE, choice),
    formatLength(mm(413), choice),
  ),
})

const lengthOf = ({ count, unit }: Candidate): Mm => mm(count * MM_PER[unit])
const lies = (length: Mm, { min, max }: PlausibleRange): boolean => length >= min && length <= max
const herUnit = (choice: UnitChoice): WrittenUnit => (choice.unit === 'cm' ? 'cm' : 'in')
const unitsHersFirst = (choice: UnitChoice): readonly WrittenUnit[] => [
  herUnit(choice),
  ...ALL_UNITS.filter((unit) => unit !== herUnit(choice)),
]
const rangeSaid = ({ min, max }: PlausibleRange, choice: UnitChoice): string =>
  PARSE_WORDS.range(formatLength(min, choice), formatLength(max, choice))

/** The key shows the number as meant and, where that is not her unit, in her unit beside it. */
function label(candidate: Candidate, choice: UnitChoice): string {
  if (candidate.unit === herUnit(choice)) return said(candidate)
  return `${said(candidate)} (${formatLength(lengthOf(candidate), choice)})`
}

/** The finest mark said as a fraction; anything between is said as a decimal. */
const FINEST_MARK = 64
const DECIMALS_SAID = 3

function said({ count, unit }: Candidate): string {
  if (unit === 'in') return `${inchesSaid(count)} in`
  const atLeast = { mm: 0, cm: 1, m: 2 }[unit]
  const trimmed = Number(count.toFixed(DECIMALS_SAID))
  const places = Math.max(atLeast, `${trimmed}`.split('.')[1]?.length ?? 0)
  return `${decimals(trimmed, places)} ${unit}`
}

function inchesSaid(count: number): string {
  const marks = count * FINEST_MARK
  if (Math.abs(marks - Math.round(marks)) > 1e-6) return plainNumber(count, DECIMALS_SAID)
  let [top, bottom] = [Math.round(marks) % FINEST_MARK, FINEST_MARK]
  const whole = Math.floor(Math.round(marks) / FINEST_MARK)
  if (top === 0) return `${whole}`
  while (top % 2 === 0) {
    top /= 2
    bottom /= 2
  }
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`
}
