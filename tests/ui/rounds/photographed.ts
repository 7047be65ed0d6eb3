/**
 * Two rounds with invented photos on a session of their own, and a camera that answers with joints
 * of a known place: what the screen must do with them is plane geometry.
 */
import { render } from 'vitest-browser-svelte'
import type { Camera } from '../../../src/capture/camera.ts'
import type { CardOutcome } from '../../../src/capture/card.ts'
import type { MuslinSight } from '../../../src/capture/muslin-sight.ts'
import type { Joint } from '../../../src/capture/person.ts'
import type { ViewReading } from '../../../src/capture/reading.ts'
import { carried, type Similarity } from '../../../src/capture/similarity.ts'
import { mm } from '../../../src/units/length.ts'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { bookOf, MIDDLE } from '../../bodies.ts'
import PhotosInApp from './PhotosInApp.svelte'
import { seeded } from '../draft/seeded.ts'

export const SIZE = { width: 480, height: 640 }
export const AT: Readonly<Record<string, readonly [number, number]>> = {
  nose: [240, 100],
  left_ear: [255, 100],
  right_ear: [225, 100],
  left_shoulder: [290, 180],
  right_shoulder: [190, 180],
  left_hip: [270, 330],
  right_hip: [210, 330],
  left_knee: [270, 480],
  right_knee: [210, 480],
}
export const NO_CARD: CardOutcome = { ok: false, reason: 'No card.' }
export function card(by: Similarity, mmPerPx: number): CardOutcome {
  const at = (x: number, y: number) => carried(by, { x, y })
  const corners = [at(225, 260), at(255, 260), at(255, 290), at(225, 290)] as const
  const side = mm(100)
  const homography = [1, 0, 0, 0, 1, 0, 0, 0, 1] as const
  return {
    ok: true,
    card: {
      kind: 'sheet',
      corners,
      widthMm: side,
      heightMm: side,
      homography,
      mmPerPx,
      residualPx: 0,
    },
  }
}
export const reading = (by: Similarity, outcome: CardOutcome): ViewReading => ({
  view: 'front',
  size: SIZE,
  person: {
    ok: true,
    score: 1,
    joints: Object.fromEntries(
      Object.entries(AT).map(([name, [x, y]]): [string, Joint] => [
        name,
        { at: carried(by, { x, y }), score: 1 },
      ]),
    ),
  },
  card: outcome,
  points: {},
  missing: {},
  outline: [],
  facing: -1,
})

export interface Asked {
  readonly readings: ViewReading[]
  closed: number
  hold?: Promise<void>
  /** What the cloth of each photo shows, in the order they are read. */
  readonly sights?: MuslinSight[]
}
const answering = (asked: Asked) => (): Camera => ({
  warm: async (onFetched) => {
    onFetched?.({ loaded: 6e6, total: 13e6 })
    await asked.hold
  },
  muslin: async () => {
    const next = asked.readings.shift()
    if (!next) throw new Error('asked more often than there are photos')
    return { reading: next, sight: asked.sights?.shift() ?? { lines: [] } }
  },
  read: () => Promise.reject(new Error('not asked here')),
  look: () => Promise.reject(new Error('not asked here')),
  close: () => (asked.closed += 1),
})

/** Two rounds, each with a plain photo of its own colour. */
export async function opened(asked: Asked) {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  await session.putOnPaper(garment)
  await session.startNext(garment)
  await session.putOnPaper(garment)
  for (const round of session.roundsOf(garment)) {
    const jpeg = await grey(90 + 40 * round.number)
    await session.addPhoto(jpeg, round, { view: 'front' })
  }
  const [before, after] = session.roundsOf(garment)
  if (!before || !after) throw new Error('test: two rounds')
  const preferences = new Preferences()
  const shown = { before, after, camera: answering(asked), session, preferences }
  return { screen: await render(PhotosInApp, shown), session, shown }
}
async function grey(level: number): Promise<Blob> {
  const canvas = new OffscreenCanvas(SIZE.width, SIZE.height)
  const context = canvas.getContext('2d')
  if (!context) throw new Error('test: no canvas')
  context.fillStyle = `rgb(${level} ${level} ${level})`
  context.fillRect(0, 0, SIZE.width, SIZE.height)
  return canvas.convertToBlob({ type: 'image/jpeg' })
}
