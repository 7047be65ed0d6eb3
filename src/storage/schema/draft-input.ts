/**
 * The shape of a file of numbers for the draft command. Numbers are millimetres; a measurement
 * may also be a text with a unit ("39.1 cm", "15 3/8 in"), whose meaning is read by
 * `read-draft-input.ts`. What stands here can be written as JSON Schema, so nothing is
 * transformed; what cannot be said there (texts, ids used twice) is checked after it.
 */
import * as v from 'valibot'
import type { GarmentId } from '../../draft/draft.ts'
import { GARMENTS } from '../../draft/garments.ts'
import { EDGE_WORDS } from '../../draft/piece.words.ts'
import { MEASUREMENT_IDS, measure, type MeasurementId } from '../../measurements/catalogue.ts'
import { WIDEST_ALLOWANCE } from '../../output/finish.ts'
import { PAPER_IDS } from '../../output/paper.ts'
import { GivenChoicesSchema } from './choices.ts'
import {
  AlongSchema,
  BecauseSchema,
  ChoiceIdSchema,
  EDGE_NAMES,
  EdgeNameSchema,
  PieceIdSchema,
  WidthSchema,
} from './correction.ts'
import { OperationSchema } from './operation.ts'
import { CountSchema, FURTHEST, IdSchema } from './length.ts'
import { shown } from './parsed.ts'

/** "15 3/8 in" has 9 letters; longer than this is no length. */
const LONGEST_LENGTH_TEXT = 40
/** More corrections than this were not decided by a person. */
const MOST_CORRECTIONS = 200

const MeasurementTextSchema = v.pipe(
  v.string(),
  v.minLength(1, 'A length is missing; write it as 391, "39.1 cm" or "15 3/8 in".'),
  v.maxLength(LONGEST_LENGTH_TEXT, 'This is no length; write it as 391, "39.1 cm" or "15 3/8 in".'),
  v.description('A length with its unit: "39.1 cm", "391 mm", "15 3/8 in". Without one: in units.'),
)

function measurementSchema(id: MeasurementId) {
  const { label, plausible } = measure(id)
  const why = (issue: v.BaseIssue<unknown>): string =>
    `${label} would be ${shown(issue.input)} mm; it lies between ${plausible.min} and ${plausible.max} mm. Write millimetres as a number, or the unit in a text, as in "39.1 cm".`
  return v.union(
    [
      v.pipe(
        v.number(),
        v.minValue(plausible.min, why),
        v.maxValue(plausible.max, why),
        v.description(`${label}, mm`),
      ),
      MeasurementTextSchema,
    ],
    (issue) =>
      `${shown(issue.input)} is no length of ${label}; write it as 391, "39.1 cm" or "15 3/8 in".`,
  )
}

function measurementsSchema(garment: GarmentId) {
  const needed = GARMENTS[garment].needs
  const entries = MEASUREMENT_IDS.map((id) => {
    const own = measurementSchema(id)
    return [id, needed.includes(id) ? own : v.exactOptional(own)] as const
  })
  return v.strictObject(Object.fromEntries(entries), (issue) => {
    const key = keyOf(issue)
    return issue.expected === 'never'
      ? `There is no measurement "${key}". --schema lists them all.`
      : key === ''
        ? `${shown(issue.input)} is not a set of measurements.`
        : `"${key}" is missing.`
  })
}

const number = (what: string) => (issue: v.BaseIssue<unknown>) => `${shown(issue.input)} is ${what}`
/** The millimetres a choice is turned by. */
const ByNumberSchema = v.pipe(
  v.number(number('no number of millimetres.')),
  v.minValue(-FURTHEST, number('no length of this work.')),
  v.maxValue(FURTHEST, number('no length of this work.')),
)
const filledIn = {
  v: v.exactOptional(v.literal(1)),
  id: v.exactOptional(v.pipe(IdSchema, v.description('c1, c2, … in their order when left out'))),
}

