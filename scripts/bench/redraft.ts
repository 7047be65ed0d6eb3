/**
 * How long a redraft takes on one core: draft, corrections, truing, proof, and the cutting line of
 * every piece; for each garment, and for the blouse as corrections grow in number.
 * RESULT {GARMENT: {n, medianMs, p95Ms}, growth: {corrections: medianMs}}.
 */
import type { GarmentId } from '../../src/draft/draft.ts'
import { GARMENTS, isGarmentId, standardFor } from '../../src/draft/garments.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import { cuttingLine, MUSLIN_ALLOWANCES } from '../../src/output/allowance.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES } from '../../tests/bodies.ts'

const ROUNDS = 400
const WARM = 50
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

function times(garment: GarmentId, count: number): readonly number[] {
  const [choices, list] = [standardFor(garment), corrections(garment, count)]
  const all: number[] = []
  for (let i = 0; i < ROUNDS + WARM; i++) {
    const person = people[i % people.length]
    if (!person) throw new Error('no invented body')
    const began = performance.now()
    const { draft } = correctedDraft(garment, person, choices, list)
    for (const piece of draft.pieces) cuttingLine(piece, MUSLIN_ALLOWANCES)
    if (i >= WARM) all.push(performance.now() - began)
  }
  return all.sort((a, b) => a - b)
}
const at = (sorted: readonly number[], share: number): number =>
  Math.round((sorted[Math.floor(share * (sorted.length - 1))] ?? NaN) * 100) / 100

const result: Record<string, object> = {}
for (const garment of Object.keys(GARMENTS).filter(isGarmentId)) {
  const sorted = times(garment, 3)
  const [medianMs, p95Ms] = [at(sorted, 0.5), at(sorted, 0.95)]
  console.log(
    `${garment}, 3 corrections and cutting lines: median ${medianMs} ms, 95 in 100 under ${p95Ms} ms`,
  )
  result[garment] = { n: sorted.length, medianMs, p95Ms }
}
const growth: Record<string, number> = {}
for (const count of [0, 2, 4, 8, 12]) growth[count] = at(times('blouse', count), 0.5)
console.log(`blouse by number of corrections, median ms: ${JSON.stringify(growth)}`)
console.log(`RESULT ${JSON.stringify({ ...result, growth })}`)
