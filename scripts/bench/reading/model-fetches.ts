/** How often and how heavily the model's files cross the net, and whether she can stop them. */
import type { Page, Route } from 'playwright-core'
import type { Host } from '../faults/host.ts'

const MODEL = /^\/(models|wasm)\//
const STOPPED = 'Stopped. Nothing is lost; read them when you like.'

/** Counts what the host sends from now on. */
export function modelFetches(app: Host): () => { files: number; mb: number } {
  let [files, bytes] = [0, 0]
  app.spoil = (path, file) => {
    if (MODEL.test(path)) {
      files += 1
      bytes += file.length
    }
    return file
  }
  return () => ({ files, mb: Math.round(bytes / 1e4) / 100 })
}

/** A model that does not arrive is stopped by her key; the photos lie ready on the page. */
export async function stopsFetching(page: Page, photo: string): Promise<boolean> {
  const waiting: Route[] = []
  const hold = (route: Route): void => void waiting.push(route)
  await page.route('**/models/*.bin', hold)
  await page.getByLabel('Front photo').setInputFiles(photo)
  await page.getByRole('button', { name: 'Read the photos' }).click()
  await page.getByRole('button', { name: 'Stop reading' }).click()
  await page.getByText(STOPPED).waitFor()
  await page.unroute('**/models/*.bin', hold)
  for (const route of waiting) await route.abort().catch(() => undefined)
  return page.getByRole('button', { name: 'Read the photos' }).isEnabled()
}
