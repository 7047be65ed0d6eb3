/** What an act was, in a few words that stand after "Taken back:". */
import { CHOICES, type ChoiceId, type Choices } from '../../draft/choices.ts'
import { OPTIONS } from '../../draft/options.ts'
import { HEADS } from '../../fitting/complaints/heads.ts'
import type { Because } from '../../fitting/correction.ts'
import { measure, type MeasurementId } from '../../measurements/catalogue.ts'
import type { HungGarment } from '../../storage/schema/garment.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import type { Mm } from '../../units/length.ts'
import type { Undone } from './undoing.svelte.ts'

type What = (units: UnitChoice) => string

export const readingTyped =
  (id: MeasurementId, value: Mm): What =>
  (units) =>
    `${measure(id).label}, ${formatLength(value, units)}`
export const readingWithdrawn =
  (id: MeasurementId, value: Mm): What =>
  (units) =>
    `${measure(id).label}, the reading ${formatLength(value, units)} withdrawn`
export const readingCorrected =
  (id: MeasurementId, was: Mm, value: Mm): What =>
  (units) =>
    `${measure(id).label}, ${formatLength(was, units)} made ${formatLength(value, units)}`

export const saidTapeStands =
  (id: MeasurementId): What =>
  () =>
    `${measure(id).label}, the tape is right`
export const tapedAnew =
  (id: MeasurementId): What =>
  () =>
    `${measure(id).label}, all readings withdrawn`

export const changeMade =
  ({ complaint }: Because): What =>
  () =>
    `the change for “${HEADS[complaint].name}”`
export const changeTakenBack =
  ({ complaint }: Because): What =>
  () =>
    `taking back the change for “${HEADS[complaint].name}”`

const isChoice = (id: string): id is ChoiceId => Object.hasOwn(CHOICES, id)
const isOption = (id: string): id is keyof typeof OPTIONS => Object.hasOwn(OPTIONS, id)

/** One choice by name with both values; several by their names. */
export const choicesChanged =
  (before: Choices, after: Choices, changed: readonly (keyof Choices)[]): What =>
  (units) => {
    const [id, ...more] = changed
    if (id === undefined) return 'a choice'
    if (more.length === 0 && isChoice(id))
      return `${labelOf(id)}, ${formatLength(before[id], units)} made ${formatLength(after[id], units)}`
    return changed.map(labelOf).join(', ')
  }
const labelOf = (id: string): string =>
  isChoice(id) ? CHOICES[id].label : isOption(id) ? OPTIONS[id].label : id

export const hung =
  ({ name }: HungGarment): What =>
  () =>
    `${name} hung on the rail`
export const notesWritten =
  (round: number): What =>
  () =>
    `the notes of round ${round}`
export function garmentChanged(before: HungGarment, after: HungGarment): What {
  if (before.name !== after.name) return () => `${before.name} renamed ${after.name}`
  if (before.takenOffOn !== after.takenOffOn)
    return () =>
      after.takenOffOn ? `${after.name} taken off the rail` : `${after.name} hung again`
  return () => `${after.name}, how it is cut`
}

export function undoneWords({ how, act }: Undone, units: UnitChoice): string {
  const what = act.what(units)
  if (how === 'back') return `Taken back: ${what}.`
  if (how === 'again') return `Done again: ${what}.`
  return `Too late to take this back: ${what}. It was changed since, or its round is on paper. Nothing was changed.`
}
