/**
 * One case through two rounds: the muslin is worn, told, decided upon, sewn anew and worn again.
 * The error is counted on the sewn piece against the piece drafted from the true numbers.
 */
import { measure, type MeasurementId } from '../../../src/measurements/catalogue.ts'
import { normal, type Chance } from '../bodies/chance.ts'
import { numberOf } from '../bodies/numbers.ts'
import type { Case } from '../planted/cases.ts'
import {
  lengthOf,
  LENGTH_NAMES,
  misfit,
  type LengthName,
  type Lengths,
} from '../planted/lengths.ts'
import { halvesOf, wearer, worn } from '../planted/muslin.ts'
import type { Sign } from '../planted/sign.ts'
import { signs, type Worn } from '../planted/signs.ts'
import { tell, tellNothing, type Scatter, type Telling, type Told } from '../planted/telling.ts'
import type { Answerer, Engine } from './engine.ts'

export const ROUNDS = 2

export interface Round {
  /** What was told, as `B1 side slit 21.3`, and the causes that hold, as `B1.2`. */
  readonly told: readonly string[]
  readonly truth: readonly string[]
  readonly first: string | undefined
  readonly asked: number
  readonly edits: readonly string[]
  readonly taped: readonly MeasurementId[]
  readonly reasons: readonly string[]
  /** Error left in the counted length, mm. */
  readonly left: number
  /** The length beside the counted one that now fits worst, and by how much it got worse, mm. */
  readonly elsewhere: { readonly name: LengthName; readonly worse: number } | undefined
}

export interface Played {
  readonly of: Case
  readonly before: number
  readonly rounds: readonly Round[]
}

export function play<State>(
  of: Case,
  engine: Engine<State>,
  scatter: Scatter,
  { count = ROUNDS, roundabout = false }: { count?: number; roundabout?: boolean } = {},
): Played {
  const first: Telling = roundabout ? 'roundabout' : of.misled ? 'misled' : 'plain'
  const chance = normal(of.seed)
  const own = wearer(of.body, of.garment, of.intent)
  const wear = (state: State): Worn => worn(halvesOf(engine.draft(state)), own)
  const errors = (w: Worn) => misfit(w.sewn, own.right)
  let state = engine.begin(of.garment, of.wrong, of.drafted)
  let now = wear(state)
  const start = errors(now)
  const rounds: Round[] = []
  for (let round = 1; round <= count; round++) {
    const looked = engine.looks(state, round)
    const found = signs(now, looked)
    const told = toldOf(
      of,
      found,
      now.misfit,
      round === 1 ? first : 'plain',
      round,
      scatter,
      chance,
      looked,
    )
    const decided =
      told.signs.length === 0
        ? { state, first: undefined, asked: 0, edits: [], taped: [], reasons: [] }
        : engine.decide(
            state,
            told,
            round,
            answererOf(of, [...told.signs, ...found], round, chance),
          )
    state = decided.state
    now = wear(state)
    const after = errors(now)
    rounds.push({
      told: told.signs.map((s) => `${s.id} ${s.pin.where} ${s.pin.how} ${s.pin.value.toFixed(1)}`),
      truth: told.signs.flatMap((s) => s.causes.map((n) => `${s.id}.${n}`)),
      first: decided.first,
      asked: decided.asked,
      edits: decided.edits,
      taped: decided.taped,
      reasons: decided.reasons,
      left: Math.abs(lengthOf(after, of.kind.counted)),
      elsewhere: worstElsewhere(of.kind.counted, start, after),
    })
  }
  return { of, before: Math.abs(lengthOf(start, of.kind.counted)), rounds }
}

function toldOf(
  of: Case,
  found: readonly Sign[],
  off: Lengths,
  telling: Telling,
  round: number,
  scatter: Scatter,
  chance: Chance,
  looked: readonly string[],
): Told {
  if (of.nothing && round === 1) return tellNothing(of.nothing, scatter, chance)
  return tell(found, off, telling, scatter, chance, looked)
}

/**
 * She answers by what she sees; of a sight that is not there she says no. In the cases drawn for
 * it the first question of the first round stays open.
 */
function answererOf(of: Case, seen: readonly Sign[], round: number, chance: Chance): Answerer {
  let open = of.unanswered && round === 1
  return {
    holds: (complaint, causes) => {
      if (open) {
        open = false
        return undefined
      }
      const sign = seen.find((s) => s.id === complaint)
      return sign !== undefined && sign.causes.some((n) => causes.includes(n))
    },
    // Two readings that agree within the tolerance of the book: their mean strays by so much.
    tape: (id) => numberOf(of.body, id) + chance() * (measure(id).tolerance.value / TAPE_SPREAD),
  }
}
/** The tolerance holds nine readings in ten, and a mean of two strays by the root of two less. */
const TAPE_SPREAD = 1.645 * Math.SQRT2

/** Parts of another length; and the bust dart, which is a place for shape and no fit by itself. */
const PARTS: readonly LengthName[] = ['bustFront', 'bustBack', 'sideLength', 'bustDart']

function worstElsewhere(
  counted: LengthName,
  start: ReturnType<typeof misfit>,
  after: ReturnType<typeof misfit>,
): Round['elsewhere'] {
  const grown = LENGTH_NAMES.filter((n) => n !== counted && !PARTS.includes(n)).flatMap((name) => {
    const [a, b] = [start[name], after[name]]
    return a === undefined || b === undefined ? [] : [{ name, worse: Math.abs(b) - Math.abs(a) }]
  })
  return grown.sort((a, b) => b.worse - a.worse)[0]
}
