/**
 * Left and right apart. The outside check is symmetry: a body with its two shoulders exchanged has
 * the pieces of the first, turned over; and each half of a whole piece is the half that is drawn
 * from the numbers of that side alone.
 */
import { cuttingSaid } from '../../src/draft/piece.words.ts'
import { describe, expect, test } from 'vitest'
import fc from 'fast-check'
import { asWorn } from '../../src/draft/as-worn.ts'
import type { Draft, GarmentId } from '../../src/draft/draft.ts'
import { sewnEase } from '../../src/draft/ease.ts'
import { GARMENT_IDS, standardFor } from '../../src/draft/garments.ts'
import { outline, pairedId, sewnLength, type Piece } from '../../src/draft/piece.ts'
import { SEAM_EQUAL } from '../../src/draft/proof.ts'
import { record } from '../../src/draft/record.ts'
import { toCut } from '../../src/draft/to-cut.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import { checkJoined, flatten } from '../../src/geometry/path.ts'
import { selfIntersections } from '../../src/geometry/self-intersection.ts'
import { cutParts } from '../../src/layout/cut-part.ts'
import { cuttingLine, MUSLIN_ALLOWANCES } from '../../src/output/allowance.ts'
import { draftDxf } from '../../src/output/dxf.ts'
import { stepsText } from '../../src/output/instruction-page.ts'
import { pieceSvg } from '../../src/output/svg.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'
import { drawByHand, stepsUnder } from './by-hand.ts'

interface Shoulders {
  readonly lengths: readonly [left: number, right: number]
  readonly drops: readonly [left: number, right: number]
}
const UNLIKE: Shoulders = { lengths: [120, 130], drops: [34, 50] }
const ALIKE: Shoulders = { lengths: [125, 125], drops: [42, 42] }
const exchanged = ({ lengths, drops }: Shoulders): Shoulders => ({
  lengths: [lengths[1], lengths[0]],
  drops: [drops[1], drops[0]],
})
const drawn = (garment: GarmentId, s: Shoulders, list: readonly Correction[] = []): Draft =>
  correctedDraft(
    garment,
    body({
      shoulderLengthLeft: s.lengths[0],
      shoulderLengthRight: s.lengths[1],
      shoulderSlopeLeft: s.drops[0],
      shoulderSlopeRight: s.drops[1],
    }),
    standardFor(garment),
    list,
  ).draft

/** Every corner and curve of the outline, as a set of points on the paper. */
const spots = (p: Piece, over: boolean): string[] => {
  const all = flatten(outline(p), 0.5)
    .map(({ x, y }) => `${((over ? -x : x) + 0).toFixed(2)} ${(y + 0).toFixed(2)}`)
    .map((s) => s.replace('-0.00', '0.00'))
  return [...new Set(all)].sort()
}
const mirrorName = (id: string): string =>
  id.replace(/(Left|Right)$/, (side) => (side === 'Left' ? 'Right' : 'Left'))

