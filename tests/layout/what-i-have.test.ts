import { describe, expect, test } from 'vitest'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { lengthLeft } from '../../src/layout/amount.ts'
import { plainCloth, type Cloth } from '../../src/layout/cloth.ts'
import { clothOf, USUAL_CLOTH } from '../../src/layout/cloth-wishes.ts'
import { cutParts, type CutPart } from '../../src/layout/cut-part.ts'
import { outlineArea, outlineOf } from '../../src/layout/outline.ts'
import { clothUsed } from '../../src/layout/lay-out.ts'
import { MANNERS } from '../../src/layout/lay.ts'
import { isSound } from '../../src/layout/sound.ts'
import { WAY_OUT_WORDS } from '../../src/layout/cloth.words.ts'
import { whatIHave, type Answer, type HaveOptions } from '../../src/layout/what-i-have.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'
import { areaOffCloth, commonArea } from './common-area.ts'

const rectangle = (long: number, wide: number) =>
  outlineOf([
    [0, 0],
    [long, 0],
    [long, wide],
    [0, wide],
  ])
const part = (
  id: CutPart['id'],
  kind: CutPart['kind'],
  count: number,
  long: number,
  wide: number,
): CutPart => ({
  id,
  words: id,
  kind,
  count,
  outline: rectangle(long, wide),
  exact: rectangle(long, wide),
  seam: rectangle(long, wide),
  ...(id === 'back' || id === 'front'
    ? { match: { at: 'waist', along: 0, across: 0, lag: 0 } }
    : {}),
})
/** Back and front 700 by 250 from the fold, a facing 100 by 300 whole. By hand throughout. */
const GARMENT = [part('back', 'onFold', 1, 700, 250), part('front', 'onFold', 1, 700, 250)]
const FACING = part('slitFacing', 'single', 1, 100, 300)
const cloth = (width: number): Cloth => ({ ...plainCloth(mm(width)), selvedge: mm(0) })
const OPTIONS: HaveOptions = {
  seed: 1,
  manners: ['lengthwise', 'single'],
  tries: 20_000,
  seam: mm(16),
}

test('fits: 1,500 mm of 600 wide, both halves on the fold', () => {
  // 2 × 700 = 1400 folded; 1500 less 50 for straightening leaves 50.
  const answer = whatIHave(GARMENT, cloth(600), mm(1500), OPTIONS)
  expect(answer.fits).toBe(true)
  if (answer.fits) expect(answer.left).toBeCloseTo(50, 1)
})

test('a single layer is taken where it is shorter', () => {
  // Opened out each is 500 wide: two abreast on 1000, 700 long; folded one after the other 1400.
  const answer = whatIHave(GARMENT, cloth(1000.2), mm(760), OPTIONS)
  expect(answer.fits && answer.layout.manner).toBe('single')
})

test('does not fit, and the facing from another cloth would do', () => {
  // 600 wide: 1400 for the halves and 100 more for the facing; 1460 − 50 = 1410.
  const answer = whatIHave([...GARMENT, FACING], cloth(600), mm(1460), OPTIONS)
  if (answer.fits) throw new Error('it cannot fit')
  expect(answer.over).toBeCloseTo(90, 0)
  expect(answer.ways.map((w) => w.words)).toEqual([WAY_OUT_WORDS.otherClothFacings.words])
})

test('a cuff shows and is never cut from another cloth', () => {
  // As the facing above, which would do without.
  const cuff: CutPart = { ...FACING, id: 'cuff' }
  const answer = whatIHave([...GARMENT, cuff], cloth(600), mm(1460), OPTIONS)
  if (answer.fits) throw new Error('it cannot fit')
  expect(answer.ways.map((w) => w.words)).not.toContain(WAY_OUT_WORDS.otherClothFacings.words)
})

/** A strip as it lies: 40 mm wide, aslant at 45°, its corners by hand. */
const aslant = (long: number): CutPart => {
  const [l, w] = [long / Math.SQRT2, 40 / Math.SQRT2]
  const ring = outlineOf([
    [0, 0],
    [l, l],
    [l - w, l + w],
    [-w, w],
  ])
  const strip = part('neckStrip', 'bias', 1, 1, 1)
  return { ...strip, outline: ring, exact: ring, seam: ring }
}

