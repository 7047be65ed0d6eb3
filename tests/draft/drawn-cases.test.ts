/**
 * Ten of 50,000 drafts that were once neither drawn nor refused by name: bodies drawn from the
 * pooled tape model with choices drawn from their whole ranges (`bench:draft`). `was` is what was
 * said of each.
 */
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { judge } from '../../scripts/bench/bodies/judge.ts'
import { taped, type Numbers } from '../../scripts/bench/bodies/numbers.ts'
import { pieceOf, type GarmentId } from '../../src/draft/draft.ts'
import type { Choices } from '../../src/draft/choices.ts'
import { GARMENTS, standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { edge, namedPoint, sewnLength } from '../../src/draft/piece.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { lengthTo } from '../../src/geometry/path.ts'
import { project } from '../../src/geometry/project.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

interface Case {
  readonly was: string
  readonly garment: GarmentId
  readonly numbers: Numbers
  readonly choices: Partial<Choices>
}
const CASES = JSON.parse(
  readFileSync(new URL('cases/drawn.json', import.meta.url), 'utf8'),
) as readonly Case[]

const drawn = ({ garment, numbers, choices }: Case) => {
  const { needs, uses } = GARMENTS[garment]
  return draft(garment, taped(numbers, needs, uses), { ...standardFor(garment), ...choices })
}

test.each(CASES.map((c, i) => [i, `${c.garment}, once: ${c.was}`, c] as const))(
  '%i: a %s',
  (_, __, c) => {
    expect(judge(drawn(c), c.numbers).unsound).toEqual([])
  },
)

describe('what gives way is said', () => {
  const ids = (which: (c: Case) => boolean): readonly string[][] =>
    CASES.filter(which).map((c) => drawn(c).findings.map(({ id }) => id))
  test('an overarm that would end under the underarm', () => {
    for (const found of ids((c) => c.garment === 'blouse')) expect(found).toContain('overarmRaised')
  })
  test('a sleeve hem through which no hand goes', () => {
    for (const found of ids((c) => c.was.includes('hem'))) expect(found).toContain('sleeveHemWider')
  })
  test('a bust line below the waist', () => {
    for (const found of ids((c) => c.garment === 'dress')) expect(found).toContain('bustDartHigher')
  })
})

test('a sleeve hem keeps 210 mm for the hand: 95 in 100 of 1,986 hands measure 202 or less (ANSUR II)', () => {
  const hem = (taken: number): number => {
    const choices = { ...standardFor('sleeve'), sleeveHem: mm(taken) }
    return pathLength(edge(pieceOf(draft('sleeve', body(), choices), 'sleeve'), 'hem').path)
  }
  // Arm 290 and room 50: 340 − 120 is as chosen, 340 − 200 is not.
  expect(hem(120)).toBeCloseTo(220, 6)
  expect(hem(200)).toBeCloseTo(210, 6)
})

// Gathers lie even over their stretch, so what is sewn from the notch to the underarm is the cloth
// there less its part of them; the notch of the cap stands as far from the underarm, turned back
// by the pitch.
test.each(CASES.filter((c) => c.choices.dartAs === 'gathers').map((c, i) => [i, c] as const))(
  'gathers in the armhole %i: the front notch of the sleeve meets that of the body',
  (_, c) => {
    const d = drawn(c)
    const front = pieceOf(d, 'front')
    const armhole = edge(front, 'armhole').path
    const at = (path: typeof armhole, p: { x: number; y: number }): number =>
      lengthTo(path, project(path, p).place)
    const [from, to] = [namedPoint(front, 'G1'), namedPoint(front, 'G2')].map((p) => at(armhole, p))
    const notch = at(armhole, namedPoint(front, 'Z'))
    const takes = pathLength(armhole) - sewnLength(front, 'armhole')
    const share = (to! - Math.max(from!, Math.min(to!, notch))) / (to! - from!)
    const sleeve = pieceOf(d, 'sleeve')
    const cap = edge(sleeve, 'cap').path
    const onCap = pathLength(cap) - at(cap, namedPoint(sleeve, 'K'))
    const pitch = c.choices.sleevePitch ?? 0
    expect(onCap - pitch).toBeCloseTo(pathLength(armhole) - notch - takes * share, 3)
  },
)
