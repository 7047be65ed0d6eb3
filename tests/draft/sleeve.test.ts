/**
 * The set-in sleeve. Vectors of the triangle rule: worked from a pattern-making lesson site (sides
 * = armhole lines and a quarter inch each). Ease figures: sources beside the choices.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { capSide, capTriangle, solveCap } from '../../src/draft/blocks/sleeve-cap.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import type { FindingId } from '../../src/draft/finding.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { edge, namedPoint } from '../../src/draft/piece.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { endTangent, flatten, lengthTo, startTangent } from '../../src/geometry/path.ts'
import { project } from '../../src/geometry/project.ts'
import { notches } from '../../src/output/notch.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES } from '../bodies.ts'

describe('side lines and width fix the height of the cap', () => {
  test.each([
    [216, 226, 330, 158.3, 147.0],
    [216, 226, 350, undefined, 134.9],
    [216, 226, 310, undefined, 157.4],
    [206, 216, 330, undefined, 131.5],
  ])('sides %i and %i, width %i', (front, back, width, foot, height) => {
    const t = capTriangle(front, back, width)
    expect(t?.height).toBeCloseTo(height, 1)
    if (foot !== undefined) expect(t?.foot).toBeCloseTo(foot, 1)
  })
  test('sides that do not reach across give no cap', () => {
    expect(capTriangle(150, 160, 330)).toBeUndefined()
    expect(solveCap(150, 160, 330)).toBeUndefined()
  })
})

test('a solved cap is as long as asked on either side and as wide as the arm', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 190, max: 300, noNaN: true }),
      fc.double({ min: -8, max: 25, noNaN: true }),
      fc.double({ min: 0.68, max: 0.86, noNaN: true }),
      (front, longer, share) => {
        const back = front + longer
        const width = (front + back) * share
        const cap = solveCap(front, back, width)
        if (!cap) throw new Error('no cap')
        expect(pathLength(capSide('front', cap.front, cap.height))).toBeCloseTo(front, 3)
        expect(pathLength(capSide('back', cap.back, cap.height))).toBeCloseTo(back, 3)
        expect(cap.front + cap.back).toBeCloseTo(width, 3)
        // By chords and not by our own length: the sum of 0.01 mm chords is a shade shorter.
        const chain = flatten(capSide('front', cap.front, cap.height), 0.001)
        const walked = chain
          .slice(1)
          .reduce((sum, p, i) => sum + Math.hypot(p.x - chain[i]!.x, p.y - chain[i]!.y), 0)
        expect(walked).toBeCloseTo(front, 1)
      },
    ),
    { numRuns: 80 },
  )
})

describe('on the fitted body', () => {
  test.each(INVENTED_BODIES)(
    '%s body: cap = armhole + cap ease, level at top and ends',
    (_, numbers) => {
      const choices = { ...standardFor('sleeve'), capEase: mm(18) }
      const d = draft('sleeve', body({}, numbers), choices)
      const found = (id: FindingId): number => d.findings.find((x) => x.id === id)?.value ?? 0
      const [ease, wider] = [found('capGathered') || 18, found('sleeveWider')]
      const long = (id: 'back' | 'front'): number =>
        pathLength(edge(pieceOf(d, id), 'armhole').path)
      const sleeve = pieceOf(d, 'sleeve')
      const cap = edge(sleeve, 'cap').path
      expect(pathLength(cap) - long('back') - long('front')).toBeCloseTo(ease, 2)
      expect(startTangent(cap).y).toBeCloseTo(0, 9)
      expect(endTangent(cap).y).toBeCloseTo(0, 9)
      const [f, g] = [namedPoint(sleeve, 'F'), namedPoint(sleeve, 'G')]
      expect(f.x - g.x).toBeCloseTo(numbers.upperArmGirth + 50 + wider, 6)
      expect(f.y).toBeCloseTo(g.y, 6)
      expect(d.findings.filter((x) => x.severity === 'stop')).toEqual([])
    },
  )
  test('below the notch nothing is eased: cap and armhole measure the same from the underarm', () => {
    const d = draft('sleeve', body(), standardFor('sleeve'))
    const sleeve = pieceOf(d, 'sleeve')
    const k = namedPoint(sleeve, 'K')
    const chain = flatten(edge(sleeve, 'cap').path, 0.001)
    let [walked, best, lengthAt] = [0, Infinity, 0]
    for (const [i, p] of [...chain].reverse().entries()) {
      const before = chain[chain.length - i]
      if (before) walked += Math.hypot(p.x - before.x, p.y - before.y)
      const gap = Math.hypot(p.x - k.x, p.y - k.y)
      if (gap < best) [best, lengthAt] = [gap, walked]
    }
    const front = pieceOf(d, 'front')
    const [, lower] = edge(front, 'armhole').path
    expect(lengthAt).toBeCloseTo(pathLength([lower!]), 0)
  })
  test('an arm a little too wide: more ease to gather first, then a deeper underarm, both said', () => {
    const at = (upperArmGirth: number) => {
      const d = draft('sleeve', body({ upperArmGirth }), standardFor('sleeve'))
      const value = (id: FindingId): number => d.findings.find((f) => f.id === id)?.value ?? 0
      return {
        gathered: value('capGathered'),
        deeper: value('underarmDeeper'),
        depth: namedPoint(pieceOf(d, 'back'), 'E').y,
        cap: namedPoint(pieceOf(d, 'sleeve'), 'B').y,
      }
    }
    expect(at(300)).toMatchObject({ gathered: 0, deeper: 0 })
    const more = at(385)
    expect(more.gathered).toBeGreaterThan(20)
    expect(more.deeper).toBe(0)
    const most = at(430)
    expect(most.gathered).toBeGreaterThan(20)
    expect(most.deeper).toBeGreaterThan(0)
    expect(most.depth).toBeCloseTo(186 + 30 + most.deeper, 9)
    // Caps of 80 to 110 mm are drawn for shirts (from memory); the rule gives way below 75.
    for (const { cap } of [more, most]) expect(cap).toBeGreaterThanOrEqual(75)
  })
  test('a thin arm in a deep armhole: the sleeve is widened until the cap is no higher than 170', () => {
    const d = draft('sleeve', body({ upperArmGirth: 215 }), {
      ...standardFor('sleeve'),
      underarmDrop: mm(60),
    })
    const wider = d.findings.find((f) => f.id === 'sleeveWider')
    const sleeve = pieceOf(d, 'sleeve')
    expect(namedPoint(sleeve, 'B').y).toBeLessThanOrEqual(170)
    expect(namedPoint(sleeve, 'F').x - namedPoint(sleeve, 'G').x).toBeCloseTo(
      215 + 50 + (wider?.value ?? NaN),
      6,
    )
  })
  test('a sleeve shorter than its cap ends below the underarm, and that is said', () => {
    const d = draft('sleeve', body(), { ...standardFor('sleeve'), sleeveLength: mm(80) })
    const sleeve = pieceOf(d, 'sleeve')
    expect(namedPoint(sleeve, 'C').y - namedPoint(sleeve, 'B').y).toBeCloseTo(30, 9)
    expect(d.findings.map((f) => f.id)).toContain('sleeveLonger')
  })
  test('an arm too wide for its armhole stops the cutting and says so', () => {
    const d = draft('sleeve', body({ upperArmGirth: 480 }), {
      ...standardFor('sleeve'),
      armRoom: mm(120),
    })
    expect(d.findings.map((f) => f.id)).toContain('capUnsolved')
    expect(d.pieces.map((p) => p.id)).not.toContain('sleeve')
  })
})

// Turned forward by p, each place of the armhole meets a place p farther back on the cap: the top
// and both notches go together, and the cap keeps its shape (a tailoring text: front pitch raised,
// hind pitch lowered; not the top half alone).
test.each([9, -9, 0])(
  'a sleeve turned by %i mm: three marks move along the cap, nothing else',
  (p) => {
    const standard = standardFor('sleeve')
    const sleeve = (pitch: number) =>
      pieceOf(draft('sleeve', body(), { ...standard, sleevePitch: mm(pitch) }), 'sleeve')
    const [plain, turned] = [sleeve(0), sleeve(p)]
    const cap = edge(plain, 'cap').path
    expect(edge(turned, 'cap').path).toEqual(cap)
    const along = (piece: typeof plain, name: string) =>
      lengthTo(cap, project(cap, namedPoint(piece, name)).place)
    for (const name of ['K', 'L'])
      expect(along(plain, name) - along(turned, name)).toBeCloseTo(p, 2)
    if (p === 0) expect(turned.points['S']).toBeUndefined()
    else expect(along(plain, 'A') - along(turned, 'S')).toBeCloseTo(p, 2)
    const marks = notches(turned, () => 10).filter((n) => n.edge === 'cap')
    expect(marks).toHaveLength(4)
    const top = p === 0 ? namedPoint(turned, 'A') : namedPoint(turned, 'S')
    expect(marks.some(({ at }) => Math.hypot(at.x - top.x, at.y - top.y) < 0.01)).toBe(true)
  },
)