test('a long bias strip is joined of two lengths, each with a quarter of an inch at its seam', () => {
  // 1000 aslant is 735 across: wider than 400. Two lengths are 374 each.
  const back = part('back', 'onFold', 1, 300, 190)
  const narrow = { ...OPTIONS, manners: ['single'] as const }
  const answer = whatIHave([back, aslant(1000)], cloth(400), mm(1500), narrow)
  if (answer.fits) throw new Error('it cannot fit')
  const way = answer.ways.find((w) => w.words === WAY_OUT_WORDS.pieced(2, false).words)
  if (!way) throw new Error('pieced it fits')
  const [, one, two, more] = way.layout.sections[0]!.section.parts.map(({ part: p }) => p)
  expect(more).toBeUndefined()
  const areas = [one!, two!].map((p) => outlineArea(p.exact))
  // Cut along a thread the strip is 40 · √2 long there. Public lessons on joining bias strips: both
  // sides of the seam are 1/4 in, 6.35 mm.
  expect(areas[0]! + areas[1]!).toBeCloseTo(1000 * 40 + 2 * 6.35 * 40 * Math.SQRT2, 3)
  expect(outlineArea(one!.seam) + outlineArea(two!.seam)).toBeCloseTo(1000 * 40, 3)
  for (const { section, layout: own } of way.layout.sections)
    expect(isSound(section.strip, own)).toBe(true)
})

test('a strip is not joined of lengths under 15 cm', () => {
  // 300 aslant is 240 across; two lengths, 126 each, would lie on 230.
  const back = part('back', 'onFold', 1, 300, 100)
  const answer = whatIHave([back, aslant(300)], cloth(230), mm(1500), {
    ...OPTIONS,
    manners: ['single'],
  })
  if (answer.fits) throw new Error('it cannot fit')
  expect(answer.ways.map((w) => w.words)).toEqual([WAY_OUT_WORDS.otherClothFacings.words])
})

test('a facing takes a seam at its centre', () => {
  // 700 wide: the back opened out leaves 200 beside it. The facing, 300 whole, goes below it on 90
  // more; its halves, 150 and 16 for the seam, go beside it. 760 − 50 = 710.
  const facing = part('backNeckFacing', 'onFold', 1, 90, 150)
  const answer = whatIHave([GARMENT[0]!, facing], cloth(700), mm(760), {
    ...OPTIONS,
    manners: ['single'],
  })
  if (answer.fits) throw new Error('it cannot fit')
  expect(answer.ways.map((w) => w.words)).toContain(WAY_OUT_WORDS.pieced(0, true).words)
})

test('a shorter draft is tried too', () => {
  const shorter = [part('back', 'onFold', 1, 650, 250), part('front', 'onFold', 1, 650, 250)]
  const answer = whatIHave(GARMENT, cloth(600), mm(1360), {
    ...OPTIONS,
    others: [[{ words: 'Shorter by 5 cm.', clause: 'shorter by 5 cm', parts: shorter }]],
  })
  // 1360 − 50 = 1310: 1400 does not go, 1300 does.
  if (answer.fits) throw new Error('it cannot fit')
  expect(answer.ways.map((w) => w.words)).toEqual(['Shorter by 5 cm.'])
})

/** Every section of each lies on the cloth, and no piece on another, by the library. */
function expectProved(answer: Answer, room: number) {
  if (answer.fits) throw new Error('it cannot fit')
  for (const { layout } of [...answer.ways, ...answer.pairs]) {
    expect(clothUsed(layout)).toBeLessThanOrEqual(room)
    for (const { section, layout: own } of layout.sections) {
      expect(own.placed).toHaveLength(section.strip.pieces.length)
      expect(commonArea(section.strip, own)).toBe(0)
      expect(areaOffCloth(section.strip, own)).toBeLessThan(1e-3)
    }
  }
}

