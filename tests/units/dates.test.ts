/** Against the calendar and the month names of CLDR, as Intl has them. */
import { expect, it } from 'vitest'
import { DATE_WORDS } from '../../src/units/dates.words.ts'

const intl = (iso: string, month: 'long' | 'short'): string => {
  const about = { timeZone: 'UTC', day: 'numeric', month, year: 'numeric' } as const
  const parts = new Intl.DateTimeFormat('en', about).formatToParts(new Date(iso))
  return ['day', 'month', 'year'].map((t) => parts.find((p) => p.type === t)?.value).join(' ')
}

it('a day has its month by name, whole or as three letters', () => {
  expect(DATE_WORDS.day('2026-11-25')).toBe('25 November 2026')
  expect(DATE_WORDS.short('2026-11-05')).toBe('5 Nov 2026')
  for (let month = 1; month <= 12; month++) {
    const iso = `2026-${`${month}`.padStart(2, '0')}-09`
    expect(DATE_WORDS.day(iso)).toBe(intl(iso, 'long'))
    expect(DATE_WORDS.short(iso)).toBe(intl(iso, 'short'))
  }
})

it.each(['', 'yesterday', '2026-13-01', '2026-11-25T10:00:00Z'])('%j stays as it stands', (iso) => {
  expect([DATE_WORDS.day(iso), DATE_WORDS.short(iso)]).toEqual([iso, iso])
})
