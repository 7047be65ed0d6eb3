/**
 * What gives the scale, as the camera road is asked for it. ISO 216:2007 A4 is 210 x 297 mm, Letter
 * 8 1/2 x 11 in (ANSI/ASME Y14.1), ID-1 85.60 x 53.98 mm (ISO/IEC 7810:2019).
 */
import { expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { userEvent } from 'vitest/browser'
import type { Camera, CardQuestion } from '../../../src/capture/camera.ts'
import { openDarkroom } from '../../../src/capture/darkroom.ts'
import { Preferences } from '../../../src/ui/preferences.svelte.ts'
import { PhotoDesk } from '../../../src/ui/measure/photos/desk.svelte.ts'
import PickScale from '../../../src/ui/measure/photos/PickScale.svelte'
import WithPreferences from '../WithPreferences.svelte'

/** A desk with one photo of one colour, tapped at four corners, and the questions put to its camera. */
async function table() {
  const asked: CardQuestion[] = []
  const camera: Camera = {
    warm: async () => undefined,
    read: (_view, _picture, card) => {
      asked.push(card)
      return Promise.reject(new Error('not read here'))
    },
    muslin: () => Promise.reject(new Error('not asked here')),
    look: () => Promise.reject(new Error('not asked here')),
    close: () => undefined,
  }
  const desk = new PhotoDesk(() => camera, openDarkroom())
  const canvas = new OffscreenCanvas(400, 500)
  canvas.getContext('2d')?.fillRect(0, 0, 400, 500)
  const jpeg = await canvas.convertToBlob({ type: 'image/jpeg' })
  await desk.choose('front', new File([jpeg], 'grey.jpg', { type: 'image/jpeg' }))
  const corners = [
    { x: 100, y: 100 },
    { x: 200, y: 100 },
    { x: 200, y: 200 },
    { x: 100, y: 200 },
  ]
  const screen = await render(WithPreferences<{ desk: PhotoDesk }>, {
    preferences: new Preferences(),
    part: PickScale,
    given: { desk },
  })
  async function question(): Promise<CardQuestion | undefined> {
    desk.setTaps('front', corners)
    await desk.readAll()
    return asked.at(-1)
  }
  return { desk, screen, question }
}
const sizeOf = (card: CardQuestion | undefined) => (card?.how === 'id1' ? card.size : card?.how)

it('asks for our sheet, or for a plain card or paper with its size', async () => {
  const { screen, question } = await table()
  expect(sizeOf(await question())).toBe('sheet')
  for (const [word, size] of [
    ['Bank-size card', { widthMm: 85.6, heightMm: 53.98 }],
    ['Blank A4', { widthMm: 210, heightMm: 297 }],
    ['Blank Letter', { widthMm: 215.9, heightMm: 279.4 }],
  ] as const) {
    await screen.getByText(word, { exact: true }).click()
    expect(sizeOf(await question())).toEqual(size)
  }
})

it('a rectangle of her own needs both sides, and a size that gives a scale', async () => {
  const { desk, screen, question } = await table()
  await screen.getByText('My own rectangle').click()
  expect(await question()).toBeUndefined()
  expect(desk.whyNotRead).toBe('Write down both sides of the rectangle first.')

  const side = async (label: string, text: string) => {
    await userEvent.fill(screen.getByLabelText(label), text)
    await userEvent.keyboard('{Enter}')
  }
  await side('One side', '15 cm')
  await side('Other side', '60 cm')
  await expect.element(screen.getByText(/gives no good scale/)).toBeVisible()
  expect(desk.whyNotRead).toBe('Write down both sides of the rectangle first.')
  await side('Other side', '21 cm')
  expect(sizeOf(await question())).toEqual({ widthMm: 150, heightMm: 210 })
})
