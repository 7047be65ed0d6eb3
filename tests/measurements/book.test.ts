import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addTape,
  agreedValue,
  emptyBook,
  keptReadings,
  nearestMean,
  photoDiffers,
  propose,
  proposeAll,
  spread,
  standing,
  tapeAnew,
  tapeStands,
  whyNotAgreed,
  withdrawTape,
  type Book,
} from '../../src/measurements/book.ts'
import { measure, MEASUREMENT_IDS } from '../../src/measurements/catalogue.ts'
import { ESTIMATE_IDS, type EstimateOutcomes } from '../../src/measurements/estimate.ts'
import { parseBook } from '../../src/measurements/stored.ts'
import { mm } from '../../src/units/length.ts'

const ON = '2026-11-25'
const guess = { value: mm(412), pm90: mm(9), basis: 'side photo, sheet in view' }
const taped = (...values: number[]): Book =>
  values.reduce((book, value) => addTape(book, 'napeToWaist', mm(value), ON), emptyBook())
const standingOf = (book: Book) => standing(book.napeToWaist, 'napeToWaist')
const agreed = (book: Book) => agreedValue(book.napeToWaist, 'napeToWaist')

describe('readings of the tape', () => {
  // Tolerance of nape to waist: 5 mm (ANSUR II handbook, appendix G).
  it.each([
    [[], 'untaped', undefined],
    [[413], 'oneReading', undefined],
    [[413, 411], 'agreed', 412],
    [[413, 418], 'agreed', 415.5],
    [[413, 418.5], 'onceMore', undefined],
    [[413, 430], 'onceMore', undefined],
    [[413, 430, 428], 'agreed', 429],
    [[413, 430, 422], 'onceMore', undefined],
    [[430, 413, 431, 432], 'agreed', 431],
    [[410, 412, 414], 'agreed', 412],
  ] as const)('%j are %s', (values, expected, value) => {
    expect(standingOf(taped(...values))).toBe(expected)
    expect(agreed(taped(...values))).toBe(value)
  })

  it('agree in any order of taping', () => {
    const readings = fc.array(fc.integer({ min: 3900, max: 4300 }), { minLength: 2, maxLength: 6 })
    fc.assert(
      fc.property(readings, (tenths) => {
        const values = tenths.map((t) => t / 10)
        const [one, other] = [taped(...values), taped(...[...values].reverse())]
        expect(standingOf(one)).toBe(standingOf(other))
        if (agreed(one) !== undefined) expect(agreed(one)).toBeCloseTo(agreed(other) ?? NaN, 9)
        // Brute force over all pairs: what the two nearest are.
        const gaps = values.flatMap((a, i) => values.slice(i + 1).map((b) => Math.abs(a - b)))
        expect(spread(one.napeToWaist, 'napeToWaist')).toBeCloseTo(Math.min(...gaps), 9)
        expect(agreed(one) !== undefined).toBe(Math.min(...gaps) <= 5 + 1e-6)
      }),
    )
  })

  it('agree on neighbouring eighths of an inch, also where the tolerance is 3 mm', () => {
    // 1/8 in is 3.175 mm; a ruler by eighths can say no finer. 12.4 and 12.8 cm are apart.
    const shoulder = (...values: number[]) => {
      let book = emptyBook()
      for (const value of values) book = addTape(book, 'shoulderLengthLeft', mm(value), ON)
      return standing(book.shoulderLengthLeft, 'shoulderLengthLeft')
    }
    expect(shoulder(25.4 * 4.875, 25.4 * 5)).toBe('agreed')
    expect(shoulder(124, 127)).toBe('agreed')
    expect(shoulder(124, 128)).toBe('onceMore')
    expect(shoulder(25.4 * 4.875, 25.4 * 5.0625)).toBe('onceMore')
  })

  it('are all kept, a withdrawn one too, which then does not count', () => {
    const book = withdrawTape(taped(413, 430, 428), 'napeToWaist', 1)
    expect(book.napeToWaist?.tape).toHaveLength(3)
    expect(keptReadings(book.napeToWaist, 'napeToWaist').map(({ index }) => index)).toEqual([0, 2])
    expect(standingOf(book)).toBe('onceMore')
    expect(() => withdrawTape(book, 'napeToWaist', 3)).toThrow('3')
  })

  it('leave the book before them as it was', () => {
    const before = taped(413)
    const after = addTape(before, 'napeToWaist', mm(411), ON)
    expect(before.napeToWaist?.tape).toHaveLength(1)
    expect(after.napeToWaist?.tape).toHaveLength(2)
  })

  it('of another definition do not count', () => {
    const [reading] = taped(413).napeToWaist?.tape ?? []
    if (!reading) throw new Error('no reading')
    const book: Book = {
      napeToWaist: { tape: [reading, { ...reading, definition: 'napeToWaist/navel' }] },
    }
    expect(standingOf(book)).toBe('oneReading')
  })

  it('one reading stands for a garment on the table, and a second must agree', () => {
    const one = addTape(emptyBook(), 'flatBustWidth', mm(520), ON)
    expect(agreedValue(one.flatBustWidth, 'flatBustWidth')).toBe(520)
    const two = addTape(one, 'flatBustWidth', mm(540), ON)
    expect(standing(two.flatBustWidth, 'flatBustWidth')).toBe('onceMore')
  })

  it('must be lengths with a date', () => {
    for (const value of [0, -1, Number.NaN, Infinity])
      expect(() => taped(value)).toThrow(`${value}`)
    for (const on of ['today', '2026-13-01', '25.11.2026', '']) {
      expect(() => addTape(emptyBook(), 'stature', mm(1640), on)).toThrow('ISO date')
    }
  })
})

