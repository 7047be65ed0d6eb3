/** What is sewn: the id of a step of the plan and the day it was ticked. */
export type Sewn = Readonly<Record<string, string>>

/** The step ticked on that day, or its tick taken away. */
export function ticked(sewn: Sewn, step: string, on: string | undefined): Sewn {
  const { [step]: _old, ...others } = sewn
  return on === undefined ? others : { ...others, [step]: on }
}
