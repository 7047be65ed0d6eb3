/** What she chose on this device as it lies in the browser's storage, read before anything is drawn. */
import type { UnitChoice } from '../units/format.ts'
import { isLanguage, type Language } from './language.ts'

export type Light = 'day' | 'lamp'
export type Hand = 'left' | 'right'
export interface KeptPreferences {
  unit: UnitChoice['unit']
  inchStep: UnitChoice['inchStep']
  light: Light
  hand: Hand
  numberKeys: boolean
  /** Until she chooses one, the browser’s. */
  language?: Language
}
/** The two calls of Storage that are used, so a test can hand in its own. */
export type PreferenceStore = Pick<Storage, 'getItem' | 'setItem'>

export const PREFERENCES_KEY = 'tapetrue.preferences.v1'

/** Only the fields that are what they should be; a spoilt or foreign record gives none. */
export function readPreferences(store: PreferenceStore | undefined): Partial<KeptPreferences> {
  let found: unknown
  try {
    found = JSON.parse(store?.getItem(PREFERENCES_KEY) ?? 'null')
  } catch {
    return {}
  }
  if (typeof found !== 'object' || found === null) return {}
  const kept: Partial<KeptPreferences> = {}
  if ('unit' in found && (found.unit === 'cm' || found.unit === 'inch')) kept.unit = found.unit
  if ('inchStep' in found && (found.inchStep === 8 || found.inchStep === 16))
    kept.inchStep = found.inchStep
  if ('light' in found && (found.light === 'day' || found.light === 'lamp'))
    kept.light = found.light
  if ('hand' in found && (found.hand === 'left' || found.hand === 'right')) kept.hand = found.hand
  if ('numberKeys' in found && typeof found.numberKeys === 'boolean')
    kept.numberKeys = found.numberKeys
  if ('language' in found && isLanguage(found.language)) kept.language = found.language
  return kept
}

/** The page's own storage, or undefined where even asking for it throws. */
export function pageStore(): PreferenceStore | undefined {
  try {
    return globalThis.localStorage
  } catch {
    return undefined
  }
}

/** What the page remembers as long as its tab is open, or undefined where that is denied. */
export function pageMemory(): Storage | undefined {
  try {
    return globalThis.sessionStorage
  } catch {
    return undefined
  }
}

/** The device asks for a dark page. */
export const asksForDark = (): boolean => window.matchMedia('(prefers-color-scheme: dark)').matches
