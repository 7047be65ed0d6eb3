/** The engine as far as its decision: it hears and asks, and leaves the draft as it is. */
import type { Choices } from '../../../src/draft/choices.ts'
import type { Draft, GarmentId } from '../../../src/draft/draft.ts'
import type { Numbers } from '../bodies/numbers.ts'
import { draftOf } from '../planted/muslin.ts'
import type { Engine } from './engine.ts'
import { talk } from './talk.ts'

interface Standing {
  readonly garment: GarmentId
  readonly body: Numbers
  readonly choices: Choices
  readonly draft: Draft
}

export const LISTENING: Engine<Standing> = {
  begin: (garment, body, choices) => ({
    garment,
    body,
    choices,
    draft: draftOf(body, garment, choices),
  }),
  draft: ({ draft }) => draft,
  decide: (state, told, _round, answerer) => {
    const { decision, asked, taped } = talk(state.draft, told, answerer, (numbers) =>
      draftOf({ ...state.body, ...numbers }, state.garment, state.choices),
    )
    return {
      state,
      first: decision.causes[0],
      asked,
      edits: decision.edits.map((e) => `${e.op} ${e.target} ${e.way} ${e.applied.toFixed(1)}`),
      taped,
      reasons: [decision.decision, ...decision.reasons],
    }
  },
}
