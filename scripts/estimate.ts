/**
 * Estimates from a folder of photographs, by the camera road of the app in a headless Chromium.
 *
 *   npm run estimate -- FOLDER OUT.json [--card sheet|id1]
 *
 * FOLDER holds NN-front.jpg NN-side.jpg NN-back.jpg; with --card id1 NN-front-id1.jpg … and the four
 * taps on the card's corners in NN-taps.json. A truth file NN.json beside them ({measures: {…}}, mm)
 * is compared. Ends with one line RESULT {…}; exit 0 when it ran, 2 on bad input.
 */
import { accessSync, constants, writeFileSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import { ESTIMATE_IDS } from '../src/measurements/estimate.ts'
import { figures } from './estimate/compare.ts'
import { BadInput, bodiesIn, type BodyPhotos, type CardKind } from './estimate/folder.ts'
import type { Entry } from './estimate/measure.ts'

const USAGE = 'Use: npm run estimate -- FOLDER OUT.json [--card sheet|id1]'
function question(args: readonly string[]): { folder: string; out: string; card: CardKind } {
  const places: string[] = []
  let card: CardKind = 'sheet'
  for (let k = 0; k < args.length; k++) {
    const arg = args[k] ?? ''
    if (arg === '--card') {
      const kind = args[++k]
      if (kind !== 'sheet' && kind !== 'id1')
        throw new BadInput(`--card takes sheet or id1, not "${kind ?? ''}". ${USAGE}`)
      card = kind
    } else if (arg.startsWith('--')) throw new BadInput(`"${arg}" is not known. ${USAGE}`)
    else places.push(arg)
  }
  const [folder, out, ...more] = places
  if (!folder || !out || more.length > 0) throw new BadInput(USAGE)
  try {
    accessSync(dirname(resolve(out)), constants.W_OK)
  } catch {
    throw new BadInput(`The folder of "${out}" cannot be written to.`)
  }
  return { folder: resolve(folder), out: resolve(out), card }
}

async function run(): Promise<void> {
  const { folder, out, card } = question(process.argv.slice(2))
  const bodies = bodiesIn(folder, card)
  // Loaded here, so that a bad input is answered without waiting for the builder and the browser.
  const { measureBodies } = await import('./estimate/measure.ts')
  const measured = await measureBodies(folder, bodies, card, ({ name }, entry) => {
    const refused = Object.keys(entry.refused).length
    console.log(
      `${name}: ${ESTIMATE_IDS.length - refused} estimates, ${refused} refused, ${entry.ms} ms`,
    )
  })
  const entries = Object.fromEntries([...measured].map(([name, { entry }]) => [name, entry]))
  writeFileSync(out, JSON.stringify(entries, null, 1))
  report(bodies, entries, card)
}

function report(
  bodies: readonly BodyPhotos[],
  entries: Readonly<Record<string, Entry>>,
  card: CardKind,
) {
  const list = Object.values(entries)
  const count = (pick: (entry: Entry) => object): number =>
    list.reduce((sum, entry) => sum + Object.keys(pick(entry)).length, 0)
  const judged = bodies.flatMap(({ name, truth }) => {
    const entry = entries[name]
    return entry && truth ? [{ estimates: entry.estimates, truth }] : []
  })
  const result = {
    n: bodies.reduce((sum, { files }) => sum + Object.keys(files).length, 0),
    bodies: bodies.length,
    card,
    estimated: count((entry) => entry.estimates),
    refused: count((entry) => entry.refused),
    requestsElsewhere: 0,
    ...(judged.length > 0 ? { withTruth: judged.length, errors: figures(judged) } : {}),
  }
  console.log(`RESULT ${JSON.stringify(result)}`)
}

run().catch((problem: unknown) => {
  const known = problem instanceof BadInput
  console.error(known ? problem.message : problem)
  console.log(
    `RESULT ${JSON.stringify({ error: problem instanceof Error ? problem.message : String(problem) })}`,
  )
  process.exitCode = known ? 2 : 1
})
