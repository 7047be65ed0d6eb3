/**
 * The order of sewing, from the garment's own pieces, seams, finishes and openings: small parts
 * and everything that is easier flat first, and no seam before the ones that run into it are
 * finished and pressed.
 * Sources: order of a blouse, public dressmaking lessons and a school textbook; darts and openings
 * while the piece lies flat, common practice; every step has its own beside it.
 */
import type { Draft } from '../draft/draft.ts'
import { SEAM_EQUAL } from '../draft/proof.ts'
import { toSew } from '../draft/to-cut.ts'
import { mm, type Mm } from '../units/length.ts'
import type { Cutting } from './cutting.ts'
import { clothWarning, CLOTH_KINDS, type ClothInHand } from './cloth-kind.ts'
import type { PlanStep } from './plan-step.ts'
import { dartSteps, interfaceSteps, prepareSteps, staySteps } from './plan-flat.ts'
import { interfaceCuffs, shutSleeves } from './plan-cuff.ts'
import { closedSteps, flatOpenings, shutSteps } from './plan-openings.ts'
import {
  armholeSteps,
  hangHemSteps,
  hangSteps,
  hemSteps,
  neckSteps,
  overSteps,
  sideSteps,
  skirtSteps,
  sleeveEdgeSteps,
  sleeveSteps,
  otherSeams,
} from './plan-seams.ts'
import { gatherSteps, styleSteps, ventSteps } from './plan-shaped.ts'
import { lastSteps, tryOn } from './plan-last.ts'

/** @param draft as it is sewn; where its left and right are not alike the lengths of both are told */
export function sewingPlan(draft: Draft, cutting: Cutting, cloth: ClothInHand): PlanStep[] {
  const plan = planOf(draft, cutting, cloth)
  if (!draft.sides) return plan
  const { left, right } = draft.sides
  const [ofLeft, ofRight] = [left, right].map((side) => planOf(toSew(side), cutting, cloth))
  const own = (plans: readonly PlanStep[] | undefined, id: string): Mm | undefined =>
    plans?.find((s) => s.id === id)?.long
  return plan.map((s) => withSides(s, own(ofLeft, s.id), own(ofRight, s.id)))
}

/** What is sewn once goes round both sides: half of it is from either. */
function withSides(step: PlanStep, left: Mm | undefined, right: Mm | undefined): PlanStep {
  if (left === undefined || right === undefined) return step
  if (step.times === 1) return { ...step, long: mm((left + right) / 2) }
  return Math.abs(left - right) > SEAM_EQUAL ? { ...step, sides: { left, right } } : step
}

function planOf(draft: Draft, cutting: Cutting, cloth: ClothInHand): PlanStep[] {
  const on = { draft, cutting }
  const warning = clothWarning(cloth, draft.garment)
  const steps = [
    ...prepareSteps(CLOTH_KINDS[cloth.kind], warning),
    ...staySteps(on),
    ...interfaceSteps(on),
    ...interfaceCuffs(on),
    ...dartSteps(on),
    ...gatherSteps(on),
    ...styleSteps(on),
    ...flatOpenings(on),
    tryOn('tacked', draft),
    ...overSteps(on),
    ...neckSteps(on),
    ...hangSteps(on),
    ...sleeveEdgeSteps(on),
    ...sideSteps(on),
    ...skirtSteps(on),
    ...ventSteps(on),
    ...closedSteps(on),
    ...armholeSteps(on),
    ...sleeveSteps(on),
  ]
  return [
    ...steps,
    ...otherSeams(on, steps),
    ...hangHemSteps(on),
    tryOn('hem', draft),
    ...hemSteps(on),
    ...shutSteps(on),
    ...shutSleeves(on),
    ...lastSteps(),
  ]
}
