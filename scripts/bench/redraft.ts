/**
 * How long a redraft takes on one core: draft, corrections, truing, proof, and the cutting line of
 * every piece; for each garment, for each with left and right apart (unlike shoulders, and one
 * correction of the left side), and as corrections grow in number. Beside the time by the clock
 * stands that of the processor, which other work on the machine does not stretch.
 * RESULT {GARMENT: {n, medianMs, p95Ms, cpuMedianMs, cpuP95Ms, apart: {...}, growth: {corrections: cpuMedianMs}}}.
 */
import type { GarmentId } from '../../src/draft/draft.ts'
import { GARMENT_IDS, standardFor } from '../../src/draft/garments.ts'
import { toCut } from '../../src/draft/to-cut.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import { cuttingLine, MUSLIN_ALLOWANCES } from '../../src/output/allowance.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES } from '../../tests/bodies.ts'

const ROUNDS = 400
const WARM = 50
const GROWTH = [0, 2, 4, 8, 12]
const because = {
  complaint: 'B8',
  cause: 'bust shaping',
  pinned: { how: 'wholeFold', read: mm(8), share: 1 },
  watch: mm(0),
  round: 1,
} as const

/** A wedge where the garment has a sleeve edge or an armhole to fold, and lengths turned. */
function corrections(garment: GarmentId, count: number): readonly Correction[] {
  const edge = garment === 'blouse' ? 'sleeveEdge' : 'armhole'
  return Array.from({ length: count }, (_, i): Correction => {
    const id = `c${i + 1}`
    return i % 2 === 0
      ? {
          v: 1,
          id,
          kind: 'close-wedge',
          piece: 'front',
          edge,
          along: 0.3 + 0.05 * i,
          width: mm(2),
          because,
        }
      : { v: 1, id, kind: 'turn-choice', choice: 'lengthAdded', by: mm(2), because }
  })
}

const people = INVENTED_BODIES.map(([, numbers]) => body({}, numbers))
/** 10 mm longer and 16 mm flatter on her right. */
const unlike = INVENTED_BODIES.map(([, n]) =>
  body(
    {
      shoulderLengthRight: n.shoulderLengthLeft + 10,
      shoulderSlopeRight: Math.max(20, n.shoulderSlopeLeft - 16),
    },
    n,
  ),
)
const ofLeft: Correction = {
  v: 1,
  id: 'left',
  kind: 'operate',
  side: 'left',
  operation: { op: 'MOVE', piece: 'both', point: 'underarm', out: mm(0), down: mm(4) },
  because,
}

interface Times {
  readonly n: number
  readonly medianMs: number
  readonly p95Ms: number
  readonly cpuMedianMs: number
  readonly cpuP95Ms: number
}

/** @param apart left and right drawn and cut each for itself */
function times(garment: GarmentId, count: number, apart = false): Times {
  const choices = standardFor(garment)
  const list = [...corrections(garment, count), ...(apart ? [ofLeft] : [])]
  const bodies = apart ? unlike : people
  const [clock, cpu]: [number[], number[]] = [[], []]
  for (let i = 0; i < ROUNDS + WARM; i++) {
    const person = bodies[i % bodies.length]
    if (!person) throw new Error('no invented body')
    const [began, used] = [performance.now(), process.cpuUsage()]
    const { draft } = correctedDraft(garment, person, choices, list)
    if (apart && !draft.sides) throw new Error(`${garment}: sides are not apart`)
    for (const piece of apart ? toCut(draft).pieces : draft.pieces)
      cuttingLine(piece, MUSLIN_ALLOWANCES)
    if (i < WARM) continue
    const { user, system } = process.cpuUsage(used)
    clock.push(performance.now() - began)
    cpu.push((user + system) / 1000)
  }
  return {
    n: clock.length,
    medianMs: at(clock, 0.5),
    p95Ms: at(clock, 0.95),
    cpuMedianMs: at(cpu, 0.5),
    cpuP95Ms: at(cpu, 0.95),
  }
}
function at(all: readonly number[], share: number): number {
  const sorted = all.toSorted((a, b) => a - b)
  return Math.round((sorted[Math.floor(share * (sorted.length - 1))] ?? NaN) * 100) / 100
}
const said = (t: Times): string =>
  `median ${t.medianMs} ms, 95 in 100 under ${t.p95Ms} ms (processor ${t.cpuMedianMs} and ${t.cpuP95Ms})`

const result: Record<string, object> = {}
for (const garment of GARMENT_IDS) {
  const plain = times(garment, 3)
  const apart = times(garment, 3, true)
  const growth: Record<string, number> = {}
  for (const count of GROWTH) growth[count] = times(garment, count).cpuMedianMs
  console.log(`${garment}, 3 corrections and cutting lines: ${said(plain)}`)
  console.log(`${garment}, left and right apart: ${said(apart)}`)
  console.log(`${garment} by number of corrections, processor ms: ${JSON.stringify(growth)}`)
  result[garment] = { ...plain, apart, growth }
}
console.log(`RESULT ${JSON.stringify(result)}`)
