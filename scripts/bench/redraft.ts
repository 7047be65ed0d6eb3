/**
 * How long a redraft takes: draft, corrections, truing and proof, on one core.
 * Prints median and 95th percentile. RESULT {blouse: {n, medianMs, p95Ms}}.
 */
import { standardChoices } from '../../src/draft/choices.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES } from '../../tests/bodies.ts'

const ROUNDS = 400
const because = {
  complaint: 'B8',
  cause: 'bust shaping',
  pinned: { how: 'wholeFold', read: mm(8), share: 1 },
  watch: mm(0),
  round: 1,
} as const
const corrections: readonly Correction[] = [
  {
    v: 1,
    id: 'c1',
    kind: 'close-wedge',
    piece: 'front',
    edge: 'sleeveEdge',
    along: 0.5,
    width: mm(6),
    because,
  },
  {
    v: 1,
    id: 'c2',
    kind: 'turn-choice',
    choice: 'lengthAdded',
    by: mm(12),
    because: { ...because, complaint: 'W1' },
  },
  {
    v: 1,
    id: 'c3',
    kind: 'close-wedge',
    piece: 'front',
    edge: 'sleeveEdge',
    along: 0.4,
    width: mm(3),
    because,
  },
]
const people = INVENTED_BODIES.map(([, numbers]) => body({}, numbers))
const times: number[] = []
for (let i = 0; i < ROUNDS + 50; i++) {
  const began = performance.now()
  correctedDraft('blouse', people[i % people.length]!, standardChoices(), corrections)
  if (i >= 50) times.push(performance.now() - began)
}
times.sort((a, b) => a - b)
const at = (share: number): number =>
  Math.round(times[Math.floor(share * (times.length - 1))]! * 100) / 100
console.log(
  `redraft of the blouse with ${corrections.length} corrections: median ${at(0.5)} ms, 95 in 100 under ${at(0.95)} ms`,
)
console.log(
  `RESULT ${JSON.stringify({ blouse: { n: times.length, medianMs: at(0.5), p95Ms: at(0.95) } })}`,
)
