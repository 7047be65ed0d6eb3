/**
 * The catalogue against a list written here: ids, number of causes, most of one round. Counted from
 * the table of complaints by hand; sources of the entries in src/fitting/complaints/sources.ts.
 */
import { describe, expect, test } from 'vitest'
import {
  ALL_COMPLAINTS,
  catalogued,
  complaintOf,
} from '../../../src/fitting/complaints/catalogue.ts'
import { COMPLAINT_IDS, OP_NAMES, type Work } from '../../../src/fitting/complaints/complaint.ts'
import { SHORTHAND } from '../../../src/fitting/complaints/shorthand.ts'
import { readAnswers } from '../../../src/fitting/rules/answers.ts'
import { SOURCES } from '../../../src/fitting/complaints/sources.ts'

/** id: causes, most of one round (null where another entry decides). */
// prettier-ignore
const TABLE: Readonly<Record<string, readonly [number, number | null]>> = {
  N1: [5, 15], N2: [4, 10], N3: [5, 12], N4: [3, 8], N5: [3, 20], N6: [2, null], N7: [4, 15], N8: [3, 15],
  SH1: [3, 13], SH2: [3, 13], SH3: [3, 15], SH4: [3, 13], SH5: [3, 13], SH6: [3, 13], SH7: [1, 5], SH8: [3, 15],
  B1: [4, 20], B2: [3, 20], B3: [3, 15], B4: [2, 20], B5: [3, 25], B6: [2, 20], B7: [4, 20], B8: [5, 15],
  B9: [3, 13], B10: [2, 10], B11: [3, 10], B12: [3, 20], B13: [2, 19], B14: [3, 13], B15: [3, 13],
  A1: [4, 10], A2: [3, 15], A3: [3, 10], A4: [2, 10], A5: [2, 8],
  K1: [4, 15], K2: [4, 20], K3: [3, 15], K4: [2, 8], K5: [2, 13], K6: [2, 32], K7: [1, 19],
  W1: [3, 40], W2: [2, 20], W3: [2, 20], W4: [1, 20], W5: [2, 20], W6: [3, 20], W7: [3, 20], W8: [2, 15],
  W9: [2, 15], W10: [1, 20], W11: [3, null], W12: [2, 20],
  L1: [3, 15], L2: [2, 13], L3: [1, 20], L4: [3, 13], L5: [4, 20], L6: [2, 20], L7: [2, 15], L8: [2, 20], L9: [2, 10],
  D1: [3, 10], D2: [3, 10], D3: [3, 8], D4: [3, 20], D5: [3, 13], D6: [2, 20], D7: [1, 20], D8: [2, 15],
  X1: [3, null], X2: [3, 40], X3: [3, null], X4: [3, null],
}

