/** A point dragged along its axis turns its choice by as much as it says: two drafts, one measured on the paper. */
import { describe, expect, test } from 'vitest'
import { CHOICES } from '../../src/draft/choices.ts'
import { GARMENT_IDS, standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { draggedTo, handlesOf } from '../../src/draft/handles.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

describe.each(GARMENT_IDS)('%s', (garment) => {
  const choices = standardFor(garment)
  const before = draft(garment, body(), choices)
  const all = before.pieces.flatMap((p) =>
    handlesOf(before, p).map((handle) => ({ id: p.id, handle })),
  )
  test('some points stand for choices', () => {
    expect(all.length).toBeGreaterThan(3)
  })
  test.each(all.map(({ id, handle }) => [id, handle.point, handle.choice, handle] as const))(
    '%s %s turns %s',
    (id, point, choice, handle) => {
      const by = 2 * CHOICES[choice].step
      const after = draft(garment, body(), { ...choices, [choice]: mm(choices[choice] + by) })
      const [p, q] = [before, after].map((d) => pieceOf(d, id).points[point]!)
      expect(q![handle.axis] - p![handle.axis]).toBeCloseTo(by * handle.rate, 6)
      // Dragged there, the choice is that.
      expect(
        draggedTo(handle, choices[choice], by * handle.rate, CHOICES[choice].step),
      ).toBeCloseTo(choices[choice] + by, 6)
    },
  )
})
