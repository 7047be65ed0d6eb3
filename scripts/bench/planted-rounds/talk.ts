/**
 * The talk over one muslin: she tells what she sees, the engine asks, she answers or cannot tell,
 * until it decides or has nothing more to ask. Numbers in doubt are taped again, and the muslin is
 * heard anew with what the tape then says.
 */
import type { Choices } from '../../../src/draft/choices.ts'
import type { GarmentId } from '../../../src/draft/draft.ts'
import { complaintOf } from '../../../src/fitting/complaints/catalogue.ts'
import { isComplaintId } from '../../../src/fitting/complaints/complaint.ts'
import type { Correction } from '../../../src/fitting/correction.ts'
import { fitMuslin, type Fitted } from '../../../src/fitting/fit-muslin.ts'
import type { Pin } from '../../../src/fitting/half-amount.ts'
import type { Asked, Reported } from '../../../src/fitting/rules/judged.ts'
import { isMeasurementId, type MeasurementId } from '../../../src/measurements/catalogue.ts'
import { mm } from '../../../src/units/length.ts'
import type { Numbers } from '../bodies/numbers.ts'
import { confirmedOf } from '../planted/muslin.ts'
import type { Sign } from '../planted/sign.ts'
import type { Told } from '../planted/telling.ts'
import type { Answerer } from './engine.ts'

/** What the sewn muslin was made from. */
export interface Sewn {
  readonly garment: GarmentId
  readonly body: Numbers
  readonly choices: Choices
  readonly corrections: readonly Correction[]
}
export interface Talked {
  readonly fitted: Fitted
  readonly asked: number
  readonly taped: Numbers
}

/** A talk that goes on longer than this has lost her. */
const QUESTIONS_MOST = 8
/** The day the bench pretends to sew; nothing depends on it. */
const ON = '2026-01-02'

export function talk(sewn: Sewn, told: Told, round: number, answerer: Answerer): Talked {
  const answers: Record<string, Record<string, boolean>> = {}
  const heard = new Set<string>()
  const cannotTell: Record<string, number[]> = {}
  let taped: Numbers = {}
  for (let asked = 0; ; asked++) {
    const fitted = fitMuslin({
      garment: sewn.garment,
      body: confirmedOf({ ...sewn.body, ...taped }, sewn.garment),
      choices: sewn.choices,
      corrections: sewn.corrections,
      complaints: told.signs.map((s) => reported(s, answers[s.id] ?? {}, cannotTell[s.id] ?? [])),
      sewn: longer(told),
      cutFrom: confirmedOf(sewn.body, sewn.garment).values,
      retaped: Object.keys(taped).filter(isMeasurementId),
      round,
      on: ON,
    })
    const { decision, asks } = fitted.decision
    const next = asks.find((a) => !heard.has(keyOf(a)) && answerable(a))
    if (decision === 'change' || !next || asked === QUESTIONS_MOST) return { fitted, asked, taped }
    heard.add(keyOf(next))
    if (next.tape) taped = { ...taped, ...tapedBy(next.tape, answerer) }
    else {
      const test = testOf(next)
      const said = test && answerer.holds(next.complaint, test.yes)
      if (test && said === undefined)
        cannotTell[next.complaint] = [...(cannotTell[next.complaint] ?? []), test.number]
      if (test && said !== undefined)
        answers[next.complaint] = { ...answers[next.complaint], [`test ${test.number}`]: said }
    }
  }
}

const tapedBy = (ids: readonly MeasurementId[], answerer: Answerer): Numbers =>
  Object.fromEntries(ids.map((id) => [id, answerer.tape(id)]))

const keyOf = (a: Asked): string => `${a.complaint} ${a.tape?.join() ?? a.what}`
const answerable = (a: Asked): boolean => a.tape !== undefined || testOf(a) !== undefined
/** A question is a test of the catalogue. */
const testOf = (a: Asked) => complaintOf(a.complaint).tests.find((t) => t.number === a.test)

function reported(
  { id, pin }: Sign,
  answers: Readonly<Record<string, boolean>>,
  cannotTell: readonly number[],
): Reported {
  if (!isComplaintId(id)) throw new Error(`planted: ${id} is not in the catalogue`)
  const own: Pin = { how: pin.how, where: pin.where, side: pin.side, value: mm(pin.value) }
  return { id, answers, cannotTell, pin: own }
}

/** An edge found longer than drafted; the draft knows its own length. */
function longer({ stretched }: Told): { readonly sewnLonger?: number } {
  const most = Math.max(0, ...Object.values(stretched))
  return most > 0 ? { sewnLonger: most } : {}
}
