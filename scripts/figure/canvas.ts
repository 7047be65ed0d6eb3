/** JPEG in and out of plain pixels, through the canvas of a headless Chromium on this machine. */
import { readFileSync } from 'node:fs'
import { chromium, type Page } from 'playwright-core'
import type { Picture } from '../../src/capture/picture.ts'
import { CHROMIUM_FLAGS, findChromium } from '../chromium.mjs'

export interface Canvas {
  decode(path: string): Promise<Picture>
  /** @param quality 0 to 1, as the canvas takes it */
  encode(picture: Picture, quality: number): Promise<Buffer>
  close(): Promise<void>
}

/** Opens the browser once; null when none is installed. */
export async function openCanvas(): Promise<Canvas | null> {
  const executablePath = findChromium()
  if (!executablePath) return null
  const browser = await chromium.launch({ executablePath, args: CHROMIUM_FLAGS })
  const page = await browser.newPage()
  return {
    decode: (path) => decode(page, path),
    encode: (picture, quality) => encode(page, picture, quality),
    close: () => browser.close(),
  }
}

async function decode(page: Page, path: string): Promise<Picture> {
  const base64 = readFileSync(path).toString('base64')
  const { width, height, bytes } = await page.evaluate(async (jpeg) => {
    const image = new Image()
    image.src = `data:image/jpeg;base64,${jpeg}`
    await image.decode()
    const canvas = document.createElement('canvas')
    canvas.width = image.naturalWidth
    canvas.height = image.naturalHeight
    const context = canvas.getContext('2d', { willReadFrequently: true })
    if (!context) throw new Error('canvas: no 2d context')
    context.drawImage(image, 0, 0)
    const { data } = context.getImageData(0, 0, canvas.width, canvas.height)
    let bytes = ''
    for (let i = 0; i < data.length; i += 8192)
      bytes += String.fromCharCode(...data.subarray(i, i + 8192))
    return { width: canvas.width, height: canvas.height, bytes: btoa(bytes) }
  }, base64)
  return { width, height, data: new Uint8ClampedArray(Buffer.from(bytes, 'base64')) }
}

async function encode(page: Page, picture: Picture, quality: number): Promise<Buffer> {
  const { width, height } = picture
  const base64 = Buffer.from(picture.data).toString('base64')
  const url = await page.evaluate(
    ({ width, height, base64, quality }) => {
      const bytes = Uint8ClampedArray.from(atob(base64), (c) => c.charCodeAt(0))
      const canvas = document.createElement('canvas')
      canvas.width = width
      canvas.height = height
      const context = canvas.getContext('2d')
      if (!context) throw new Error('canvas: no 2d context')
      context.putImageData(new ImageData(bytes, width, height), 0, 0)
      return canvas.toDataURL('image/jpeg', quality)
    },
    { width, height, base64, quality },
  )
  return Buffer.from(url.slice(url.indexOf(',') + 1), 'base64')
}
