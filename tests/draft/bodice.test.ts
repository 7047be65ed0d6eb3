/**
 * The bodice block against published figures. Sources: a Japanese proportional block (reference
 * size 83/64/38; coefficients from memory, the neck's seen), worked out for four sizes; a metric
 * British size table 8 to 16 (Aldrich, Metric Pattern Cutting for Women's Wear, as quoted) with
 * its block rules. Everything the tape has not given follows the construction.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Choices } from '../../src/draft/choices.ts'
import { pieceOf, type Draft } from '../../src/draft/draft.ts'
import { sewnEase } from '../../src/draft/ease.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { edge, isHalf, namedPoint, outline, sewnLength } from '../../src/draft/piece.ts'
import { area } from '../../src/geometry/area.ts'
import { checkJoined, endTangent, startTangent } from '../../src/geometry/path.ts'
import { distance } from '../../src/geometry/point.ts'
import { selfIntersections } from '../../src/geometry/self-intersection.ts'
import { mm } from '../../src/units/length.ts'
import { body, bodyOf, INVENTED_BODIES } from '../bodies.ts'

/** Only bust, waist, hip and lengths: neck, shoulder, widths and depths are left to the rule. */
function ruled(
  construction: Choices['construction'],
  bust: number,
  waist: number,
  back: number,
): Draft {
  const person = bodyOf({
    bustGirth: bust,
    waistGirth: waist,
    hipGirth: bust + 70,
    waistToHip: 200,
    napeToWaist: back,
    waistToBustLevel: 165,
    apexSpacing: 176,
  })
  return draft('block', person, { ...standardFor('block'), construction })
}
const at = (d: Draft, half: 'back' | 'front', name: string) => namedPoint(pieceOf(d, half), name)
/** Full angle of the bust dart were its tip at the bust tip, degrees. */
function dartAngle(d: Draft): number {
  const [dart] = pieceOf(d, 'front').edgeDarts
  if (!dart) throw new Error('no bust dart')
  const leg = at(d, 'front', 'U').x - at(d, 'front', 'apex').x
  return (2 * Math.atan(distance(dart.upper, dart.lower) / (2 * leg)) * 180) / Math.PI
}

describe('proportional, by shares of the bust, cm of the worked table', () => {
  test.each([
    // bust, waist, back, underarm, half back, half chest, neck front w/depth, neck back w/rise, dart
    [83, 64, 38, 20.62, 17.77, 16.57, 6.86, 7.36, 7.06, 2.35, 18.25],
    [88, 72, 40, 21.03, 18.4, 17.2, 7.07, 7.57, 7.27, 2.42, 19.5],
    [96, 80, 41, 21.7, 19.4, 18.2, 7.4, 7.9, 7.6, 2.53, 21.5],
    [104, 88, 42, 22.37, 20.4, 19.2, 7.73, 8.23, 7.93, 2.64, 23.5],
  ])('B%i W%i L%i', (b, w, l, underarm, back, chest, nf, depth, nb, rise, angle) => {
    const d = ruled('bustShares', b * 10, w * 10, l * 10)
    const cm = (mm: number): number => mm / 10
    expect(cm(at(d, 'back', 'E').y)).toBeCloseTo(underarm, 1)
    expect(cm(at(d, 'back', 'Z').x)).toBeCloseTo(back, 1)
    expect(cm(at(d, 'front', 'Z').x)).toBeCloseTo(chest, 1)
    expect(cm(at(d, 'front', 'N').x)).toBeCloseTo(nf, 1)
    expect(cm(at(d, 'front', 'F').y - at(d, 'front', 'S').y)).toBeCloseTo(depth, 1)
    expect(cm(at(d, 'back', 'N').x)).toBeCloseTo(nb, 1)
    expect(cm(-at(d, 'back', 'S').y)).toBeCloseTo(rise, 1)
    expect(dartAngle(d)).toBeCloseTo(angle, 1)
  })
})

