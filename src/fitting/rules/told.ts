/** How an amount came about, in sentences, and what of it waits for the next muslin. */
import type { ComplaintId, Work } from '../complaints/complaint.ts'
import { clothOf, isPinned, type AmountRules, type Pin } from '../half-amount.ts'
import type { Mm } from '../../units/length.ts'
import { readFor } from './edit-amounts.ts'
import type { HeldBack, Judged } from './judged.ts'

export const tenth = (x: number): number => Math.round(x * 10) / 10

export const pastCap = (id: ComplaintId, edits: Judged['edits']): readonly HeldBack[] =>
  edits.flatMap((e) =>
    e.heldBack > 0 && e.follows === undefined
      ? [
          {
            complaint: id,
            target: e.target,
            op: e.op,
            mm: e.heldBack,
            why: 'past the most of one round: watch it on the next muslin',
          },
        ]
      : [],
  )

export function howItCame(
  id: ComplaintId,
  pins: readonly Pin[],
  raw: Mm | number,
  work: Work,
  cap: number,
  rules: AmountRules,
  applied: number | undefined,
): readonly string[] {
  const [pin] = pins
  if (!pin) return [`${id}: ${tenth(raw)} mm, from the lengths given.`]
  const cloth =
    pins.length > 1 ? 'the mean of both sides' : `${tenth(Math.abs(clothOf(pin)))} mm of cloth`
  const share =
    work.moves === 'in' && isPinned(readFor(work, pin.how))
      ? ` ${Math.round(rules.takeInShare * 100)} in a hundred of a pinned take-in:`
      : ''
  const most = `${tenth(cap)}${work.capUnit === 'deg' ? '°' : ' mm'}`
  return [
    `${id}: ${pin.how} of ${tenth(pin.value)} mm at ${pin.where} is ${cloth}; ${tenth(raw)} mm on the half piece.${share} ${tenth(applied ?? 0)} mm are applied, the most of a round is ${most}.`,
  ]
}
