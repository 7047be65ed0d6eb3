/**
 * The guided capture in a real browser: a drawn picture for a camera, stances in place of the model,
 * a clock that runs twenty times as fast. The real model before a fake camera: tests/journeys.
 */
import { describe, expect, it, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { userEvent } from 'vitest/browser'
import type { Camera } from '../../../src/capture/camera.ts'
import { openDarkroom } from '../../../src/capture/darkroom.ts'
import { LiveDesk, type LiveTools } from '../../../src/ui/measure/photos/live-desk.svelte.ts'
import type { ToneName } from '../../../src/ui/measure/photos/tones.ts'
import { sightOf, type Stance } from '../../capture/live-sight.ts'
import LiveUnderTest from './LiveUnderTest.svelte'

const FAST = 20
const LONG = { timeout: 60_000 }

/** A camera that shows a canvas of one colour, redrawn so that frames keep coming. */
function drawnStream(): MediaStream {
  const canvas = document.createElement('canvas')
  canvas.width = 600
  canvas.height = 800
  const context = canvas.getContext('2d')
  if (!context) throw new Error('no 2d context')
  const draw = () => {
    context.fillStyle = 'rgb(90 140 150)'
    context.fillRect(0, 0, 600, 800)
  }
  draw()
  const timer = setInterval(draw, 40)
  const stream = canvas.captureStream(25)
  stream.getTracks()[0]?.addEventListener('ended', () => clearInterval(timer))
  return stream
}

interface Scene {
  stance: Stance | undefined
  readonly heard: ToneName[]
  readonly stream: MediaStream
  readonly desk: LiveDesk
  readonly closed: () => void
}

async function opened(change: Partial<LiveTools> = {}, stance?: Stance) {
  const [heard, stream] = [[] as ToneName[], drawnStream()]
  const scene: { stance: Stance | undefined } = { stance }
  const camera: Camera = {
    warm: async (onFetched) => onFetched?.({ loaded: 12.6e6, total: 12.6e6 }),
    look: async (frame) => {
      frame.close()
      return scene.stance && sightOf(scene.stance)
    },
    read: () => Promise.reject(new Error('not asked here')),
    muslin: () => Promise.reject(new Error('not asked here')),
    close: () => undefined,
  }
  const desk = new LiveDesk({
    camera: () => camera,
    dropCamera: () => undefined,
    darkroom: openDarkroom(),
    stream: async () => ({ ok: true, stream }),
    tones: () => ({
      on: true,
      play(name) {
        if (this.on) heard.push(name)
      },
      close: () => undefined,
    }),
    now: () => performance.now() * FAST,
    ...change,
  })
  const closed = vi.fn()
  const screen = await render(LiveUnderTest, { desk, onclose: closed })
  const all: Scene = Object.assign(scene, { heard, stream, desk, closed })
  return { screen, scene: all }
}
type Screen = Awaited<ReturnType<typeof opened>>['screen']
const status = (screen: Screen) => screen.getByRole('status').first()
const says = (screen: Screen, words: string) =>
  expect.element(status(screen), LONG).toHaveTextContent(words)

describe('front, side and back', () => {
  it('are taken by standing still, one after the other, and heard', async () => {
    const { screen, scene } = await opened()
    await says(screen, 'Step into the picture.')
    scene.stance = { arms: 3 }
    await says(screen, 'Arms a little away.')
    scene.stance = {}
    await expect.poll(() => scene.desk.taken, LONG).toEqual(['front'])
    scene.stance = { turn: 'side' }
    await expect.poll(() => scene.desk.taken, LONG).toEqual(['front', 'side'])
    scene.stance = { turn: 'back' }
    await says(screen, 'All are taken.')
    expect(scene.desk.shots.back?.photo.picture).toMatchObject({ width: 600, height: 800 })
    expect(scene.heard.filter((tone) => tone === 'taken')).toHaveLength(3)
    expect(scene.heard).toContain('last')
    expect(scene.heard.at(-1)).toBe('done')
    await expect
      .element(screen.getByRole('button', { name: 'Use these photos' }))
      .toBeInTheDocument()
  })

  it('one of them can be taken again: the new photo takes the place of the old', async () => {
    const { screen, scene } = await opened({}, {})
    await expect.poll(() => scene.desk.taken, LONG).toEqual(['front'])
    const first = scene.desk.shots.front?.url
    scene.stance = undefined
    await screen.getByRole('button', { name: 'Take the front photo again' }).click()
    await says(screen, 'Step into the picture.')
    expect(scene.desk.shots.front?.url).toBe(first)
    scene.stance = {}
    await expect.poll(() => scene.desk.shots.front?.url, LONG).not.toBe(first)
  })
})

describe('the camera', () => {
  it('is let go with Escape, and what was taken is handed over', async () => {
    const { scene } = await opened({}, {})
    await expect.poll(() => scene.desk.taken, LONG).toEqual(['front'])
    expect(scene.stream.getTracks().map((t) => t.readyState)).toEqual(['live'])
    await userEvent.keyboard('{Escape}')
    await expect.poll(() => vi.mocked(scene.closed).mock.calls.length).toBe(1)
    expect(Object.keys(scene.desk.leave())).toEqual(['front'])
    expect(scene.stream.getTracks().map((t) => t.readyState)).toEqual(['ended'])
  })
  it('is let go when the page goes away, and when the screen is no longer seen', async () => {
    const { screen, scene } = await opened()
    await says(screen, 'Step into the picture.')
    scene.desk.hidden()
    expect(scene.stream.getTracks().map((t) => t.readyState)).toEqual(['ended'])
    await expect
      .element(screen.getByRole('button', { name: 'Start the camera again' }))
      .toBeInTheDocument()
    await screen.unmount()
    expect(scene.desk.stream).toBeUndefined()
  })
  it('that is refused says why, and asks again when she says so', async () => {
    let allowed = false
    const stream = drawnStream()
    const { screen } = await opened({
      stream: async () =>
        allowed ? { ok: true, stream } : { ok: false, reason: 'The camera is not allowed here.' },
    })
    await expect.element(screen.getByRole('alert')).toHaveTextContent('not allowed here')
    allowed = true
    await screen.getByRole('button', { name: 'Start the camera again' }).click()
    await says(screen, 'Step into the picture.')
    stream.getTracks().forEach((track) => track.stop())
  })
})

it('tones can be switched off', async () => {
  const { screen, scene } = await opened()
  await screen.getByRole('button', { name: 'Tones are on. Switch them off' }).click()
  scene.stance = {}
  await expect.poll(() => scene.desk.taken, LONG).toEqual(['front'])
  expect(scene.heard).toEqual([])
})

it('without the model the key counts down and takes the photo', async () => {
  const broken: Camera = {
    warm: () => Promise.reject(new Error('no model')),
    look: () => Promise.reject(new Error('no model')),
    read: () => Promise.reject(new Error('no model')),
    muslin: () => Promise.reject(new Error('no model')),
    close: () => undefined,
  }
  const { screen, scene } = await opened({ camera: () => broken })
  await expect
    .element(screen.getByText('The hints did not arrive.', { exact: false }))
    .toBeVisible()
  await screen.getByRole('button', { name: 'Count down from 10' }).click()
  await expect.poll(() => scene.desk.taken, LONG).toEqual(['front'])
})