describe.each(GARMENT_IDS)('%s', (garment) => {
  test('exchanged shoulders give the pieces turned over', () => {
    const range = fc.tuple(fc.integer({ min: 108, max: 140 }), fc.integer({ min: 108, max: 140 }))
    const fall = fc.tuple(fc.integer({ min: 28, max: 58 }), fc.integer({ min: 28, max: 58 }))
    fc.assert(
      fc.property(range, fall, (lengths, drops) => {
        const [a, b] = [{ lengths, drops }, exchanged({ lengths, drops })].map((s) =>
          toCut(drawn(garment, s)),
        )
        expect(b!.pieces.map((p) => mirrorName(p.id)).sort()).toEqual(
          a!.pieces.map((p) => p.id).sort(),
        )
        for (const p of a!.pieces) {
          const q = b!.pieces.find((o) => o.id === mirrorName(p.id))!
          // A piece of both sides is the same; a whole one, or that of one side, is turned over.
          const both = p.edges.every((e) => e.side === undefined) && p.id === pairedId(p.id)
          expect(spots(q, !both && !p.cutAsDrawn), p.id).toEqual(spots(p, false))
        }
      }),
      { numRuns: 8, seed: 5 },
    )
  })

  test('alike within the tolerance of the tape: half pieces', () => {
    // Allowable difference of two readings: 3 mm along the shoulder, 6 mm of its drop (catalogue).
    expect(drawn(garment, { lengths: [125, 128], drops: [42, 48] }).sides).toBeUndefined()
    expect(drawn(garment, { lengths: [125, 125], drops: [42, 42] }).sides).toBeUndefined()
  })

  test('every piece as worn can be cut, written and laid out', () => {
    const d = toCut(drawn(garment, UNLIKE))
    for (const p of d.pieces) {
      checkJoined(outline(p), p.id)
      expect(selfIntersections(outline(p)), p.id).toEqual([])
      const cut = cuttingLine(p, MUSLIN_ALLOWANCES)
      expect(cut.ok, p.id).toBe(true)
      const ids = [
        ...pieceSvg(p, { allowances: MUSLIN_ALLOWANCES, standing: 'confirmed' }).matchAll(
          / id="([^"]*)"/g,
        ),
      ].map((m) => m[1])
      expect(new Set(ids).size, p.id).toBe(ids.length)
    }
    expect(draftDxf(d, { allowances: MUSLIN_ALLOWANCES })).toContain('BACK')
    const parts = cutParts(d.pieces, MUSLIN_ALLOWANCES)
    expect(parts.ok).toBe(true)
  })
})

describe('the block of unlike shoulders', () => {
  const d = drawn('block', UNLIKE)
  const right = d.sides!.right
  const left = d.sides!.left

  test('each side has its own shoulder, and its seams walk', () => {
    for (const [draft, long] of [
      [left, 120],
      [right, 130],
    ] as const) {
      const [back, front] = [draft.pieces[0]!, draft.pieces[1]!]
      expect(sewnLength(front, 'shoulder')).toBeCloseTo(long, 6)
      for (const name of ['shoulder', 'side'] as const)
        expect(Math.abs(sewnLength(back, name) - sewnLength(front, name))).toBeLessThan(SEAM_EQUAL)
    }
  })

  test('the front is whole: her left on the right of it, both halves on one centre', () => {
    const front = asWorn(d).pieces.find((p) => p.id === 'front')!
    expect(front.words).toBe('Front, left and right in one')
    expect(front.edges.filter((e) => e.name === 'centre')).toEqual([])
    const shoulder = (side: 'left' | 'right') =>
      front.edges.find((e) => e.name === 'shoulder' && e.side === side)!
    const far = (side: 'left' | 'right') => flatten(shoulder(side).path, 0.1).map((p) => p.x)
    expect(Math.min(...far('left'))).toBeGreaterThan(0)
    expect(Math.max(...far('right'))).toBeLessThan(0)
  })

  test('a back that is cut in two has a piece for each side', () => {
    // The block opens at the centre back by its own standard.
    const backs = asWorn(d).pieces.filter((p) => pairedId(p.id) === 'back')
    expect(backs.map((p) => [p.id, p.words, cuttingSaid(p.cut)])).toEqual([
      ['backLeft', 'Back, left', 'Cut 1'],
      ['backRight', 'Back, right', 'Cut 1'],
    ])
    expect(Math.max(...flatten(outline(backs[0]!), 0.5).map((p) => p.x))).toBeLessThan(1)
  })

  test('both halves are told in words: the page alone gives the points of both', () => {
    const whole = asWorn(d)
    const front = whole.pieces.find((p) => p.id === 'front')!
    const hand = drawByHand(
      stepsUnder(stepsText(whole, { unit: 'cm', inchStep: 8 }), 'Front, left and right in one'),
    )
    for (const [name, p] of Object.entries(front.points)) {
      const own = hand.points.get(name)
      expect(own, name).toBeDefined()
      // The letters with a stroke lie on the other side of the paper: out is out there too.
      const x = name.endsWith('′') ? -p.x : p.x
      expect(Math.hypot(own!.x - x, own!.y - p.y), name).toBeLessThan(0.51)
    }
  })
})

