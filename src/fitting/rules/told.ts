/** How an amount came about, in sentences, and what of it waits for the next muslin. */
import type { ComplaintId, Work } from '../complaints/complaint.ts'
import { clothOf, isPinned, type AmountRules, type Pin } from '../half-amount.ts'
import type { Mm } from '../../units/length.ts'
import { readFor } from './edit-amounts.ts'
import { JUDGE_WORDS } from './judge.words.ts'
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
            why: JUDGE_WORDS.pastCap,
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
  if (!pin) return [JUDGE_WORDS.fromLengths(id, tenth(raw))]
  const shared = work.moves === 'in' && isPinned(readFor(work, pin.how))
  return [
    JUDGE_WORDS.howItCame(id, {
      how: pin.how,
      value: tenth(pin.value),
      where: pin.where,
      cloth: pins.length > 1 ? undefined : tenth(Math.abs(clothOf(pin))),
      raw: tenth(raw),
      share: shared ? Math.round(rules.takeInShare * 100) : undefined,
      applied: tenth(applied ?? 0),
      most: tenth(cap),
      degrees: work.capUnit === 'deg',
    }),
  ]
}
