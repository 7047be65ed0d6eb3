/**
 * Her own draft against the tool's, and ease from a garment laid flat. Worked by hand from the
 * invented middle body: quarter bust 940/4 + 22 = 257, quarter waist 780/4 + 14 = 209.
 */
import { describe, expect, test } from 'vitest'
import { OWN_APART, ownRows } from '../../src/draft/own-draft.ts'
import { wantedEase, wantedSaid, withWanted } from '../../src/draft/liked.ts'
import { NO_OWN_WORK, withDrawn, withLiked } from '../../src/draft/own-work.ts'
import { GARMENT_IDS, GARMENTS, standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { sewnEase } from '../../src/draft/ease.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import { mm } from '../../src/units/length.ts'
import { body, FULL } from '../bodies.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const blouse = draft('blouse', body(), standardFor('blouse'))

describe('her own draft', () => {
  const row = (drawn: Record<string, number>, name: string) =>
    ownRows(blouse, Object.fromEntries(Object.entries(drawn).map(([n, v]) => [n, mm(v)]))).find(
      (r) => r.name === name,
    )!

  test('what the tool has at a check: the quarter bust and its ease', () => {
    expect(row({}, 'back.bustLine').tool).toBeCloseTo(940 / 4 + 22, 2)
    expect(row({}, 'front.bustTip').tool).toBeCloseTo(184 / 2, 2)
  })
  test('3 mm is the pencil, more is told with what to look at', () => {
    expect(OWN_APART).toBe(3)
    expect(row({ 'back.bustLine': 260 }, 'back.bustLine').apart).toBeUndefined()
    const wide = row({ 'back.bustLine': 264 }, 'back.bustLine')
    expect(wide.apart).toBeCloseTo(7, 2)
    expect(wide.look).toMatch(/quarter girth and its ease/)
    expect(row({ 'back.bustLine': 250 }, 'back.bustLine').apart).toBeCloseTo(-7, 2)
  })
  test('a line that was not measured is not judged', () => {
    for (const r of ownRows(blouse, {})) expect([r.hers, r.apart]).toEqual([undefined, undefined])
  })
  test.each(GARMENT_IDS)('%s: every line has words, and says what to look at', (garment) => {
    const d = draft(garment, body(), standardFor(garment))
    const names = ownRows(d, {})
    expect(names.length).toBeGreaterThan(10)
    const drawn = Object.fromEntries(names.map((r) => [r.name, mm(r.tool + 10)]))
    for (const r of ownRows(d, drawn)) {
      expect(r.words, r.name).toBeTruthy()
      expect(r.look, r.name).toBeTruthy()
      expect(r.apart, r.name).toBeCloseTo(10, 6)
    }
  })
  test('of pieces that differ left and right each half is compared', () => {
    const { draft: d } = correctedDraft('block', body({}, FULL), standardFor('block'), [])
    const names = ownRows(d, {}).map((r) => r.name)
    expect(names).toContain('frontLeft.shoulder')
    expect(names).toContain('frontRight.shoulder')
  })
  test('a length is entered and taken out again', () => {
    const one = withDrawn(NO_OWN_WORK, 'front.side', mm(400))
    expect(one.drawn).toEqual({ 'front.side': 400 })
    expect(withDrawn(one, 'front.side', undefined)).toEqual(NO_OWN_WORK)
    expect(withLiked(withLiked(NO_OWN_WORK, 'bust', mm(520)), 'bust', undefined)).toEqual(
      NO_OWN_WORK,
    )
  })
})

describe('a garment she likes, laid flat', () => {
  const choices = standardFor('blouse')
  const reads = GARMENTS.blouse.choices
  const liked = {
    bust: mm(520),
    waist: mm(430),
    highHip: mm(495),
    hip: mm(545),
    backLength: mm(615),
  }
  const wanted = wantedEase(liked, body(), choices, reads)

  test('twice the half width less the body, a quarter on each half; length less nape to waist', () => {
    // 2·520 − 940 = 100 → 25; 2·430 − 780 = 80 → 20; 2·495 − 910 = 80 → 20; 2·545 − 1000 = 90 → 22.5 → 23; 615 − 400 = 215.
    expect(wanted.map((w) => [w.choice, w.to])).toEqual([
      ['easeBust', 25],
      ['easeWaist', 20],
      ['easeHighHip', 20],
      ['easeHip', 23],
      ['lengthBelowWaist', 215],
    ])
    expect(wantedSaid(wanted[0]!, liked, body(), CM)).toBe(
      'Twice 52.0 cm less 94.0 cm is 10.0 cm all round; a quarter of it on each half is 2.5 cm.',
    )
  })
  test('taken, the sewn garment has the ease of the one she likes', () => {
    const d = draft('blouse', body(), withWanted(choices, wanted))
    const ease = Object.fromEntries(sewnEase(d).map((e) => [e.level, e.ease]))
    expect(ease['bust']).toBeCloseTo(100, 6)
    expect(ease['waist']).toBeCloseTo(80, 6)
    // The side makes room there for the half whose darts are open wider; the other has more.
    expect(ease['highHip']).toBeGreaterThanOrEqual(80)
    expect(ease['hip']).toBeCloseTo(92, 6)
  })
  test('less cloth than body is no ease to draw: said, and not offered', () => {
    // A knit, 2·440 − 940 = −60 round.
    const [w] = wantedEase({ bust: mm(440) }, body(), choices, reads)
    expect(w?.outside).toBe(true)
    expect(withWanted(choices, [w!])).toEqual(choices)
  })
})
