/**
 * What a hand that always decides rightly leaves behind, because it reads a pin and not the truth:
 * the numbers go towards the true ones by as much of the way as the pin says, a pinned take-in by
 * its usual share. No engine does better but by luck; the figure stands beside that of ours.
 */
import type { Choices } from '../../../src/draft/choices.ts'
import type { GarmentId } from '../../../src/draft/draft.ts'
import { isMeasurementId } from '../../../src/measurements/catalogue.ts'
import { mm } from '../../../src/units/length.ts'
import type { Numbers } from '../bodies/numbers.ts'
import type { Case } from '../planted/cases.ts'
import { draftOf, halvesOf, wearer, worn } from '../planted/muslin.ts'
import type { Sign } from '../planted/sign.ts'
import { signs } from '../planted/signs.ts'
import type { Engine } from './engine.ts'

interface Sure {
  readonly garment: GarmentId
  readonly body: Numbers
  readonly choices: Choices
}

/** Part of a pinned take-in that is applied, 85 to 90 in a hundred: common practice. */
const TAKE_IN = 0.87
const TAKES_IN: readonly string[] = ['W2', 'SH1', 'B3', 'B8']

export const floorOf = (of: Case): Engine<Sure> => ({
  begin: (garment, body, choices) => ({ garment, body, choices }),
  draft: ({ garment, body, choices }) => draftOf(body, garment, choices),
  looks: () => [],
  decide: (state, told) => {
    const heard = told.signs.find(({ id }) => id === of.kind.shows)
    const now = halvesOf(draftOf(state.body, state.garment, state.choices))
    const seen = signs(worn(now, wearer(of.body, of.garment, of.intent)))
    const true_ = seen.find(({ id }) => id === of.kind.shows)
    const way = heard && true_ ? wayOf(heard, true_) : 0
    return {
      state: towards(state, of, way),
      first: undefined,
      asked: 0,
      edits: way === 0 ? [] : ['sewn again'],
      taped: [],
      reasons: [],
    }
  },
})

const wayOf = (heard: Sign, true_: Sign): number =>
  (heard.pin.value / true_.pin.value) * (TAKES_IN.includes(heard.id) ? TAKE_IN : 1)

function towards(state: Sure, of: Case, way: number): Sure {
  const body = Object.entries(state.body).flatMap(([id, v]) =>
    isMeasurementId(id) ? [[id, v + way * ((of.body[id] ?? v) - v)] as const] : [],
  )
  const short = of.intent.frontShort - state.choices.frontShort
  return {
    ...state,
    body: Object.fromEntries(body),
    choices: { ...state.choices, frontShort: mm(state.choices.frontShort + way * short) },
  }
}
