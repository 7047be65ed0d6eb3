/** What an act was, in a few words that stand after "Taken back:". */
import { CHOICES, type ChoiceId, type Choices } from '../../draft/choices.ts'
import { OPTIONS } from '../../draft/options.ts'
import { HEADS } from '../../fitting/complaints/heads.ts'
import type { Because } from '../../fitting/correction.ts'
import { measure, type MeasurementId } from '../../measurements/catalogue.ts'
import { garmentName } from '../../storage/garment-name.ts'
import type { HungGarment } from '../../storage/schema/garment.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import type { Mm } from '../../units/length.ts'
import type { Undone } from './undoing.svelte.ts'
import { UNDO_WORDS } from './undo.words.ts'

type What = (units: UnitChoice) => string

export const readingTyped =
  (id: MeasurementId, value: Mm): What =>
  (units) =>
    UNDO_WORDS.typed(measure(id).label, formatLength(value, units))
export const readingWithdrawn =
  (id: MeasurementId, value: Mm): What =>
  (units) =>
    UNDO_WORDS.withdrawn(measure(id).label, formatLength(value, units))
export const readingCorrected =
  (id: MeasurementId, was: Mm, value: Mm): What =>
  (units) =>
    UNDO_WORDS.made(measure(id).label, formatLength(was, units), formatLength(value, units))

export const saidTapeStands =
  (id: MeasurementId): What =>
  () =>
    UNDO_WORDS.tapeStands(measure(id).label)
export const tapedAnew =
  (id: MeasurementId): What =>
  () =>
    UNDO_WORDS.tapedAnew(measure(id).label)

export const changeMade =
  ({ complaint }: Because): What =>
  () =>
    UNDO_WORDS.change(HEADS[complaint].name)
export const changeTakenBack =
  ({ complaint }: Because): What =>
  () =>
    UNDO_WORDS.changeTakenBack(HEADS[complaint].name)

const isChoice = (id: string): id is ChoiceId => Object.hasOwn(CHOICES, id)
const isOption = (id: string): id is keyof typeof OPTIONS => Object.hasOwn(OPTIONS, id)

/** One choice by name with both values; several by their names. */
export const choicesChanged =
  (before: Choices, after: Choices, changed: readonly (keyof Choices)[]): What =>
  (units) => {
    const [id, ...more] = changed
    if (id === undefined) return UNDO_WORDS.aChoice
    if (more.length === 0 && isChoice(id))
      return UNDO_WORDS.made(
        labelOf(id),
        formatLength(before[id], units),
        formatLength(after[id], units),
      )
    return changed.map(labelOf).join(', ')
  }
const labelOf = (id: string): string =>
  isChoice(id) ? CHOICES[id].label : isOption(id) ? OPTIONS[id].label : id

export const hung =
  (garment: HungGarment): What =>
  () =>
    UNDO_WORDS.hung(garmentName(garment))
export const notesWritten =
  (round: number): What =>
  () =>
    UNDO_WORDS.notes(round)
export function garmentChanged(before: HungGarment, after: HungGarment): What {
  const name = garmentName(after)
  if (before.name !== after.name) return () => UNDO_WORDS.renamed(garmentName(before), name)
  if (before.takenOffOn !== after.takenOffOn)
    return () => (after.takenOffOn ? UNDO_WORDS.takenOff(name) : UNDO_WORDS.hungAgain(name))
  return () => UNDO_WORDS.howItIsCut(name)
}

export function undoneWords({ how, act }: Undone, units: UnitChoice): string {
  const what = act.what(units)
  if (how === 'back') return UNDO_WORDS.takenBack(what)
  if (how === 'again') return UNDO_WORDS.doneAgain(what)
  return UNDO_WORDS.tooLate(what)
}
