/**
 * Runs before the page is first painted, in a small script of its own (`scripts/opening.mjs`): on to
 * the page of her language where this is another; else her light and hand, and what the page says
 * before its scripts have come. The words of the rail are shown where the rail opens, nowhere else.
 */
import { LOOKING } from './example/looking.ts'
import { asksForDark, pageMemory, pageStore, readPreferences } from './kept-preferences.ts'
import { pageInstead } from './language.ts'
import { placeAt } from './tape/places.ts'

const kept = readPreferences(pageStore())
const other = pageInstead(kept.language, navigator.languages)
/** Another page is being opened instead. The dev server has one language only, whichever is asked for. */
export const leaving = other !== undefined && import.meta.env.PROD

if (leaving) location.replace(other + location.hash)
else show()

function show(): void {
  const { dataset } = document.documentElement
  dataset['light'] = kept.light ?? (asksForDark() ? 'lamp' : 'day')
  dataset['hand'] = kept.hand ?? 'right'
  const opening = document.querySelector<HTMLElement>('.opening')
  const words = opening?.querySelector<HTMLElement>('.page')
  if (!opening || !words) return
  opening.hidden = false
  const [path = ''] = location.hash.slice(1).split('?')
  // Over the example lies a banner, so the words of the rail lie elsewhere.
  words.hidden =
    placeAt(path)?.place !== 'rail' || typeof pageMemory()?.getItem(LOOKING) === 'string'
}