describe('metric, by fifths of the neck, sizes 8 to 16', () => {
  // Neck/5 − 2 at the back, − 7 in front; half back width + 5; half chest + 5; a dart of 64 to
  // 88 mm on the shoulder, on a leg of 245: 2·asin(70/490) = 16.43° at size 10.
  test.each([
    [8, 840, 360, 334, 312, 120, 64],
    [10, 880, 370, 344, 324, 122.5, 70],
    [12, 920, 380, 354, 336, 125, 76],
    [14, 960, 390, 364, 348, 127.5, 82],
    [16, 1000, 400, 374, 360, 130, 88],
  ])('size %i', (_, bust, neck, back, chest, shoulder, dart) => {
    const d = ruled('neckFifths', bust, bust - 160, 405)
    expect(at(d, 'back', 'N').x).toBeCloseTo(neck / 5 - 2, 6)
    expect(at(d, 'front', 'N').x).toBeCloseTo(neck / 5 - 7, 6)
    expect(at(d, 'front', 'F').y - at(d, 'front', 'S').y).toBeCloseTo(neck / 5 - 2, 6)
    expect(at(d, 'back', 'Z').x).toBeCloseTo(back / 2 + 5, 6)
    expect(at(d, 'front', 'Z').x).toBeCloseTo(chest / 2 + 5, 6)
    expect(distance(at(d, 'front', 'S'), at(d, 'front', 'P'))).toBeCloseTo(shoulder, 6)
    expect(dartAngle(d)).toBeCloseTo((2 * Math.asin(dart / 490) * 180) / Math.PI, 6)
  })
  test('size 10: armhole depth 21.0 and 0.5 cm', () => {
    expect(at(ruled('neckFifths', 880, 720, 405), 'back', 'E').y).toBeCloseTo(215, 6)
  })
  test('past bust 104 the steps are for 6 cm: bust 110 has a neck of 42 cm and a dart of 10', () => {
    // 104: 41 and 9.4. One step of 6 cm: 42 and 10.0.
    const d = ruled('neckFifths', 1100, 940, 420)
    expect(at(d, 'back', 'N').x).toBeCloseTo(420 / 5 - 2, 6)
    expect(dartAngle(d)).toBeCloseTo((2 * Math.asin(100 / 490) * 180) / Math.PI, 6)
  })
})

describe('from her own measurements', () => {
  const d = draft('block', body(), standardFor('block'))
  test('what is taped is where it was taped', () => {
    // 360/2 + 5 and 330/2 + 5; front neck 346 up from the waist; armpit 186 + 15.
    expect(at(d, 'back', 'Z').x).toBe(185)
    expect(at(d, 'front', 'Z').x).toBe(170)
    expect(at(d, 'front', 'C').y - at(d, 'front', 'F').y).toBeCloseTo(346, 9)
    expect(at(d, 'back', 'E').y).toBe(201)
    // Shoulder 125 long, 42 down.
    expect(distance(at(d, 'front', 'S'), at(d, 'front', 'P'))).toBeCloseTo(125, 9)
    expect(at(d, 'front', 'P').y - at(d, 'front', 'S').y).toBeCloseTo(42, 9)
  })
  test('side neck to waist: the front is longer by the taped balance', () => {
    // 426 − 424 = 2, whatever the dart takes.
    const long = (half: 'back' | 'front'): number => at(d, half, 'C').y - at(d, half, 'S').y
    expect(long('front') - long('back')).toBeCloseTo(2, 9)
    const [dart] = pieceOf(d, 'front').edgeDarts
    expect(distance(dart!.upper, dart!.lower)).toBeCloseTo(32, 9)
  })
  test('the back shoulder is longer by its dart and equal once it is folded', () => {
    const [back, front] = [pieceOf(d, 'back'), pieceOf(d, 'front')]
    const dart = back.edgeDarts.find((x) => x.name === 'shoulderDart')
    expect(distance(dart!.upper, dart!.lower)).toBeCloseTo(12, 9)
    expect(distance(dart!.tip, dart!.upper)).toBeCloseTo(70, 9)
    expect(sewnLength(back, 'shoulder')).toBeCloseTo(sewnLength(front, 'shoulder'), 9)
  })
})