describe('what the camera proposes', () => {
  it('never becomes a reading', () => {
    const book = propose(emptyBook(), 'napeToWaist', guess, ON, 'p1')
    expect(standingOf(book)).toBe('untaped')
    expect(agreed(book)).toBeUndefined()
    expect(nearestMean(book.napeToWaist, 'napeToWaist')).toBeUndefined()
    expect(whyNotAgreed(book.napeToWaist, 'napeToWaist')).toContain('guess')
  })
  it('stays beside the tape', () => {
    const book = propose(taped(413), 'napeToWaist', guess, ON, 'p1')
    expect(book.napeToWaist?.proposal?.estimate).toEqual(guess)
    expect(book.napeToWaist?.tape).toHaveLength(1)
  })
  it('enters under its tape measurements, both shoulders apart, breadths for none', () => {
    const outcomes = Object.fromEntries(
      ESTIMATE_IDS.map((id) => [id, { ok: true, estimate: guess }]),
    ) as EstimateOutcomes
    const refused = { ...outcomes, hipGirth: { ok: false, reason: 'No side photo.' } } as const
    expect(Object.keys(proposeAll(emptyBook(), refused, ON, 'p1')).sort()).toEqual([
      'acrossBack',
      'apexSpacing',
      'bustGirth',
      'napeToArmpitLevel',
      'napeToWaist',
      'shoulderLengthLeft',
      'shoulderLengthRight',
      'shoulderSlopeLeft',
      'shoulderSlopeRight',
      'sideNeckOverApexToWaist',
      'sideNeckToApex',
      'waistGirth',
      'waistToBustLevel',
      'waistToHip',
    ])
  })
})

describe('a stored book', () => {
  it('comes back as it was', () => {
    let book = propose(
      withdrawTape(taped(413, 430, 428), 'napeToWaist', 1),
      'bustGirth',
      guess,
      ON,
      'p1',
    )
    for (const id of MEASUREMENT_IDS) book = addTape(book, id, measure(id).plausible.min, ON)
    expect(parseBook(JSON.parse(JSON.stringify(book)))).toEqual({ ok: true, value: book })
  })
  const reading = { value: 413, on: ON, definition: 'napeToWaist/natural-waist-on-skin' }
  it.each([
    ['no record', 7],
    ['an unknown measurement', { shoeSize: { tape: [] } }],
    ['no list', { napeToWaist: { tape: 413 } }],
    ['a text for a number', { napeToWaist: { tape: [{ ...reading, value: '413' }] } }],
    ['a reading beyond any tape', { napeToWaist: { tape: [{ ...reading, value: 4130 }] } }],
    ['no number', { napeToWaist: { tape: [{ ...reading, value: null }] } }],
    ['no date', { napeToWaist: { tape: [{ ...reading, on: 'May' }] } }],
    ['half withdrawn', { napeToWaist: { tape: [{ ...reading, withdrawn: 'yes' }] } }],
    [
      'a reading of photos without a name',
      { napeToWaist: { tape: [], proposal: { on: ON, estimate: guess, reading: 7 } } },
    ],
    ['an empty estimate', { napeToWaist: { tape: [], proposal: { on: ON, estimate: {} } } }],
  ])('with %s is refused with the reason', (_, stored) => {
    const parsed = parseBook(stored)
    expect(parsed.ok).toBe(false)
    if (!parsed.ok) expect(parsed.reason).toMatch(/\.$/)
  })
})

describe('tape against photo', () => {
  // The guess is 412 ± 9, so twice its ± is 18. The multiple is common practice, no source.
  const asked = (book: Book) => photoDiffers(book.napeToWaist, 'napeToWaist')
  const withGuess = (...values: number[]) =>
    propose(taped(...values), 'napeToWaist', guess, ON, 'p1')

  it.each([
    [[], false],
    [[430], false],
    [[394], false],
    [[431], true],
    [[393, 392], true],
    [[431, 420], false],
  ] as const)('%j asks: %s', (values, asks) => {
    expect(asked(withGuess(...values)) !== undefined).toBe(asks)
  })

  it('asks without a guess never, stops nothing, and no more once she has said', () => {
    expect(asked(taped(500, 500))).toBeUndefined()
    const differing = withGuess(440, 440)
    expect(agreed(differing)).toBe(440)
    const said = tapeStands(differing, 'napeToWaist', '2026-11-28')
    expect(asked(said)).toBeUndefined()
    expect(asked(addTape(said, 'napeToWaist', mm(470), ON))).toBeUndefined()
    expect(asked(propose(said, 'napeToWaist', guess, '2026-11-29', 'p2'))).toEqual(guess)
    const stored = parseBook(JSON.parse(JSON.stringify(said)))
    expect(stored).toEqual({ ok: true, value: said })
  })

  it('taped anew: nothing counts, everything stays', () => {
    const anew = tapeAnew(withGuess(440, 441), 'napeToWaist')
    expect(standingOf(anew)).toBe('untaped')
    expect(anew.napeToWaist?.tape.map((r) => r.withdrawn)).toEqual([true, true])
    expect(anew.napeToWaist?.proposal?.estimate).toEqual(guess)
  })
})
