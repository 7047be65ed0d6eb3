/**
 * The order of sewing, from the garment's own pieces, seams, finishes and openings: small parts
 * and everything that is easier flat first, and no seam before the ones that run into it are
 * finished and pressed.
 * Sources: order of a blouse, public dressmaking lessons and a school textbook; darts and openings
 * while the piece lies flat, common practice; every step has its own beside it.
 */
import type { Draft } from '../draft/draft.ts'
import type { Cutting } from './cutting.ts'
import { clothWarning, CLOTH_KINDS, type ClothKind } from './cloth-kind.ts'
import type { PlanStep } from './plan-step.ts'
import { dartSteps, interfaceSteps, prepareSteps, staySteps } from './plan-flat.ts'
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

export function sewingPlan(draft: Draft, cutting: Cutting, cloth: ClothKind): PlanStep[] {
  const on = { draft, cutting }
  const warning = clothWarning(cloth, draft.garment)
  const steps = [
    ...prepareSteps(CLOTH_KINDS[cloth], warning),
    ...staySteps(on),
    ...interfaceSteps(on),
    ...dartSteps(on),
    ...gatherSteps(on),
    ...styleSteps(on),
    ...flatOpenings(on),
    tryOn('tacked', 'Tack shoulders and sides, try on', draft),
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
    tryOn('hem', 'Try on and mark the hem', draft),
    ...hemSteps(on),
    ...shutSteps(on),
    ...lastSteps(),
  ]
}
