/**
 * Every body of a folder through the camera road in a headless Chromium, one photograph after the
 * other, with the app's own build. A request that leaves this machine is an error.
 */
import { chromium, type Page } from 'playwright-core'
import { VIEWS, type View } from '../../src/capture/reading.ts'
import { basisSaid } from '../../src/capture/seen.ts'
import { ESTIMATE_IDS, type EstimateId } from '../../src/measurements/estimate.ts'
import { CHROMIUM_FLAGS, findChromium } from '../chromium.mjs'
import { BadInput, type BodyPhotos, type CardKind } from './folder.ts'
import type { BodyAnswer, PhotoTask } from './page.ts'
import { PHOTOS, serveCamera } from './serve.ts'

/** What the command writes for one body; px of the photo, mm, ms. */
export interface Entry {
  estimates: Partial<Record<EstimateId, { value: number; pm90: number; basis: string }>>
  refused: Partial<Record<EstimateId, string>>
  landmarks: Record<string, Record<string, readonly [number, number]>>
  ms: number
}

export interface Measured {
  readonly entry: Entry
  readonly answer: BodyAnswer
}

const tenth = (value: number): number => Math.round(value * 10) / 10

export async function measureBodies(
  folder: string,
  bodies: readonly BodyPhotos[],
  card: CardKind,
  note: (body: BodyPhotos, entry: Entry) => void,
): Promise<ReadonlyMap<string, Measured>> {
  const measured = new Map<string, Measured>()
  await onCameraPage(folder, async (page) => {
    for (const body of bodies) {
      const answer = await page.evaluate(
        async (asked) => {
          if (!window.measureBody) throw new Error('the page of the camera road is not ready')
          return window.measureBody(asked)
        },
        tasksOf(body, card),
      )
      const entry = entryOf(answer)
      measured.set(body.name, { entry, answer })
      note(body, entry)
    }
  })
  return measured
}

/** Opens the page of the camera road over a folder of photographs, and closes all of it again. */
export async function onCameraPage(
  folder: string,
  work: (page: Page) => Promise<void>,
): Promise<void> {
  const executablePath = findChromium()
  if (!executablePath) throw new BadInput('No Chromium was found. Set CHROMIUM to its path.')
  const served = await serveCamera(folder)
  const browser = await chromium.launch({ executablePath, args: CHROMIUM_FLAGS })
  const elsewhere: string[] = []
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
    await work(page)
  } finally {
    await browser.close()
    served.close()
  }
  if (elsewhere.length > 0)
    throw new Error(`requests left this machine: ${[...new Set(elsewhere)].join(', ')}`)
}

export function tasksOf(body: BodyPhotos, card: CardKind): PhotoTask[] {
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
      entry.estimates[id] = { value: tenth(value), pm90: tenth(pm90), basis: basisSaid(basis) }
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
