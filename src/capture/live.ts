/**
 * Taking the photos alone, as a machine of states: waiting → near enough → steady → counting →
 * taken → the next view. Frames and the time come in, the next state goes out; the screen shows it,
 * takes the photo when it says `shooting`, and reports back. Times in milliseconds of any clock.
 */
import { hintFor, TURN_HINT, type HintId } from './hints.ts'
import { movedBy, type LivePose } from './live-pose.ts'
import { VIEWS, type View } from './reading.ts'

/** Who began the count: standing still, a raised hand, or the key. */
export type CountedBy = 'still' | 'hand' | 'key'

export type Step =
  /** Something has to be mended first; `next` is a new hint that has not lasted yet. */
  | {
      readonly phase: 'waiting'
      readonly hint: HintId
      readonly next?: { readonly hint: HintId; readonly since: number }
    }
  /** All is right but she moves. */
  | { readonly phase: 'near'; readonly pose: LivePose }
  | { readonly phase: 'steady'; readonly pose: LivePose; readonly since: number }
  | {
      readonly phase: 'counting'
      readonly by: CountedBy
      readonly until: number
      /** She stood so when the count began; a count by hand or key lets her move. */
      readonly pose?: LivePose
      /** What the last frame would have to mend. */
      readonly hint?: HintId | undefined
      /** Frames in a row that break the count; one alone may be the model's slip. */
      readonly bad: number
    }
  | { readonly phase: 'shooting' }
  | { readonly phase: 'taken'; readonly view: View; readonly until: number }
  | { readonly phase: 'done' }

export interface LiveState {
  /** Views still to take, the present one first. */
  readonly todo: readonly View[]
  readonly step: Step
  /** The hand was up in the last frame: it has to come down before it counts again. */
  readonly handUp: boolean
}

/** Still for this long before the count begins. Requirement: "steady for a second". */
export const STEADY_MS = 1000
/** Seconds counted: after standing still; after a raised hand, to lower it; after the key, to walk. */
export const COUNT_SECONDS: Readonly<Record<CountedBy, number>> = { still: 3, hand: 5, key: 10 }
/** A standing body sways by 10 to 20 mm, about 0.04 of a torso of 450 mm (from memory). */
const SWAY = 0.06
/** A new hint has to last this long before it takes the place of the old one, or the words flicker. */
const HINT_MS = 350
/** Time to hear and read what comes next (common practice, no source). */
const PAUSE_MS = 2200
/** Frames in a row that break a count. */
const BREAKS = 2

const WAITING: Step = { phase: 'waiting', hint: 'nobody' }

export const beginLive = (views: readonly View[] = VIEWS): LiveState =>
  views.length === 0
    ? { todo: [], step: { phase: 'done' }, handUp: false }
    : { todo: views, step: WAITING, handUp: false }

/** One frame, read: where she stands, or undefined when nobody is there. */
export function watch(state: LiveState, pose: LivePose | undefined, now: number): LiveState {
  const [view] = state.todo
  if (!view) return state
  const up = pose?.handRaised ?? false
  const hint = hintFor(view, pose)
  const raised = up && !state.handUp && pose?.feetSeen === true
  return { ...state, handUp: up, step: watched(state.step, pose, hint, raised, now) }
}

function watched(
  step: Step,
  pose: LivePose | undefined,
  hint: HintId | undefined,
  raised: boolean,
  now: number,
): Step {
  switch (step.phase) {
    case 'shooting':
    case 'taken':
    case 'done':
      return step
    case 'counting':
      return counted(step, pose, hint)
    default:
      if (raised) return counting('hand', now, hint)
      if (hint !== undefined || !pose) return waiting(step, hint ?? 'nobody', now)
      return standing(step, pose, now)
  }
}

function standing(step: Step, pose: LivePose, now: number): Step {
  const held = step.phase === 'near' || step.phase === 'steady' ? step.pose : undefined
  if (!held || movedBy(held, pose) > SWAY) return { phase: 'near', pose }
  const since = step.phase === 'steady' ? step.since : now
  return now - since >= STEADY_MS
    ? { ...counting('still', now), pose: held }
    : { phase: 'steady', pose: held, since }
}

function waiting(step: Step, hint: HintId, now: number): Step {
  if (step.phase !== 'waiting') return { phase: 'waiting', hint }
  if (step.hint === hint) return { phase: 'waiting', hint }
  const since = step.next?.hint === hint ? step.next.since : now
  return now - since >= HINT_MS ? { phase: 'waiting', hint } : { ...step, next: { hint, since } }
}

type Counting = Extract<Step, { phase: 'counting' }>
const counting = (by: CountedBy, now: number, hint?: HintId): Counting => ({
  phase: 'counting',
  by,
  until: now + COUNT_SECONDS[by] * 1000,
  hint,
  bad: 0,
})

function counted(step: Counting, pose: LivePose | undefined, hint: HintId | undefined): Step {
  if (step.by !== 'still') return { ...step, hint }
  const moved = pose && step.pose ? movedBy(step.pose, pose) > 2 * SWAY : true
  if (hint === undefined && !moved) return { ...step, hint, bad: 0 }
  if (step.bad + 1 < BREAKS) return { ...step, hint, bad: step.bad + 1 }
  if (hint !== undefined || !pose) return { phase: 'waiting', hint: hint ?? 'nobody' }
  return { phase: 'near', pose }
}

/** Time passes between two frames. */
export function tick(state: LiveState, now: number): LiveState {
  const { step } = state
  if (step.phase === 'counting' && now >= step.until) {
    // A hand that is still up, or feet out of the picture, would spoil the photo.
    const spoilt = step.by === 'hand' ? step.hint : undefined
    return {
      ...state,
      step: spoilt === undefined ? { phase: 'shooting' } : { phase: 'waiting', hint: spoilt },
    }
  }
  if (step.phase === 'taken' && now >= step.until) return nextView(state)
  return state
}

function nextView(state: LiveState): LiveState {
  const [view] = state.todo
  // Until a frame says otherwise, what is wanted next is the turn.
  const step: Step = view ? { phase: 'waiting', hint: TURN_HINT[view] } : { phase: 'done' }
  return { ...state, step }
}

/** The key: counts however she stands, also before the model has come. */
export function countDown(state: LiveState, now: number): LiveState {
  const { phase } = state.step
  const free = phase === 'waiting' || phase === 'near' || phase === 'steady'
  return free ? { ...state, step: counting('key', now) } : state
}

export const breakOff = (state: LiveState): LiveState =>
  state.step.phase === 'counting' ? { ...state, step: WAITING } : state

/** The photo of the present view is taken. */
export function took(state: LiveState, now: number): LiveState {
  const [view, ...todo] = state.todo
  if (!view || state.step.phase !== 'shooting') return state
  return { ...state, todo, step: { phase: 'taken', view, until: now + PAUSE_MS } }
}

/** The camera gave no picture: the same view once more. */
export const missed = (state: LiveState): LiveState =>
  state.step.phase === 'shooting' ? { ...state, step: WAITING } : state

/** Takes one view again, first of all; the others that are still to take follow. */
export function takeAgain(state: LiveState, view: View): LiveState {
  if (state.step.phase === 'shooting') return state
  return nextView({ ...state, todo: [view, ...state.todo.filter((v) => v !== view)] })
}

/** The digit to show: whole seconds left, 1 at least; undefined when nothing is counted. */
export function digit(step: Step, now: number): number | undefined {
  return step.phase === 'counting' ? Math.max(1, Math.ceil((step.until - now) / 1000)) : undefined
}
