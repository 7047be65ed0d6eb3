/**
 * A printed round drawn anew by the present program, held to what went on paper. A newer program
 * that would print other numbers or other words says which; the round itself stays as it was.
 */
import { record, type NumberRecord } from '../draft/record.ts'
import { sentence } from '../draft/sentence.words.ts'
import { stepTitle } from '../draft/step-title.ts'
import { mm, type Mm } from '../units/length.ts'
import { FROZEN_UNITS, redraft } from './redraft.ts'
import type { Round } from './round.ts'

export interface DriftedNumber {
  /** `front.side`, or a point, `front.U`, or the tip of a dart, `front.bustDart`. */
  readonly name: string
  readonly kind: 'length' | 'point' | 'tip'
  /** For a point or a tip how far it lies from where it was; then `was` is 0. Undefined where it is missing. */
  readonly was: Mm | undefined
  readonly now: Mm | undefined
}

/** A printed number counts as the same within this, mm: a thousandth, far under what paper shows. */
export const REPLAY = 0.001

export const drift = (round: Round): string[] => drifted(round).map(({ name }) => name)

export function drifted(round: Round): readonly DriftedNumber[] {
  if (!round.printed) return []
  return between(round.printed.record, record(redraft(round).draft))
}

export function between(was: NumberRecord, now: NumberRecord): readonly DriftedNumber[] {
  const lengths = names(was.lengths, now.lengths).flatMap((name): DriftedNumber[] => {
    const [a, b] = [was.lengths[name], now.lengths[name]]
    const same = a !== undefined && b !== undefined && Math.abs(a - b) <= REPLAY
    return same ? [] : [{ name, kind: 'length', was: a, now: b }]
  })
  return [
    ...lengths,
    ...strayed(was.points, now.points, 'point'),
    ...(was.tips ? strayed(was.tips, now.tips ?? {}, 'tip') : []),
  ]
}

type Places = NumberRecord['points']
const strayed = (was: Places, now: Places, kind: 'point' | 'tip'): readonly DriftedNumber[] =>
  names(was, now).flatMap((name): DriftedNumber[] => {
    const [a, b] = [was[name], now[name]]
    const apart = a && b && Math.hypot(b[0] - a[0], b[1] - a[1])
    if (apart !== undefined && apart <= REPLAY) return []
    const there = a && mm(0)
    return [{ name, kind, was: there, now: b && mm(apart ?? 0) }]
  })

/**
 * Steps whose words would be others now, as they were printed. Where not one is worded as now the
 * round went on paper in another language, and nothing is told of it.
 */
export function driftedWords(round: Round): readonly string[] {
  const was = round.printed?.words
  if (!was) return []
  const now = new Set(
    redraft(round).draft.steps.map((step) => `${stepTitle(step)} ${sentence(step, FROZEN_UNITS)}`),
  )
  const other = was.filter((words) => !now.has(words))
  return other.length === was.length ? [] : other
}

const names = (a: object, b: object): string[] => [
  ...new Set([...Object.keys(a), ...Object.keys(b)]),
]
