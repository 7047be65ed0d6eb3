/**
 * Cuff and slit at the end of a set-in sleeve. The straight cuff, its overlap and the strip round
 * both edges of the slit: common practice, no source. Hands and wrists: 1,986 women of ANSUR II,
 * hand 202 mm and under in 95 of 100 and 214 at most, wrist 154 in the median.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { CHOICES, type Choices } from '../../src/draft/choices.ts'
import { movedBy, pieceOf, type Draft } from '../../src/draft/draft.ts'
import type { FindingId } from '../../src/draft/finding.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { edge, namedPoint, outline, sewnLength, type Piece } from '../../src/draft/piece.ts'
import { record } from '../../src/draft/record.ts'
import { toCut } from '../../src/draft/to-cut.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { checkJoined, pathEnd, pathStart } from '../../src/geometry/path.ts'
import { selfIntersections } from '../../src/geometry/self-intersection.ts'
import { cuttingLine } from '../../src/output/allowance.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { notches } from '../../src/output/notch.ts'
import { pieceDrawing } from '../../src/output/piece-drawing.ts'
import { pieceSvg } from '../../src/output/svg.ts'
import { mm } from '../../src/units/length.ts'
import { body, bodyOf, INVENTED_BODIES, MIDDLE } from '../bodies.ts'

/** To the wrist, narrowed and drawn up. */
const LONG: Partial<Choices> = {
  sleeveEnd: 'cuff',
  sleeveLength: mm(580),
  sleeveHem: mm(80),
  cuffFullness: mm(70),
}
const sleeved = (choices: Partial<Choices>, numbers = MIDDLE): Draft =>
  draft('sleeve', bodyOf(numbers), { ...standardFor('sleeve'), ...choices })
const long = (d: Draft, id: Piece['id'], name: Parameters<typeof edge>[1]): number =>
  pathLength(edge(pieceOf(d, id), name).path)
const ids = (d: Draft): FindingId[] => d.findings.map((f) => f.id)

