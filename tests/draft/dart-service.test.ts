/**
 * The bust dart moved about. Source of the angles: a British metric block (Aldrich, as quoted)
 * draws the dart in the shoulder, 64 to 88 mm wide for sizes 8 to 16 on a leg of 245 mm; a public
 * article works out 20 mm over 130 mm as 8.8°. The rest are properties.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Choices } from '../../src/draft/choices.ts'
import { pieceOf, type Draft } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { anglesRound, subtended } from '../../src/draft/intake.ts'
import { OPTIONS, type OptionWord } from '../../src/draft/options.ts'
import {
  edge,
  namedPoint,
  outline,
  sewnLength,
  type EdgeDart,
  type Piece,
} from '../../src/draft/piece.ts'
import { toCut } from '../../src/draft/to-cut.ts'
import { area } from '../../src/geometry/area.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { checkJoined } from '../../src/geometry/path.ts'
import { distance, point } from '../../src/geometry/point.ts'
import { project } from '../../src/geometry/project.ts'
import { selfIntersections } from '../../src/geometry/self-intersection.ts'
import { mm } from '../../src/units/length.ts'
import { body, bodyOf, INVENTED_BODIES, MIDDLE, type InventedNumbers } from '../bodies.ts'

type Place = OptionWord<'dartAt'>
const PLACES = Object.keys(OPTIONS.dartAt.words) as Place[]
const SECOND = Object.keys(OPTIONS.dartSecond.words) as OptionWord<'dartSecond'>[]
const GARMENTS = ['block', 'sleeveless', 'dress'] as const

const made = (
  garment: (typeof GARMENTS)[number],
  choices: Partial<Choices>,
  numbers: InventedNumbers = MIDDLE,
): Draft => draft(garment, body({}, numbers), { ...standardFor(garment), ...choices })
const frontOf = (d: Draft): Piece => pieceOf(d, 'front')
const bust = (front: Piece): EdgeDart => {
  const found = front.edgeDarts.find((d) => d.name === 'bustDart')
  if (!found) throw new Error('no bust dart')
  return found
}
const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0)

test('20 mm over 130 mm subtend 8.8°', () => {
  const half = Math.sqrt(130 ** 2 - 10 ** 2)
  const angle = subtended(point(0, 0), point(half, 10), point(half, -10))
  expect((angle * 180) / Math.PI).toBeCloseTo(8.8, 1)
})

describe('moved to the shoulder, the dart is that of the published block', () => {
  test.each([
    [8, 840, 64],
    [10, 880, 70],
    [12, 920, 76],
    [14, 960, 82],
    [16, 1000, 88],
  ])('size %i', (_, bustGirth, mouth) => {
    const person = bodyOf({
      bustGirth,
      waistGirth: bustGirth - 160,
      hipGirth: bustGirth + 80,
      waistToHip: 200,
      napeToWaist: 405,
      waistToBustLevel: 165,
      apexSpacing: 176,
    })
    const d = draft('block', person, {
      ...standardFor('block'),
      construction: 'neckFifths',
      dartAt: 'shoulder',
    })
    const [dart, q] = [bust(frontOf(d)), namedPoint(frontOf(d), 'Q')]
    expect(dart.edge).toBe('shoulder')
    // On any leg the mouth is in proportion to the leg: at 245 mm as in the table.
    const at245 = (distance(dart.upper, dart.lower) * 245) / distance(q, dart.upper)
    expect(at245).toBeCloseTo(mouth, 6)
  })
})

describe.each(GARMENTS)('%s', (garment) => {
  test('the angles round the bust tip keep their sum, wherever the dart goes', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...INVENTED_BODIES),
        fc.constantFrom(...PLACES),
        fc.constantFrom(...SECOND),
        fc.integer({ min: 5, max: 60 }),
        fc.integer({ min: 13, max: 64 }),
        ([, numbers], dartAt, dartSecond, part, tip) => {
          const plain = frontOf(made(garment, { frontDartTip: mm(tip) }, numbers))
          const front = frontOf(
            made(
              garment,
              { dartAt, dartSecond, dartSecondMouth: mm(part), frontDartTip: mm(tip) },
              numbers,
            ),
          )
          const q = front.points['Q']
          if (!q) return
          expect(Math.abs(sum(anglesRound(front, q)) - sum(anglesRound(plain, q)))).toBeLessThan(
            1e-6,
          )
          for (const d of front.edgeDarts.filter((x) => x.name.startsWith('bustDart'))) {
            expect(Math.abs(distance(d.tip, d.upper) - distance(d.tip, d.lower))).toBeLessThan(1e-6)
            // Off the bust tip by the rule, but no more than two thirds of a short way out.
            const middle = point((d.upper.x + d.lower.x) / 2, (d.upper.y + d.lower.y) / 2)
            const least = Math.min(tip, (2 / 3) * distance(q, middle))
            expect(distance(d.tip, q)).toBeGreaterThan(least - 1e-6)
          }
        },
      ),
      { numRuns: 150 },
    )
  })
  test.each(PLACES)('%s: sound, and every seam as long as with the dart in the side', (dartAt) => {
    for (const [, numbers] of INVENTED_BODIES)
      for (const dartAs of ['dart', 'gathers', 'seam'] as const) {
        const d = made(garment, { dartAt, dartAs, opening: 'sideZip' }, numbers)
        expect(d.findings.filter((f) => f.severity === 'stop')).toEqual([])
        const [plain, front] = [frontOf(made(garment, { opening: 'sideZip' }, numbers)), frontOf(d)]
        for (const name of ['neck', 'shoulder', 'armhole', 'side'] as const)
          expect(Math.abs(sewnLength(front, name) - sewnLength(plain, name)), name).toBeLessThan(
            0.5,
          )
        for (const piece of toCut(d).pieces) {
          const path = outline(piece)
          checkJoined([...path, path[0]!], piece.id)
          expect(selfIntersections(path), piece.id).toEqual([])
          expect(area(path)).toBeGreaterThan(0)
        }
      }
  })
})

describe('split in two', () => {
  test('12 mm of the side dart at the neck: the rest stays in the side', () => {
    const plain = frontOf(made('block', {}))
    const front = frontOf(made('block', { dartSecond: 'neck', dartSecondMouth: mm(12) }))
    const second = front.edgeDarts.find((d) => d.name === 'bustDart2')
    expect(second?.edge).toBe('neck')
    const q = namedPoint(front, 'Q')
    // 12 mm on the leg of the side dart.
    const leg = distance(q, bust(plain).upper)
    expect(subtended(q, second!.upper, second!.lower)).toBeCloseTo(2 * Math.asin(12 / (2 * leg)), 9)
    expect(bust(front).edge).toBe('side')
  })
})

describe('gathers', () => {
  test('draw the shoulder up to the length of the back, and no dart is left', () => {
    const d = made('sleeveless', { dartAt: 'shoulder', dartAs: 'gathers' })
    const front = frontOf(d)
    expect(front.edgeDarts.filter((x) => x.name.startsWith('bustDart'))).toEqual([])
    const [g] = front.gathers ?? []
    expect(g?.edge).toBe('shoulder')
    expect(pathLength(edge(front, 'shoulder').path) - g!.takes).toBeCloseTo(
      sewnLength(pieceOf(d, 'back'), 'shoulder'),
      6,
    )
    expect(front.inner.find((i) => i.name === 'gathers')?.words).toMatch(/^gather to \d+ mm$/)
  })
})

describe('a style seam', () => {
  test.each(['shoulder', 'armhole'] as const)(
    'from the %s: both edges equally long, both pieces whole',
    (dartAt) => {
      for (const garment of GARMENTS)
        for (const [, numbers] of INVENTED_BODIES) {
          const whole = made(garment, { dartAt, dartAs: 'seam' }, numbers)
          const d = toCut(whole)
          const [centre, side] = [pieceOf(d, 'front'), pieceOf(d, 'sideFront')]
          const long = (p: Piece): number => pathLength(edge(p, 'styleSeam').path)
          expect(Math.abs(long(centre) - long(side))).toBeLessThan(0.5)
          // What the two halves of the dart took is no cloth; everything else is there.
          const cloth = area(outline(centre)) + area(outline(side))
          expect(cloth).toBeLessThan(area(outline(frontOf(whole))))
          expect(centre.edgeDarts.concat(side.edgeDarts).map((x) => x.name)).not.toContain(
            'bustDart',
          )
          // The bust tip lies on the seam of both, but for the rounding.
          const q = namedPoint(frontOf(whole), 'Q')
          for (const p of [centre, side])
            expect(project(edge(p, 'styleSeam').path, q).distance).toBeLessThan(12)
        }
    },
  )
  test('from elsewhere it stays a dart, and that is said', () => {
    const d = made('block', { dartAt: 'neck', dartAs: 'seam' })
    expect(d.findings.map((f) => f.id)).toContain('seamNotHere')
    expect(toCut(d).pieces.map((p) => p.id)).not.toContain('sideFront')
  })
})

test('no room for a dart at a centre front that is buttoned: it stays, and that is said', () => {
  const d = made('block', { dartAt: 'centreFront', opening: 'buttonedFront' })
  expect(d.findings.map((f) => f.id)).toContain('dartStays')
  expect(bust(frontOf(d)).edge).toBe('side')
})
