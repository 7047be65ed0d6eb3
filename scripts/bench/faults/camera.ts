/** The live camera denied, pulled out while it runs, and the phone turned while it is held. */
import type { Device } from './browser.ts'
import { must, type Tally } from './fault.ts'
import { openAt, pageErrors } from './steps.ts'

export const DENIED = ['--use-fake-device-for-media-stream', '--deny-permission-prompts']
export const ALLOWED = ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream']
const TRIES = 3

export async function denied({ page }: Device, origin: string, tally: Tally): Promise<void> {
  for (let i = 0; i < TRIES; i += 1)
    await tally.try(async () => {
      await openAt(page, origin, '#/measure')
      await page.getByRole('button', { name: 'Take the photos here' }).click()
      const alert = page.getByRole('dialog').getByRole('alert')
      await alert.waitFor()
      const sentence = await alert.innerText()
      await page.getByRole('button', { name: 'Leave' }).click()
      must(await page.getByLabel('Front photo').isVisible(), 'no way to choose photos is left')
      return { sentence: sentence.replace('Stop:', '') }
    })
}

/** The browser ends the track as it does when a plug is pulled: the event comes without our stop. */
export async function unplugged({ page }: Device, origin: string, tally: Tally): Promise<void> {
  await page.addInitScript(() => {
    const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices)
    navigator.mediaDevices.getUserMedia = async (wish) => {
      const stream = await ask(wish)
      addEventListener('pull-the-plug', () => {
        for (const track of stream.getTracks()) {
          track.stop()
          track.dispatchEvent(new Event('ended'))
        }
      })
      return stream
    }
  })
  for (let i = 0; i < TRIES; i += 1)
    await tally.try(async () => {
      await openAt(page, origin, '#/measure')
      await page.getByRole('button', { name: 'Take the photos here' }).click()
      const dialog = page.getByRole('dialog')
      await dialog.getByRole('button', { name: 'Count down from 10' }).waitFor()
      await page.evaluate(() => dispatchEvent(new Event('pull-the-plug')))
      const alert = dialog.getByRole('alert')
      await alert.waitFor()
      const sentence = await alert.innerText()
      await dialog.getByRole('button', { name: 'Start the camera again' }).click()
      await dialog.getByRole('button', { name: 'Count down from 10' }).waitFor()
      await dialog.getByRole('button', { name: 'Leave' }).click()
      return { sentence: sentence.replace('Stop:', '') }
    })
}

export async function rotated({ page }: Device, origin: string, tally: Tally): Promise<void> {
  const errors = pageErrors(page)
  for (let i = 0; i < TRIES; i += 1)
    await tally.try(async () => {
      await page.setViewportSize({ width: 390, height: 844 })
      await openAt(page, origin, '#/measure')
      await page.getByRole('button', { name: 'Take the photos here' }).click()
      const dialog = page.getByRole('dialog')
      const count = dialog.getByRole('button', { name: 'Count down from 10' })
      await count.waitFor()
      for (const [width, height] of [
        [844, 390],
        [390, 844],
      ] as const) {
        await page.setViewportSize({ width, height })
        await count.scrollIntoViewIfNeeded()
        must(await count.isVisible(), `at ${width} by ${height} the key is out of reach`)
        const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
        must(over <= 0, `at ${width} by ${height} the page is ${over} px too wide`)
      }
      must(
        await dialog.locator('video').evaluate((v: HTMLVideoElement) => !v.paused),
        'the picture stands',
      )
      await dialog.getByRole('button', { name: 'Leave' }).click()
      must(errors.length === 0, errors.join(' '))
      return { sentence: 'The picture goes on; the keys stay in reach.' }
    })
}
