/** The rounds of the planted bench, judged with engines whose worth is known beforehand. */
import { describe, expect, test } from 'vitest'
import type { Engine } from '../../../scripts/bench/planted-rounds/engine.ts'
import { play } from '../../../scripts/bench/planted-rounds/play.ts'
import {
  causeFigures,
  figures,
  nothingFigures,
  quantile,
} from '../../../scripts/bench/planted-rounds/tally.ts'
import type { Numbers } from '../../../scripts/bench/bodies/numbers.ts'
import { NOTHINGS } from '../../../scripts/bench/planted/beside.ts'
import type { Case } from '../../../scripts/bench/planted/cases.ts'
import { intentOf, KINDS } from '../../../scripts/bench/planted/kinds.ts'
import { draftOf } from '../../../scripts/bench/planted/muslin.ts'
import { SCATTER } from '../../../scripts/bench/planted/telling.ts'
import type { Choices } from '../../../src/draft/choices.ts'
import type { GarmentId } from '../../../src/draft/draft.ts'
import { MIDDLE } from '../../bodies.ts'

interface State {
  readonly garment: GarmentId
  readonly body: Numbers
  readonly choices: Choices
}
/** Sews again from numbers that are so far from the wrong ones, towards the true body or away. */
const going = (share: number): Engine<State> => ({
  begin: (garment, body, choices) => ({ garment, body, choices }),
  draft: ({ garment, body, choices }) => draftOf(body, garment, choices),
  looks: () => [],
  decide: (state, told, _round, answerer) => ({
    state: {
      ...state,
      body: Object.fromEntries(
        Object.entries(state.body).map(([id, v]) => [
          id,
          v + share * ((MIDDLE[id as keyof typeof MIDDLE] ?? v) - v),
        ]),
      ),
    },
    first: told.signs[0] && `${told.signs[0].id}.${told.signs[0].causes.join()}`,
    asked: answerer.holds(told.signs[0]?.id ?? '', [1]) === undefined ? 0 : 1,
    edits: share === 0 ? [] : ['sewn again'],
    taped: [],
    reasons: [],
  }),
})

function caseOf(id: string, more: Partial<Case> = {}): Case {
  const kind = KINDS.find((k) => k.id === id)
  const garment = kind?.garments[0]
  if (!kind || !garment) throw new Error(`no kind ${id}`)
  const intent = intentOf(garment, kind)
  return {
    kind,
    garment,
    body: MIDDLE,
    intent,
    wrong: kind.plant(MIDDLE),
    drafted: kind.plantChoice?.(intent) ?? intent,
    nothing: undefined,
    misled: false,
    unanswered: false,
    seed: 5,
    ...more,
  }
}
const TAPED = KINDS.filter((k) => !k.plantChoice).map((k) => k.id)
const run = (share: number) => TAPED.map((id) => play(caseOf(id), going(share), SCATTER))

describe('what is left', () => {
  test('by an engine that does nothing: all of it, and nothing worse', () => {
    const f = figures(run(0))
    expect([f.left1, f.left2, f.worse, f.worstBy]).toEqual([100, 100, 0, 0])
  })

  test('by one that knows the body: nothing', () => {
    const f = figures(run(1))
    expect([f.left1, f.left2, f.worse]).toEqual([0, 0, 0])
    expect(f.elsewhere).toBe(0)
  })

  test('by one that goes half the way: a half, then what is no longer seen or a quarter', () => {
    const f = figures(run(0.5))
    expect(f.left1).toBeCloseTo(50, 0)
    expect(f.left2).toBeLessThan(51)
  })

  test('by one that goes the wrong way: twice as much, and it is counted as worse', () => {
    const f = figures(run(-1))
    expect(f.left1).toBeCloseTo(200, 0)
    expect(f.worse).toBe(100)
    expect(f.beyondNoise).toBe(TAPED.length)
  })
})

test('a change elsewhere is found: the apex comes right and the bust is lost', () => {
  const [of, engine] = [caseOf('apexHigh'), going(1)]
  const spoiling: Engine<State> = {
    ...engine,
    decide: (...args) => {
      const decided = engine.decide(...args)
      const body = { ...decided.state.body, bustGirth: MIDDLE.bustGirth - 20 }
      return { ...decided, state: { ...decided.state, body } }
    },
  }
  const played = play(of, spoiling, SCATTER)
  expect(played.rounds[0]?.left).toBeCloseTo(0, 6)
  expect(played.rounds[0]?.elsewhere).toEqual({ name: 'bust', worse: expect.closeTo(20, 0) })
  expect(figures([played]).elsewhere).toBe(100)
})

test('a muslin without a fault: an edit is counted against the engine, none is not', () => {
  const [sight] = NOTHINGS.block
  const of = caseOf('slopeFlat', { nothing: sight, wrong: MIDDLE })
  expect(nothingFigures([play(of, going(1), SCATTER)])).toEqual({ n: 1, noEdit: 0 })
  expect(nothingFigures([play(of, going(0), SCATTER)])).toEqual({ n: 1, noEdit: 100 })
  expect(figures([play(of, going(0), SCATTER)]).n).toBe(0)
})

test('the cause put first is held against the true one, and questions are counted', () => {
  const played = [play(caseOf('slopeFlat'), going(1), SCATTER)]
  expect(causeFigures(played)).toEqual({ n: 1, first: 100, asked: 1 })
  // With the question left open this engine counts it as not asked.
  const open = play(caseOf('slopeFlat', { unanswered: true }), going(1), SCATTER)
  expect(open.rounds[0]?.asked).toBe(0)
})

test('the same case plays the same twice', () => {
  const of = caseOf('hipShort', { misled: true })
  expect(play(of, going(0.5), SCATTER)).toEqual(play(of, going(0.5), SCATTER))
})

test('quantiles of 1 to 5: 3 in the middle, 4.6 at nine tenths', () => {
  // Linear between the places, as spreadsheets give it.
  expect(quantile([5, 1, 3, 2, 4], 0.5)).toBe(3)
  expect(quantile([5, 1, 3, 2, 4], 0.9)).toBeCloseTo(4.6, 9)
})
