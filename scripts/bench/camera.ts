/**
 * The camera road against bodies of known lengths: real detections, nothing dragged.
 *
 *   npm run bench:camera -- SET_DIR [--card sheet|id1] [--out OUT.json]
 *
 * SET_DIR is laid out as for npm run estimate and holds the truth, NN.json. With --card id1 the four
 * taps are the true corners, each strayed by a seeded error of up to 6 px. `naive` is the card's own
 * scale alone. Ends with one line RESULT {…}.
 */
import { existsSync, writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { BadInput, bodiesIn, type CardKind } from '../estimate/folder.ts'
import { measureBodies } from '../estimate/measure.ts'
import { groupFigures, pooledInside, type JudgedBody } from './camera/figures.ts'
import { GROUPS, groupOf, truthFile, withTaps } from './camera/truth.ts'

const USAGE = 'Use: npm run bench:camera -- SET_DIR [--card sheet|id1] [--out OUT.json]'

function question(args: readonly string[]): { folder: string; card: CardKind; out?: string } {
  let [folder, card, out]: [string?, CardKind?, string?] = []
  for (let k = 0; k < args.length; k++) {
    const arg = args[k] ?? ''
    if (arg === '--card') {
      const kind = args[++k]
      if (kind !== 'sheet' && kind !== 'id1')
        throw new BadInput(`--card takes sheet or id1, not "${kind ?? ''}". ${USAGE}`)
      card = kind
    } else if (arg === '--out') {
      out = args[++k]
      if (!out) throw new BadInput(USAGE)
    } else if (arg.startsWith('--') || folder) throw new BadInput(USAGE)
    else folder = arg
  }
  if (!folder) throw new BadInput(USAGE)
  const asked = { folder: resolve(folder), card: card ?? 'sheet' } as const
  return out ? { ...asked, out: resolve(out) } : asked
}

async function run(): Promise<void> {
  const { folder, card, out } = question(process.argv.slice(2))
  if (!existsSync(folder)) {
    console.log(`camera bench: no bodies in "${folder}", nothing measured`)
    console.log(`RESULT ${JSON.stringify({ skipped: 'no bodies' })}`)
    return
  }
  const bodies = bodiesIn(folder, card).map((body) => {
    const truth = truthFile(folder, body)
    return { group: groupOf(truth), body: card === 'id1' ? withTaps(body, truth) : body }
  })
  const measured = await measureBodies(
    folder,
    bodies.map(({ body }) => body),
    card,
    ({ name }, { estimates, refused, ms }) =>
      console.log(
        `${name}: ${Object.keys(estimates).length} estimates, ${Object.keys(refused).length} refused, ${ms} ms`,
      ),
  )
  const judged = bodies.flatMap(({ group, body }) => {
    const found = measured.get(body.name)
    if (!found || !body.truth) return []
    const { estimates } = found.entry
    const { naive } = found.answer
    return [{ group, of: { name: body.name, estimates, naive, truth: body.truth } }]
  })
  const groups = GROUPS.flatMap((group) => {
    const own: JudgedBody[] = judged.flatMap((one) => (one.group === group ? [one.of] : []))
    return own.length > 0 ? [[group, groupFigures(own)] as const] : []
  })
  for (const [group, figures] of groups) {
    console.log(`${group}, mm`)
    console.table(figures)
  }
  const result = {
    ...Object.fromEntries(groups),
    pooledInside90: pooledInside(judged.map(({ of }) => of)),
  }
  if (out) {
    const entries = [...measured].map(([name, { entry }]) => [name, entry])
    writeFileSync(out, JSON.stringify(Object.fromEntries(entries), null, 1))
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
