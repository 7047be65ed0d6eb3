/** What a garment goes by: her own name, or what it is, in the language of the page. */
import { describe, expect, test } from 'vitest'
import { GARMENT_IDS } from '../../src/draft/garments.ts'
import { GARMENT_WORDS } from '../../src/draft/garments.words.ts'
import { GARMENT_WORDS as GERMAN } from '../../src/draft/garments.words.de.ts'
import { garmentName, nameToKeep } from '../../src/storage/garment-name.ts'
import { parseGarmentRow } from '../../src/storage/rows.ts'

const row = (garment: string, name: string) =>
  parseGarmentRow({ v: 1, id: 'g', garment, name, hungOn: '2026-11-20', order: 1 })
const opened = (garment: string, name: string) => {
  const read = row(garment, name)
  if (!read.ok) throw new Error(read.reason)
  return read.value
}

describe.each(GARMENT_IDS)('%s', (garment) => {
  test.each([GARMENT_WORDS[garment].name, GERMAN[garment].name])(
    'kept as “%s” before names were hers alone, it goes by the words of the page',
    (name) => {
      const hung = opened(garment, name)
      expect(hung.name).toBe('')
      expect(garmentName(hung)).toBe(GARMENT_WORDS[garment].name)
    },
  )
  test('the name she gave stays, in either language', () => {
    expect(garmentName(opened(garment, 'Blue, for Sundays'))).toBe('Blue, for Sundays')
  })
  test('typed as it stands there it is no name of hers', () => {
    expect(nameToKeep(garment, GARMENT_WORDS[garment].name)).toBe('')
    expect(nameToKeep(garment, 'Blue')).toBe('Blue')
  })
})

test('the name of another garment is hers: a dress may be called a blouse', () => {
  expect(opened('dress', 'Sleeveless blouse').name).toBe('Sleeveless blouse')
})
