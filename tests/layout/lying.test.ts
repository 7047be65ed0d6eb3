import { describe, expect, test } from 'vitest'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import type { GarmentId } from '../../src/draft/draft.ts'
import { plainCloth, usableWidth, type Cloth } from '../../src/layout/cloth.ts'
import { cutParts } from '../../src/layout/cut-part.ts'
import { layOut } from '../../src/layout/lay-out.ts'
import type { Manner } from '../../src/layout/lay.ts'
import { lying } from '../../src/layout/lying.ts'
import { placeSentence } from '../../src/layout/lying-words.ts'
import { searchWidth } from '../../src/layout/search-widths.ts'
import { outlineArea } from '../../src/layout/outline.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'

function partsOf(garment: GarmentId) {
  const d = draft(garment, body({}, MIDDLE), standardFor(garment))
  const cutting = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
  const cut = cutParts(d.pieces, cutting.allowances, cutting.hemDepth)
  if (!cut.ok) throw new Error(cut.reason)
  return cut.parts
}
const TRIES = 30_000

function laid(garment: GarmentId, manner: Manner, cloth: Cloth) {
  const parts = partsOf(garment)
  const out = layOut(parts, cloth, manner, { seed: 1, spent: (done) => done / TRIES })
  if (!out.ok) throw new Error(out.reason)
  return { parts, layout: out.layout, sections: lying(parts, cloth, out.layout) }
}

describe('a layout as it is told', () => {
  test.each([
    ['blouse', 'lengthwise'],
    ['sleeve', 'single'],
    ['sleeve', 'partly'],
    ['dress', 'lengthwise'],
    ['dress', 'single'],
    ['dress', 'crosswise'],
    ['dress', 'partly'],
    ['block', 'single'],
    ['block', 'crosswise'],
    ['sleeveless', 'single'],
    ['sleeveless', 'crosswise'],
  ] as const)(
    '%s %s: cutting lines lie on the cloth, seam lines inside them',
    (garment, manner) => {
      const cloth = plainCloth(mm(1400))
      const { sections, layout } = laid(garment, manner, cloth)
      for (const s of sections)
        for (const p of s.pieces) {
          expect(p.at.left).toBeGreaterThanOrEqual(-1e-6)
          expect(p.at.right).toBeLessThanOrEqual(s.length + 1e-6)
          expect(p.at.low).toBeGreaterThanOrEqual(-1e-6)
          expect(p.at.high).toBeLessThanOrEqual(s.width + 1e-6)
          expect(outlineArea(p.seam)).toBeLessThanOrEqual(outlineArea(p.cut) + 1e-6)
        }
      // Folded crosswise, the cloth of both layers is used.
      const layers = { single: 1, foldedAlong: 1, partlyFolded: 1, foldedAcross: 2 } as const
      const used = sections.reduce((sum, s) => sum + s.length * layers[s.layers], 0)
      expect(used).toBeCloseTo(layout.length, 6)
    },
  )

  test('numbers run along the cloth, each piece once', () => {
    const { sections, layout } = laid('sleeve', 'lengthwise', plainCloth(mm(1400)))
    const pieces = sections.flatMap((s) => s.pieces)
    const placed = layout.sections.reduce((n, s) => n + s.layout.placed.length, 0)
    expect(pieces.map((p) => p.number)).toEqual(Array.from({ length: placed }, (_, i) => i + 1))
    const lefts = pieces.map((p) => p.at.left)
    expect(lefts).toEqual([...lefts].sort((a, b) => a - b))
  })

  test('in words: a half on the fold, all else by its distance from the fold', () => {
    const { sections } = laid('blouse', 'lengthwise', plainCloth(mm(1400)))
    const said = sections.flatMap((s) =>
      s.pieces.map((p) => placeSentence(s, p, { unit: 'cm', inchStep: 8 })),
    )
    expect(said.find((t) => /^\d+ Back/.test(t))).toMatch(
      /centre on the fold, cut through both layers, upper end .*; begins [\d.]+ cm from the cut end\./,
    )
    const strip = said.find((t) => /neck/i.test(t) && /aslant/.test(t))
    expect(strip).toMatch(/[\d.]+ cm from the fold, begins/)
  })

  test('a piece that lies from the selvedge is measured with the selvedge', () => {
    // By hand: what touches the usable edge lies 12 mm from the outer edge of the cloth.
    const cloth = plainCloth(mm(1400))
    const { sections } = laid('blouse', 'single', cloth)
    const [s] = sections
    expect(s?.width).toBe(usableWidth(cloth))
    const first = s?.pieces.find((p) => p.at.low < 1)
    expect(s && first && placeSentence(s, first, { unit: 'cm', inchStep: 8 })).toMatch(
      /1\.2 cm from the selvedge/,
    )
  })
})

describe('a width searched', () => {
  test('takes the shortest manner, tells each, and is the same a second time', () => {
    const parts = partsOf('blouse')
    const run = () =>
      searchWidth(parts, plainCloth(mm(1400)), 'shortest', { seed: 1, tries: 40_000 })
    const found = run()
    const lengths = found.manners.flatMap((m) => (m.length === undefined ? [] : [m.length]))
    expect(found.best?.length).toBe(Math.min(...lengths))
    expect(found.manners.find((m) => m.manner === 'crosswise')?.reason).toMatch(/cut twice/)
    expect(run()).toEqual(found)
  })
  test('effort never goes backwards and ends whole', () => {
    const shares: number[] = []
    searchWidth(partsOf('sleeve'), plainCloth(mm(1400)), 'shortest', {
      seed: 1,
      tries: 40_000,
      onSpent: (share) => shares.push(share),
    })
    expect(shares).toEqual([...shares].sort((a, b) => a - b))
    expect(shares.at(-1)).toBe(1)
  })
})
