/**
 * The draped blouse with more or less sweep, two darts and a keyhole; moved bust darts on the
 * sleeved blouse. Checked from geometry that is not ours: an arc about the side neck grows by
 * radius times the angle its end is turned, and what is folded or cut is measured by chords.
 */
import { describe, expect, test } from 'vitest'
import type { Choices } from '../../src/draft/choices.ts'
import { pieceOf, type Draft, type GarmentId } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { edge, namedPoint, outline, sewnLength } from '../../src/draft/piece.ts'
import { toCut } from '../../src/draft/to-cut.ts'
import { SEAM_EQUAL } from '../../src/draft/proof.ts'
import { sewnWaist } from '../../src/draft/opening.ts'
import { sentence } from '../../src/draft/sentence.words.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { flatten } from '../../src/geometry/path.ts'
import { distance } from '../../src/geometry/point.ts'
import { selfIntersections } from '../../src/geometry/self-intersection.ts'
import { sewingPlan } from '../../src/output/sewing-plan.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES, type InventedNumbers } from '../bodies.ts'

const drawn = (garment: GarmentId, choices: Partial<Choices>, numbers?: InventedNumbers): Draft =>
  draft(garment, body({}, numbers), { ...standardFor(garment), ...choices })
const sound = (d: Draft): void => {
  for (const p of d.pieces) expect(selfIntersections(outline(p)), p.id).toEqual([])
  expect(d.findings.filter((f) => f.severity === 'stop')).toEqual([])
}

describe('sweep of the sleeve edge', () => {
  const plain = { overarmRule: 'found', cornerRadius: mm(0) } as const
  test('the back edge grows by the radius times the angle the overarm is turned', () => {
    const [a, b] = [drawn('blouse', plain), drawn('blouse', { ...plain, sweepBack: mm(30) })]
    const at = (d: Draft) => {
      const p = pieceOf(d, 'back')
      const [s, t] = [namedPoint(p, 'S'), namedPoint(p, 'T')]
      return {
        long: distance(s, t),
        angle: Math.atan2(t.y - s.y, t.x - s.x),
        end: t.y,
        edge: pathLength(edge(p, 'sleeveEdge').path),
      }
    }
    const [was, is] = [at(a), at(b)]
    expect(was.end - is.end).toBeCloseTo(30, 6)
    expect(is.long).toBeCloseTo(was.long, 6)
    expect(is.edge - was.edge).toBeCloseTo(was.long * (was.angle - is.angle), 6)
    expect(is.edge - was.edge).toBeGreaterThan(25)
  })
  test.each(INVENTED_BODIES)('%s body: back and front apart, seams walk at both ends', (_, n) => {
    for (const [sweepBack, sweepFront] of [
      [40, -60],
      [-60, 40],
      [40, 40],
      [-60, -60],
    ] as const) {
      const d = drawn('blouse', { sweepBack: mm(sweepBack), sweepFront: mm(sweepFront) }, n)
      for (const p of d.pieces) expect(selfIntersections(outline(p)), p.id).toEqual([])
      for (const seam of ['overarm', 'side'] as const)
        expect(
          Math.abs(sewnLength(pieceOf(d, 'back'), seam) - sewnLength(pieceOf(d, 'front'), seam)),
        ).toBeLessThan(SEAM_EQUAL)
      expect(d.findings.map((f) => f.id)).not.toContain('neckJoin')
    }
  })
})

