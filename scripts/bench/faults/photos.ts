/** Photos that give trouble: each is opened, or refused with a sentence, and the next one opens. */
import { readFileSync } from 'node:fs'
import { withExif } from '../../../tests/capture/exif-made.ts'
import { must, type Tally } from './fault.ts'
import { greyJpeg, heicHeader, movingGif } from './made-photos.ts'
import type { Device } from './browser.ts'
import { openAt, pageErrors } from './steps.ts'

const GOOD = readFileSync(new URL('../../../tests/photos/figure-front.jpg', import.meta.url))
const half = GOOD.subarray(0, Math.floor(GOOD.length / 2))

export const BAD_PHOTOS: Readonly<Record<string, { bytes: () => Uint8Array; name: string }>> = {
  'photo of 1 px': { bytes: () => greyJpeg(1, 1), name: 'one.jpg' },
  'photo of 100 MP': { bytes: () => greyJpeg(8660, 11547), name: 'large.jpg' },
  'photo of 150 MP': { bytes: () => greyJpeg(10600, 14150), name: 'larger.jpg' },
  'photo in CMYK': { bytes: () => greyJpeg(900, 1600, 4), name: 'inks.jpg' },
  'animated photo': { bytes: () => movingGif(600, 800), name: 'moving.gif' },
  'HEIC photo': { bytes: heicHeader, name: 'phone.heic' },
  'photo turned by EXIF': {
    bytes: () => withExif(Uint8Array.from(greyJpeg(1600, 900)), { orientation: 6 }),
    name: 'turned.jpg',
  },
  'truncated photo': { bytes: () => half, name: 'half.jpg' },
  'no photo at all': { bytes: () => Buffer.from('%PDF-1.7 not a photo'), name: 'pattern.jpg' },
  'empty file': { bytes: () => Buffer.alloc(0), name: 'empty.jpg' },
}

export const badPhoto =
  (which: keyof typeof BAD_PHOTOS) =>
  async ({ page }: Device, origin: string, tally: Tally): Promise<void> => {
    const bad = BAD_PHOTOS[which]
    if (!bad) throw new Error(`no photo ${String(which)}`)
    const errors = pageErrors(page)
    await openAt(page, origin, '#/measure')
    await tally.try(async () => {
      const give = (view: string, name: string, bytes: Uint8Array) =>
        page.getByLabel(`${view} photo`).setInputFiles({
          name,
          mimeType: 'image/jpeg',
          buffer: Buffer.from(bytes),
        })
      await give('Side', 'good.jpg', GOOD)
      await page.getByText('good.jpg', { exact: true }).waitFor()
      await give('Front', bad.name, bad.bytes())
      const slip = page.locator('.slip').filter({ has: page.getByLabel('Front photo') })
      await page.waitForFunction(() => !document.body.innerText.includes('Opening '), undefined, {
        timeout: 90_000,
      })
      const alert = slip.getByRole('alert')
      const refused = (await alert.count()) > 0
      const sentence = refused ? await alert.innerText() : 'Opened; it can be read.'
      must(await page.getByText('good.jpg', { exact: true }).isVisible(), 'the other photo is gone')
      await give('Front', 'next.jpg', GOOD)
      await page.getByText('next.jpg', { exact: true }).waitFor()
      must(errors.length === 0, errors.join(' '))
      return { sentence: sentence.replace(/^Stop:\s*/, '') }
    })
  }
