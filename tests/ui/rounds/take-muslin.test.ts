/** What becomes of the shots of a sitting: the head covered where somebody was found, nothing lost. */
import { expect, it } from 'vitest'
import type { Camera, MuslinRead } from '../../../src/capture/camera.ts'
import type { Darkroom, Patch } from '../../../src/capture/darkroom.ts'
import type { View, ViewReading } from '../../../src/capture/reading.ts'
import type { Shot, Shots } from '../../../src/ui/measure/photos/live-desk.svelte.ts'
import { keptSaid, Sitting } from '../../../src/ui/rounds/take-muslin.ts'
import type { Round } from '../../../src/rounds/round.ts'
import type { Session } from '../../../src/ui/session.svelte.ts'
import { FIRST } from '../../storage/invented.ts'

const SIZE = { width: 300, height: 400 }
const picture = { ...SIZE, data: new Uint8ClampedArray() }
const joint = (x: number, y: number) => ({ at: { x, y }, score: 1 })
const read = (view: View, found = true): MuslinRead => ({
  reading: {
    view,
    size: SIZE,
    person: found
      ? {
          ok: true,
          score: 1,
          joints: {
            left_ear: joint(160, 60),
            right_ear: joint(140, 60),
            left_shoulder: joint(190, 110),
            right_shoulder: joint(110, 110),
          },
        }
      : { ok: false, reason: 'Nobody.' },
    card: { ok: false, reason: 'No card.' },
    points: {},
    missing: {},
    outline: [],
    facing: -1,
  },
  sight: { lines: [] },
})
const shot = (word: string, of: Partial<MuslinRead> = {}): Shot => ({
  photo: { ok: true, picture, factor: 1, jpeg: new Blob([word]) },
  url: 'blob:none',
  ...of,
})

function table(change: { patch?: Darkroom['patch']; full?: boolean } = {}) {
  const kept: { view: string; text: string; reading?: ViewReading | undefined }[] = []
  const patches: Patch[] = []
  const covers = async (jpeg: Blob, patch: Patch) => {
    patches.push(patch)
    return new Blob([`covered ${await jpeg.text()}`])
  }
  const session = {
    problem: change.full ? 'No room.' : undefined,
    addPhoto: async (jpeg: Blob, _: Round, { view }: { view: string }) => {
      if (change.full) return undefined
      kept.push({ view, text: await jpeg.text() })
      return `sha-${view}`
    },
    noteRead: async (sha: string, { reading }: { reading?: ViewReading }) => {
      const own = kept.find(({ view }) => sha === `sha-${view}`)
      if (own) own.reading = reading
      return true
    },
  } as unknown as Session
  const underway = new Map<View, (value: MuslinRead) => void>()
  const camera = {
    muslin: (view: View) => new Promise<MuslinRead>((done) => underway.set(view, done)),
  } as unknown as Camera
  const darkroom = { patch: change.patch ?? covers } as unknown as Darkroom
  const sitting = new Sitting({ camera: () => camera, dropCamera: () => undefined, darkroom })
  const keep = (shots: Shots, covered = true) => sitting.keep(session, FIRST(), shots, covered)
  return { sitting, keep, kept, patches, underway }
}

it('the head is covered in the pixels; the photo still being read is waited for', async () => {
  const { sitting, keep, kept, patches, underway } = table()
  void sitting.tools().read?.('back', picture)
  const done = keep({ front: shot('front', read('front')), back: shot('back') })
  underway.get('back')?.(read('back'))
  expect(await done).toEqual({ count: 2, problem: undefined })
  expect(kept.map(({ text }) => text)).toEqual(['covered front', 'covered back'])
  expect(kept.map(({ reading }) => reading?.view)).toEqual(['front', 'back'])
  // The paper lies over ears and nose and ends above the shoulders.
  for (const { y, height } of patches) {
    expect(y).toBeLessThan(60)
    expect(y + height).toBeGreaterThan(60)
    expect(y + height).toBeLessThan(110)
  }
})

it('left uncovered by her tick, where nobody was found, and where the model never came', async () => {
  const { keep, kept, patches } = table()
  await keep({ front: shot('front', read('front')) }, false)
  await keep({ side: shot('side', read('side', false)), back: shot('back') })
  expect(kept.map(({ text }) => text)).toEqual(['front', 'side', 'back'])
  expect(patches).toEqual([])
})

it('covering fails: the photo is kept and she is told; no room: it stops with the reason', async () => {
  const failing = table({ patch: () => Promise.reject(new Error('no worker')) })
  const told = await failing.keep({ front: shot('front', read('front')) })
  expect(told).toMatchObject({ count: 1, problem: expect.stringContaining('front photo') })
  expect(failing.kept).toHaveLength(1)
  expect(await table({ full: true }).keep({ front: shot('front') })).toEqual({
    count: 0,
    problem: 'No room.',
  })
})

it('what was kept is said', () => {
  expect(keptSaid({ front: shot('a'), side: shot('b'), back: shot('c') }, 2)).toBe(
    'Kept with round 2: front, side and back.',
  )
  expect(keptSaid({ back: shot('c') }, 1)).toBe('Kept with round 1: back.')
})
