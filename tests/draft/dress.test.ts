/**
 * The dress with a waist seam. Radii of circle skirts: a public circle-skirt lesson (C/2π, C/π,
 * 2C/π), values of a waist of 380, 420 and 460 mm worked out from it; a second lesson gives
 * r = 57.3·N/A for a neck N cut from A degrees (N 17 in, A 270°: 3.6 in).
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { circleRadius } from '../../src/draft/blocks/circle-skirt.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { sewnEase } from '../../src/draft/ease.ts'
import { edge, namedPoint, outline, sewnLength, type Piece } from '../../src/draft/piece.ts'
import { waistSeam } from '../../src/draft/waist-cut.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { checkJoined, endTangent, flatten, pathEnd, startTangent } from '../../src/geometry/path.ts'
import { distance } from '../../src/geometry/point.ts'
import { selfIntersections } from '../../src/geometry/self-intersection.ts'
import { mm } from '../../src/units/length.ts'
import type { Choices } from '../../src/draft/choices.ts'
import { body, INVENTED_BODIES, type InventedNumbers } from '../bodies.ts'

const SKIRTS = ['straight', 'flared', 'quarterCircle', 'halfCircle', 'fullCircle'] as const
const dress = (choices: Partial<Choices>, numbers?: InventedNumbers) =>
  draft('dress', body({}, numbers), { ...standardFor('dress'), ...choices })

describe('the radius of the waist of a circle skirt, mm', () => {
  test.each([
    [380, 60.5, 121.0, 241.9],
    [420, 66.8, 133.7, 267.4],
    [460, 73.2, 146.4, 292.8],
  ])('waist %i', (waist, full, half, quarter) => {
    expect(circleRadius(waist, 'fullCircle')).toBeCloseTo(full, 1)
    expect(circleRadius(waist, 'halfCircle')).toBeCloseTo(half, 1)
    expect(circleRadius(waist, 'quarterCircle')).toBeCloseTo(quarter, 1)
  })
  test('by the other lesson: 57.3 × 17 in / 270° = 3.6 in; ours for 360° is three quarters of it', () => {
    const inches = circleRadius(17 * 25.4, 'fullCircle') / 25.4
    expect(inches / 0.75).toBeCloseTo(3.6, 1)
  })
  test('a hem drawn about the same centre: fullness is (r + L)/r, as of any ring', () => {
    const d = dress({ skirt: 'fullCircle', lengthBelowWaist: mm(600) })
    const skirt = pieceOf(d, 'skirtFront')
    const r = distance(namedPoint(skirt, 'O'), namedPoint(skirt, 'C'))
    const ratio = pathLength(edge(skirt, 'hem').path) / pathLength(edge(skirt, 'waist').path)
    expect(ratio).toBeCloseTo((r + 600) / r, 9)
  })
  test.each([
    ['quarterCircle', 90],
    ['halfCircle', 180],
    ['fullCircle', 360],
  ] as const)('%s: the four half pieces together take %i degrees', (skirt, degrees) => {
    const d = dress({ skirt })
    const angle = (['skirtBack', 'skirtFront'] as const).reduce((sum, id) => {
      const [o, w] = ['O', 'W'].map((n) => namedPoint(pieceOf(d, id), n))
      return sum + 2 * Math.atan2(w!.x - o!.x, w!.y - o!.y)
    }, 0)
    expect((angle * 180) / Math.PI).toBeCloseTo(degrees, 6)
  })
})

/** By chords and not by our own length. */
const walked = (piece: Piece, name: 'waist' | 'side'): number => {
  const chain = flatten(edge(piece, name).path, 0.001)
  const whole = chain.slice(1).reduce((sum, p, i) => sum + distance(p, chain[i]!), 0)
  return piece.edgeDarts
    .filter((d) => d.edge === name)
    .reduce((sum, d) => sum - distance(d.upper, d.lower), whole)
}

describe.each(SKIRTS)('%s skirt', (skirt) => {
  test.each(INVENTED_BODIES)('%s body: the waist seam walks true, outlines are sound', (_, n) => {
    for (const opening of ['backZip', 'buttonedFront', 'sideZip'] as const) {
      const d = dress({ skirt, opening, waistFinish: 'facing' }, n)
      expect(d.findings.filter((f) => f.severity === 'stop')).toEqual([])
      for (const [above, below] of [
        ['back', 'skirtBack'],
        ['front', 'skirtFront'],
      ] as const)
        expect(
          Math.abs(walked(pieceOf(d, above), 'waist') - walked(pieceOf(d, below), 'waist')),
        ).toBeLessThan(0.5)
      for (const piece of d.pieces) {
        const path = outline(piece)
        checkJoined([...path, path[0]!], piece.id)
        expect(selfIntersections(path), piece.id).toEqual([])
      }
    }
  })
  test('the bias give is taken off the skirt and counted in the proof', () => {
    const d = dress({ skirt, biasGive: mm(6) })
    const gap =
      sewnLength(pieceOf(d, 'front'), 'waist') - sewnLength(pieceOf(d, 'skirtFront'), 'waist')
    expect(gap).toBeCloseTo(skirt.endsWith('Circle') ? 6 : 0, 3)
    expect(d.findings.map((f) => f.id)).not.toContain('waistPair')
  })
})

