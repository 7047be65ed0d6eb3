/** The engine of the program: what is said of a muslin becomes corrections, and a new draft. */
import { correctedDraft } from '../../../src/fitting/apply.ts'
import { numbered } from '../../../src/fitting/fit-muslin.ts'
import { watchedFrom } from '../../../src/fitting/rules/watched.ts'
import { confirmedOf } from '../planted/muslin.ts'
import type { Engine } from './engine.ts'
import { talk, type Sewn } from './talk.ts'
import { isMeasurementId } from '../../../src/measurements/catalogue.ts'

const made = ({ garment, body, choices, corrections }: Sewn) =>
  correctedDraft(garment, confirmedOf(body, garment), choices, corrections)

export const CORRECTING: Engine<Sewn> = {
  begin: (garment, body, choices) => ({ garment, body, choices, corrections: [] }),
  draft: (state) => made(state).draft,
  looks: ({ corrections }, round) =>
    watchedFrom(corrections, round).map(({ complaint }) => complaint),
  decide: (state, told, round, answerer) => {
    const { fitted, asked, taped } = talk(state, told, round, answerer)
    const { decision, corrections, notDrawn } = fitted
    const next: Sewn = {
      ...state,
      body: { ...state.body, ...taped },
      corrections: [...state.corrections, ...numbered(corrections, state.corrections.length + 1)],
    }
    const { refused } = made(next)
    return {
      state: next,
      first: decision.causes[0],
      asked,
      edits: decision.edits.map((e) => `${e.op} ${e.target} ${e.way} ${e.applied.toFixed(1)}`),
      taped: Object.keys(taped).filter(isMeasurementId),
      reasons: [
        decision.decision,
        ...decision.reasons,
        ...notDrawn.map((n) => `not drawn: ${n.complaint} ${n.op} ${n.target}: ${n.why}`),
        ...refused.map((r) => `refused: ${JSON.stringify(r.why)}`),
      ],
    }
  },
}
