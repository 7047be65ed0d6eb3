/**
 * Backups spoilt by chance and read back through the page. Half of them carry a fresh checksum,
 * so that the spoilt contents themselves are judged and not the checksum alone.
 */
import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { whole, type Chance } from '../bodies/chance.ts'
import type { Device } from './browser.ts'
import { must, type Tally } from './fault.ts'
import { openAt, pageErrors } from './steps.ts'

const SEED = 7_112_026
const HOSTILE = '<img src=x onerror="document.title=\'taken\'">'
type Json = null | boolean | number | string | Json[] | { [key: string]: Json }

export const mutatedBackups =
  (tries: number) =>
  async ({ page }: Device, origin: string, tally: Tally): Promise<void> => {
    const errors = pageErrors(page)
    const next = whole(SEED)
    await openAt(page, origin)
    await page.getByRole('button', { name: 'Look at the example' }).click()
    await page.getByRole('button', { name: 'Save to a file: Invented example' }).waitFor()
    const text = await saved(page, /^Save to a file/)
    await page.getByRole('button', { name: 'Take the example down' }).click()
    await openAt(page, origin)
    await give(page, text)
    await page.getByText('Read back:').waitFor()
    const before = roundsOf(await saved(page, 'Save everything to a file'))
    must(before.size > 0, 'no round to lose')
    for (let i = 0; i < tries; i += 1)
      await tally.try(async () => {
        const status = await give(page, spoilt(text, next))
        must(
          (await page.title()) !== 'taken' && errors.length === 0,
          errors.join(' ') || 'a script ran',
        )
        return { sentence: status.includes('Not done') ? status.replace('Stop:', '') : '' }
      })
    await openAt(page, origin)
    const after = roundsOf(await saved(page, 'Save everything to a file'))
    for (const [id, round] of before) if (after.get(id) !== round) tally.lost += 1
    await page
      .getByRole('article', { name: /^Invented example/ })
      .first()
      .waitFor()
  }

/** Gives a file to the page and waits for what it says to it. */
async function give(page: Page, text: string): Promise<string> {
  const status = page.locator('section').filter({ hasText: 'Safe keeping' }).getByRole('status')
  const note = `${Math.random()}`
  await status.evaluate((element, mark) => element.setAttribute('data-seen', mark), note)
  await page.evaluate(() => {
    const shown = document.querySelector('[data-seen] > *')
    shown?.setAttribute('data-old', '')
  })
  await page
    .locator('input[type=file][accept*=json]')
    .setInputFiles({ name: 'b.json', mimeType: 'application/json', buffer: Buffer.from(text) })
  await page.waitForFunction(() => {
    const shown = document.querySelector('[data-seen] > *')
    return shown !== null && !shown.hasAttribute('data-old')
  })
  return status.innerText()
}

async function saved(page: Page, name: string | RegExp): Promise<string> {
  const waiting = page.waitForEvent('download')
  await page.getByRole('button', { name }).first().click()
  return readFileSync(await (await waiting).path(), 'utf8')
}

function roundsOf(text: string): Map<string, string> {
  const { payload } = JSON.parse(text) as { payload: { rounds: { id: string }[] } }
  return new Map(payload.rounds.map((round) => [round.id, JSON.stringify(round)]))
}

function spoilt(text: string, next: Chance): string {
  const share = (): number => next() / 2 ** 32
  if (share() < 0.3) return torn(text, share)
  const file = JSON.parse(text) as { [key: string]: Json }
  const times = 1 + Math.floor(share() * 4)
  for (let i = 0; i < times; i += 1) change(file['payload'] ?? null, share)
  if (share() < 0.1) change(file, share)
  else if (share() < 0.7)
    file['sha256'] = createHash('sha256').update(JSON.stringify(file['payload'])).digest('hex')
  return JSON.stringify(file)
}

/** Letters lost, doubled or exchanged anywhere in the file. */
function torn(text: string, share: () => number): string {
  const at = Math.floor(share() * text.length)
  const kind = share()
  if (kind < 0.4) return text.slice(0, at)
  if (kind < 0.6) return text.slice(at)
  if (kind < 0.8) return text.slice(0, at) + text.slice(at + Math.floor(share() * 200))
  return text.slice(0, at) + String.fromCharCode(Math.floor(share() * 300)) + text.slice(at + 1)
}

/** One value anywhere in the tree made something else. */
function change(tree: Json, share: () => number): void {
  const places: { at: { [key: string]: Json } | Json[]; key: string }[] = []
  const walk = (at: Json): void => {
    if (typeof at !== 'object' || at === null) return
    for (const [key, value] of Object.entries(at)) {
      places.push({ at: at as { [key: string]: Json }, key })
      walk(value)
    }
  }
  walk(tree)
  const place = places[Math.floor(share() * places.length)]
  if (!place) return
  const target = place.at as { [key: string]: Json }
  const was = target[place.key] ?? null
  const others: Json[] = [
    null,
    '',
    HOSTILE,
    -1,
    1e308,
    [],
    {},
    true,
    'constructor',
    [was, was],
    { __proto__x: was },
  ]
  if (share() < 0.15) delete target[place.key]
  else if (share() < 0.1) target[HOSTILE] = was
  else target[place.key] = others[Math.floor(share() * others.length)] ?? null
}
