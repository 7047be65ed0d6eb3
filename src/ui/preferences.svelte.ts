/**
 * How she likes the table set: units, light, which hand holds the phone, number keys, language. Kept in
 * localStorage when the browser allows it; when it does not, they last until the page closes.
 */
import { createContext } from 'svelte'
import type { UnitChoice } from '../units/format.ts'
import {
  PREFERENCES_KEY,
  readPreferences,
  type Hand,
  type KeptPreferences,
  type Light,
  type PreferenceStore,
} from './kept-preferences.ts'
import type { Language } from './language.ts'

export class Preferences {
  #kept = $state.raw<KeptPreferences>({
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
    this.#kept = { ...this.#kept, light: dark ? 'lamp' : 'day', ...readPreferences(store) }
  }

  /** What format and parse want to know: the unit, and how fine an inch is printed. */
  choice: UnitChoice = $derived({ unit: this.#kept.unit, inchStep: this.#kept.inchStep })
  get unit() {
    return this.#kept.unit
  }
  set unit(unit: KeptPreferences['unit']) {
    this.#keep({ unit })
  }
  get inchStep() {
    return this.#kept.inchStep
  }
  set inchStep(inchStep: KeptPreferences['inchStep']) {
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

  #keep(change: Partial<KeptPreferences>) {
    this.#kept = { ...this.#kept, ...change }
    try {
      this.#store?.setItem(PREFERENCES_KEY, JSON.stringify(this.#kept))
    } catch {
      // Storage is full or denied: the choice still holds until the page closes.
    }
  }
}

export const [usePreferences, providePreferences, hasPreferences] = createContext<Preferences>()
