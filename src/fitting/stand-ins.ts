/**
 * A muslin that doubts a number of the tape is corrected meanwhile by what stands in for it. Once
 * the tape has gone the way the muslin said, the draft follows the number by itself, and the
 * correction would do it twice: it has had its day. Half of what was said is taken for the same
 * thing; a reading on the body strays by as much. Judgement.
 */
import type { Doubt } from '../measurements/book.ts'
import type { MeasurementId } from '../measurements/catalogue.ts'
import { mm } from '../units/length.ts'
import { inForce, type Correction } from './correction.ts'

const CONFIRMED = 0.5

type Numbers = Readonly<Partial<Record<MeasurementId, number>>>
export interface Doubted extends Doubt {
  readonly measurement: MeasurementId
}

/**
 * Corrections in force for which the tape has said the same since.
 * @param sewn the numbers the muslin of a round was cut from, by the number of the round
 * @param now the numbers of the round that is being drawn
 */
export function standInsAnswered(
  corrections: readonly Correction[],
  doubts: readonly Doubted[],
  sewn: (round: number) => Numbers | undefined,
  now: Numbers,
): readonly Exclude<Correction, { kind: 'withdraw' }>[] {
  return inForce(corrections).flatMap((c) => {
    if (c.kind === 'withdraw') return []
    const then = sewn(c.because.round)
    const own = newest(doubts.filter((d) => d.complaint === c.because.complaint))
    const all = own.length > 0 && own.every((d) => confirmed(d, then, now))
    return all ? [c] : []
  })
}

/** Of doubts about one number that a complaint raised more than once, the last that says how much. */
function newest(doubts: readonly Doubted[]): readonly Doubted[] {
  const sized = doubts.filter((d) => d.by !== undefined)
  return sized.filter((d, i) => !sized.slice(i + 1).some((e) => e.measurement === d.measurement))
}

function confirmed(
  { measurement, by = mm(0) }: Doubted,
  then: Numbers | undefined,
  now: Numbers,
): boolean {
  const [was, is] = [then?.[measurement], now[measurement]]
  if (was === undefined || is === undefined) return false
  const moved = is - was
  return Math.sign(moved) === Math.sign(by) && Math.abs(moved) >= Math.abs(by) * CONFIRMED
}