describe('straight and flared', () => {
  test('darts of bodice and skirt meet at the seam, over bodies', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...INVENTED_BODIES),
        fc.constantFrom('straight' as const, 'flared' as const),
        fc.double({ min: 0.66, max: 1.02, noNaN: true }),
        ([, numbers], skirt, share) => {
          const waistGirth = Math.round(numbers.bustGirth * share)
          const d = draft('dress', body({ waistGirth }, numbers), {
            ...standardFor('dress'),
            skirt,
          })
          for (const [above, below] of [
            ['back', 'skirtBack'],
            ['front', 'skirtFront'],
          ] as const) {
            const [bodice, own] = [pieceOf(d, above), pieceOf(d, below)].map(waistSeam)
            expect(Math.abs(bodice!.sewn - own!.sewn)).toBeLessThan(0.5)
            for (const [i, at] of own!.dartsAt.entries())
              if (bodice!.dartsAt[i] !== undefined)
                expect(Math.abs(at - bodice!.dartsAt[i]!)).toBeLessThan(0.5)
          }
          expect(
            Math.abs(
              walked(pieceOf(d, 'skirtBack'), 'side') - walked(pieceOf(d, 'skirtFront'), 'side'),
            ),
          ).toBeLessThan(0.5)
          expect(d.findings.filter((f) => f.severity === 'stop')).toEqual([])
        },
      ),
      { numRuns: 60 },
    )
  })
  test('sewn ease at bust, waist and hip is what was chosen', () => {
    const choices = standardFor('dress')
    for (const e of sewnEase(dress({ skirt: 'straight' })))
      if (e.level !== 'highHip')
        expect(e.ease, e.level).toBeCloseTo(
          4 * { bust: choices.easeBust, waist: choices.easeWaist, hip: choices.easeHip }[e.level],
          6,
        )
  })
  test('a flared hem is square to fold and side, and the side as long as the centre', () => {
    const skirt = pieceOf(dress({ skirt: 'flared', skirtFlare: mm(90) }), 'skirtFront')
    const [side, hem] = [edge(skirt, 'side').path, edge(skirt, 'hem').path]
    const [a, b] = [endTangent(side), startTangent(hem)]
    expect(a.x * b.x + a.y * b.y).toBeCloseTo(0, 9)
    expect(endTangent(hem).y).toBeCloseTo(0, 9)
    // Hip to hem 600 − 200 = 400 on the centre, and along the flare.
    expect(distance(namedPoint(skirt, 'X'), pathEnd(side))).toBeCloseTo(400, 6)
  })
  test('a straight skirt to the knee is narrow to walk in; vents answer it', () => {
    expect(dress({ skirt: 'straight' }).findings.map((f) => f.id)).toContain('hemNarrow')
    const vented = dress({ skirt: 'straight', ventLength: mm(200) })
    expect(vented.findings.map((f) => f.id)).not.toContain('hemNarrow')
    const vent = pieceOf(vented, 'skirtBack').inner.find((i) => i.name === 'vent')
    expect(pathLength(vent!.path)).toBeCloseTo(200, 3)
  })
})

test('the blouse carried on to dress length takes vents on both sides', () => {
  const d = draft('blouse', body(), {
    ...standardFor('blouse'),
    lengthBelowWaist: mm(620),
    ventLength: mm(300),
  })
  for (const id of ['back', 'front'] as const) {
    const vent = pieceOf(d, id).inner.find((i) => i.name === 'vent')
    expect(pathLength(vent!.path)).toBeCloseTo(300, 3)
    expect(pathEnd(vent!.path)).toEqual(pathEnd(edge(pieceOf(d, id), 'side').path))
  }
  expect(d.steps.filter((s) => s.verb === 'open' && s.words.startsWith('vent'))).toHaveLength(2)
  expect(d.findings.filter((f) => f.severity === 'stop')).toEqual([])
})

test('a facing of the waist is as long as the waist sewn, its darts folded', () => {
  const d = dress({ skirt: 'straight', waistFinish: 'facing' })
  for (const [skirt, facing] of [
    ['skirtBack', 'backWaistFacing'],
    ['skirtFront', 'frontWaistFacing'],
  ] as const)
    expect(pathLength(edge(pieceOf(d, facing), 'waist').path)).toBeCloseTo(
      sewnLength(pieceOf(d, skirt), 'waist'),
      6,
    )
})