describe('76 complaints', () => {
  test('ids, causes and caps are those of the list', () => {
    expect(ALL_COMPLAINTS).toHaveLength(76)
    expect(catalogued()).toEqual(Object.keys(TABLE))
    for (const c of ALL_COMPLAINTS)
      expect([c.id, c.causes.length, c.cap ?? null]).toEqual([c.id, ...(TABLE[c.id] ?? [])])
  })
  test('evidence: 27 seen, 25 in part, 5 by heading, 18 common practice, 1 from memory', () => {
    const count = (e: string): number => ALL_COMPLAINTS.filter((c) => c.evidence === e).length
    expect(['operative', 'partly', 'heading', 'practice', 'memory'].map(count)).toEqual([
      27, 25, 5, 18, 1,
    ])
  })
  test.each(COMPLAINT_IDS)('%s is whole: sign, numbered causes and tests, words, source', (id) => {
    const c = complaintOf(id)
    expect(c.causes.map(({ number }) => number)).toEqual(c.causes.map((_, i) => i + 1))
    expect(c.tests.map(({ number }) => number)).toEqual(c.tests.map((_, i) => i + 1))
    expect(c.tests.length).toBeGreaterThan(0)
    for (const t of c.tests)
      for (const n of t.yes) expect(c.causes.some(({ number }) => number === n)).toBe(true)
    for (const text of [c.name, c.where, c.sign, c.doNot]) expect(text.length).toBeGreaterThan(2)
    expect(c.said.length).toBeGreaterThan(0)
    // What is looked at again after a change stands where the change is made, and only there.
    const changes = c.causes.some(({ remedy }) => remedy.kind === 'work')
    expect(c.trueAfter.length > 0).toBe(changes)
    expect(c.source.every((s) => s in SOURCES)).toBe(true)
    expect(SHORTHAND[id]).toHaveLength(c.causes.length)
    expect(`${c.name} ${c.sign} ${c.doNot} ${c.causes.map((x) => x.name).join(' ')}`).not.toMatch(
      /!|\b(fat|ugly|saggy|abnormal|defect|problem area|normal)\b/i,
    )
  })
  test('every cause leads to work, a making, a tape, or in the end to one of them', () => {
    for (const c of ALL_COMPLAINTS)
      for (const cause of c.causes) {
        let remedy = cause.remedy
        for (let i = 0; remedy.kind === 'see' && i < 5; i++) {
          const to = complaintOf(remedy.complaint)
          remedy = to.causes[(remedy.cause ?? 1) - 1]!.remedy
        }
        expect(remedy.kind, `${c.id}.${cause.number}`).not.toBe('see')
        if (remedy.kind !== 'work') continue
        const works: Work[] = [remedy, ...(remedy.at ?? []).map(({ work }) => work)]
        for (const w of works) {
          expect(w.edits.length).toBeGreaterThan(0)
          expect(w.cap).toBeGreaterThan(0)
          expect(w.edits.every(({ op }) => OP_NAMES.includes(op))).toBe(true)
        }
      }
  })
})

describe('an answer names a cause by number, by test or by words', () => {
  test.each([
    ['1', [1]],
    ['cause 2', [2]],
    ['N1.4', [4]],
    ['test 1', [1, 3]],
    ['hollow upper chest', [2]],
    ['neck edge stretched while sewing', [4]],
    ['Does only a level tuck above the bust make it lie flat?', [2]],
  ] as const)('N1: %s', (key, causes) => {
    expect(readAnswers('N1', { [key]: true }).yes).toEqual(causes)
  })
  test('every cause and every test answers to its own sentence', () => {
    for (const c of ALL_COMPLAINTS) {
      for (const cause of c.causes)
        expect(readAnswers(c.id, { [cause.name]: true }).yes, cause.name).toEqual([cause.number])
      for (const t of c.tests)
        expect(readAnswers(c.id, { [t.ask]: true }).yes, t.ask).toEqual(t.yes)
      for (const [i, words] of SHORTHAND[c.id].entries())
        expect(readAnswers(c.id, { [words]: true }).yes, `${c.id} ${words}`).toContain(i + 1)
    }
  })
  test('what names nothing is said to be unread, and no cause is taken', () => {
    const read = readAnswers('N1', { 'the moon is full': true, '9': true })
    expect(read.yes).toEqual([])
    expect(read.unread).toEqual(['9', 'the moon is full'])
  })
})

// The trade's own words for what a test showed, as its articles and bulletins put it.
describe('tests named in the words of the trade', () => {
  test.each([
    ['B8', 'Gape cured and side seam stays plumb', [1, 2]],
    ['B8', 'cured better by pinning shoulder tip', [4]],
    ['B8', 'Cured by raising side', [3]],
    ['B1', 'gap all on front', [1]],
    ['B1', 'gap equal front and back', [2]],
    ['B1', 'back only', [3]],
    ['K3', 'opens at CB, 0 at armhole', [1]],
    ['K1', 'opens only at arms forward', [2]],
    ['A1', 'snip at front notch relieves', [2]],
    ['B2', 'opens also vertically', [2]],
    ['K2', 'folds continue into front', [3]],
    ['W6', 'straight but parallel-shifted', [3]],
  ] as const)('%s: %s', (id, words, yes) => {
    expect(readAnswers(id, { [words]: true }).yes).toEqual(yes)
  })
})
