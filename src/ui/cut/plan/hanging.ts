/** What hangs by itself for a day: how much longer, and when to go on, as the plan says it. */
import type { PlanStep } from '../../../output/plan-step.ts'
import { dayOf, hangs, type Hanging } from '../../../output/sewn.ts'
import { DATE_WORDS } from '../../../units/dates.words.ts'
import { NUMBER_WORDS } from '../../../units/number.words.ts'
import { HANG_WORDS as W } from './plan.words.ts'

export interface HangingSaid {
  /** "It hangs: 5 hours yet." */
  readonly lead: string
  /** When she may go on: "tomorrow from 14:30". */
  readonly from: string
}

/** @param tick of the step; undefined where it is not hung, or has hung */
export function hangingSaid(
  { hours }: Pick<PlanStep, 'hours'>,
  tick: string | undefined,
  now: Date,
): HangingSaid | undefined {
  if (hours === undefined || tick === undefined) return undefined
  // Only the day was kept: it hangs while that lasts.
  if (tick === dayOf(tick))
    return tick === dayOf(now.toISOString()) ? { lead: W.sinceToday, from: W.sameHour } : undefined
  const hanging = hangs(Date.parse(tick), hours, now.getTime())
  return hanging && said(hanging, now)
}

function said(hanging: Hanging, now: Date): HangingSaid {
  if (hanging === 'clockSetBack') return { lead: W.clockSetBack, from: W.counted }
  const minutes = Math.ceil(hanging.left / 60_000)
  const lead = minutes > 60 ? W.hoursYet(Math.ceil(minutes / 60)) : W.minutesYet(minutes)
  const until = new Date(hanging.until)
  const time = until.toLocaleTimeString(NUMBER_WORDS.locale, {
    hour: '2-digit',
    minute: '2-digit',
  })
  return { lead, from: W.from(dayFrom(now, until), time) }
}

/** By her own calendar; where a day has 23 hours it may be the day after tomorrow. */
function dayFrom(now: Date, then: Date): string {
  const inDays = (days: number) =>
    new Date(now.getFullYear(), now.getMonth(), now.getDate() + days).toDateString()
  const day = then.toDateString()
  if (day === inDays(0)) return W.today
  return day === inDays(1) ? W.tomorrow : W.on(DATE_WORDS.day(isoDay(then)))
}
const isoDay = (date: Date): string =>
  [date.getFullYear(), date.getMonth() + 1, date.getDate()]
    .map((n) => String(n).padStart(2, '0'))
    .join('-')
