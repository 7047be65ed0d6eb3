import { describe, expect, test } from 'vitest'
import { preview } from '../../src/measurements/confirmed.ts'
import { standardChoices } from '../../src/draft/choices.ts'
import { draft } from '../../src/draft/make.ts'
import { findingSentence } from '../../src/draft/finding.ts'
import { stepsText } from '../../src/output/instruction-page.ts'
import { PAPERS } from '../../src/output/paper.ts'
import { stepsPages } from '../../src/output/steps-pages.ts'
import { fitted, wrapped } from '../../src/output/wrap.ts'
import { body, bookOf, MIDDLE } from '../bodies.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const INCH = { unit: 'inch', inchStep: 8 } as const
const CONFIRMED = draft('blouse', body(), standardChoices())

describe('the steps in words', () => {
  const text = stepsText(CONFIRMED, CM, { round: 3, invented: true })

  test('begin with what it is, the round, and that the numbers are invented', () => {
    expect(
      text
        .split('\n')
        .filter((l) => l !== '')
        .slice(0, 3),
    ).toEqual(['Draped-sleeve blouse', 'Round 3.', 'Invented numbers: nobody was measured.'])
  })
  // From the invented numbers by hand: 94 cm taped; 94/4 + 2.2 = 25.7.
  test('hold her numbers and the arithmetic of a step', () => {
    expect(text).toMatch(/bust girth: 94\.0 cm/i)
    expect(text).toMatch(/\d+\. E–U: .*a quarter of the bust.*25\.7 cm/)
  })
  // 940 mm = 37.01 in, printed to an eighth: 37 in. 257 mm = 10.118 in: 10 1/8 in.
  test('speak inches where she works in inches', () => {
    const inch = stepsText(CONFIRMED, INCH)
    expect(inch).toMatch(/bust girth: 37 in/i)
    expect(inch).toMatch(/E–U: .*10 1\/8 in/)
    expect(inch).not.toMatch(/\d cm\b/)
  })
  test('number the steps of each piece from one, none left out', () => {
    for (const { id } of CONFIRMED.pieces) {
      const count = CONFIRMED.steps.filter((s) => s.piece === id).length
      const numbers = [...text.matchAll(/^(\d+)\. /gm)].map((m) => Number(m[1]))
      expect(numbers.filter((n) => n === 1)).toHaveLength(CONFIRMED.pieces.length)
      expect(numbers).toContain(count)
    }
    expect([...text.matchAll(/^\d+\. /gm)]).toHaveLength(CONFIRMED.steps.length)
  })
  test('say what the proof found', () => {
    expect(CONFIRMED.findings.length).toBeGreaterThan(0)
    for (const f of CONFIRMED.findings) expect(text).toContain(findingSentence(f, CM))
  })
  test.each(['blades', 'pins', 'iron', 'flame', 'machine', 'nightwear', 'medical', 'licensed'])(
    'caution about %s',
    (word) => expect(text.toLowerCase()).toContain(word),
  )
  test('say of guessed numbers that they are guesses', () => {
    const guess = stepsText(draft('blouse', preview(bookOf(MIDDLE)), standardChoices()), CM)
    expect(guess).toContain('not confirmed by tape')
    expect(text).not.toContain('not confirmed by tape')
  })
})

/** Every letter half as wide as high: widths that can be worked by hand. */
const FACE = { width: (text: string, size: number): number => [...text].length * size * 0.5 }

describe('lines on a page', () => {
  // Ten letters of 4 mm at half width are 20 mm.
  test('break between words, before the column ends', () => {
    expect(wrapped('one two three four', 4, 20, FACE)).toEqual(['one two', 'three four'])
  })
  test('break a word only where it is wider than the column', () => {
    expect(wrapped('a overlockingmachine b', 4, 20, FACE)).toEqual([
      'a',
      'overlockin',
      'gmachine b',
    ])
  })
  test('are cut short with an ellipsis where one line is all there is', () => {
    expect(fitted('draped-sleeve blouse', 4, 20, FACE)).toBe('draped-sl…')
    expect(fitted('blouse', 4, 20, FACE)).toBe('blouse')
  })
  test('stay on the paper, and none is lost', () => {
    const lines = Array.from({ length: 200 }, (_, i) => ({
      kind: 'step' as const,
      mark: `${i + 1}`,
      text: `Rule from A to B and on to C, ${i} cm. `.repeat(3),
    }))
    const pages = stepsPages(lines, PAPERS.letter, 'foot', FACE)
    expect(pages.length).toBeGreaterThan(3)
    const marks = pages.flatMap((p) => p.layers.flatMap((l) => l.marks))
    const texts = marks.flatMap((m) => (m.kind === 'text' ? [m] : []))
    for (let i = 1; i <= 200; i++) expect(texts.some((t) => t.text === `${i}`)).toBe(true)
    for (const t of texts) {
      expect(t.at.x + FACE.width(t.text, t.size)).toBeLessThan(PAPERS.letter.width - 10)
      expect(t.at.y).toBeLessThan(PAPERS.letter.height - 10)
      expect(t.at.y).toBeGreaterThan(10)
    }
  })
})
