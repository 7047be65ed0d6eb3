/**
 * Is the piece righted? Known errors planted in the numbers, the muslin told as it would show on
 * the true body, corrected, sewn again, twice. Run: npm run bench:planted; `-- --kinds a,b
 * --bodies N --seed S`, `--list` for every case that went wrong.
 * RESULT {n, left1, left2, worse, worstBy, beyondNoise, elsewhere, nothing, kinds, floor, wider}:
 * shares of the planted error left after one and two rounds, medians in percent; goals 25 and 10,
 * worse 1 % and never by more than the noise, no edit in 95 % of the muslins that are right.
 * `floor` is what a hand that always decides rightly leaves; `wider` takes ±3 and ±5 mm for
 * standard deviations.
 */
import { CORRECTING } from './planted-rounds/correcting.ts'
import { floorOf } from './planted-rounds/floor.ts'
import { listed, ordered } from './planted-rounds/ordered.ts'
import { play } from './planted-rounds/play.ts'
import { byKind, figures, nothingFigures, wentWrong } from './planted-rounds/tally.ts'
import { told } from './planted-rounds/told.ts'
import type { Cases } from './planted/cases.ts'
import { SCATTER, WIDER } from './planted/telling.ts'

function run({ cases, looked, passedOver }: Cases): void {
  console.log(`${cases.length} muslins; ${passedOver} of ${looked} bodies passed over: the error`)
  console.log('would not show first on them, or the muslin from the true numbers would not fit')
  const played = cases.map((of) => play(of, CORRECTING, SCATTER))
  const floor = figures(cases.map((of) => play(of, floorOf(of), SCATTER)))
  const wide = cases.map((of) => play(of, CORRECTING, WIDER))
  const wideFloor = figures(cases.map((of) => play(of, floorOf(of), WIDER)))
  const kinds = Object.fromEntries([...byKind(played)].map(([id, own]) => [id, figures(own)]))
  for (const [id, f] of Object.entries(kinds)) console.log(line(id, f))
  console.log(line('all', figures(played)))
  console.log(line('floor', floor))
  if (listed) for (const p of played.filter(wentWrong)) console.log(told(p))
  const nothing = nothingFigures(played)
  const wider = { ...figures(wide), nothing: nothingFigures(wide), floor: wideFloor }
  console.log(`RESULT ${JSON.stringify({ ...figures(played), nothing, kinds, floor, wider })}`)
}

const line = (id: string, f: ReturnType<typeof figures>): string =>
  `${id.padEnd(14)} ${String(f.n).padStart(4)} muslins, left ${f.left1} % then ${f.left2} % (nine in ten under ${f.left2p90} %), worse ${f.worse} % (most ${f.worstBy} mm), elsewhere ${f.elsewhere} %`

const list = ordered()
if (typeof list === 'string') console.log(list)
else run(list)
