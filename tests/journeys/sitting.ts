/** A sitting before the camera: what is said large, the tracks that were opened, the heads that were kept. */
import type { Locator, Page } from '@playwright/test'
import { expect } from './journey.ts'

/** Loaded machines take long for one frame; the model comes first of all. */
export const LONG = { timeout: 180_000 }

declare global {
  interface Window {
    openedTracks: MediaStreamTrack[]
  }
}

/** To be called before the page is opened: every track the page is given is remembered. */
export const watchTracks = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    window.openedTracks = []
    const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices)
    navigator.mediaDevices.getUserMedia = async (wanted) => {
      const stream = await ask(wanted)
      window.openedTracks.push(...stream.getTracks())
      return stream
    }
  })
export const tracks = (page: Page): Promise<string[]> =>
  page.evaluate(() => window.openedTracks.map((track) => track.readyState))

export const hint = (dialog: Locator, words: string): Promise<void> =>
  expect(dialog.locator('.hint')).toHaveText(new RegExp(words), LONG)

/** Every kept photo of the figure has paper where the middle of its head was. */
export async function headsCovered(page: Page, photos: number): Promise<void> {
  const colours = await headPixels(page)
  expect(colours).toHaveLength(photos)
  // JPEG changes a plain colour by a few of 255.
  for (const colour of colours)
    for (const [k, value] of [0xf1, 0xee, 0xe2].entries())
      expect(Math.abs((colour[k] ?? 0) - value)).toBeLessThan(12)
}

/** Red, green, blue in the middle of where the figure's head is (share of the picture), kept pixels. */
async function headPixels(page: Page): Promise<number[][]> {
  return page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((done, failed) => {
      const asked = indexedDB.open('tapetrue')
      asked.onsuccess = () => done(asked.result)
      asked.onerror = () => failed(asked.error)
    })
    const rows = await new Promise<{ bytes: ArrayBuffer }[]>((done) => {
      const asked = db.transaction('pixels').objectStore('pixels').getAll()
      asked.onsuccess = () => done(asked.result)
    })
    db.close()
    const colours: number[][] = []
    for (const { bytes } of rows) {
      const picture = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }))
      const context = new OffscreenCanvas(picture.width, picture.height).getContext('2d')
      if (!context) throw new Error('no 2d context')
      context.drawImage(picture, 0, 0)
      const at = [Math.round(picture.width * 0.5), Math.round(picture.height * 0.275)] as const
      colours.push([...context.getImageData(...at, 1, 1).data].slice(0, 3))
    }
    return colours
  })
}
