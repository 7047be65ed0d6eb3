/** What Compare says: complaints gone, better, the same, worse, new; changes in words; labels beside changed lines. */
import { expect, test } from 'vitest'
import { pieceOf } from '../../src/draft/draft.ts'
import { contains } from '../../src/geometry/contains.ts'
import { flatten } from '../../src/geometry/path.ts'
import { add, scale } from '../../src/geometry/point.ts'
import { outline } from '../../src/draft/piece.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import { changedLines } from '../../src/rounds/changed-edges.ts'
import { close, redraft } from '../../src/rounds/redraft.ts'
import {
  firstRound,
  nextRound,
  withChoices,
  withCorrection,
  withSeen,
  type Round,
} from '../../src/rounds/round.ts'
import type { UnitChoice } from '../../src/units/format.ts'
import { mm } from '../../src/units/length.ts'
import { asText } from '../../src/ui/fitting/change-said.ts'
import { edgeLabels } from '../../src/ui/rounds/edge-labels.ts'
import {
  becauseSaid,
  betweenRounds,
  decisionsOf,
  driftSaid,
  rowsBetween,
  summary,
} from '../../src/ui/rounds/round-words.ts'
import { lineSaid, saidBetween } from '../../src/ui/rounds/said-between.ts'
import { wordsBetween } from '../../src/ui/rounds/words-between.ts'
import { body } from '../bodies.ts'

const CM: UnitChoice = { unit: 'cm', inchStep: 8 }
const ON = '2026-11-25'
const wedge: Correction = {
  v: 1,
  id: 'c1',
  kind: 'close-wedge',
  piece: 'front',
  edge: 'sleeveEdge',
  along: 0.5,
  width: mm(15),
  because: {
    complaint: 'B8',
    cause: 'bust shaping',
    pinned: { how: 'wholeFold', read: mm(20), share: 1 },
    watch: mm(5),
    round: 1,
  },
}
const gape = (read: number, how: 'wholeFold' | 'foldToPin' = 'wholeFold') => ({
  complaint: 'B8' as const,
  answer: 'bust shaping',
  pinned: { how, read: mm(read), share: 0.87 },
  on: ON,
})
const high = { complaint: 'W1' as const, answer: 'unsettled', on: ON }
const first = close(firstRound({ id: 'r1', garmentId: 'g' }, 'blouse', body(), ON), ON)
const open = withCorrection(nextRound(first, 'r2', ON), wedge)
const second = close(open, ON)

test('gone, better, worse, again and new, and no "gone" before anyone has looked at the newer muslin', () => {
  const how = (a: Round, b: Round) => saidBetween(a, b).map((l) => [l.complaint, l.how])
  expect(how(withSeen(first, gape(12)), withSeen(second, high))).toEqual([
    ['W1', 'new'],
    ['B8', 'gone'],
  ])
  expect(how(withSeen(first, gape(12)), withSeen(second, gape(6)))).toEqual([['B8', 'better']])
  // Two readings of one pin differ by up to 2 mm: common practice, no source.
  expect(how(withSeen(first, gape(6)), withSeen(second, gape(8)))).toEqual([['B8', 'same']])
  expect(how(withSeen(first, gape(6)), withSeen(second, gape(9)))).toEqual([['B8', 'worse']])
  expect(how(withSeen(first, high), withSeen(second, high))).toEqual([['W1', 'again']])
  expect(how(withSeen(first, gape(12)), second)).toEqual([['B8', 'unseen']])
  expect(how(first, second)).toEqual([])
})

// A flat pinch lies double: 6 mm from fold to pin are the same cloth as a whole fold of 12 mm.
test('two muslins are told by the cloth that was too much, however it was read; the last word counts', () => {
  const twice = withSeen(withSeen(first, gape(20)), gape(12))
  const lines = saidBetween(twice, withSeen(second, gape(6, 'foldToPin')))
  expect(lines.map((l) => asText(lineSaid(l), CM))).toEqual(['Gaping armhole, still 1.2 cm.'])
  const less = saidBetween(twice, withSeen(second, gape(6)))
  expect(less.map((l) => asText(lineSaid(l), CM))).toEqual([
    'Gaping armhole, from 1.2 cm to 0.6 cm.',
  ])
})