// A textbook of 1902: for regular shoulders the side length is half the back length; 1 in more is
// a high shoulder, 1 in less a low one. A plausibility rule, held loosely.
test('the side of an invented body of even build is about half its back length', () => {
  const d = draft('block', body(), standardFor('block'))
  const side = at(d, 'back', 'C').y - at(d, 'back', 'E').y
  expect(Math.abs(side - 400 / 2)).toBeLessThan(25.4)
})

describe.each(['block', 'sleeveless', 'sleeve'] as const)(
  '%s, sound over bodies and constructions',
  (garment) => {
    test('outlines close and never cross, seams are equal, armhole and neck run on', () => {
      fc.assert(
        fc.property(
          fc.constantFrom(...INVENTED_BODIES),
          fc.constantFrom('measured' as const, 'neckFifths' as const, 'bustShares' as const),
          fc.integer({ min: -15, max: 40 }),
          fc.double({ min: 0.7, max: 1.05, noNaN: true }),
          ([, numbers], construction, balance, waist) => {
            const person = body(
              {
                waistGirth: Math.round(numbers.bustGirth * waist),
                sideNeckOverApexToWaist: numbers.sideNeckOverBladeToWaist + balance,
              },
              numbers,
            )
            const d = draft(garment, person, { ...standardFor(garment), construction })
            for (const piece of d.pieces) {
              const path = outline(piece)
              checkJoined([...path, path[0]!], piece.id)
              expect(area(path)).toBeGreaterThan(0)
              expect(selfIntersections(path), piece.id).toEqual([])
            }
            const [back, front] = [pieceOf(d, 'back'), pieceOf(d, 'front')]
            for (const seam of ['shoulder', 'side'] as const)
              expect(Math.abs(sewnLength(back, seam) - sewnLength(front, seam))).toBeLessThan(0.5)
            const broken = [
              'neckJoin',
              'armholeJoin',
              'shoulderPair',
              'sidePair',
              'dartLegs',
              'notSquare',
              'sideJoin',
              'capPair',
            ]
            expect(d.findings.filter((f) => broken.includes(f.id))).toEqual([])
          },
        ),
        { numRuns: 60 },
      )
    })
    test('the armhole is level at the underarm and square to the shoulder', () => {
      for (const [, numbers] of INVENTED_BODIES)
        for (const piece of draft(garment, body({}, numbers), standardFor(garment)).pieces.filter(
          (p) => isHalf(p.id),
        )) {
          const armhole = edge(piece, 'armhole').path
          expect(Math.abs(endTangent(armhole).y)).toBeLessThan(1e-9)
          const [a, b] = [startTangent(armhole), endTangent(edge(piece, 'shoulder').path)]
          expect(Math.abs(a.x * b.x + a.y * b.y)).toBeLessThan(1e-9)
        }
    })
    test('sewn ease is what was chosen', () => {
      const choices = standardFor(garment)
      for (const e of sewnEase(draft(garment, body(), choices)))
        if (e.level !== 'highHip')
          expect(e.ease).toBeCloseTo(
            4 * { bust: choices.easeBust, waist: choices.easeWaist, hip: choices.easeHip }[e.level],
            6,
          )
    })
  },
)

test('length taken out between bust and waist moves the waist and leaves the neck where it is', () => {
  // A level tuck above the waist shortens what lies under it: textbook practice.
  const choices = standardFor('block')
  const [whole, short] = [0, -20].map((by) =>
    draft('block', body(), { ...choices, lengthAdded: mm(by) }),
  )
  if (!whole || !short) throw new Error('no draft')
  for (const name of ['F', 'S', 'P', 'U', 'D'])
    expect(distance(at(whole, 'front', name), at(short, 'front', name)), name).toBeLessThan(1e-9)
  expect(at(short, 'front', 'C').y - at(whole, 'front', 'C').y).toBeCloseTo(-20, 9)
})
