/** The browser killed while readings are being kept, at moments by chance; then opened again. */
import type { Page } from 'playwright-core'
import { whole } from '../bodies/chance.ts'
import { device, newProfile, removeProfile } from './browser.ts'
import { must, Tally, type Outcome } from './fault.ts'
import { openAt, readingField } from './steps.ts'

/** Invented, cm; tenths are counted up from these. */
const FROM: readonly (readonly [label: string, cm: number])[] = [
  ['Bust girth', 90],
  ['Waist girth', 72],
  ['Hip girth', 96],
  ['Nape to waist', 38],
  ['Waist to hip', 18],
]
const SEED = 20261128
/** Longest time from the first reading to the end of the power, ms. */
const LONGEST_MS = 2500

/** Told as kept by the page, and what was being kept when it ended. */
interface Heard {
  readonly kept: Map<string, string>
  readonly underWay: Map<string, string>
}

export async function killedDuringSave(origin: string, tries: number): Promise<Outcome> {
  const chance = whole(SEED)
  const profile = newProfile()
  const tally = new Tally()
  let heard: Heard = { kept: new Map(), underWay: new Map() }
  let count = 0
  let told = 0
  for (let i = 0; i <= tries; i += 1) {
    const { page, kill } = await device(profile)
    const check = async () => {
      await openAt(page, origin, '#/measure')
      const lost = await missing(page, heard)
      const words = (await page.locator('body').innerText()).includes('could not be read')
      must(!words, 'a record was put aside')
      told += heard.kept.size
      return { lost, sentence: 'Opens as it was: every reading told as kept is there.' }
    }
    if (i === 0) await openAt(page, origin, '#/measure')
    else await tally.try(check)
    if (i < tries) {
      heard = { kept: new Map(), underWay: new Map() }
      const typing = typeOn(page, heard, () => (count += 1)).catch(() => undefined)
      await new Promise((done) => setTimeout(done, (chance() / 2 ** 32) * LONGEST_MS))
      await kill()
      await typing
    } else await kill()
  }
  removeProfile(profile)
  console.log(
    `  killed: ${count} values typed; the last told as kept of each number, ${told}, were looked for`,
  )
  for (const fault of new Set(tally.faults)) console.log(`  killed: ${fault}`)
  return tally.outcome
}

/** Types readings one after another, as fast as the page keeps them, until the browser is gone. */
async function typeOn(page: Page, heard: Heard, next: () => number): Promise<void> {
  for (;;)
    for (const [label, from] of FROM) {
      const value = (from + (next() % 40) / 10).toFixed(1)
      heard.underWay.set(label, value)
      await page.evaluate(typeInPage, { label, value })
      heard.kept.set(label, value)
    }
}

/** Sets the field, presses Enter, and waits until the page says when it was last kept anew. */
async function typeInPage({ label, value }: { label: string; value: string }): Promise<void> {
  const fields = [...document.querySelectorAll('input')]
  const field = fields.find((f) => f.labels?.[0]?.textContent?.trim() === `${label}, tape 1`)
  if (!field) throw new Error(`no field for ${label}`)
  const before = performance.now()
  field.focus()
  field.value = value
  field.dispatchEvent(new Event('input', { bubbles: true }))
  field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }))
  while (performance.now() - before < 5000) {
    await new Promise((done) => setTimeout(done, 4))
    const undo = document.querySelector('[aria-label^="Take back:"]')?.getAttribute('aria-label')
    if (undo?.includes(label) && undo.includes(value)) return
  }
  throw new Error(`${label} was not kept in time`)
}

/** How many readings that were told as kept are shown no longer. */
async function missing(page: Page, { kept, underWay }: Heard): Promise<number> {
  let lost = 0
  for (const [label, value] of kept) {
    const shown = (await readingField(page, label).inputValue()).replace(' cm', '')
    if (shown !== value && shown !== underWay.get(label)) lost += 1
  }
  return lost
}
