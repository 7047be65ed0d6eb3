import { describe, expect, test } from 'vitest'
import type { GarmentId } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { plainCloth } from '../../src/layout/cloth.ts'
import { cutParts, type CutPart } from '../../src/layout/cut-part.ts'
import { clothUsed, layOut } from '../../src/layout/lay-out.ts'
import { lying } from '../../src/layout/lying.ts'
import { missedAt, missedSentence } from '../../src/layout/match.ts'
import { stripesTold } from '../../src/layout/stripes.ts'
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
      'Stripes of back and front meet at the waist at the side. They miss each other by 1.2 cm at the underarm at the side. A dart in the side takes up stripes: above and below it they cannot both meet. Have them meet where it shows most; an arm covers the underarm.',
    )
    // A whole repeat apart is together again: 100 against 140.
    expect(missedAt([part('back', 100), part('front', 140)], 40)[0]?.off).toBe(0)
  })

  test('checks: centres lie whole repeats from the fold or the selvedge, and she is told so', () => {
    const parts = partsOf('sleeve', 'waist')
    const repeat = { along: mm(60), across: mm(40) }
    const cloth = { ...plainCloth(mm(1400)), repeat }
    const told = (['lengthwise', 'single'] as const).map((manner) => {
      const out = layOut(parts, cloth, manner, { seed: 3, spent: (n) => n / 20_000 })
      if (!out.ok) throw new Error(out.reason)
      for (const { section, layout } of out.layout.sections)
        for (const { piece, y } of layout.placed)
          if (section.parts[piece]!.part.match)
            expect(y / 40 - Math.round(y / 40)).toBeCloseTo(0, 6)
      const sections = lying(parts, cloth, out.layout)
      return stripesTold(parts, cloth, 'waist', sections, { unit: 'cm', inchStep: 8 }).join(' ')
    })
    // Common practice of dressmaking handbooks: fold on a stripe, pin stripe on stripe.
    expect(told[0]).toMatch(/^Begin in the middle of a stripe: .* the underarm of the sleeve/)
    expect(told[0]).toMatch(/Fold along the middle of a stripe.*Pin stripe on stripe/)
    expect(told[1]).toMatch(/reckoned 1\.2 cm from the selvedge/)
    expect(told[1]).not.toMatch(/Fold|Pin/)
    expect(
      stripesTold(parts, plainCloth(mm(1400)), 'waist', [], { unit: 'cm', inchStep: 8 }),
    ).toEqual([])
  })

  test('folded crosswise the fold lies where the stripes of both layers meet, and that cloth counts', () => {
    const parts = partsOf('sleeve', 'waist')
    const cloth = { ...plainCloth(mm(1400)), repeat: { along: mm(60) } }
    const out = layOut(parts, cloth, 'crosswise', { seed: 3, spent: (n) => n / 3_000 })
    if (!out.ok) throw new Error(out.reason)
    const [doubled, rest] = lying(parts, cloth, out.layout)
    // By hand: stripes 60 apart lie on themselves when folded at every 30; the cloth goes on after
    // twice as much, on a stripe again.
    const [folded, begun] = [doubled!.length / 30, rest!.start / 60]
    expect(folded - Math.round(folded)).toBeCloseTo(0, 6)
    expect(begun - Math.round(begun)).toBeCloseTo(0, 6)
    expect(rest!.start).toBeCloseTo(2 * doubled!.length, 6)
    const more = clothUsed(out.layout) - out.layout.length
    expect(more).toBeGreaterThanOrEqual(0)
    expect(more).toBeLessThan(60)
    expect(clothUsed(out.layout)).toBeCloseTo(rest!.start + rest!.length, 6)
  })
})