test('rows that print the same are not called changed, whichever unit she reads', () => {
  const found = betweenRounds(first, second)
  const inches: UnitChoice = { unit: 'inch', inchStep: 8 }
  for (const units of [CM, inches]) {
    const { changed, same } = rowsBetween(found, units)
    const halves = [...found.changes, ...found.same].filter((c) => /^(back|front)\./.test(c.name))
    const ids = [...changed, ...same].map((r) => r.id)
    expect(ids.filter((id) => /^(back|front)\./.test(id)).toSorted()).toEqual(
      halves.map((c) => c.name).toSorted(),
    )
    expect(changed.map((r) => r.name)).toContain('Front hem')
    expect(same.map((r) => r.name)).toContain('Front side seam')
  }
})

test('the sentence under the heading counts numbers and words', () => {
  expect(summary(3, withSeen(first, gape(12)), withSeen(second, high))).toBe(
    'Three numbers changed. Of what you said: one gone, one new.',
  )
  expect(summary(0, first, second)).toBe('No number changed.')
  expect(summary(1, first, second)).toBe('One number changed.')
})

test('a change says why: what was read, what part was taken, what is left', () => {
  const taken = { v: 1 as const, id: 'c2', kind: 'withdraw' as const, correction: 'c1', round: 2 }
  const [one] = decisionsOf(open)
  expect(one?.takenBack).toBe(false)
  expect(asText(becauseSaid(one!.correction), CM)).toBe(
    'Because of muslin 1: gaping armhole, bust fuller than the darts hold. Read 2.0 cm (whole fold), all of it changed. Watch 0.5 cm next time.',
  )
  expect(decisionsOf(withCorrection(open, taken)).map((d) => d.takenBack)).toEqual([true])
})

test('paper that the program would print otherwise is named; its own is not', () => {
  expect(driftSaid(first)).toBeUndefined()
  expect(driftSaid(open)).toBeUndefined()
  const { record } = first.printed!
  const printed = {
    on: ON,
    record: { ...record, lengths: { ...record.lengths, 'front.hem': mm(1) } },
  }
  expect(driftSaid({ ...first, printed })).toContain('other numbers for front hem.')
})

test('labels stand inside the piece and only beside lines that print another length', () => {
  const [before, after] = [first, second].map((r) => pieceOf(redraft(r).draft, 'front'))
  const labels = edgeLabels(before!, after!, changedLines(before!, after!), CM)
  expect(labels.map((l) => l.name).sort()).toEqual(['hem', 'sleeveEdge', 'waistDart'])
  const ring = flatten(outline(after!))
  for (const { at, inwards } of labels)
    expect(contains(ring, add(at, scale(inwards, 8)))).toBe(true)
})

// The neck is faced instead of bound and the front buttoned: two words, and the pieces they bring.
test('words that changed and pieces that came or went are told, and are no numbers', () => {
  const faced = withChoices(nextRound(first, 'r3', ON), {
    ...first.choices,
    neckFinish: 'facing',
    opening: 'buttonedFront',
  })
  expect(wordsBetween(first, faced)).toEqual([
    { name: 'Opening', before: 'as needed', after: 'buttoned front' },
    { name: 'Neck finish', before: 'bias strip', after: 'shaped facing' },
    { name: 'Bias strip of the neck', before: 'a piece', after: 'none' },
    { name: 'Facing of the slit', before: 'a piece', after: 'none' },
    { name: 'Back neck facing', before: 'none', after: 'a piece' },
    { name: 'Front neck facing', before: 'none', after: 'a piece' },
    { name: 'Front facing', before: 'none', after: 'a piece' },
  ])
  const { changed, same } = rowsBetween(betweenRounds(first, faced), CM)
  expect([...changed, ...same].some((r) => /Facing/.test(r.id))).toBe(false)
  expect(summary(2, first, faced)).toBe('Two numbers and two choices changed.')
  expect(summary(0, first, faced)).toBe('Two choices changed.')
  expect(wordsBetween(first, second)).toEqual([])
})

// A strip has two long and two short sides: one of each tells it.
test('a strip is told by its length and its width', () => {
  const { changed, same } = rowsBetween(betweenRounds(first, second), CM)
  const strip = [...changed, ...same].filter((r) => r.id.startsWith('neckStrip.'))
  expect(strip.map((r) => r.name).toSorted()).toEqual([
    'Bias strip of the neck, neck edge',
    'Bias strip of the neck, short end',
  ])
})
