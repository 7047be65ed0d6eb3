/**
 * A file of numbers for the draft command, read into what the draft is made from; or one
 * sentence that says what to change. The measurements given are tape readings: two equal ones
 * are recorded for each, since whoever writes the file has the tape in hand.
 */
import * as v from 'valibot'
import type { Choices } from '../draft/choices.ts'
import type { GarmentId } from '../draft/draft.ts'
import { GARMENTS, isGarmentId, standardFor } from '../draft/garments.ts'
import type { Correction } from '../fitting/correction.ts'
import { addTape, emptyBook } from '../measurements/book.ts'
import { measure, MEASUREMENT_IDS, type MeasurementId } from '../measurements/catalogue.ts'
import { confirm, type Confirmed } from '../measurements/confirmed.ts'
import { isRecord } from '../measurements/stored.ts'
import { readAllowances, type Allowances } from '../output/allowance.ts'
import type { PaperId } from '../output/paper.ts'
import type { UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import { parseLength } from '../units/parse.ts'
import { draftInputSchema, type DraftInput } from './schema/draft-input.ts'
import { numberedCorrections } from './corrections-by-hand.ts'
import { filled } from './schema/choices.ts'
import { issueSentence, shown, type Parsed } from './schema/parsed.ts'

export interface DraftOrder {
  readonly garment: GarmentId
  readonly units: UnitChoice
  readonly body: Confirmed
  readonly choices: Choices
  readonly corrections: readonly Correction[]
  readonly allowances: Allowances
  readonly paper: PaperId
  readonly invented: boolean
  /** Measurements of the file that this garment does not use. */
  readonly unused: readonly MeasurementId[]
}

/** @param on ISO date of the readings */
export function readDraftInput(text: string, on: string): Parsed<DraftOrder> {
  let file: unknown
  try {
    file = JSON.parse(text)
  } catch (error) {
    const where = error instanceof Error ? ` (${error.message})` : ''
    return { ok: false, reason: `This is no JSON${where}. --example prints a file to start from.` }
  }
  const garment = isRecord(file) ? file['garment'] : undefined
  if (typeof garment !== 'string' || !isGarmentId(garment)) {
    const names = Object.keys(GARMENTS).join(', ')
    return { ok: false, reason: `garment: ${shown(garment)} cannot be drafted. Use ${names}.` }
  }
  const shape = v.safeParse(draftInputSchema(garment), file)
  if (!shape.success) return { ok: false, reason: shapeReason(shape.issues, garment) }
  return ordered(garment, shape.output, on)
}

function ordered(garment: GarmentId, input: DraftInput, on: string): Parsed<DraftOrder> {
  const units: UnitChoice = {
    unit: input.units === 'cm' ? 'cm' : 'inch',
    inchStep: input.inchStep ?? 8,
  }
  const body = taped(garment, input.measurements, units, on)
  if (!body.ok) return body
  const corrections = numberedCorrections(input.corrections ?? [])
  if (!corrections.ok) return corrections
  const allowances = readAllowances(withoutGaps(input.allowances ?? {}), units)
  if (!allowances.ok) return allowances
  const { needs, uses } = GARMENTS[garment]
  return {
    ok: true,
    value: {
      garment,
      units,
      body: body.value,
      choices: filled(input.choices ?? {}, standardFor(garment)),
      corrections: corrections.value,
      allowances: allowances.allowances,
      paper: input.paper ?? 'a4',
      invented: input.invented ?? false,
      unused: MEASUREMENT_IDS.filter(
        (id) => input.measurements[id] !== undefined && !needs.includes(id) && !uses.includes(id),
      ),
    },
  }
}

/** All missing measurements in one sentence; of everything else the first. */
function shapeReason(issues: readonly v.BaseIssue<unknown>[], garment: GarmentId): string {
  const missing = issues.flatMap((issue) => {
    const [field, key] = issue.path ?? []
    const gone = issue.type === 'strict_object' && issue.received === 'undefined'
    return gone && field?.key === 'measurements' && key ? [String(key.key)] : []
  })
  if (missing.length > 0) {
    const names = missing.map(
      (id) =>
        `${id} (${MEASUREMENT_IDS.filter((m) => m === id)
          .map((m) => measure(m).spoken)
          .join('')})`,
    )
    return `The ${GARMENTS[garment].name.toLowerCase()} cannot be drafted without ${names.join(', ')}. Tape what is missing and add it to measurements.`
  }
  const [first] = issues
  if (!first) throw new Error('draft input: refused without an issue')
  return issueSentence(first)
}

function taped(
  garment: GarmentId,
  measurements: DraftInput['measurements'],
  units: UnitChoice,
  on: string,
): Parsed<Confirmed> {
  let book = emptyBook()
  for (const id of MEASUREMENT_IDS) {
    const given = measurements[id]
    if (given === undefined) continue
    const length = read(id, given, units)
    if (!length.ok) return length
    book = addTape(addTape(book, id, length.value, on), id, length.value, on)
  }
  const { needs, uses } = GARMENTS[garment]
  const confirmation = confirm(book, needs, uses)
  if (confirmation.ok) return { ok: true, value: confirmation.body }
  return { ok: false, reason: confirmation.missing.map(({ why }) => why).join(' ') }
}

function read(id: MeasurementId, given: number | string, units: UnitChoice): Parsed<Mm> {
  if (typeof given === 'number') return { ok: true, value: mm(given) }
  const length = parseLength(given, units, measure(id).plausible)
  if (length.ok) return { ok: true, value: length.value }
  const meanings = (length.ask ?? []).map(({ label }) => label)
  const meant = meanings.length > 0 ? ` It could be ${meanings.join(' or ')}.` : ''
  return { ok: false, reason: `measurements.${id}: ${length.reason}${meant}` }
}

const withoutGaps = (
  given: Readonly<Record<string, number | undefined>>,
): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(given).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  )
