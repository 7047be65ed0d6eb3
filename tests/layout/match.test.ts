import { describe, expect, test } from 'vitest'
import type { GarmentId } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { plainCloth } from '../../src/layout/cloth.ts'
import { cutParts, type CutPart } from '../../src/layout/cut-part.ts'
import { layOut } from '../../src/layout/lay-out.ts'
import { missedAt, missedSentence } from '../../src/layout/match.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'

function partsOf(garment: GarmentId, at: 'waist' | 'underarm' | 'hem') {
  const d = draft(garment, body({}, MIDDLE), standardFor(garment))
  const cutting = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
  const cut = cutParts(d.pieces, cutting.allowances, cutting.hemDepth, at)
  if (!cut.ok) throw new Error(cut.reason)
  return cut.parts
}
const of = (parts: readonly CutPart[], id: string): CutPart => parts.find((p) => p.id === id)!
const along = (p: CutPart, at: string): number => p.levels!.find((l) => l.at === at)!.along

describe('match points', () => {
  test.each(['waist', 'underarm', 'hem'] as const)(
    'back and front lie on one stripe at the %s, end for end or not',
    (at) => {
      const parts = partsOf('blouse', at)
      const repeat = 70
      const cloth = { ...plainCloth(mm(1400)), repeat: { along: mm(repeat) } }
      const out = layOut(parts, cloth, 'single', { seed: 3, spent: (n) => n / 20_000 })
      if (!out.ok) throw new Error(out.reason)
      const phases = out.layout.sections.flatMap(({ section, layout }) =>
        layout.placed.flatMap(({ piece, pose, x }) => {
          const { part } = section.parts[piece]!
          if (!part.match) return []
          const sign = section.strip.pieces[piece]!.poses[pose]!.round ? -1 : 1
          // The level itself on the cloth, in repeats.
          return [(x + sign * along(part, at)) / repeat]
        }),
      )
      expect(phases).toHaveLength(2)
      for (const phase of phases) expect(phase - Math.round(phase)).toBeCloseTo(0, 6)
    },
  )

  test('the sleeve and the skirt follow from the front, whatever level is matched', () => {
    const sleeved = partsOf('sleeve', 'hem')
    const front = of(sleeved, 'front')
    expect(of(sleeved, 'sleeve').match?.lag).toBeCloseTo(
      along(front, 'underarm') - along(front, 'hem'),
      9,
    )
    const dress = partsOf('dress', 'underarm')
    const bodice = of(dress, 'front')
    expect(of(dress, 'skirtFront').match?.lag).toBeCloseTo(
      along(bodice, 'waist') - along(bodice, 'underarm'),
      9,
    )
  })

  test('what is matched meets; the rest misses by the difference of the two sides', () => {
    // By hand: back 100 from underarm to waist, front 112; a repeat of 40: they miss by 12.
    const part = (id: 'back' | 'front', top: number): CutPart => ({
      ...of(partsOf('blouse', 'waist'), id),
      levels: [
        { at: 'underarm', along: 400 - top },
        { at: 'waist', along: 400 },
      ],
      match: { at: 'waist', along: 400, across: 0, lag: 0 },
    })
    const missed = missedAt([part('back', 100), part('front', 112)], 40)
    expect(missed).toEqual([
      { at: 'underarm', skirt: false, off: 12 },
      { at: 'waist', skirt: false, off: 0 },
    ])
    expect(missedSentence(missed, { unit: 'cm', inchStep: 8 })).toBe(
      'Stripes of back and front meet at the waist at the side. They miss each other by 1.2 cm at the underarm at the side.',
    )
    // A whole repeat apart is together again: 100 against 140.
    expect(missedAt([part('back', 100), part('front', 140)], 40)[0]?.off).toBe(0)
  })
})
