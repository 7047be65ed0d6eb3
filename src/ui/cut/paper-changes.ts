/**
 * What was decided since the paper she has, as work on that paper: for the Cut page and for the
 * printed instructions. What the old paper cannot hold is said as well.
 */
import type { PaperChange } from '../../output/instruction-page.ts'
import { inForce, type Correction } from '../../fitting/correction.ts'
import { onPaper } from '../../fitting/on-paper.ts'
import type { Round } from '../../rounds/round.ts'
import type { UnitChoice } from '../../units/format.ts'
import { asText, correctionSaid } from '../fitting/change-said.ts'
import { WORK_WORDS } from './cut.words.ts'

/** @param before the round whose paper she has; without it there is none to work on */
export function paperChanges(
  round: Round,
  before: Round | undefined,
  units: UnitChoice,
): PaperChange[] {
  if (!before) return []
  const [old, now] = [inForce(before.corrections), inForce(round.corrections)]
  const fresh = now.filter((c) => !old.some(({ id }) => id === c.id))
  const gone = old.filter((c) => !now.some(({ id }) => id === c.id))
  const turned = changedOtherwise(round, before)
  if (fresh.length + gone.length === 0 && !turned) return []
  const work = fresh.length > 0 ? onPaper(round, units) : []
  return [
    ...fresh.map((c) => ({
      head: saidOf(c, units),
      lines: linesOf(work.find(({ correction }) => correction === c.id)?.lines),
    })),
    ...gone.map((c) => ({
      head: WORK_WORDS.takenBack(saidOf(c, units)),
      lines: [WORK_WORDS.stillHas(before.number)],
    })),
    ...(turned
      ? [{ head: WORK_WORDS.otherChanges, lines: [WORK_WORDS.doesNotHold(before.number)] }]
      : []),
  ]
}

const saidOf = (c: Correction, units: UnitChoice): string =>
  c.kind === 'withdraw' ? '' : asText(correctionSaid(c), units)

const linesOf = (lines: readonly string[] | undefined): readonly string[] =>
  lines && lines.length > 0 ? lines : [WORK_WORDS.nothingMoves]

/** The tape or a choice says something else than it did when the paper was made. */
const changedOtherwise = (round: Round, before: Round): boolean =>
  differ(round.choices, before.choices) || differ(round.body.values, before.body.values)

const differ = (a: Readonly<Record<string, unknown>>, b: Readonly<Record<string, unknown>>) =>
  [...new Set([...Object.keys(a), ...Object.keys(b)])].some((name) => a[name] !== b[name])