describe('worked by hand', () => {
  test('a cuff at the wrist with its slit', () => {
    const d = sleeved(LONG)
    const [sleeve, cuff] = [pieceOf(d, 'sleeve'), pieceOf(d, 'cuff')]
    // Arm 290 and room 50, less 80: 260; drawn up by 70: 190, and 25 to lie under.
    expect(long(d, 'sleeve', 'sleeveEnd')).toBeCloseTo(260, 6)
    expect(sewnLength(sleeve, 'sleeveEnd')).toBeCloseTo(190, 6)
    expect(namedPoint(cuff, 'B')).toEqual({ x: 190, y: 0 })
    expect(long(d, 'cuff', 'sleeveEnd')).toBeCloseTo(215, 6)
    // Folded in half it is 50 high.
    expect(long(d, 'cuff', 'start')).toBeCloseTo(100, 6)
    const fold = cuff.inner.find((i) => i.name === 'fold')!.path
    expect([pathStart(fold).y, pathEnd(fold).y]).toEqual([50, 50])
    // 580 with the cuff.
    expect(namedPoint(sleeve, 'C').y).toBeCloseTo(530, 6)
    // Half way from the middle to the underarm of the back, 90 up.
    const [c, e, m, n] = ['C', 'E', 'M', 'N'].map((name) => namedPoint(sleeve, name))
    expect(m!.x).toBeCloseTo((c!.x + e!.x) / 2, 6)
    expect(m!.x).toBeLessThan(0)
    expect([m!.x - n!.x, m!.y - n!.y]).toEqual([0, 90])
    // Both edges of the slit and 25; 32 wide, along the thread.
    const strip = pieceOf(d, 'sleeveBinding')
    expect(long(d, 'sleeveBinding', 'sewnOn')).toBeCloseTo(205, 6)
    expect(long(d, 'sleeveBinding', 'start')).toBeCloseTo(32, 6)
    expect(strip.cut).toEqual({ count: 2, how: 'single' })
    expect(strip.grain.from.y).toBe(strip.grain.to.y)
    expect(d.findings.find((f) => f.id === 'cuffRound')?.value).toBeCloseTo(190, 6)
  })
  test('a hand passes a wide cuff: no slit, and the band is a ring', () => {
    const d = sleeved({ sleeveEnd: 'cuff' })
    // 340 less 40, drawn up by 40.
    expect(long(d, 'cuff', 'sleeveEnd')).toBeCloseTo(260, 6)
    expect(pieceOf(d, 'cuff').points['C']).toBeUndefined()
    expect(d.pieces.map((p) => p.id)).not.toContain('sleeveBinding')
    expect(pieceOf(d, 'sleeve').inner.map((i) => i.name)).toEqual(['gathers'])
  })
  test('sewn on flat, nothing is drawn up', () => {
    const d = sleeved({ ...LONG, cuffFullness: mm(0) })
    expect(pieceOf(d, 'sleeve').gathers).toBeUndefined()
    expect(namedPoint(pieceOf(d, 'cuff'), 'B').x).toBeCloseTo(260, 6)
  })
  test('no cuff is narrower than 150, and that is said', () => {
    const d = sleeved({ ...LONG, cuffFullness: mm(200) })
    expect(namedPoint(pieceOf(d, 'cuff'), 'B').x).toBe(150)
    expect(d.findings.find((f) => f.id === 'cuffWider')?.value).toBe(150)
  })
  test('a hem stays at 210 and offers nothing narrower; with a slit it goes to 160', () => {
    const narrow = { sleeveLength: mm(560), sleeveHem: mm(180) }
    const hemmed = sleeved(narrow)
    expect(long(hemmed, 'sleeve', 'hem')).toBeCloseTo(210, 6)
    expect(ids(hemmed)).toContain('sleeveHemWider')
    const slit = sleeved({ ...narrow, sleeveEnd: 'hemSlit' })
    expect(long(slit, 'sleeve', 'hem')).toBeCloseTo(160, 6)
    expect(ids(slit)).not.toContain('sleeveHemWider')
    expect(slit.pieces.map((p) => p.id)).toContain('sleeveBinding')
    expect(slit.pieces.map((p) => p.id)).not.toContain('cuff')
  })
  test('in a sleeve that is short below the underarm the slit is shorter, and the end wider', () => {
    const d = sleeved({ sleeveEnd: 'hemSlit', sleeveLength: mm(80), sleeveHem: mm(200) })
    const sleeve = pieceOf(d, 'sleeve')
    // 30 below the underarm, 10 of it left whole: 20, which open to 40 more.
    expect(namedPoint(sleeve, 'M').y - namedPoint(sleeve, 'N').y).toBeCloseTo(20, 6)
    expect(long(d, 'sleeve', 'hem')).toBeCloseTo(170, 6)
    expect(ids(d)).toEqual(expect.arrayContaining(['slitShorter', 'sleeveEndWider']))
  })
})

const turned = (id: 'cuffHeight' | 'cuffFullness' | 'cuffOverlap' | 'sleeveSlit' | 'sleeveHem') =>
  fc.integer({ min: CHOICES[id].min, max: CHOICES[id].max }).map(mm)

