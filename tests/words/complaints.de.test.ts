/** The complaints as she reads them in German. What is checked is form: common practice, no source. */
import { describe, expect, it } from 'vitest'
import { ALL_COMPLAINTS, causeWords, complaintOf } from '../../src/fitting/complaints/catalogue.ts'
import { EVIDENCE_WORDS } from '../../src/fitting/complaints/sources.words.ts'
import { SOURCES } from '../../src/fitting/complaints/sources.ts'
import { inHers } from '../../src/ui/fitting/told-words.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const INCH = { unit: 'inch', inchStep: 8 } as const

describe.each(ALL_COMPLAINTS)('$id', (c) => {
  const remedies = c.causes.flatMap(({ remedy }) =>
    remedy.kind === 'work'
      ? [remedy.never?.why, remedy.past?.why]
      : remedy.kind === 'see'
        ? []
        : [remedy.advice],
  )
  const told = [
    c.sign,
    c.doNot,
    ...c.tests.flatMap(({ ask, leaves }) => [ask, leaves?.why]),
    ...remedies,
  ].flatMap((text) => text ?? [])

  it('its name fits a phone, its sentences are sentences', () => {
    expect(c.name.length).toBeLessThanOrEqual(40)
    for (const { ask } of c.tests) expect(ask).toMatch(/^[A-ZÄÖÜ].*\?$/)
    for (const text of told) expect(text).toMatch(/^[A-ZÄÖÜ].*[.?]$/)
    for (const text of [...c.causes.map(({ name }) => name), ...c.said, c.where])
      expect(text).not.toMatch(/[.?!]$/)
  })
  it('no word judges the body, nothing is said to a stranger', () => {
    const all = [c.name, ...told, ...c.causes.map(({ name }) => name)].join(' ')
    expect(all).not.toMatch(/!|\b(dick|fett|hässlich|Problemzone|Makel|normal|unnormal)/i)
    expect(all).not.toMatch(/[a-zäöüß,] (Sie|Ihnen|Ihre?[nmrs]?)\b/)
  })
  it('its lengths turn into her unit', () => {
    for (const text of [...told, c.where]) {
      expect(inHers(text, CM)).not.toMatch(/\bmm\b|\d\.\d/)
      expect(inHers(text, INCH)).not.toMatch(/\b[cm]m\b/)
    }
  })
})

it('one range of many, in centimetres', () => {
  expect(inHers(complaintOf('A4').doNot, CM)).toContain('auf jeder Hälfte 0,6 bis 1,3\u00a0cm')
  expect(inHers(complaintOf('K7').tests[0]?.ask ?? '', CM)).toContain('4,0 bis 6,0\u00a0cm unter')
})

it('what rounds kept in English is read in German', () => {
  expect(causeWords({ complaint: 'B8', cause: 'bust fuller than the darts hold' })).toBe(
    'Brust fülliger, als die Abnäher fassen',
  )
  expect(causeWords({ complaint: 'W1', cause: 'short all round' })).toBe(
    'zwischen Brust und Taille rundum zu kurz',
  )
})

it('every source is cited as it is named and told of in German', () => {
  expect(SOURCES.R13).toBe('The New Dressmaker, 1921, Kapitel 3 bis 5')
  expect(SOURCES.CP).toBe('Handwerksbrauch, ohne Quelle')
  for (const c of ALL_COMPLAINTS) expect(EVIDENCE_WORDS[c.evidence]).toBeTruthy()
})
