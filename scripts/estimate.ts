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
import { chromium, type Page } from 'playwright-core'
import { VIEWS, type View } from '../src/capture/reading.ts'
import { ESTIMATE_IDS, type EstimateId } from '../src/measurements/estimate.ts'
import { CHROMIUM_FLAGS, findChromium } from './chromium.mjs'
import { figures } from './estimate/compare.ts'
import { BadInput, bodiesIn, type BodyPhotos, type CardKind } from './estimate/folder.ts'
import type { BodyAnswer, PhotoTask } from './estimate/page.ts'
import { PHOTOS, serveCamera } from './estimate/serve.ts'

interface Entry {
  estimates: Partial<Record<EstimateId, { value: number; pm90: number; basis: string }>>
  refused: Partial<Record<EstimateId, string>>
  landmarks: Record<string, Record<string, readonly [number, number]>>
  ms: number
}

const USAGE = 'Use: npm run estimate -- FOLDER OUT.json [--card sheet|id1]'
const tenth = (value: number): number => Math.round(value * 10) / 10

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

function tasksOf(body: BodyPhotos, card: CardKind): PhotoTask[] {
  return VIEWS.flatMap((view) => {
    const file = body.files[view]
    if (!file) return []
    const url = PHOTOS + encodeURIComponent(file)
    const how = card === 'sheet' ? { how: card } : { how: card, taps: body.taps[view] ?? [] }
    return [{ view, url, card: how }]
  })
}

function entryOf(answer: BodyAnswer): Entry {
  const entry: Entry = { estimates: {}, refused: {}, landmarks: {}, ms: Math.round(answer.ms) }
  for (const id of ESTIMATE_IDS) {
    const outcome = answer.outcomes[id]
    if (outcome.ok) {
      const { value, pm90, basis } = outcome.estimate
      entry.estimates[id] = { value: tenth(value), pm90: tenth(pm90), basis }
    } else entry.refused[id] = withPhotoReason(outcome.reason, answer.photos)
  }
  for (const [view, named] of Object.entries(answer.landmarks))
    entry.landmarks[view] = Object.fromEntries(
      Object.entries(named).map(([name, [x, y]]) => [name, [tenth(x), tenth(y)] as const]),
    )
  return entry
}

/** "There is no front photo." is true but not helpful when there was one that could not be read. */
function withPhotoReason(reason: string, photos: Readonly<Partial<Record<View, string>>>): string {
  return VIEWS.reduce(
    (text, view) => text.replace(`There is no ${view} photo.`, (own) => photos[view] ?? own),
    reason,
  )
}

async function measured(page: Page, body: BodyPhotos, card: CardKind): Promise<Entry> {
  const tasks = tasksOf(body, card)
  const answer = await page.evaluate(async (asked) => {
    if (!window.measureBody) throw new Error('the page of the camera road is not ready')
    return window.measureBody(asked)
  }, tasks)
  return entryOf(answer)
}

async function run(): Promise<void> {
  const { folder, out, card } = question(process.argv.slice(2))
  const bodies = bodiesIn(folder, card)
  const executablePath = findChromium()
  if (!executablePath) throw new BadInput('No Chromium was found. Set CHROMIUM to its path.')
  const served = await serveCamera(folder)
  const browser = await chromium.launch({ executablePath, args: CHROMIUM_FLAGS })
  const elsewhere: string[] = []
  const entries: Record<string, Entry> = {}
  try {
    const page = await browser.newPage()
    page.on('request', (request) => {
      const url = request.url()
      const local =
        url.startsWith(served.origin) || url.startsWith('data:') || url.startsWith('blob:')
      if (!local) elsewhere.push(url)
    })
    page.on('pageerror', (error) => console.error(error.message))
    await page.goto(served.page)
    await page.waitForFunction(() => window.measureBody !== undefined, null, { timeout: 120_000 })
    for (const body of bodies) {
      const entry = await measured(page, body, card)
      entries[body.name] = entry
      const refused = Object.keys(entry.refused).length
      console.log(
        `${body.name}: ${ESTIMATE_IDS.length - refused} estimates, ${refused} refused, ${entry.ms} ms`,
      )
    }
  } finally {
    await browser.close()
    served.close()
  }
  if (elsewhere.length > 0)
    throw new Error(`requests left this machine: ${[...new Set(elsewhere)].join(', ')}`)
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
