/**
 * Words that are thrown: never smaller than can be read, so that far from the table they take more
 * room than on paper. Where they would run into one another the less needed one is left out.
 */
import { boxOfPoints, type Box } from '../geometry/box.ts'
import { reach, type TextMark } from './mark.ts'
import type { PieceMark } from './piece-drawing.ts'

/** @param least height of the type, in the millimetres of the drawing */
export function thrownTexts(marks: readonly PieceMark[], least: number): TextMark[] {
  const texts = marks
    .filter((m): m is TextMark => m.kind === 'text')
    .map((m): TextMark => ({ ...m, size: Math.max(m.size, least) }))
  // The name of the piece first, then what is set larger on paper, then in the order drawn.
  const order = [...texts.entries()].sort(
    ([i, a], [j, b]) => named(b) - named(a) || b.size - a.size || i - j,
  )
  const taken: Box[] = []
  const kept = order.filter(([, mark]) => {
    const box = boxOfPoints(reach(mark))
    if (taken.some((other) => meet(box, other))) return false
    taken.push(box)
    return true
  })
  return kept.sort(([i], [j]) => i - j).map(([, mark]) => mark)
}

const named = (mark: TextMark): number => (mark.id?.endsWith('.name') ? 1 : 0)
const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