test('whatever is chosen: cuff and sleeve end are equal, a hand goes through, every piece can be cut', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...INVENTED_BODIES.map(([, numbers]) => numbers)),
      fc.record({
        sleeveEnd: fc.constantFrom('cuff' as const, 'hemSlit' as const),
        sleeveLength: fc.integer({ min: 80, max: 700 }).map(mm),
        sleeveHem: turned('sleeveHem'),
        cuffHeight: turned('cuffHeight'),
        cuffFullness: turned('cuffFullness'),
        cuffOverlap: turned('cuffOverlap'),
        sleeveSlit: turned('sleeveSlit'),
      }),
      (numbers, choices) => {
        const d = sleeved(choices, numbers)
        const sleeve = pieceOf(d, 'sleeve')
        const cuff = d.pieces.find((p) => p.id === 'cuff')
        const [m, n] = [sleeve.points['M'], sleeve.points['N']]
        const slit = m && n ? m.y - n.y : 0
        const closed = cuff ? namedPoint(cuff, 'B').x : long(d, 'sleeve', 'hem')
        // 202 mm: 95 of 100 hands (ANSUR II).
        expect(closed + 2 * slit).toBeGreaterThan(202)
        if (n) expect(n.y).toBeGreaterThan(namedPoint(sleeve, 'B').y)
        if (cuff) {
          expect(sewnLength(sleeve, 'sleeveEnd')).toBeCloseTo(closed, 6)
          const laps = slit > 0 ? choices.cuffOverlap : 0
          expect(long(d, 'cuff', 'sleeveEnd')).toBeCloseTo(closed + laps, 6)
          // Nothing is stretched into a sleeve end.
          expect(long(d, 'sleeve', 'sleeveEnd')).toBeGreaterThan(closed - 1e-6)
        }
        const { allowances, hemDepth } = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
        for (const p of d.pieces.filter(({ id }) => /^(sleeve|cuff)/.test(id))) {
          checkJoined(outline(p), p.id)
          expect(selfIntersections(outline(p))).toEqual([])
          expect(cuttingLine(p, allowances, hemDepth).ok, p.id).toBe(true)
        }
        expect(d.findings.filter((f) => f.severity === 'stop')).toEqual([])
      },
    ),
    { numRuns: 120 },
  )
})

test('a higher cuff shortens the sleeve by as much: together they stay as long', () => {
  for (const height of [25, 60, 120]) {
    const d = sleeved({ ...LONG, cuffHeight: mm(height) })
    expect(namedPoint(pieceOf(d, 'sleeve'), 'C').y + height).toBeCloseTo(580, 6)
    expect(long(d, 'cuff', 'start')).toBeCloseTo(2 * height, 6)
  }
})

test('the notch of the cuff meets the slit, outside the seam line of both', () => {
  const d = sleeved(LONG)
  const on = (id: 'sleeve' | 'cuff') =>
    notches(pieceOf(d, id), () => 10).filter((n) => n.edge === 'sleeveEnd')
  for (const [id, point] of [
    ['sleeve', 'M'],
    ['cuff', 'B'],
  ] as const) {
    expect(on(id)).toHaveLength(1)
    const [at, wanted] = [on(id)[0]!.at, namedPoint(pieceOf(d, id), point)]
    expect(Math.hypot(at.x - wanted.x, at.y - wanted.y)).toBeLessThan(0.01)
  }
})

const WIDER: Extract<Correction, { kind: 'turn-choice' }> = {
  v: 1,
  id: 'wider',
  kind: 'turn-choice',
  choice: 'armRoom',
  by: mm(20),
  because: {
    complaint: 'L2',
    cause: 'narrow',
    pinned: { how: 'levelError', read: mm(20), share: 1 },
    watch: mm(0),
    round: 1,
  },
}
/** Drawn up by 90, so that both cuffs are narrower than a hand. */
const correctedBy = (list: readonly Correction[]): Draft =>
  correctedDraft(
    'sleeve',
    body(),
    { ...standardFor('sleeve'), ...LONG, cuffFullness: mm(90) },
    list,
  ).draft

