/**
 * The talk over one muslin: she tells what she sees, the engine asks, she answers or cannot tell,
 * until it decides or has nothing more to ask.
 */
import type { Draft } from '../../../src/draft/draft.ts'
import { complaintOf } from '../../../src/fitting/complaints/catalogue.ts'
import { isComplaintId } from '../../../src/fitting/complaints/complaint.ts'
import type { Pin } from '../../../src/fitting/half-amount.ts'
import { dartsOf, measuredReaches } from '../../../src/fitting/measured-reaches.ts'
import { decide, type Decision } from '../../../src/fitting/rules/decide.ts'
import type { Asked, Facts, Reported } from '../../../src/fitting/rules/judged.ts'
import type { MeasurementId } from '../../../src/measurements/catalogue.ts'
import { mm } from '../../../src/units/length.ts'
import type { Sign } from '../planted/sign.ts'
import type { Told } from '../planted/telling.ts'
import type { Answerer } from './engine.ts'

/** A talk that goes on longer than this has lost her. */
const QUESTIONS_MOST = 8

export interface Talked {
  readonly decision: Decision
  readonly asked: number
  readonly taped: readonly MeasurementId[]
}

/** @param retaped the draft once these numbers were taped again */
export function talk(
  start: Draft,
  told: Told,
  answerer: Answerer,
  retaped: (numbers: Readonly<Partial<Record<MeasurementId, number>>>) => Draft,
): Talked {
  const answers: Record<string, Record<string, boolean>> = {}
  const open = new Set<string>()
  const numbers: Partial<Record<MeasurementId, number>> = {}
  let draft = start
  for (let asked = 0; ; asked++) {
    const reports = told.signs.map((s) => reported(s, answers[s.id] ?? {}))
    const taped = Object.keys(numbers) as MeasurementId[]
    const decision = decide(reports, factsOf(draft, told, taped))
    const next = decision.asks.find((a) => !open.has(keyOf(a)) && answerable(a))
    if (decision.decision !== 'ask' || !next || asked === QUESTIONS_MOST)
      return { decision, asked, taped }
    open.add(keyOf(next))
    if (next.tape) {
      for (const id of next.tape) numbers[id] = answerer.tape(id)
      draft = retaped(numbers)
    } else {
      const test = testOf(next)
      const said = test && answerer.holds(next.complaint, test.yes)
      if (test && said !== undefined)
        answers[next.complaint] = { ...answers[next.complaint], [`test ${test.number}`]: said }
    }
  }
}

const keyOf = (a: Asked): string => `${a.complaint} ${a.tape?.join() ?? a.what}`
const answerable = (a: Asked): boolean => a.tape !== undefined || testOf(a) !== undefined
/** A question is a test of the catalogue, by the number it begins with. */
function testOf(a: Asked) {
  const number = Number(/^Test (\d+)/.exec(a.what)?.[1] ?? NaN)
  return complaintOf(a.complaint).tests.find((t) => t.number === number)
}

function reported({ id, pin }: Sign, answers: Readonly<Record<string, boolean>>): Reported {
  if (!isComplaintId(id)) throw new Error(`planted: ${id} is not in the catalogue`)
  const own: Pin = { how: pin.how, where: pin.where, side: pin.side, value: mm(pin.value) }
  return { id, answers, pin: own }
}

function factsOf(draft: Draft, told: Told, retaped: readonly MeasurementId[]): Facts {
  const longer = Math.max(0, ...Object.values(told.stretched))
  return {
    garment: draft.garment,
    reaches: { ...measuredReaches(draft), ...(longer > 0 ? { sewnLonger: longer } : {}) },
    darts: dartsOf(draft),
    retaped,
  }
}