describe('where nothing does alone, two together', () => {
  // 590 wide, 1310 of it left: the halves take 1400 folded and the facing 100 more. From other cloth
  // 1400; shorter by 50 each 1400; the facing crosswise is 100 wide beside 500, and does not go.
  const shorter = [part('back', 'onFold', 1, 650, 250), part('front', 'onFold', 1, 650, 250)]
  const others = [
    [{ words: 'Shorter by 5 cm.', clause: 'shorter by 5 cm', parts: [...shorter, FACING] }],
  ]
  const asked = (bought: number, more: Partial<HaveOptions> = {}) =>
    whatIHave([...GARMENT, FACING], cloth(590), mm(bought), { ...OPTIONS, others, ...more })

  test('the facing from another cloth and a shorter body do, in one sentence', () => {
    const answer = asked(1360)
    if (answer.fits) throw new Error('it cannot fit')
    expect(answer.ways).toEqual([])
    expect(answer.pairs.map((p) => p.words)).toEqual([
      'Cut the facings and strips from another light cloth, and shorter by 5 cm.',
    ])
    expectProved(answer, 1310)
  })

  test('no pair is told where one does alone', () => {
    const answer = asked(1460)
    if (answer.fits) throw new Error('it cannot fit')
    expect(answer.ways).not.toEqual([])
    expect(answer.pairs).toEqual([])
  })

  test('nothing is told where no pair does, and all were tried', () => {
    const shares: number[] = []
    const answer = whatIHave(
      [...GARMENT, FACING],
      cloth(590),
      mm(1300),
      { ...OPTIONS, others },
      (share) => shares.push(share),
    )
    if (answer.fits) throw new Error('it cannot fit')
    expect([answer.ways, answer.pairs]).toEqual([[], []])
    expect(shares.at(-1)).toBe(1)
    expect(shares).toEqual([...shares].sort((a, b) => a - b))
  })

  test('two things less of the garment are tried last', () => {
    const parts = [part('back', 'onFold', 1, 600, 250), part('front', 'onFold', 1, 600, 250)]
    const both = { words: 'Both.', parts: [...parts, FACING] }
    const answer = asked(1360, { others: [], othersTogether: [both] })
    if (answer.fits) throw new Error('it cannot fit')
    expect(answer.pairs.map((p) => p.words)).toEqual(['Both.'])
  })
})

test('of much less and less again the least that fits is told', () => {
  const less = [20, 40, 60, 80].map((by) => ({
    words: `By ${by}.`,
    clause: `by ${by}`,
    parts: [part('back', 'onFold', 1, 700 - by, 250), part('front', 'onFold', 1, 700 - by, 250)],
  }))
  // 1400 less twice the step: 1320 needs 40.
  const asked = (bought: number) =>
    whatIHave(GARMENT, cloth(600), mm(bought), { ...OPTIONS, others: [less] })
  const words = (answer: Answer) => (answer.fits ? [] : answer.ways.map((w) => w.words))
  expect(words(asked(1380))).toEqual(['By 40.'])
  expect(words(asked(1300))).toEqual(['By 80.'])
  expect(words(asked(1280))).toEqual([])
})

test('the half with a seam grows by its allowance along its length', () => {
  const answer = whatIHave([part('back', 'onFold', 1, 700, 250)], cloth(300), mm(1460), {
    ...OPTIONS,
    manners: ['single'],
  })
  // 500 whole is too wide for 300; two halves of 266 by 700 take 1400.
  if (answer.fits) throw new Error('it cannot fit')
  expect(answer.layout).toBeUndefined()
  expect(answer.ways.map((w) => w.words)).toEqual([WAY_OUT_WORDS.centreBackSeam.words])
  const { section } = answer.ways[0]!.layout.sections[0]!
  expect(outlineArea(section.strip.pieces[0]!.poses[0]!.outline)).toBeCloseTo(700 * 266, 6)
})

const realBlouse = () => {
  const d = draft('blouse', body({}, MIDDLE), { ...standardFor('blouse'), neckFinish: 'facing' })
  const { allowances, hemDepth } = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
  const cut = cutParts(d.pieces, allowances, hemDepth)
  if (!cut.ok) throw new Error(cut.reason)
  const real = clothOf(USUAL_CLOTH, mm(1400))
  return {
    parts: cut.parts,
    real,
    options: { ...OPTIONS, manners: MANNERS, seam: allowances.centre },
  }
}

test('a real blouse on 1.35 m of 140 cm: a seam down the back does, each way proved by a layout', () => {
  const { parts, real, options } = realBlouse()
  const answer = whatIHave(parts, real, mm(1350), options)
  if (answer.fits) throw new Error('it cannot fit')
  // Sleeves cut in one: the whole back is as wide as the cloth, its two halves lie head to foot.
  expect(answer.ways.map((w) => w.words)).toContain(WAY_OUT_WORDS.centreBackSeam.words)
  expectProved(answer, lengthLeft(mm(1350), real))
})

test('the same on 1.04 m: no way does alone, a seam down the back with the facings apart does', () => {
  const { parts, real, options } = realBlouse()
  const answer = whatIHave(parts, real, mm(1040), options)
  if (answer.fits) throw new Error('it cannot fit')
  expect(answer.ways).toEqual([])
  expect(answer.pairs.map((p) => p.words)).toContain(
    'Cut the facings and strips from another light cloth, and give the back a seam down its centre.',
  )
  expectProved(answer, lengthLeft(mm(1040), real))
})