describe('it follows what the sleeve follows', () => {
  test('a choice that a correction turns: arm room of 20 more, and the cuff grows by 20', () => {
    const corrected = correctedBy([WIDER])
    expect(long(corrected, 'sleeve', 'sleeveEnd')).toBeCloseTo(280, 6)
    expect(namedPoint(pieceOf(corrected, 'cuff'), 'B').x).toBeCloseTo(190, 6)
  })
  test('every point moves only with what it says it rests on', () => {
    const before = sleeved(LONG)
    for (const [name, choices, numbers] of [
      ['cuffHeight', { cuffHeight: mm(60) }, {}],
      ['cuffFullness', { cuffFullness: mm(60) }, {}],
      ['cuffOverlap', { cuffOverlap: mm(30) }, {}],
      ['sleeveSlit', { sleeveSlit: mm(110) }, {}],
      ['sleeveHem', { sleeveHem: mm(60) }, {}],
      ['upperArmGirth', {}, { upperArmGirth: 300 }],
      ['napeToWaist', {}, { napeToWaist: 405 }],
    ] as const) {
      const after = sleeved({ ...LONG, ...choices }, { ...MIDDLE, ...numbers })
      const allowed = new Set([...movedBy(before, name), ...movedBy(after, name)])
      const [a, b] = [record(before).points, record(after).points]
      const moved = Object.keys(a).filter(
        (at) => b[at] && Math.hypot(a[at]![0] - b[at][0], a[at]![1] - b[at][1]) > 0.02,
      )
      expect(
        moved.filter((at) => !allowed.has(at)),
        name,
      ).toEqual([])
      if (/^(cuff|sleeveSlit)/.test(name)) expect(moved.length, name).toBeGreaterThan(0)
    }
  })
  test('corrected on the left only: each sleeve has a cuff of its own, named as worn', () => {
    const cut = toCut(correctedBy([{ ...WIDER, side: 'left' }])).pieces
    const of = (id: Piece['id']): Piece => cut.find((p) => p.id === id)!
    for (const [side, round] of [
      ['Left', 190],
      ['Right', 170],
    ] as const) {
      expect(sewnLength(of(`sleeve${side}`), 'sleeveEnd')).toBeCloseTo(round, 6)
      const cuff = of(`cuff${side}`)
      expect(Math.abs(namedPoint(cuff, 'B').x)).toBeCloseTo(round, 6)
      expect(cuff.cut.count).toBe(1)
    }
    // What lies under is at the back of either sleeve, so the two are mirrored.
    expect(namedPoint(of('cuffLeft'), 'C').x * namedPoint(of('cuffRight'), 'C').x).toBeLessThan(0)
  })
})

// Looked at before they were committed.
test.each(['sleeve', 'cuff', 'sleeveBinding'] as const)('the %s is drawn as before', async (id) => {
  const d = sleeved(LONG)
  const { allowances } = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
  const words = { allowances, round: 2, standing: 'confirmed' } as const
  await expect(pieceSvg(pieceOf(d, id), words)).toMatchFileSnapshot(`../golden/cuffed-${id}.svg`)
})

// 190 mm on the drawing above: 7.48 in, nearest eighth 7 1/2.
test('the length a sleeve end is drawn up to stands on it in her unit', () => {
  const drawn = pieceOf(sleeved(LONG), 'sleeve')
  const said = (unit: 'cm' | 'inch') =>
    pieceDrawing(drawn, { units: { unit, inchStep: 8 } }).marks.flatMap((m) =>
      m.kind === 'text' && m.text.startsWith('gather') ? [m.text] : [],
    )
  expect(said('cm')).toEqual(['gather to 19.0 cm'])
  expect(said('inch')).toEqual(['gather to 7 1/2 in'])
})

// The printed face: letters are 0.5 of their height wide in the mean, from memory.
test.each([25, 30, 40, 60])('a cuff of %i mm: the name of its end covers no letter', (high) => {
  const d = sleeved({ ...LONG, cuffHeight: mm(high) })
  const { allowances } = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
  const texts = pieceDrawing(pieceOf(d, 'cuff'), { allowances }).marks.filter(
    (m) => m.kind === 'text',
  )
  const name = texts.find((t) => t.of && 'edge' in t.of && t.of.edge === 'start')!
  // The end stands upright: its name runs down the paper, half of it on either side of its place.
  const half = (name.text.length * 0.5 * name.size) / 2
  const covers = texts.filter(
    ({ of, at, size }) =>
      of &&
      'point' in of &&
      Math.abs(at.x + size / 4 - name.at.x) < size / 4 + name.size &&
      at.y > name.at.y - half &&
      at.y - size < name.at.y + half,
  )
  expect(covers.map((t) => t.text)).toEqual([])
})
