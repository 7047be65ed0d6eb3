/**
 * What is sewn: the id of a step of the plan and the day it was ticked; of what hangs from then on
 * the moment ("2026-11-28T13:30:00.000Z"), only the day where it was kept before moments were.
 */
export type Sewn = Readonly<Record<string, string>>

/** The step ticked then, or its tick taken away. */
export function ticked(sewn: Sewn, step: string, on: string | undefined): Sewn {
  const { [step]: _old, ...others } = sewn
  return on === undefined ? others : { ...others, [step]: on }
}

/** The day of a tick, "2026-11-28". */
export const dayOf = (tick: string): string => tick.slice(0, 10)

const HOUR = 3_600_000

/** What hangs yet: until when and how much longer, in ms; or since a moment that is still to come. */
export type Hanging = { readonly until: number; readonly left: number } | 'clockSetBack'

/**
 * @param since when it was hung, and `now`: ms of one clock
 * @returns undefined once it has hung
 */
export function hangs(since: number, hours: number, now: number): Hanging | undefined {
  // A clock is put right by minutes now and then; by an hour it was set. Judgement.
  if (now < since - HOUR) return 'clockSetBack'
  const until = since + hours * HOUR
  return now < until ? { until, left: Math.min(until - now, hours * HOUR) } : undefined
}
