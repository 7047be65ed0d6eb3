/**
 * What reading photos costs her, in a real Chromium on the built app: three photos end to end beside
 * three bare calls of the model on the same pictures in the same run, the longest task of the page's
 * own thread meanwhile, what 100 photos in a row leave behind, and what the model costs to fetch.
 *
 *   npm run bench:reading -- [PHOTOS_DIR] [--rounds N] [--photos N]
 *
 * PHOTOS_DIR holds NN-front.jpg NN-side.jpg NN-back.jpg; the first body is read. Without it the
 * invented figure of tests/photos. Ends with one line RESULT {…}.
 */
import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { chromium } from 'playwright-core'
import { CHROMIUM_FLAGS, findChromium } from '../chromium.mjs'
import { bodiesIn } from '../estimate/folder.ts'
import { tasksOf } from '../estimate/measure.ts'
import { serveCamera } from '../estimate/serve.ts'
import { host } from './faults/host.ts'
import { layPhotos, readThree } from './reading/in-app.ts'
import { leftBehind } from './reading/leftovers.ts'
import { longestTask, watchLongTasks } from './reading/main-thread.ts'
import { modelFetches, stopsFetching } from './reading/model-fetches.ts'

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    rounds: { type: 'string', default: '5' },
    photos: { type: 'string', default: '100' },
  },
})
const FIGURE = fileURLToPath(new URL('../../tests/photos', import.meta.url))
const folder = resolve(positionals[0] ?? FIGURE)
const body = bodiesIn(folder, 'sheet').find(({ files }) => Object.keys(files).length === 3)
const executablePath = findChromium()
if (!executablePath) throw new Error('No Chromium was found. Set CHROMIUM to its path.')
if (!body) throw new Error(`no body with three photos in "${folder}"`)

const app = await host()
const bare = await serveCamera(folder)
const browser = await chromium.launch({ executablePath, args: CHROMIUM_FLAGS })
try {
  const context = await browser.newContext()
  const page = await context.newPage()
  await watchLongTasks(page)
  await layPhotos(page, app.origin, folder, body)
  const stopped = await stopsFetching(page, join(folder, body.files.front ?? ''))
  const fetches = modelFetches(app)
  await layPhotos(page, app.origin, folder, body)
  // The first time the model is fetched and starts; she waits for that once.
  await readThree(page)
  const first = fetches()
  const task = await longestTask(browser, page, () => readThree(page))

  const model = await context.newPage()
  await model.goto(bare.page)
  await model.waitForFunction(() => window.bareModelMs !== undefined)
  const tasks = tasksOf(body, 'sheet')
  const bareOnce = () =>
    model.evaluate(async (asked) => (await window.bareModelMs?.(asked)) ?? NaN, tasks)
  await bareOnce()
  const [road, calls]: [number[], number[]] = [[], []]
  // In turns, so that a busy moment of the machine meets both alike.
  for (let round = 0; round < Number(values.rounds); round++) {
    await model.bringToFront()
    calls.push(await bareOnce())
    await page.bringToFront()
    road.push(await readThree(page))
    console.log(`round ${round + 1}: ${road.at(-1)} ms end to end, ${calls.at(-1)} ms bare`)
  }
  await model.close()
  const left = await leftBehind(page, Number(values.photos))
  await layPhotos(page, app.origin, folder, body)
  await readThree(page)
  const again = fetches()

  const best = (list: readonly number[]): number => Math.min(...list)
  const result = {
    endToEndMs: best(road),
    bareModelMs: best(calls),
    ratio: Math.round((100 * best(road)) / best(calls)) / 100,
    ratioOfRounds: road.map((ms, k) => Math.round((100 * ms) / (calls[k] ?? NaN)) / 100),
    ...task,
    ...left,
    modelMb: first.mb,
    modelFiles: first.files,
    modelMbAfterReload: Math.round(100 * (again.mb - first.mb)) / 100,
    stopped,
  }
  console.log(`RESULT ${JSON.stringify(result)}`)
} finally {
  await browser.close()
  app.close()
  bare.close()
}
