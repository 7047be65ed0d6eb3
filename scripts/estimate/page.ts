/**
 * The camera road in a page without screens, for the command line: the same photo decoding, worker
 * and estimates as the app. It fetches the photographs of one body from its own server.
 */
import { openCamera, type CardQuestion } from '../../src/capture/camera.ts'
import { faultSaid } from '../../src/capture/fault.ts'
import { estimatesFrom } from '../../src/capture/estimates-from.ts'
import { shareLevels } from '../../src/capture/levels.ts'
import { decodePhoto } from '../../src/capture/photo.ts'
import type { Readings, View } from '../../src/capture/reading.ts'
import type { EstimateId, EstimateOutcomes } from '../../src/measurements/estimate.ts'
import { naiveLengths } from '../bench/camera/naive.ts'

export interface PhotoTask {
  readonly view: View
  readonly url: string
  /** Taps are px of the photo as turned upright, as a person sees it. */
  readonly card: CardQuestion
}
export interface BodyAnswer {
  readonly outcomes: EstimateOutcomes
  /** Per view: why the photograph itself was refused. */
  readonly photos: Readonly<Partial<Record<View, string>>>
  readonly landmarks: Readonly<Partial<Record<View, Record<string, [number, number]>>>>
  /** By the card's own scale alone, for comparison; mm. */
  readonly naive: Readonly<Partial<Record<EstimateId, number>>>
  readonly ms: number
}

declare global {
  interface Window {
    measureBody?: (tasks: readonly PhotoTask[]) => Promise<BodyAnswer>
    bareModelMs?: (tasks: readonly PhotoTask[]) => Promise<number>
  }
}

const camera = openCamera(new URL('/', location.href).href)

async function measureBody(tasks: readonly PhotoTask[]): Promise<BodyAnswer> {
  const start = performance.now()
  const photos: Partial<Record<View, string>> = {}
  const factors: Partial<Record<View, number>> = {}
  let readings: Readings = {}
  const open = async (url: string) => decodePhoto(await (await fetch(url)).blob())
  // The next photo is opened on the page while the worker reads this one.
  let next = tasks[0] && open(tasks[0].url)
  for (const [k, { view, url, card }] of tasks.entries()) {
    const photo = await (next ?? open(url))
    const following = tasks[k + 1]
    next = following && open(following.url)
    if (!photo.ok) {
      photos[view] = photo.reason
      continue
    }
    const { factor, picture } = photo
    const reading = await camera.read(view, picture, inPicture(card, factor))
    readings = { ...readings, [view]: reading }
    factors[view] = factor
    if (!reading.person.ok) photos[view] = faultSaid(reading.person.reason)
  }
  const outcomes = estimatesFrom(readings)
  const landmarks = landmarksOf(readings, factors)
  const ms = performance.now() - start
  return { outcomes, photos, landmarks, naive: naiveLengths(readings), ms }
}

function inPicture(card: CardQuestion, factor: number): CardQuestion {
  if (card.how === 'sheet') return card
  return { how: 'id1', taps: card.taps.map(({ x, y }) => ({ x: x * factor, y: y * factor })) }
}

/** The model's joints under its own names, and our points under theirs; px of the photo. */
function landmarksOf(
  readings: Readings,
  factors: Readonly<Partial<Record<View, number>>>,
): BodyAnswer['landmarks'] {
  const named = Object.values(shareLevels(readings)).map((reading) => {
    const joints = reading.person.ok ? Object.entries(reading.person.joints) : []
    const points = Object.entries(reading.points)
    const factor = factors[reading.view] ?? 1
    const at = [...joints, ...points].map(
      ([name, { at }]) => [name, [at.x / factor, at.y / factor]] as const,
    )
    return [reading.view, Object.fromEntries(at)] as const
  })
  return Object.fromEntries(named)
}

await camera.warm()
window.measureBody = measureBody
// This brings a second model of its own; only the reading bench asks for it.
window.bareModelMs = async (tasks) =>
  (await import('../bench/camera/on-page.ts')).bareModelMs(tasks)
