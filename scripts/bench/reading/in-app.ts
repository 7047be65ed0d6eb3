/** The photo step of the built app driven from inside its page: no round trip counts as her waiting. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import type { BodyPhotos } from '../../estimate/folder.ts'
import { openAt } from '../faults/steps.ts'

declare global {
  interface Window {
    benchPhotos?: Record<string, File>
  }
}

/** Opens the step and hands it the files, not yet chosen. */
export async function layPhotos(
  page: Page,
  origin: string,
  folder: string,
  { files }: BodyPhotos,
): Promise<void> {
  // The compiler of this script names its functions by a helper that the page lacks.
  await page.addInitScript('globalThis.__name ??= (of) => of')
  await openAt(page, origin, '#/measure')
  await page.getByLabel('Front photo').waitFor()
  const photos = Object.entries(files).map(([view, name]) => ({
    label: `${view[0]?.toUpperCase()}${view.slice(1)} photo`,
    name,
    base64: readFileSync(join(folder, name)).toString('base64'),
  }))
  await page.evaluate((given) => {
    window.benchPhotos = Object.fromEntries(
      given.map(({ label, name, base64 }) => {
        const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
        return [label, new File([bytes], name, { type: 'image/jpeg' })]
      }),
    )
  }, photos)
}

/** From choosing the three files to the numbers on the screen, ms. Throws what the page says instead. */
export const readThree = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const seen = (holds: () => boolean): Promise<void> =>
      new Promise((done) => {
        const look = (): void => {
          if (!holds()) return
          watching.disconnect()
          done()
        }
        const watching = new MutationObserver(look)
        watching.observe(document.body, {
          subtree: true,
          childList: true,
          characterData: true,
          attributes: true,
        })
        look()
      })
    const says = (text: string): boolean => document.body.innerText.includes(text)
    const button = (): HTMLButtonElement | undefined =>
      [...document.querySelectorAll('button')].find(
        (one) => one.textContent?.trim() === 'Read the photos',
      )
    const start = performance.now()
    for (const label of document.querySelectorAll('label')) {
      const file = window.benchPhotos?.[label.textContent?.trim() ?? '']
      if (!file || !(label.control instanceof HTMLInputElement)) continue
      const chosen = new DataTransfer()
      chosen.items.add(file)
      label.control.files = chosen.files
      label.control.dispatchEvent(new Event('change', { bubbles: true }))
    }
    await seen(() => {
      const key = button()
      return key !== undefined && !key.disabled && key.getAttribute('aria-disabled') !== 'true'
    })
    button()?.click()
    const failed = (): boolean => says('The photos could not be read')
    await seen(() => says('Photos read.') || failed())
    if (failed()) throw new Error('the page says that the photos could not be read')
    await new Promise(requestAnimationFrame)
    return Math.round(performance.now() - start)
  })
