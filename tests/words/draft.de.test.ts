/** What the draft says of itself in German; the wording from memory of the trade. */
import { describe, expect, it, test } from 'vitest'
import { UNDRAWABLE_WORDS } from '../../src/draft/cannot-draw.words.ts'
import { undrawableSentence, type UndrawableId } from '../../src/draft/cannot-draw.ts'
import { CHOICE_IDS, CHOICES, outOfRange, standardChoices } from '../../src/draft/choices.ts'
import { findingSentence, say, type FindingId } from '../../src/draft/finding.ts'
import { FINDING_WORDS } from '../../src/draft/finding.words.ts'
import { GARMENT_IDS, GARMENTS, standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { OPTION_IDS, OPTIONS } from '../../src/draft/options.ts'
import { ownRows } from '../../src/draft/own-draft.ts'
import { cuttingSaid } from '../../src/draft/piece.words.ts'
import { asWorn } from '../../src/draft/as-worn.ts'
import { movesWords, placeWords } from '../../src/ui/draft/attention.ts'
import { CHOICE_GROUPS } from '../../src/ui/draft/choice-groups.ts'
import { groupFact, groupSays } from '../../src/ui/draft/group-facts.ts'
import { paperLengths } from '../../src/ui/draft/paper-lengths.ts'
import { proofCount, proofRows } from '../../src/ui/draft/proof-rows.ts'
import { formatLength } from '../../src/units/format.ts'
import { lengthsIn } from '../../src/units/lengths-in.ts'
import { mm } from '../../src/units/length.ts'
import { bodyOf, MIDDLE } from '../bodies.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const INCH = { unit: 'inch', inchStep: 8 } as const
const ENGLISH = /\b(the|and|with|from|your|you|of|to|is|are|which|where|wide|half|left|right)\b/i
const SENTENCE = /^[A-ZÄÖÜ„0-9].*[.?]$/s

test.each(Object.keys(FINDING_WORDS) as FindingId[])('finding %s is a German sentence', (id) => {
  const said = findingSentence(say(id, 'note', 'front.side', 12, 34), CM)
  expect(said).toMatch(SENTENCE)
  expect(said).not.toMatch(ENGLISH)
  expect(said).not.toMatch(/[{}]|\d\.\d\u00a0cm/)
  expect(findingSentence({ ...say(id, 'note', 'front.side'), side: 'left' }, CM)).toMatch(
    /^Links: /,
  )
})

test.each(Object.keys(UNDRAWABLE_WORDS) as UndrawableId[])(
  'refusal %s names what to turn',
  (id) => {
    const said = undrawableSentence(
      { id, names: ['napeToWaist', 'underarmDrop'], value: mm(12), limit: mm(20) },
      CM,
    )
    expect(said).toMatch(
      /1,2\u00a0cm.*2,0\u00a0cm.*Noch einmal messen: .*Oder verstellen: Tiefe unter der Achsel\.$/,
    )
    expect(said).not.toMatch(ENGLISH)
  },
)

describe('choices', () => {
  test.each(CHOICE_IDS)('%s is told and refused in German', (id) => {
    const { label, does, source, max } = CHOICES[id]
    expect(does).toMatch(SENTENCE)
    for (const words of [label, does, source]) expect(words).not.toMatch(ENGLISH)
    expect(lengthsIn(source, INCH)).not.toMatch(/\b[cm]m\b/)
    expect(outOfRange(id, mm(max + 10), (l) => formatLength(l, CM))).toMatch(
      /^[A-ZÄÖÜ].* wäre −?\d+,\d\u00a0cm; möglich ist −?\d+,\d\u00a0cm bis \d+,\d\u00a0cm\.$/,
    )
  })
  test.each(OPTION_IDS)('%s gives each of its words in German', (id) => {
    const { label, does, words } = OPTIONS[id]
    expect(does).toMatch(SENTENCE)
    for (const word of [label, does, ...Object.values<string>(words)]) {
      expect(word).not.toBe('')
      expect(word).not.toMatch(ENGLISH)
    }
  })
  test.each(GARMENT_IDS)('%s says what it is and what it is not for', (id) => {
    expect(GARMENTS[id].what).toMatch(SENTENCE)
    expect(GARMENTS[id].notFor).toMatch(/^Nicht für .*\.$/)
  })
})

describe('the pieces and their paper', () => {
  const uneven = { ...MIDDLE, shoulderSlopeLeft: 30, shoulderSlopeRight: 55 }
  const plain = draft('dress', bodyOf(MIDDLE), standardFor('dress'))
  const worn = asWorn(draft('block', bodyOf(uneven), standardFor('block')))

  it('names every piece, its cutting, its lines and openings', () => {
    for (const piece of [...plain.pieces, ...worn.pieces]) {
      const said = [piece.words, cuttingSaid(piece.cut), ...piece.inner.map((i) => i.words)]
      for (const words of said) expect(words).not.toMatch(ENGLISH)
      expect(piece.words).toMatch(/^[A-ZÄÖÜ]/)
    }
    expect(plain.pieces[0]?.words).toBe('Rückenteil, halb')
    expect(cuttingSaid({ count: 2, how: 'turnedOver' })).toBe('2× zuschneiden, gegengleich')
    for (const { rows } of paperLengths(worn))
      for (const { words } of rows) expect(words).not.toMatch(ENGLISH)
  })
  it('says where to look and what a number moves', () => {
    expect(placeWords('back.sleeveEdge')).toBe('Rückenteil, Ärmelkante')
    expect(movesWords(plain, 'napeToWaist')).toMatch(/^Rückenteil C/)
  })
  it('says where her own lengths lie apart', () => {
    const rows = ownRows(plain, { 'back.side': mm(10), 'skirtBack.waistDart': mm(90) })
    const apart = rows.filter((r) => r.apart !== undefined)
    expect(apart.length).toBeGreaterThan(0)
    for (const { words, look } of apart) {
      expect(words).not.toMatch(ENGLISH)
      expect(look).toMatch(/^(Prüf|Miss|Leg) .*\.$/)
    }
  })
})

describe('the proof and the groups of choices', () => {
  const blouse = draft('blouse', bodyOf(MIDDLE), standardChoices())
  it('asks and answers in German, with numbers in agreement', () => {
    const rows = proofRows(blouse, CM)
    for (const { words, holds, found } of rows)
      for (const said of [words, holds, ...found.map((f) => f.sentence)])
        expect(said).not.toMatch(ENGLISH)
    expect(proofCount(rows)).toMatch(/^(alle \d+ stimmen|\d+ (stimmt|stimmen).*)$/)
  })
  it('says of every group what the draft makes of it', () => {
    for (const { id } of CHOICE_GROUPS)
      for (const said of [groupFact(blouse, id, CM), ...groupSays(blouse, id, CM)]) {
        expect(said).not.toMatch(ENGLISH)
        expect(said).not.toMatch(/\d\.\d/)
      }
    expect(groupFact(blouse, 'length', CM)).toBe('22,0\u00a0cm unter der Taille')
  })
})
