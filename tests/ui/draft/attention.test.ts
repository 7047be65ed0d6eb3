import { describe, expect, test } from 'vitest'
import { standardChoices, type Choices } from '../../../src/draft/choices.ts'
import { pieceOf } from '../../../src/draft/draft.ts'
import type { FindingId } from '../../../src/draft/finding.ts'
import { FINDING_WORDS } from '../../../src/draft/finding.words.ts'
import { draft } from '../../../src/draft/make.ts'
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
import { CHOICE_GROUPS } from '../../../src/ui/draft/choice-groups.ts'
import { PROOF_ACTS } from '../../../src/ui/draft/proof-acts.ts'
import { proofCount, proofRows, type ProofKind } from '../../../src/ui/draft/proof-rows.ts'
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
      '7 hold, 1 asks, 1 to know',
    )
  })
  // Overarm and side seams are equal by construction; 330 mm is the taped overarm.
  test('what holds says its number', () => {
    const rows = proofRows(withFindings([]), CM)
    expect(rows.find((r) => r.kind === 'shoulderSeams')?.holds).toBe('33.0 cm both, as sewn.')
  })
})

// Invented: 101.0 cm must pass a sewn waist of 83.6, the head of 58.0 a neck under that; the draft
// adds a zip for the one and a slit for the other (common practice, no source).
describe('getting in', () => {
  const row = (choices: Partial<Choices>, kind: ProofKind) =>
    proofRows(draft('blouse', body(), { ...standardChoices(), ...choices }), CM).find(
      (r) => r.kind === kind,
    )
  test('what was added is said where it helps, and which it is', () => {
    expect(
      row({}, 'gettingIn')
        ?.found.map((f) => f.sentence)
        .join(),
    ).toMatch(/101\.0 cm .* 83\.6 cm.*Now: zip in the left side\.$/)
    expect(
      row({}, 'head')
        ?.found.map((f) => f.sentence)
        .join(),
    ).toMatch(/58\.0 cm .*Now: slit at the back neck\.$/)
  })
  test('an opening she chose holds, and says what it lets pass', () => {
    expect(row({ opening: 'sideZip' }, 'gettingIn')).toMatchObject({
      severity: undefined,
      holds: 'A zip in the left side lets the waist pass over bust and shoulders.',
    })
    expect(row({ opening: 'buttonedFront' }, 'head')).toMatchObject({
      severity: undefined,
      holds: 'The buttoned front lets the head pass.',
    })
  })
  test('with none at all it stops cutting', () => {
    expect(row({ opening: 'none' }, 'gettingIn')?.severity).toBe('stop')
  })
  test('with a waist that passes by itself no opening is spoken of', () => {
    const wide = draft('blouse', body({ slipThroughGirth: 830 }), standardChoices())
    const holds = proofRows(wide, CM).find((r) => r.kind === 'gettingIn')
    expect(holds).toMatchObject({
      severity: undefined,
      holds: 'The waist passes over bust and shoulders.',
    })
  })
  test('every group a finding leads to is there', () => {
    for (const act of Object.values(PROOF_ACTS))
      expect(CHOICE_GROUPS.map((g) => g.id)).toContain(act.group)
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
