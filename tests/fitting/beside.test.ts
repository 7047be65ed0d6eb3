/**
 * Lines, movements and measured edges weighed beside folds. That level and plumb lines come before
 * wrinkles: a dressmaking manual of 1921 and a muslin bulletin of 1978, as far as seen; that an edge
 * sewn over 3 mm longer than drafted was stretched: our table of complaints (N1, N3, B8).
 */
import { describe, expect, test } from 'vitest'
import { standardFor } from '../../src/draft/garments.ts'
import type { GarmentId } from '../../src/draft/draft.ts'
import { fitMuslin, type Muslin } from '../../src/fitting/fit-muslin.ts'
import type { Reported } from '../../src/fitting/rules/judged.ts'
import { linesSay } from '../../src/rounds/first-things.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

const ON = '2026-05-02'
const muslin = (
  complaint: Reported,
  more: Partial<Muslin> = {},
  garment: GarmentId = 'block',
): Muslin => ({
  garment,
  body: body(),
  choices: standardFor(garment),
  corrections: [],
  complaints: [complaint],
  round: 1,
  on: ON,
  ...more,
})
const read = (line: 'waist' | 'side' | 'hem', reading: string) =>
  linesSay({ lines: [{ line, reading, on: ON }] })
const testsOf = (m: Muslin) =>
  fitMuslin(m).decision.asks.flatMap(({ test }) => (test ? [test] : []))

describe('lines', () => {
  test('a line that lies true speaks against the complaint it would have named', () => {
    const { decision } = fitMuslin(
      muslin({ id: 'W6', answers: {} }, { linesSay: read('side', 'true') }),
    )
    expect(decision.decision).toBe('ask')
    expect(decision.asks[0]?.what).toMatch(/side seam: plumb.*look at the line once more/)
    expect(decision.edits).toEqual([])
  })
  test('a line that names a cause proves it: no test is asked for', () => {
    const bare = muslin({ id: 'W6', answers: {} })
    expect(testsOf(bare).length).toBeGreaterThan(0)
    const { decision } = fitMuslin({ ...bare, linesSay: read('waist', 'frontUp') })
    expect(decision.asks.some((a) => a.test !== undefined)).toBe(false)
    expect(decision.causes.some((cause) => cause.startsWith('B2.'))).toBe(true)
  })
  test('what a line names and nobody said is told', () => {
    const { decision } = fitMuslin(
      muslin({ id: 'B3', answers: {} }, { linesSay: read('waist', 'backUp') }),
    )
    expect(decision.reasons.at(-1)).toMatch(/^Lines come before folds.*up at the centre back/)
  })
  test('the last reading of a line holds, and one line may name what another would deny', () => {
    const lines = linesSay({
      lines: [
        { line: 'waist', reading: 'true', on: ON },
        { line: 'hem', reading: 'backUp', on: ON },
      ],
    })
    expect(lines.named.map((l) => l.complaint)).toEqual(['K3'])
    expect(lines.denied.map((l) => l.complaint)).toEqual(
      expect.arrayContaining(['W1', 'B2', 'W5', 'W10', 'W11']),
    )
    expect(lines.denied.map((l) => l.complaint)).not.toContain('K3')
    expect(lines.denied.map((l) => l.complaint)).not.toContain('SH8')
  })
})

describe('movements', () => {
  test('arms forward that pull bring the test of moving room first', () => {
    const bare = testsOf(muslin({ id: 'K1', answers: {} }))
    const pulled = testsOf(
      muslin({ id: 'K1', answers: {} }, { moves: { armsForward: { freedom: 'pulls' } } }),
    )
    expect([...pulled].sort()).toEqual([...bare].sort())
    expect(pulled[0]).not.toBe(bare[0])
  })
  test('a hem that climbs far counts even where she felt free', () => {
    // 30 mm is our own judgement of what may climb; 60 is twice that.
    const doubt: Reported = { id: 'K1', answers: {}, cannotTell: [1, 2, 3, 4] }
    const of = (rose: number) =>
      fitMuslin(
        muslin(
          { ...doubt, pin: { how: 'slit', where: 'cb', side: 'both', value: mm(20) } },
          { moves: { armsForward: { freedom: 'free', rose: mm(rose) } } },
        ),
      ).decision.causes
    expect(of(60)).toContain('K1.2')
    expect(of(0)).not.toContain('K1.2')
  })
})

describe('a measured edge', () => {
  test.each(['N1', 'N3', 'B8'] as const)('%s: over 3 mm is stretch, the draft stays', (id) => {
    const garment = id === 'B8' ? 'sleeveless' : 'block'
    const { decision } = fitMuslin(muslin({ id, answers: {}, longer: mm(5) }, {}, garment))
    expect(decision.decision).toBe('nothing')
    expect(decision.reasons.join(' ')).toMatch(/5 mm longer than drafted/)
  })
  test('within 3 mm it did not stretch: that test is answered and the others are left', () => {
    const bare = testsOf(muslin({ id: 'N1', answers: {} }))
    const held = testsOf(muslin({ id: 'N1', answers: {}, longer: mm(2) }))
    // Test 3 of N1 asks for the sewn edge.
    expect(bare).toContain(3)
    expect(held).toEqual(bare.filter((n) => n !== 3))
  })
})

test('room that is there by the tape sends her to the tape before anything is let out', () => {
  const choices = { ...standardFor('sleeve'), armRoom: mm(90) }
  const tight = muslin({ id: 'L3', answers: {} }, { choices }, 'sleeve')
  const [ask] = fitMuslin(tight).decision.asks
  // 75 mm of room round the upper arm is plenty: common practice, no source.
  expect(ask?.tape).toEqual(['upperArmGirth'])
  expect(ask?.what).toMatch(/tape .* once more first/)
  const stood = fitMuslin({ ...tight, retaped: ['upperArmGirth'] }).decision
  expect(stood.asks.every(({ tape }) => tape === undefined)).toBe(true)
})
