/**
 * What the most of a round left over, on the next muslin. Cap 10 mm of an armhole that is too high,
 * share 87 in a hundred and cap 15 of a gape, 3 mm as the least of one reading: our table of
 * complaints. Paper true to 1.6 mm: a sewing magazine, as quoted there. Means worked by hand.
 */
import { describe, expect, test } from 'vitest'
import { standardFor } from '../../src/draft/garments.ts'
import { fitMuslin, numbered } from '../../src/fitting/fit-muslin.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import type { Reported } from '../../src/fitting/rules/judged.ts'
import { watchedFrom } from '../../src/fitting/rules/watched.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

const high = (value: number, answers: Reported['answers'] = {}): Reported => ({
  id: 'A1',
  answers,
  pin: { where: 'armhole', how: 'newLine', side: 'both', value: mm(value) },
})
const on = (
  round: number,
  corrections: readonly Correction[],
  ...complaints: readonly Reported[]
) =>
  fitMuslin({
    garment: 'block',
    body: body(),
    choices: standardFor('block'),
    corrections,
    complaints,
    round,
    on: '2026-11-25',
  })
/** 12.4 read, 10 made, 2.4 left over. */
const first = (): readonly Correction[] =>
  numbered(on(1, [], high(12.4, { 1: true })).corrections, 1)

describe('what is left over', () => {
  test('of 12.4 mm the cap of 10 leaves 2.4, to be looked for on the next muslin only', () => {
    const list = first()
    expect(watchedFrom(list, 2)).toEqual([{ complaint: 'A1', cause: 1, left: expect.closeTo(2.4) }])
    expect(watchedFrom(list, 1)).toEqual([])
  })
  test('taken back it is no longer looked for; another muslin later neither', () => {
    const list = first()
    const back: Correction = { v: 1, id: 'w', kind: 'withdraw', correction: list[0]!.id, round: 1 }
    expect(watchedFrom([...list, back], 2)).toEqual([])
    const later = on(2, list, { ...high(5, { 1: true }) }).corrections
    expect(watchedFrom([...list, ...numbered(later, 9)], 3)).toEqual([])
  })
  test('2 mm read where 2.4 were left: 2.2, with no test asked again', () => {
    const { decision, corrections } = on(2, first(), high(2))
    expect(decision.decision).toBe('change')
    expect(decision.causes).toEqual(['A1.1'])
    expect(decision.edits[0]?.applied).toBeCloseTo(2.2, 6)
    expect(corrections).toEqual([
      expect.objectContaining({ kind: 'turn-choice', choice: 'underarmDrop' }),
    ])
  })
  test('0.6 mm read makes 1.5: under what paper is true to, nothing is cut', () => {
    expect(on(2, first(), high(0.6)).decision.decision).toBe('nothing')
  })
  test('without a remainder 2 mm are nothing, and a reading that does not agree is read alone', () => {
    expect(on(2, [], high(2)).decision.decision).toBe('nothing')
    const far = on(2, first(), high(9, { 1: true })).decision
    expect(far.edits[0]?.applied).toBeCloseTo(9, 6)
  })
  test('an answer against the cause is heard', () => {
    expect(on(2, first(), high(4, { 1: false })).decision.decision).toBe('ask')
  })
})
