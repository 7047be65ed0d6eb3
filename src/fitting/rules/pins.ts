/**
 * The pins of one complaint before they are used: which way they go, their mean, and why one
 * cannot be used. Limits: 3 mm as everywhere; five rounds' worth and 100 mm are our judgement.
 */
import type { ComplaintId, Way, Work } from '../complaints/complaint.ts'
import { clothOf, halfAmount, type AmountRules, type Pin } from '../half-amount.ts'
import { JUDGE_WORDS } from './judge.words.ts'
import { tenth } from './told.ts'

/** Where the way is open a reading under nought goes the other way: up for down, in for out. */
export const EITHER_WAY: readonly ComplaintId[] = [
  'B5',
  'B6',
  'SH6',
  'SH7',
  'L4',
  'L9',
  'D5',
  'W6',
  'W7',
  'W8',
]
const BACK: Readonly<Record<Way, Way>> = {
  out: 'in',
  in: 'out',
  up: 'down',
  down: 'up',
  forward: 'back',
  back: 'forward',
  wider: 'narrower',
  narrower: 'wider',
}

/** The work as this reading means it, and the amount without its sign. */
export function wayOf(work: Work, leads: ComplaintId, amount: number): Work {
  if (!EITHER_WAY.includes(leads) || amount >= 0) return work
  return { ...work, edits: work.edits.map((e) => ({ ...e, way: BACK[e.way] })) }
}

/** On the half piece with its sign; of left and right their mean. */
export function halfOf(pins: readonly Pin[], readAs: Work['readAs']): number {
  const all = pins.map((p) => Math.sign(p.value) * halfAmount(p, readAs))
  return all.reduce((a, b) => a + b, 0) / Math.max(1, all.length)
}

/** How far two readings lie apart; one up and one down lie far. */
export const apart = (a: Pin, b: Pin): number =>
  Math.abs(halfOf([a], 'asRead') - halfOf([b], 'asRead'))

export interface OddPin {
  /** There is next to nothing to change; otherwise it is to be read again. */
  readonly small: boolean
  readonly why: string
}

/** Before the cause is known: no cloth to speak of, or less than none. */
export function oddPin(
  id: ComplaintId,
  pins: readonly Pin[],
  { smallest }: AmountRules,
): OddPin | undefined {
  const [pin] = pins
  if (!pin) return undefined
  const most = Math.max(...pins.map((p) => Math.abs(clothOf(p))))
  if (most < smallest)
    return {
      small: true,
      why: JUDGE_WORDS.nothingThere(id, tenth(most), smallest),
    }
  if (pins.some((p) => p.value < 0 && p.how !== 'level') && !EITHER_WAY.includes(id))
    return {
      small: false,
      why: JUDGE_WORDS.lessThanNothing(pin.how, tenth(pin.value)),
    }
  return undefined
}

/** Rounds' worth that no muslin shows, and the least that is thought odd, mm. */
const [ROUNDS_WORTH, ODD] = [5, 100]

/** With the work known: more than any fitting takes. */
export const absurd = (raw: number, work: Work, cap: number): string | undefined =>
  work.capUnit !== 'deg' && raw > Math.max(ODD, ROUNDS_WORTH * cap)
    ? JUDGE_WORDS.absurd(tenth(raw), tenth(cap))
    : undefined

/** Cloth pinned away where some is wanting, or cut open where there is too much. */
export function wrongWay({ how }: Pin, { moves }: Work): string | undefined {
  if (moves === 'out' && (how === 'fold' || how === 'pinch')) return JUDGE_WORDS.takesAway(how)
  if (moves === 'in' && how === 'slit') return JUDGE_WORDS.letsIn
  return undefined
}
