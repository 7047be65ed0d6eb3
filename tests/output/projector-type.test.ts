/** Words that are thrown stay readable and do not run into one another. */
import { expect, test } from 'vitest'
import { standardChoices } from '../../src/draft/choices.ts'
import { draft } from '../../src/draft/make.ts'
import { point } from '../../src/geometry/point.ts'
import { textMark, type TextMark } from '../../src/output/mark.ts'
import { MUSLIN_ALLOWANCES } from '../../src/output/allowance.ts'
import { pieceDrawing } from '../../src/output/piece-drawing.ts'
import { thrownTexts } from '../../src/output/projector-type.ts'
import { body } from '../bodies.ts'

const drawing = (i: number) => {
  const piece = draft('blouse', body(), standardChoices()).pieces[i]
  if (!piece) throw new Error(`no piece ${i}`)
  return pieceDrawing(piece, { allowances: MUSLIN_ALLOWANCES, garmentName: 'Blouse', round: 2 })
}
const words = (texts: readonly TextMark[]): string[] => texts.map((t) => t.text)

test('on a near table every word is thrown as it is drawn', () => {
  const { marks } = drawing(0)
  const [a, b] = [point(0, 0), point(0, 20)]
  const apart = [textMark('bust line', a, 4), textMark('waist line', b, 4)]
  expect(thrownTexts(apart, 3)).toEqual(apart)
  expect(thrownTexts(marks, 0.1).every((t) => t.size > 1)).toBe(true)
})
test('from afar the name of the piece stays and nothing smaller than can be read is thrown', () => {
  for (const i of [0, 1]) {
    const { piece, marks } = drawing(i)
    const texts = thrownTexts(marks, 12)
    expect(words(texts)).toContain(piece.words)
    expect(Math.min(...texts.map((t) => t.size))).toBe(12)
    expect(texts.length).toBeLessThan(marks.filter((m) => m.kind === 'text').length)
  }
})
// Lines of one block lie 6 mm apart on paper; 12 mm high they would lie over one another.
test('of two words in one place the larger is kept', () => {
  const [large, small] = [
    textMark('Back, half', point(0, 0), 8),
    textMark('Cut 1 on the fold', point(0, 6), 4),
  ]
  expect(words(thrownTexts([small, large], 4))).toEqual(['Back, half'])
})
