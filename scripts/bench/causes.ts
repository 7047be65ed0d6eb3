/**
 * Is the right cause put first, and how much is asked for it? The planted errors told as
 * complaints with pins; she answers from what is true of her body. Run: npm run bench:causes;
 * `-- --kinds a,b --bodies N --seed S`, and `--list` for every case that went wrong.
 * RESULT {n, first, asked, kinds: {id: the same}, nothing: {n, noEdit}, roundabout: {n, first,
 * asked}}; goals: first 85 %, asked 1.5. Roundabout: the same errors when she has only seen what
 * they do elsewhere, where the true cause mostly stands behind others; a figure beside.
 */
import { CORRECTING } from './planted-rounds/correcting.ts'
import { listed, ordered } from './planted-rounds/ordered.ts'
import { play, type Played } from './planted-rounds/play.ts'
import { byKind, causeFigures, nothingFigures, rightFirst } from './planted-rounds/tally.ts'
import { told } from './planted-rounds/told.ts'
import type { Case } from './planted/cases.ts'
import { SCATTER } from './planted/telling.ts'

function run(cases: readonly Case[]): void {
  const played = cases.map((of) => play(of, CORRECTING, SCATTER, { count: 1 }))
  const about = cases
    .filter((of) => !of.nothing)
    .map((of) => play(of, CORRECTING, SCATTER, { count: 1, roundabout: true }))
  const kinds = Object.fromEntries([...byKind(played)].map(([id, own]) => [id, causeFigures(own)]))
  for (const [id, f] of Object.entries(kinds))
    console.log(`${id.padEnd(14)} ${f.n} muslins, right cause first ${f.first} %, asked ${f.asked}`)
  const roundabout = causeFigures(about)
  console.log(`roundabout     right cause first ${roundabout.first} %, asked ${roundabout.asked}`)
  if (listed) for (const p of [...played, ...about].filter(wrong)) console.log(told(p))
  const nothing = nothingFigures(played)
  console.log(`RESULT ${JSON.stringify({ ...causeFigures(played), kinds, nothing, roundabout })}`)
}

const wrong = ({ of, rounds: [round] }: Played): boolean =>
  round !== undefined && (of.nothing ? round.edits.length > 0 : !rightFirst(round))

const list = ordered()
if (typeof list === 'string') console.log(list)
else run(list.cases)