describe('two waist darts on each half', () => {
  test.each(['blouse', 'block', 'sleeveless'] as const)(
    '%s: two narrower ones, the same waist',
    (g) => {
      const [one, two] = [drawn(g, {}), drawn(g, { waistDarts: 'two' })]
      for (const half of ['back', 'front'] as const) {
        const [a, b] = [pieceOf(one, half), pieceOf(two, half)]
        expect(b.darts).toHaveLength(2)
        for (const d of b.darts) expect(distance(d.inner, d.outer)).toBeGreaterThanOrEqual(5)
        expect(sewnWaist(b)).toBeCloseTo(sewnWaist(a), 6)
      }
      sound(two)
    },
  )
  test('a surplus that two darts would split under 6 mm stays one', () => {
    const d = draft('blouse', body({ waistGirth: 890 }), {
      ...standardFor('blouse'),
      waistDarts: 'two',
    })
    expect(pieceOf(d, 'back').darts.length).toBeLessThan(2)
  })
})

describe('keyhole', () => {
  const d = drawn('blouse', { opening: 'keyhole', keyholeLength: mm(90), keyholeWidth: mm(30) })
  const front = pieceOf(d, 'front')
  const line = front.inner.find((i) => i.name === 'keyhole')!
  test('it hangs from the neck on the centre, as long and half as wide as chosen', () => {
    const spots = flatten(line.path, 0.01)
    const f = namedPoint(front, 'F')
    expect(spots[0]).toEqual(f)
    expect(spots.at(-1)!.y - f.y).toBeCloseTo(90, 9)
    expect(Math.max(...spots.map((p) => p.x))).toBeCloseTo(15, 6)
    expect(Math.min(...spots.map((p) => p.x))).toBeGreaterThanOrEqual(0)
  })
  test('it has a facing wider and longer than itself, a step for ruler and pencil, and is sewn before it is cut', () => {
    const facing = pieceOf(d, 'keyholeFacing')
    const [xs, ys] = [
      flatten(outline(facing), 1).map((p) => p.x),
      flatten(outline(facing), 1).map((p) => p.y),
    ]
    const spans = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)]
    expect(Math.min(...spans)).toBeGreaterThan(30)
    expect(Math.max(...spans)).toBeGreaterThan(90)
    const step = d.steps.find((s) => s.verb === 'keyhole')!
    expect(sentence(step, { unit: 'cm', inchStep: 8 })).toContain('9.0 cm below F')
    const plan = sewingPlan(d, cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' }), { kind: 'rayon' })
    const at = plan.findIndex((s) => s.id === 'opening.keyhole')
    expect(at).toBeGreaterThanOrEqual(0)
    expect(plan.findIndex((s) => s.id === 'shut.keyhole')).toBeGreaterThan(at)
  })
  test('it lets the neck pass by both its edges', () => {
    const small = { neckHalfWidth: mm(72), frontNeckDrop: mm(80) }
    const closed = drawn('blouse', { ...small, opening: 'auto' })
    const opened = drawn('blouse', { ...small, opening: 'keyhole', keyholeLength: mm(120) })
    expect(closed.openings.some((o) => o.kind === 'neckSlit')).toBe(true)
    expect(opened.openings.some((o) => o.kind === 'neckSlit')).toBe(false)
    sound(opened)
  })
})

describe('a moved bust dart under a set-in sleeve', () => {
  test.each(['shoulder', 'neck', 'armhole', 'french', 'waist', 'centreFront'] as const)(
    'in the %s: the cap is as long as the armhole sewn, and its ease',
    (dartAt) => {
      const d = drawn('sleeve', { dartAt })
      sound(d)
      const round = (['back', 'front'] as const).reduce(
        (sum, id) => sum + sewnLength(pieceOf(d, id), 'armhole'),
        0,
      )
      const eased = d.findings.find((f) => f.id === 'capGathered')?.value ?? d.choices.capEase
      expect(pathLength(edge(pieceOf(d, 'sleeve'), 'cap').path) - round).toBeCloseTo(eased, 1)
    },
  )

  test.each([
    ['armhole', 'gathers'],
    ['armhole', 'seam'],
    ['shoulder', 'seam'],
  ] as const)('in the %s as %s', (dartAt, dartAs) => {
    const d = drawn('sleeve', { dartAt, dartAs })
    sound(d)
    sound({ ...toCut(d), findings: [] })
  })
})
