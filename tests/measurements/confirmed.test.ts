import { describe, expect, it } from 'vitest'
import { addTape, emptyBook, propose } from '../../src/measurements/book.ts'
import { MEASUREMENT_IDS } from '../../src/measurements/catalogue.ts'
import {
  confirm,
  knows,
  lengthOf,
  measured,
  parseConfirmed,
  preview,
  type Confirmed,
} from '../../src/measurements/confirmed.ts'
import { inWords, sources } from '../../src/units/amount.ts'
import { mm } from '../../src/units/length.ts'
import { body, bookOf, INVENTED_BODIES, MIDDLE } from '../bodies.ts'

const ON = '2026-11-25'
const guess = { value: mm(412), pm90: mm(9), basis: 'side photo, sheet in view' }
const stored = (over: object = {}): unknown => ({ ...JSON.parse(JSON.stringify(body())), ...over })

describe('confirming', () => {
  it('takes agreed tape readings and nothing else', () => {
    let book = bookOf({ bustGirth: 940 })
    book = propose(book, 'waistGirth', guess, ON, 'p1')
    book = addTape(book, 'hipGirth', mm(1000), ON)
    book = addTape(addTape(book, 'napeToWaist', mm(400), ON), 'napeToWaist', mm(420), ON)
    const result = confirm(
      book,
      ['bustGirth', 'waistGirth', 'hipGirth', 'napeToWaist', 'stature'],
      [],
    )
    expect(result.ok).toBe(false)
    if (result.ok) return
    expect(result.missing).toEqual([
      { id: 'waistGirth', why: 'Waist girth is still a guess from the photo. Tape it.' },
      { id: 'hipGirth', why: 'Hip girth has one reading. Tape it a second time.' },
      {
        id: 'napeToWaist',
        why: 'The readings of nape to waist are too far apart. Tape it once more; the two nearest are kept.',
      },
      { id: 'stature', why: 'Stature is not taped yet.' },
    ])
  })

  it('holds what was asked for, with the optional ones that agree', () => {
    const book = propose(
      bookOf({ bustGirth: 940, hipGirth: 1000, stature: 1640 }),
      'waistGirth',
      guess,
      ON,
      'p1',
    )
    const result = confirm(book, ['bustGirth'], ['hipGirth', 'waistGirth'])
    if (!result.ok) throw new Error('not confirmed')
    expect(result.body.values).toEqual({ bustGirth: 940, hipGirth: 1000 })
    expect(knows(result.body, 'stature')).toBe(false)
    expect(() => lengthOf(result.body, 'stature')).toThrow('stature')
    expect(confirm(emptyBook(), [], ['hipGirth'])).toMatchObject({ ok: false })
  })

  it('is dated by its latest reading', () => {
    let book = addTape(emptyBook(), 'bustGirth', mm(940), '2026-03-01')
    book = addTape(book, 'bustGirth', mm(942), '2026-11-24')
    const result = confirm(book, ['bustGirth'], [])
    expect(result).toMatchObject({ ok: true, body: { on: '2026-11-24' } })
    if (result.ok) expect(lengthOf(result.body, 'bustGirth')).toBe(941)
  })

  it('cannot be changed afterwards', () => {
    const made = body()
    expect(() => Object.assign(made.values, { bustGirth: 1 })).toThrow(TypeError)
    expect(() => Object.assign(made, { values: {} })).toThrow(TypeError)
    expect(lengthOf(made, 'bustGirth')).toBe(MIDDLE.bustGirth)
  })

  it('gives amounts that remember their measurement', () => {
    const bust = measured(body(), 'bustGirth')
    expect(inWords(bust, { unit: 'cm', inchStep: 8 })).toBe('bust')
    expect(sources(bust)).toEqual(['bustGirth'])
    expect(bust.mm).toBe(940)
  })

  it('is not what merely looks like it', () => {
    const lookalike = stored() as Confirmed
    expect(() => lengthOf(lookalike, 'bustGirth')).toThrow('neither the tape nor a preview')
    expect(() => lengthOf({ ...body() } as Confirmed, 'bustGirth')).toThrow('neither')
  })
})

