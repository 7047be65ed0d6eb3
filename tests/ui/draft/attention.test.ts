import { describe, expect, test } from 'vitest'
import { standardChoices } from '../../../src/draft/choices.ts'
import { pieceOf } from '../../../src/draft/draft.ts'
import { FINDING_WORDS, type FindingId } from '../../../src/draft/finding.ts'
import { draft } from '../../../src/draft/garments.ts'
import { distance } from '../../../src/geometry/point.ts'
import { project } from '../../../src/geometry/project.ts'
import { mm } from '../../../src/units/length.ts'
import {
  guideSpots,
  lettersOf,
  lightOf,
  movesWords,
  pieceFor,
  placeWords,
} from '../../../src/ui/draft/attention.ts'
import { proofCount, proofRows } from '../../../src/ui/draft/proof-rows.ts'
import { body } from '../../bodies.ts'

const blouse = draft('blouse', body(), standardChoices())
const CM = { unit: 'cm', inchStep: 8 } as const

describe('what is lit', () => {
  test('every step names only letters of its own piece, and lights lines of it', () => {
    for (const [index, step] of blouse.steps.entries()) {
      const piece = pieceOf(blouse, step.piece)
      for (const letter of lettersOf(step)) expect(Object.keys(piece.points)).toContain(letter)
      const light = lightOf(blouse, step.piece, { on: 'step', index })
      expect(light.lit.length > 0 || step.verb === 'start').toBe(true)
      expect(pieceFor(blouse, { on: 'step', index })).toBe(step.piece)
    }
  })
  test('a step of the back lights nothing on the front', () => {
    expect(lightOf(blouse, 'front', { on: 'step', index: 1 }).lit).toEqual([])
  })
  test('a finding lights its edge, and the words say where it lies', () => {
    const finding = {
      id: 'armOpening',
      severity: 'stop',
      place: 'front.sleeveEdge',
      value: mm(0),
      limit: mm(0),
    } as const
    const edge = pieceOf(blouse, 'front').edges.find((e) => e.name === 'sleeveEdge')
    expect(lightOf(blouse, 'front', { on: 'finding', finding }).lit).toEqual([edge?.path])
    expect(placeWords(finding.place)).toBe('front, sleeve edge')
  })
})

// By the steps themselves: apex spacing places only the apex and the dart's middle, on the front.
test('a number says which points rest on it', () => {
  expect(movesWords(blouse, 'apexSpacing')).toBe('front apex, M')
  expect(movesWords(blouse, 'stature')).toBeUndefined()
})

// A guide point is told so that she can mark it: it must lie on the curve it guides.
test('guide points lie on their curve', () => {
  const curves = blouse.steps.filter((s) => s.verb === 'curve')
  expect(curves.length).toBeGreaterThanOrEqual(4)
  for (const step of curves) {
    const spots = guideSpots(step, pieceOf(blouse, step.piece))
    expect(spots.length).toBeGreaterThan(0)
    for (const spot of spots) {
      const off = Math.min(...step.lights.map((path) => project(path, spot).distance))
      expect(off, `${step.piece} ${step.edge}`).toBeLessThan(0.01)
    }
  }
})

describe('the proof', () => {
  const withFindings = (ids: readonly FindingId[]) => ({
    ...blouse,
    findings: ids.map((id) => ({
      id,
      severity: id === 'gettingIn' ? ('stop' as const) : ('note' as const),
      place: 'front.side',
      value: mm(836),
      limit: mm(1010),
    })),
  })
  test('nothing found: everything holds, each with a sentence', () => {
    const rows = proofRows(withFindings([]), CM)
    expect(rows.every((r) => r.severity === undefined && r.holds !== '')).toBe(true)
    expect(proofCount(rows)).toBe('all 9 hold')
  })
  test('every kind of finding reaches a row, its numbers in it', () => {
    for (const id of Object.keys(FINDING_WORDS) as FindingId[]) {
      const rows = proofRows(withFindings([id]), CM)
      expect(rows.flatMap((r) => r.found).map((f) => f.finding.id)).toEqual([id])
    }
  })
  test('what stops cutting stands first', () => {
    const [first] = proofRows(withFindings(['straightWaist', 'gettingIn']), CM)
    expect(first?.found[0]?.sentence).toContain('83.6 cm')
    expect(proofCount(proofRows(withFindings(['straightWaist', 'gettingIn']), CM))).toBe(
      '7 hold, 2 ask',
    )
  })
  // Overarm and side seams are equal by construction; 330 mm is the taped overarm.
  test('what holds says its number', () => {
    const rows = proofRows(withFindings([]), CM)
    expect(rows.find((r) => r.kind === 'overarm seams')?.holds).toBe('33.0 cm both.')
  })
})

test('distances of guide points are told from the base square, so they can be measured back', () => {
  const neck = blouse.steps.find((s) => s.verb === 'curve' && s.edge === 'neck')
  if (neck?.verb !== 'curve') throw new Error('the back has a neck curve')
  const piece = pieceOf(blouse, neck.piece)
  const [spot] = guideSpots(neck, piece)
  const [guide] = neck.guides
  // Pythagoras: out and aside are square to each other.
  expect(distance(piece.points[neck.base]!, spot!)).toBeCloseTo(
    Math.hypot(guide!.out.mm, guide!.by.mm),
    9,
  )
})
