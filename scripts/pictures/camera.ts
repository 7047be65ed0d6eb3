/**
 * Pictures of the running app for the guide: one part of a screen at a time, as WebP, which a page
 * of the same browser encodes, so that no image library is needed.
 */
import { writeFileSync } from 'node:fs'
import type { Browser, Locator, Page } from 'playwright-core'

/** A quarter more pixels than the screen has: sharp on a phone, still small. */
export const DENSITY = 1.25
const QUALITY = 0.72
/** Taller parts of a screen are cut off here, px of the screen: the words lie beside the picture. */
const TALLEST = 900

export interface Camera {
  /** Takes what `part` shows, down to `tallest` px; a page is taken as its window shows it. */
  readonly take: (name: string, part: Locator | Page, tallest?: number) => Promise<void>
  readonly taken: ReadonlyMap<string, readonly [width: number, height: number]>
}

/** @param folder where the pictures go, ending in a slash */
export async function cameraInto(folder: string, browser: Browser): Promise<Camera> {
  const darkroom = await browser.newPage()
  const taken = new Map<string, readonly [number, number]>()
  async function take(name: string, part: Locator | Page, tallest = TALLEST) {
    const png = await part.screenshot({ animations: 'disabled' })
    const [webp, width, height] = await darkroom.evaluate(
      async ([base64, quality, most]) => {
        const image = new Image()
        image.src = `data:image/png;base64,${base64}`
        await image.decode()
        const width = image.width
        const height = Math.min(image.height, Math.round(most))
        const canvas = Object.assign(document.createElement('canvas'), { width, height })
        canvas.getContext('2d', { alpha: false })?.drawImage(image, 0, 0)
        return [canvas.toDataURL('image/webp', quality), width, height] as const
      },
      [png.toString('base64'), QUALITY, tallest * DENSITY] as const,
    )
    writeFileSync(`${folder}${name}.webp`, Buffer.from(webp.split(',')[1] ?? '', 'base64'))
    taken.set(name, [Math.round(width / DENSITY), Math.round(height / DENSITY)])
  }
  return { take, taken }
}