test('a correction of one side is on that side only', () => {
  const one: Correction = {
    v: 1,
    id: 'c1',
    kind: 'operate',
    side: 'left',
    operation: {
      op: 'MOVE',
      piece: 'both',
      point: 'shoulderTip',
      out: mm(0),
      down: mm(9),
      carries: true,
    },
    because: {
      complaint: 'SH1',
      cause: '1',
      pinned: { how: 'levelError', read: mm(9), share: 1 },
      watch: mm(0),
      round: 1,
    },
  }
  const plain = drawn('block', ALIKE)
  const d = drawn('block', ALIKE, [one])
  const front = asWorn(d).pieces.find((p) => p.id === 'front')!
  // The bone is P; her right lies turned over and keeps its place.
  const before = plain.pieces.find((p) => p.id === 'front')!.points['P']!
  expect(front.points['P']!.y - before.y).toBeGreaterThan(7)
  expect(front.points['P′']!.y).toBeCloseTo(before.y, 6)
  // On paper it is told by side, and alike lengths are told once.
  const { lengths } = record(d)
  expect(lengths['frontLeft.hem']).toBeCloseTo(lengths['frontRight.hem']!, 2)
  expect(lengths['frontLeft.armhole']).not.toBeCloseTo(lengths['frontRight.armhole']!, 1)
})

describe('a girth goes half round her left and half round her right', () => {
  const wider: Correction = {
    v: 1,
    id: 'c1',
    kind: 'operate',
    side: 'left',
    operation: { op: 'MOVE', piece: 'both', point: 'sideNeck', out: mm(12), down: mm(0) },
    because: {
      complaint: 'N2',
      cause: '2',
      pinned: { how: 'levelError', read: mm(12), share: 1 },
      watch: mm(0),
      round: 1,
    },
  }
  const dressed = (headGirth?: number): Draft =>
    correctedDraft(
      'sleeveless',
      body(headGirth === undefined ? {} : { headGirth }),
      { ...standardFor('sleeveless'), opening: 'sideZip' },
      [wider],
    ).draft
  const neckOf = (d: Draft, side: 'left' | 'right'): number =>
    ['back', 'front'].reduce(
      (sum, id) =>
        sum +
        sewnLength(
          d.sides![side].pieces.find((p) => p.id === id)!,
          'neck',
        ),
      0,
    )
  const [left, right] = [neckOf(dressed(), 'left'), neckOf(dressed(), 'right')]

  test('the neck is both its sides added, not twice one of them', () => {
    expect(left - right).toBeGreaterThan(10)
    expect(dressed().together?.neck).toBeCloseTo(left + right, 6)
  })
  // A head wants 20 mm of room (opening.ts). Twice her left would pass it, twice her right would not.
  test.each([
    [-1, false],
    [1, true],
  ])('a head %i mm larger than both together pass: a slit for both sides is %s', (by, slit) => {
    const d = dressed(left + right - 20 + by)
    const openings = [d, d.sides!.left, d.sides!.right].map((x) => x.openings.map((o) => o.kind))
    expect(openings).toEqual(Array(3).fill(slit ? ['sideZip', 'neckSlit'] : ['sideZip']))
    expect(d.findings.filter((f) => f.id === 'headOpening')).toEqual([])
  })
  test('sewn ease at the waist is that of both sides', () => {
    const d = drawn('blouse', UNLIKE)
    const [all, l, r] = [d, d.sides!.left, d.sides!.right].map(
      (x) => sewnEase(x).find(({ level }) => level === 'waist')!.sewn,
    )
    expect(all).toBeCloseTo((l! + r!) / 2, 9)
  })
})
