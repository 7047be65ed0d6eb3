/** What the Fit screen says and ticks: printed numbers that agree with the table under them. */
import { expect, test } from 'vitest'
import { standardChoices } from '../../src/draft/choices.ts'
import { fitMuslin } from '../../src/fitting/fit-muslin.ts'
import type { Pin } from '../../src/fitting/half-amount.ts'
import { previewOf, type Preview } from '../../src/fitting/preview.ts'
import { compare } from '../../src/rounds/compare.ts'
import { formatChange, type UnitChoice } from '../../src/units/format.ts'
import { mm } from '../../src/units/length.ts'
import {
  asText,
  changeSaid,
  correctionSaid,
  rowsOf,
  shareWords,
  sharesFor,
} from '../../src/ui/fitting/change-said.ts'
import { forgetOldTicks, oldTicks } from '../../src/ui/fitting/first-things.ts'
import { body } from '../bodies.ts'

const CM: UnitChoice = { unit: 'cm', inchStep: 8 }
const EIGHTHS: UnitChoice = { unit: 'inch', inchStep: 8 }
const base = {
  garment: 'blouse' as const,
  body: body(),
  choices: standardChoices(),
  corrections: [],
}
function previewed(id: 'B8' | 'W1', pin: Pick<Pin, 'how' | 'where'>, read: number): Preview {
  const complaints = [
    { id, answers: { 1: true }, pin: { ...pin, side: 'both' as const, value: mm(read) } },
  ]
  const { corrections } = fitMuslin({ ...base, complaints, round: 1, on: '2026-11-25' })
  const made = previewOf(base, corrections[0]!)
  if (!made.ok) throw new Error(made.why.id)
  return made.preview
}
const GAPE = ['B8', { how: 'pinch', where: 'armhole' }, 12] as const
const SHORT = ['W1', { how: 'level', where: 'allRound' }, 14] as const

// A change is the difference of the two printed numbers: the sentence may not say another.
test.each([CM, EIGHTHS])('both numbers of a wedge are those of the table, %o', (units) => {
  const preview = previewed(...GAPE)
  const said = asText(changeSaid(preview, units), units)
  const change = (name: string) => {
    const row = compare(preview.before, preview.after).changes.find((c) => c.name === name)!
    return formatChange(row.before, row.after, units).replace(/^[+−]/, '')
  }
  expect(said).toContain(`dart opens by ${change('front.bustDart')};`)
  // 87 in a hundred of 12 mm: 10.44.
  expect(said).toContain(`the sleeve edge is ${change('front.sleeveEdge')} shorter`)
})

test('a turned choice is said from and to, as a list it is said by how much', () => {
  const preview = previewed(...SHORT)
  expect(asText(changeSaid(preview, CM), CM)).toBe(
    'The length between bust and waist goes from 0.0 cm to 1.4 cm, on back and front alike.',
  )
  const { correction } = preview
  if (correction.kind === 'withdraw') throw new Error('no correction')
  expect(asText(correctionSaid({ ...correction, v: 1, id: 'c' }), CM)).toBe(
    'Waist too high: length between bust and waist, more 1.4 cm.',
  )
})

test('the table holds what changed and the sewn seams that did not, each once', () => {
  const rows = rowsOf(previewed(...GAPE).before, previewed(...GAPE).after)
  const names = rows.map((r) => r.name)
  expect(names).toContain('Front sleeve edge')
  expect(names).toContain('Front side seam')
  expect(names).not.toContain('Back side seam')
  expect(new Set(names).size).toBe(names.length)
})

test('parts are said in words: all, half, so many in a hundred', () => {
  expect(sharesFor(0.87)).toEqual([1, 0.87, 0.75, 0.5])
  expect(sharesFor(1)).toEqual([1, 0.75, 0.5])
  expect([1, 0.87, 0.5].map(shareWords)).toEqual(['all of it', '87 in a hundred', 'half of it'])
})

test('ticks kept beside the store before are read once; a spoilt record is nothing ticked', () => {
  const key = 'tapetrue.first-things.v1'
  const kept = new Map([[key, '{"r1":["pressed","arms"],"r2":["levels"]}']])
  const store = {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => void kept.set(name, value),
  }
  expect([oldTicks(store, 'r1'), oldTicks(store, 'r2'), oldTicks(store, 'r3')]).toEqual([
    ['pressed', 'arms'],
    ['levels'],
    [],
  ])
  forgetOldTicks(store, 'r1')
  expect([oldTicks(store, 'r1'), oldTicks(store, 'r2')]).toEqual([[], ['levels']])
  for (const spoilt of ['{', '[1]', '{"r1":"pressed"}', '{"r1":["stitched"]}', 'null']) {
    kept.set(key, spoilt)
    expect(oldTicks(store, 'r1')).toEqual([])
  }
  expect(oldTicks(undefined, 'r1')).toEqual([])
})
