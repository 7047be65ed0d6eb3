import { describe, expect, test } from 'vitest'
import { edge, type LevelName } from '../../src/draft/piece.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { plainCloth, usableWidth, type Cloth } from '../../src/layout/cloth.ts'
import { cutParts, type CutPart } from '../../src/layout/cut-part.ts'
import { layOut, type ClothLayout } from '../../src/layout/lay-out.ts'
import { lay, unfolded, type Manner } from '../../src/layout/lay.ts'
import { extentOf, outlineArea, outlineOf } from '../../src/layout/outline.ts'
import { allowancesFor, hemTurnedTwice, usualFinishes } from '../../src/output/finishes.ts'
import { mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'
import { areaOffCloth, commonArea } from './common-area.ts'

function partsOf(garment: 'blouse' | 'block' | 'sleeveless' | 'sleeve'): readonly CutPart[] {
  const { pieces } = draft(garment, body({}, MIDDLE), standardFor(garment))
  const finishes = usualFinishes('cloth', pieces)
  const cut = cutParts(pieces, allowancesFor(finishes), hemTurnedTwice(finishes))
  if (!cut.ok) throw new Error(cut.reason)
  return cut.parts
}

function laid(
  parts: readonly CutPart[],
  cloth: Cloth,
  manner: Manner,
  tries = 20_000,
): ClothLayout {
  const out = layOut(parts, cloth, manner, { seed: 1, spent: (done) => done / tries })
  if (!out.ok) throw new Error(out.reason)
  return out.layout
}

/** Half of a yoke, 200 long and 150 from the fold. */
const HALF = outlineOf([
  [0, 0],
  [200, 0],
  [200, 150],
  [0, 150],
])
const part = (given: Partial<CutPart>): CutPart => ({
  id: 'back',
  words: 'Back, half',
  kind: 'onFold',
  count: 1,
  outline: HALF,
  exact: HALF,
  seam: HALF,
  ...given,
})

describe('parts to cut', () => {
  test('the outline laid out encloses the cutting line, nowhere a millimetre outside it', () => {
    for (const p of [...partsOf('blouse'), ...partsOf('sleeve')]) {
      const [a, b] = [extentOf(p.exact), extentOf(p.outline)]
      expect(b.left).toBeLessThanOrEqual(a.left + 1e-9)
      expect(b.right).toBeGreaterThanOrEqual(a.right - 1e-9)
      expect(b.high).toBeGreaterThanOrEqual(a.high - 1e-9)
      expect(b.right - a.right).toBeLessThan(1)
      expect(outlineArea(p.outline) / outlineArea(p.exact)).toBeLessThan(1.09)
      expect(p.outline.length / 2).toBeLessThan(70)
    }
  })

  test('kinds and counts as the pieces say them', () => {
    expect(partsOf('sleeve').map((p) => [p.id, p.kind, p.count])).toEqual([
      ['back', 'onFold', 1],
      ['front', 'onFold', 1],
      ['sleeve', 'pair', 2],
      ['neckStrip', 'bias', 1],
      ['slitFacing', 'single', 1],
    ])
  })

  test('a bias strip lies at 45° to the selvedge', () => {
    const strip = partsOf('blouse').find((p) => p.kind === 'bias')!
    const { pieces } = draft('blouse', body({}, MIDDLE), standardFor('blouse'))
    const piece = pieces.find((p) => p.id === 'neckStrip')!
    const [l, w] = [pathLength(edge(piece, 'neck').path), pathLength(edge(piece, 'end').path)]
    const e = extentOf(strip.exact)
    // A strip l by w aslant takes (l + w) / √2 either way.
    expect(e.right - e.left).toBeCloseTo((l + w) / Math.SQRT2, 6)
    expect(e.high - e.low).toBeCloseTo((l + w) / Math.SQRT2, 6)
  })
})

describe('manners of folding', () => {
  test('folded lengthwise: half the width, halves on the fold', () => {
    const layout = laid(partsOf('blouse'), plainCloth(mm(1150)), 'lengthwise')
    const { section, layout: l } = layout.sections[0]!
    expect(section.strip.width).toBe(usableWidth(plainCloth(mm(1150))) / 2)
    for (const p of l.placed)
      if (section.parts[p.piece]!.part.kind === 'onFold') {
        const ring = section.strip.pieces[p.piece]!.poses[p.pose]!.outline
        expect(extentOf(ring).low + p.y).toBeCloseTo(0, 9)
      }
  })

  test('worked: three half yokes on the fold run one after the other', () => {
    // By hand: fold 150 deep of usable 200: 3 × 200 long.
    const layout = laid(
      [part({ count: 3 })],
      { ...plainCloth(mm(400)), selvedge: mm(0) },
      'lengthwise',
    )
    expect(layout.length).toBeCloseTo(600, 2)
  })

  test('worked: single layer takes the half whole', () => {
    // By hand: unfolded 300 wide, two abreast on 600.
    const layout = laid(
      [part({ count: 2 })],
      { ...plainCloth(mm(600.1)), selvedge: mm(0) },
      'single',
    )
    expect(layout.length).toBeCloseTo(200, 2)
    expect(outlineArea(unfolded(HALF))).toBe(2 * outlineArea(HALF))
  })

  test('worked: folded crosswise, a pair takes twice its length, the whole comes after', () => {
    // By hand: pair 200 long doubled = 400, the whole yoke 200 more.
    const cloth = { ...plainCloth(mm(320)), selvedge: mm(0) }
    const layout = laid([part({ kind: 'pair', count: 2 }), part({})], cloth, 'crosswise')
    expect(layout.length).toBeCloseTo(600, 2)
  })

  test('worked: partly folded, the fold as deep as the half, the rest single beside it', () => {
    // By hand: fold 150 deep leaves 500 − 2 × 150 = 200 single: one yoke half wide, 2 × 200 long.
    const cloth = { ...plainCloth(mm(500)), selvedge: mm(0) }
    const layout = laid([part({}), part({ id: 'sleeve', kind: 'pair', count: 2 })], cloth, 'partly')
    const [{ section, layout: l }] = layout.sections as [ClothLayout['sections'][number]]
    expect([section.double, section.strip.width]).toEqual([150, 350])
    expect(layout.length).toBeCloseTo(400, 2)
    for (const p of l.placed.slice(1)) {
      const ring = section.strip.pieces[p.piece]!.poses[p.pose]!.outline
      expect(extentOf(ring).low + p.y).toBeGreaterThanOrEqual(150 - 1e-9)
    }
  })

  test.each([
    ['crosswise', { ...plainCloth(mm(1150)), oneWay: true }, /upper layer runs the other way/],
    ['lengthwise', plainCloth(mm(600)), /Lay the cloth another way/],
    ['single', plainCloth(mm(600)), /wider than the cloth/],
  ] as const)('refused %s with a sentence', (manner, cloth, reason) => {
    const how = lay(partsOf('blouse'), cloth, manner)
    expect(how.ok ? '' : how.reason).toMatch(reason)
  })

  test('a half on the fold that reaches over the selvedges is refused', () => {
    // 150 wide from the fold; folded lengthwise the cloth is 150 wide, or 149.
    const folded = (width: number) =>
      lay([part({})], { ...plainCloth(mm(width)), selvedge: mm(0) }, 'lengthwise')
    expect(folded(300).ok).toBe(true)
    const how = folded(298)
    expect(how.ok ? '' : how.reason).toMatch(/wider than the cloth folded lengthwise/)
  })
})

describe('nap and repeats', () => {
  test('one way: no piece lies end for end', () => {
    const napped = lay(partsOf('sleeve'), { ...plainCloth(mm(1500)), oneWay: true }, 'single')
    if (!napped.ok) throw new Error(napped.reason)
    // The neck is the low end of every half: in each pose its neck comes first along the cloth.
    for (const { strip, parts } of napped.sections)
      for (const [i, piece] of strip.pieces.entries())
        if (parts[i]!.whole)
          for (const p of piece.poses) {
            const centre = Math.min(
              ...Array.from({ length: p.outline.length / 2 }, (_, k) =>
                Math.abs(p.outline[2 * k + 1]!) < 1 ? p.outline[2 * k]! : Infinity,
              ),
            )
            expect(centre).toBeLessThan(120)
          }
  })

  test.each(['lengthwise', 'single', 'partly'] as const)(
    'matched points lie on one stripe, %s',
    (manner) => {
      const cloth: Cloth = { ...plainCloth(mm(1500)), repeat: { along: mm(70), across: mm(50) } }
      const parts = partsOf('sleeve')
      const { sections } = laid(parts, cloth, manner)
      let matched = 0
      for (const { section, layout } of sections)
        for (const p of layout.placed) {
          const { part: own } = section.parts[p.piece]!
          if (!own.match) continue
          matched++
          const { outline } = section.strip.pieces[p.piece]!.poses[p.pose]!
          // End for end the shoulder end is the far one: the match point counts from there.
          const e = extentOf(outline)
          const plain = extentOf(own.outline)
          const turned = Math.abs(e.left - plain.left) > 1e-6
          const sign = turned ? -1 : 1
          const at = p.x + sign * own.match.along - sign * own.match.lag
          expect(Math.abs(at / 70 - Math.round(at / 70))).toBeLessThan(1e-6)
          if (section.layers !== 'foldedAlong' && own.kind !== 'onFold')
            expect(Math.abs(p.y / 50 - Math.round(p.y / 50))).toBeLessThan(1e-6)
        }
      expect(matched).toBeGreaterThanOrEqual(3)
    },
  )

  test.each([
    [349, false],
    [350, true],
  ])('a centre on the repeat across, %i usable: %s', (usable, goes) => {
    // By hand: opened out 300 wide, its centre at least 150 from either edge and on a multiple of
    // 200, so at 200: that needs 350.
    const bare = plainCloth(mm(1000))
    const edges = bare.width - usableWidth(bare)
    const cloth: Cloth = {
      ...plainCloth(mm(usable + edges)),
      repeat: { along: mm(70), across: mm(200) },
    }
    const match = { at: 'waist' as const, along: mm(0), across: mm(0), lag: mm(0) }
    const out = layOut([part({ match })], cloth, 'single', { seed: 1, spent: () => 1 })
    expect(out.ok || out.reason).toEqual(
      goes ? true : expect.stringMatching(/until its centre meets the repeat/),
    )
  })

  test('the underarm of the sleeve is matched to that of the front', () => {
    const parts = partsOf('sleeve')
    const { pieces } = draft('sleeve', body({}, MIDDLE), standardFor('sleeve'))
    const front = pieces.find((p) => p.id === 'front')!
    const level = (name: LevelName): number => front.levels.find((l) => l.name === name)!.from.y
    expect(parts.find((p) => p.id === 'sleeve')!.match!.lag).toBe(
      level('underarmLine') - level('waistLine'),
    )
  })
})

test.each(['lengthwise', 'single', 'crosswise', 'partly'] as const)(
  'cutting lines themselves share no area, %s',
  (manner) => {
    const parts = partsOf('sleeve')
    const cloth = plainCloth(mm(1500))
    const { sections } = laid(parts, cloth, manner, 40_000)
    const exact = lay(
      parts.map((p) => ({ ...p, outline: p.exact })),
      cloth,
      manner,
    )
    if (!exact.ok) throw new Error(exact.reason)
    for (const [i, s] of sections.entries()) {
      expect(commonArea(exact.sections[i]!.strip, s.layout)).toBe(0)
      expect(areaOffCloth(exact.sections[i]!.strip, s.layout)).toBeLessThan(1e-3)
    }
  },
)
