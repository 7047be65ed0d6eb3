/** A layout kept as places only, and laid again on pieces that are cut anew. */
import { expect, test } from 'vitest'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { plainCloth, type Cloth } from '../../src/layout/cloth.ts'
import { cutParts, type CutPart } from '../../src/layout/cut-part.ts'
import { isOf, keptOf, laidAgain, layMark, type KeptLayout } from '../../src/layout/kept.ts'
import { pictureOf, picturedSections } from '../../src/layout/kept-picture.ts'
import { lying } from '../../src/layout/lying.ts'
import { outlineArea } from '../../src/layout/outline.ts'
import { searchWidth } from '../../src/layout/search-widths.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'

function parts(lengthAdded: number): readonly CutPart[] {
  const d = draft('blouse', body({}, MIDDLE), {
    ...standardFor('blouse'),
    lengthAdded: mm(lengthAdded),
  })
  const { allowances, hemDepth } = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
  const cut = cutParts(d.pieces, allowances, hemDepth)
  if (!cut.ok) throw new Error(cut.reason)
  return cut.parts
}
const CLOTH: Cloth = plainCloth(mm(1400))
const PARTS = parts(0)
const FOUND = searchWidth(PARTS, CLOTH, 'shortest', { seed: 1, tries: 20_000 })
function kept(): KeptLayout {
  if (!FOUND.best) throw new Error('nothing was laid out')
  const mark = layMark(PARTS, CLOTH, 'shortest')
  const about = { width: mm(1400), mark, on: '2026-11-25', tries: 20_000 }
  // Through JSON, as it lies in a backup.
  return JSON.parse(JSON.stringify(keptOf(FOUND.best, about, FOUND.manners))) as KeptLayout
}

test('laid again it is the same layout, and the other manners say the same', () => {
  const again = laidAgain(kept(), parts(0), CLOTH, 'shortest')
  expect(again?.layout.length).toBe(FOUND.best?.length)
  expect(again?.layout.sections.map((s) => s.layout)).toEqual(
    FOUND.best?.sections.map((s) => s.layout),
  )
  expect(again?.manners).toEqual(FOUND.manners)
})

test('the mark is that of the pieces, the cloth and the wish, and of nothing else', () => {
  const mark = layMark(PARTS, CLOTH, 'shortest')
  expect(layMark(parts(0), { ...CLOTH, shrinkAlong: 0.05 }, 'shortest')).toBe(mark)
  const others = [
    layMark(parts(5), CLOTH, 'shortest'),
    layMark(PARTS, plainCloth(mm(1500)), 'shortest'),
    layMark(PARTS, { ...CLOTH, repeat: { along: mm(60) } }, 'shortest'),
    layMark(PARTS, CLOTH, 'single'),
  ]
  expect(new Set([mark, ...others]).size).toBe(5)
})

test('places that would overlap, leave the cloth or name no piece are no layout', () => {
  const { sections, ...rest } = kept()
  const [first] = sections
  if (!first) throw new Error('no section')
  const moved = (by: number, pose = 0): KeptLayout => ({
    ...rest,
    sections: [
      {
        ...first,
        placed: first.placed.map(([piece, own, x, y], k) =>
          k === 0 ? ([piece, own + pose, x + by, y] as const) : ([piece, own, x, y] as const),
        ),
      },
      ...sections.slice(1),
    ],
  })
  expect(laidAgain(moved(0), PARTS, CLOTH, 'shortest')).toBeDefined()
  expect(laidAgain(moved(-5000), PARTS, CLOTH, 'shortest')).toBeUndefined()
  expect(laidAgain(moved(0, 99), PARTS, CLOTH, 'shortest')).toBeUndefined()
  const onEachOther = first.placed.map(([piece, pose]) => [piece, pose, 0, 0] as const)
  const heap = { ...rest, sections: [{ ...first, placed: onEachOther }, ...sections.slice(1)] }
  expect(laidAgain(heap, PARTS, CLOTH, 'shortest')).toBeUndefined()
})

test('it is of these pieces on this cloth whichever way it was to lie, and of no others', () => {
  const wishes = (['shortest', 'single'] as const).map((wanted) => ({
    ...kept(),
    mark: layMark(PARTS, CLOTH, wanted),
  }))
  expect(wishes.map((k) => isOf(k, PARTS, CLOTH))).toEqual([true, true])
  expect(isOf(kept(), parts(5), CLOTH)).toBe(false)
  expect(isOf(kept(), PARTS, plainCloth(mm(1500)))).toBe(false)
})

test('the picture of it holds every piece where it lay, to a few millimetres, after JSON too', () => {
  if (!FOUND.best) throw new Error('nothing was laid out')
  const sections = lying(PARTS, CLOTH, FOUND.best)
  const stored = JSON.stringify(pictureOf(sections))
  const again = picturedSections(JSON.parse(stored) as ReturnType<typeof pictureOf>)
  expect(again.map(({ pieces: _, ...s }) => s)).toEqual(sections.map(({ pieces: _, ...s }) => s))
  for (const [i, s] of sections.entries())
    for (const [k, p] of s.pieces.entries()) {
      const then = again[i]!.pieces[k]!
      expect([then.number, then.id, then.onFold]).toEqual([p.number, p.id, p.onFold])
      for (const side of ['left', 'right', 'low', 'high'] as const)
        expect(Math.abs(then.at[side] - p.at[side])).toBeLessThan(2.1)
      expect(outlineArea(then.cut) / outlineArea(p.cut)).toBeCloseTo(1, 1)
    }
  // Kept with every width in the row that is read first: it must stay small. By hand: some 40
  // corners of 10 letters for each of a handful of pieces.
  expect(stored.length).toBeLessThan(6000)
})
