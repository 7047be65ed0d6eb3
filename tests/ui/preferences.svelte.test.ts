import { describe, expect, it } from 'vitest'
import type { PreferenceStore } from '../../src/ui/kept-preferences.ts'
import { Preferences } from '../../src/ui/preferences.svelte.ts'

/** A drawer that holds text, as Storage does, without touching the browser's own. */
function drawer(text: string | null = null): PreferenceStore & { text: string | null } {
  const held = {
    text,
    getItem: () => held.text,
    setItem: (_key: string, next: string) => {
      held.text = next
    },
  }
  return held
}
const denied: PreferenceStore = {
  getItem: () => {
    throw new DOMException('denied', 'SecurityError')
  },
  setItem: () => {
    throw new DOMException('full', 'QuotaExceededError')
  },
}

describe('kept on the device', () => {
  it('finds everything again the next time', () => {
    const store = drawer()
    const first = new Preferences(store)
    Object.assign(first, {
      unit: 'inch',
      inchStep: 16,
      light: 'lamp',
      hand: 'left',
      numberKeys: false,
    })
    const again = new Preferences(store)
    expect(again.choice).toEqual({ unit: 'inch', inchStep: 16 })
    expect([again.light, again.hand, again.numberKeys]).toEqual(['lamp', 'left', false])
  })

  it('starts plain when the record is spoilt, and keeps the fields that are whole', () => {
    for (const text of ['{', 'null', '7', '[]', '{"unit":"ell","inchStep":3}'])
      expect(new Preferences(drawer(text)).choice, text).toEqual({ unit: 'cm', inchStep: 8 })
    expect(new Preferences(drawer('{"unit":"inch","light":"noon"}')).unit).toBe('inch')
    expect(new Preferences(drawer('{"unit":"inch","light":"noon"}')).light).toBe('day')
  })

  it('still holds until the page closes when the browser denies storage', () => {
    for (const store of [denied, undefined]) {
      const preferences = new Preferences(store)
      preferences.unit = 'inch'
      expect(preferences.choice.unit).toBe('inch')
    }
  })

  it('follows a device that asks for a dark page until she chooses a light', () => {
    const store = drawer()
    const preferences = new Preferences(store, true)
    expect(preferences.light).toBe('lamp')
    preferences.light = 'day'
    expect(new Preferences(store, true).light).toBe('day')
  })
})
