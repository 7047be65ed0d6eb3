import { describe, expect, test } from 'vitest'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { plainCloth, type Cloth } from '../../src/layout/cloth.ts'
import { cutParts } from '../../src/layout/cut-part.ts'
import { layOut } from '../../src/layout/lay-out.ts'
import { lay } from '../../src/layout/lay.ts'
import { lying } from '../../src/layout/lying.ts'
import { placeSentence, sectionSentence } from '../../src/layout/lying-words.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'
import { commonArea } from './common-area.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const d = draft('blouse', body({}, MIDDLE), standardFor('blouse'))
const cutting = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
const made = cutParts(d.pieces, cutting.allowances, cutting.hemDepth)
if (!made.ok) throw new Error(made.reason)
const { parts } = made
const bordered = (hemAt: number, more: Partial<Cloth> = {}): Cloth => ({
  ...plainCloth(mm(1400)),
  border: { depth: mm(200), hemAt: mm(hemAt) },
  ...more,
})

describe('a border along one selvedge', () => {
  const cloth = bordered(100, { repeat: { along: mm(120) } })
  const out = layOut(parts, cloth, 'single', { seed: 1, spent: (n) => n / 20_000 })
  if (!out.ok) throw new Error(out.reason)
  const [s] = lying(parts, cloth, out.layout)
  if (!s) throw new Error('no section')

  test('finished hems lie where she wants them, whole halves across the cloth', () => {
    for (const id of ['back', 'front'] as const) {
      const p = s.pieces.find((q) => q.id === id)!
      // By hand: the cutting line lies deeper than the hem line by what is turned up; the outline
      // that is laid out may enclose it by 0.8 mm.
      expect(Math.abs(p.at.low + s.selvedge + cutting.allowances.hem - 100)).toBeLessThan(0.8)
      expect(p.whole && p.across && !p.onFold).toBe(true)
      // The neck lies away from the border: the piece is as long as it is across the cloth.
      expect(p.at.high - p.at.low).toBeGreaterThan(600)
    }
  })
  test('what has no hem keeps out of the border, and nothing overlaps', () => {
    for (const p of s.pieces.filter((q) => q.id !== 'back' && q.id !== 'front'))
      expect(p.at.low + s.selvedge).toBeGreaterThanOrEqual(200 - 1e-6)
    for (const { section, layout } of out.layout.sections)
      expect(commonArea(section.strip, layout)).toBe(0)
  })
  test('centres lie on the middle of a motif', () => {
    for (const id of ['back', 'front'] as const) {
      const { at } = s.pieces.find((q) => q.id === id)!
      const phase = (at.left + at.right) / 2 / 120
      expect(phase - Math.round(phase)).toBeCloseTo(0, 3)
    }
  })
  test('is told: border, grain across, lower end towards it', () => {
    expect(sectionSentence(s, CM)).toContain('20.0 cm deep; grain arrows run across the cloth')
    expect(
      placeSentence(
        s,
        s.pieces.find((p) => p.id === 'back')!,
        CM,
      ),
    ).toContain('lower end towards the border')
  })
  test('what does not go says why', () => {
    const why = (c: Cloth, manner: Parameters<typeof lay>[2]) => {
      const how = lay(parts, c, manner)
      return how.ok ? '' : how.reason
    }
    expect(why(cloth, 'lengthwise')).toMatch(/single layer/)
    // 76 mm of hem and 12 mm of selvedge do not go into 50 mm.
    expect(why(bordered(50), 'single')).toMatch(/over the selvedge/)
    expect(why(bordered(100, { width: mm(600) }), 'single')).toMatch(/longer than there is cloth/)
  })
})
