/** What the bench asks of an engine: begin with a draft, hear a muslin, decide, and redraft. */
import type { Choices } from '../../../src/draft/choices.ts'
import type { Draft, GarmentId } from '../../../src/draft/draft.ts'
import type { MeasurementId } from '../../../src/measurements/catalogue.ts'
import type { Numbers } from '../bodies/numbers.ts'
import type { Told } from '../planted/telling.ts'

/** She answers from what is true of her body and her muslin; undefined is "I cannot tell". */
export interface Answerer {
  /** Does one of these causes of the complaint hold? */
  readonly holds: (complaint: string, causes: readonly number[]) => boolean | undefined
  /** Tapes a number once more. */
  readonly tape: (id: MeasurementId) => number
}

export interface Decided<State> {
  readonly state: State
  /** Cause the engine puts first, as complaint and number: `B1.2`. */
  readonly first: string | undefined
  readonly asked: number
  /** Changes of the draft, in words, for the list of cases; empty where nothing was changed. */
  readonly edits: readonly string[]
  /** Numbers it had taped once more. */
  readonly taped: readonly MeasurementId[]
  /** What it says for itself. */
  readonly reasons: readonly string[]
}

export interface Engine<State> {
  readonly begin: (garment: GarmentId, body: Numbers, choices: Choices) => State
  readonly draft: (state: State) => Draft
  /** Complaints whose place it wants read again, because the muslin before left something over. */
  readonly looks: (state: State, round: number) => readonly string[]
  readonly decide: (state: State, told: Told, round: number, answerer: Answerer) => Decided<State>
}