/** Each kind in the stored form, or by hand without `v`, `id`, `because` and `round`. */
export const CORRECTION_INPUTS = {
  'turn-choice': v.strictObject({
    ...filledIn,
    kind: v.literal('turn-choice'),
    choice: ChoiceIdSchema,
    by: v.pipe(ByNumberSchema, v.description('mm; more or less than the choice now')),
    side: v.exactOptional(v.picklist(['left', 'right'])),
    because: v.exactOptional(BecauseSchema),
  }),
  'close-wedge': v.strictObject({
    ...filledIn,
    kind: v.literal('close-wedge'),
    piece: PieceIdSchema,
    edge: EdgeNameSchema,
    along: v.pipe(AlongSchema, v.description('place on the edge, 0 at the underarm, 1 at its end')),
    width: v.pipe(WidthSchema, v.description('mm at the edge, nothing at the apex')),
    because: v.exactOptional(BecauseSchema),
  }),
  operate: v.strictObject({
    ...filledIn,
    kind: v.literal('operate'),
    operation: OperationSchema,
    side: v.exactOptional(v.picklist(['left', 'right'])),
    because: v.exactOptional(BecauseSchema),
  }),
  withdraw: v.strictObject({
    ...filledIn,
    kind: v.literal('withdraw'),
    correction: v.pipe(IdSchema, v.description('id of an earlier correction')),
    round: v.exactOptional(CountSchema),
  }),
} as const

const CorrectionInputSchema = v.variant(
  'kind',
  [
    CORRECTION_INPUTS['turn-choice'],
    CORRECTION_INPUTS['close-wedge'],
    CORRECTION_INPUTS.operate,
    CORRECTION_INPUTS.withdraw,
  ],
  (issue) =>
    `${shown(issue.input)} is no kind of correction. Use turn-choice, close-wedge, operate or withdraw.`,
)

const allowanceEntries = EDGE_NAMES.map((edge) => {
  const most = WIDEST_ALLOWANCE
  const why = (issue: v.BaseIssue<unknown>): string =>
    `The allowance at the ${EDGE_WORDS[edge]} would be ${shown(issue.input)}; give 0 to ${most} mm.`
  return [
    edge,
    v.exactOptional(v.pipe(v.number(why), v.minValue(0, why), v.maxValue(most, why))),
  ] as const
})
const AllowancesInputSchema = v.strictObject(Object.fromEntries(allowanceEntries), (issue) =>
  issue.expected === 'never'
    ? `There is no edge "${keyOf(issue)}". The edges are ${EDGE_NAMES.join(', ')}.`
    : `${shown(issue.input)} is not a set of allowances.`,
)

const oneOf =
  (what: string, names: readonly (string | number)[]) => (issue: v.BaseIssue<unknown>) =>
    issue.input === undefined
      ? `${what} is missing. Use ${names.join(' or ')}.`
      : `${shown(issue.input)} is no ${what}. Use ${names.join(' or ')}.`

/** The fields of a file for one garment; what it needs to be taped is required. */
export const draftInputSchema = (garment: GarmentId) =>
  v.strictObject(
    {
      garment: v.literal(garment, oneOf('garment', [garment])),
      units: v.pipe(
        v.picklist(['cm', 'in'], oneOf('unit', ['cm', 'in'])),
        v.description('how steps are written, and how a text without a unit is read'),
      ),
      inchStep: v.exactOptional(
        v.pipe(
          v.picklist([8, 16], oneOf('part of an inch', [8, 16])),
          v.description('eighths or sixteenths in written steps; 8 when left out'),
        ),
      ),
      measurements: measurementsSchema(garment),
      choices: v.exactOptional(GivenChoicesSchema),
      corrections: v.exactOptional(
        v.pipe(
          v.array(CorrectionInputSchema, 'The corrections are no list.'),
          v.maxLength(MOST_CORRECTIONS, `There are more than ${MOST_CORRECTIONS} corrections.`),
        ),
      ),
      allowances: v.exactOptional(AllowancesInputSchema),
      paper: v.exactOptional(v.picklist(PAPER_IDS, oneOf('paper', PAPER_IDS))),
      invented: v.exactOptional(
        v.pipe(v.boolean(), v.description('true: nobody was measured; the pages say so')),
      ),
    },
    (issue) => {
      const key = keyOf(issue)
      return issue.expected === 'never'
        ? `There is no field "${key}". The fields are garment, units, inchStep, measurements, choices, corrections, allowances, paper, invented.`
        : key === ''
          ? 'The file is no object of fields.'
          : `"${key}" is missing.`
    },
  )

export type DraftInput = v.InferOutput<ReturnType<typeof draftInputSchema>>
export type CorrectionInput = v.InferOutput<typeof CorrectionInputSchema>

/** The last key of the place an issue is about. */
function keyOf(issue: v.BaseIssue<unknown>): string {
  const key = issue.path?.at(-1)?.key
  return typeof key === 'string' ? key : ''
}
