/**
 * How she likes the table set: units, light, which hand holds the phone, number keys, language. Kept in
 * localStorage when the browser allows it; when it does not, they last until the page closes.
 */
import { createContext } from 'svelte'
import type { UnitChoice } from '../units/format.ts'
import { isLanguage, type Language } from './language.ts'

export type Light = 'day' | 'lamp'
export type Hand = 'left' | 'right'
interface Kept {
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

const KEY = 'tapetrue.preferences.v1'

export class Preferences {
  #kept = $state.raw<Kept>({
    unit: 'cm',
    inchStep: 8,
    light: 'day',
    hand: 'right',
    numberKeys: true,
  })
  #store: PreferenceStore | undefined

  /**
   * @param store where to keep them; undefined when the browser denies storage
   * @param dark whether the device asks for a dark page; used until she chooses a light
   */
  constructor(store?: PreferenceStore, dark = false) {
    this.#store = store
    this.#kept = { ...this.#kept, light: dark ? 'lamp' : 'day', ...read(store) }
  }

  /** What format and parse want to know: the unit, and how fine an inch is printed. */
  choice: UnitChoice = $derived({ unit: this.#kept.unit, inchStep: this.#kept.inchStep })
  get unit() {
    return this.#kept.unit
  }
  set unit(unit: Kept['unit']) {
    this.#keep({ unit })
  }
  get inchStep() {
    return this.#kept.inchStep
  }
  set inchStep(inchStep: Kept['inchStep']) {
    this.#keep({ inchStep })
  }
  get light() {
    return this.#kept.light
  }
  set light(light: Light) {
    this.#keep({ light })
  }
  get hand() {
    return this.#kept.hand
  }
  set hand(hand: Hand) {
    this.#keep({ hand })
  }
  /** Single keys can clash with speech input, so they can be switched off (WCAG 2.2, 2.1.4). */
  get numberKeys() {
    return this.#kept.numberKeys
  }
  set numberKeys(numberKeys: boolean) {
    this.#keep({ numberKeys })
  }

  get language(): Language | undefined {
    return this.#kept.language
  }
  set language(language: Language) {
    this.#keep({ language })
  }

  #keep(change: Partial<Kept>) {
    this.#kept = { ...this.#kept, ...change }
    try {
      this.#store?.setItem(KEY, JSON.stringify(this.#kept))
    } catch {
      // Storage is full or denied: the choice still holds until the page closes.
    }
  }
}

/** Only the fields that are what they should be; a spoilt or foreign record gives none. */
function read(store: PreferenceStore | undefined): Partial<Kept> {
  let found: unknown
  try {
    found = JSON.parse(store?.getItem(KEY) ?? 'null')
  } catch {
    return {}
  }
  if (typeof found !== 'object' || found === null) return {}
  const kept: Partial<Kept> = {}
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

export const [usePreferences, providePreferences, hasPreferences] = createContext<Preferences>()