describe('a stored confirmation', () => {
  it.each(INVENTED_BODIES)('comes back from JSON as it was: %s', (_, numbers) => {
    const made = body({}, numbers)
    const parsed = parseConfirmed(JSON.parse(JSON.stringify(made)))
    if (!parsed.ok) throw new Error(parsed.reason)
    expect(parsed.body).toEqual(made)
    for (const id of MEASUREMENT_IDS) expect(lengthOf(parsed.body, id)).toBe(numbers[id])
  })

  it('comes back from a structured clone', () => {
    expect(parseConfirmed(structuredClone(body()))).toMatchObject({ ok: true })
  })

  it.each([
    ['a value its readings do not give', { values: { ...MIDDLE, bustGirth: 941 } }],
    ['a value without readings', { readings: {} }],
    ['a value left out', { values: { bustGirth: 940 } }],
    ['a value that is a text', { values: { ...MIDDLE, bustGirth: '940' } }],
    ['a value more', { values: { ...MIDDLE, shoeSize: 38 } }],
    ['readings of something unknown', { readings: { shoeSize: [] } }],
    ['another standing', { standing: 'preview' }],
    ['another version', { v: 2 }],
  ])('with %s is refused', (_, over) => {
    const parsed = parseConfirmed(stored(over))
    expect(parsed.ok).toBe(false)
    if (!parsed.ok) expect(parsed.reason).toMatch(/\.$/)
  })

  it('with one reading, or with readings apart, is refused', () => {
    const definition = 'bustGirth/level-over-apex'
    const at = (value: number) => ({ value, on: ON, definition })
    const forged = (...readings: unknown[]): unknown => ({
      v: 1,
      standing: 'confirmed',
      on: ON,
      values: { bustGirth: 940 },
      readings: { bustGirth: readings },
    })
    expect(parseConfirmed(forged(at(940), at(940)))).toMatchObject({ ok: true })
    expect(parseConfirmed(forged(at(940)))).toMatchObject({ ok: false })
    expect(parseConfirmed(forged(at(930), at(950)))).toMatchObject({ ok: false })
    expect(parseConfirmed(forged(at(940), { ...at(940), withdrawn: true }))).toMatchObject({
      ok: false,
    })
    expect(
      parseConfirmed(forged(at(940), { ...at(940), definition: 'bustGirth/x' })),
    ).toMatchObject({
      ok: false,
    })
    expect(parseConfirmed(forged(at(940), { ...at(940), value: 1e9 }))).toMatchObject({ ok: false })
  })

  it.each([undefined, null, 'confirmed', [], {}])('%j is no confirmation', (value) => {
    expect(parseConfirmed(value)).toMatchObject({ ok: false })
  })
})

describe('a preview', () => {
  it('prefers the tape, falls back to the camera, and says which', () => {
    let book = propose(emptyBook(), 'napeToWaist', guess, ON, 'p1')
    expect(preview(book)).toMatchObject({
      standing: 'preview',
      values: { napeToWaist: 412 },
      basis: { napeToWaist: 'camera' },
    })
    book = addTape(book, 'napeToWaist', mm(420), ON)
    const shown = preview(book)
    expect(lengthOf(shown, 'napeToWaist')).toBe(420)
    expect(shown.basis.napeToWaist).toBe('tape')
    expect(knows(shown, 'bustGirth')).toBe(false)
  })
  it('is not taken for a confirmation, stored or not', () => {
    const shown = preview(bookOf(MIDDLE))
    expect(parseConfirmed(shown)).toMatchObject({ ok: false })
    expect(parseConfirmed(JSON.parse(JSON.stringify(shown)))).toMatchObject({ ok: false })
  })
})
