/** A set of bodies drafted and judged one by one, and the count of it. */
import { standardChoices } from '../../../src/draft/choices.ts'
import { draft, GARMENTS } from '../../../src/draft/garments.ts'
import { judge, type Verdict } from './judge.ts'
import { taped, type Numbers } from './numbers.ts'

export interface Tally {
  readonly n: number
  /** Shares in percent, two decimals. */
  readonly sound: number
  readonly wearable: number
  /** How many bodies each reason holds for; a body may have several. */
  readonly reasons: Readonly<Record<string, number>>
}

export function verdictOn(body: Numbers): Verdict {
  const { needs, uses } = GARMENTS.blouse
  const confirmed = taped(body, needs, uses)
  try {
    return judge(draft('blouse', confirmed, standardChoices()), body)
  } catch (error) {
    // The sentence without its numbers, so that like cases are counted together.
    const said = (error instanceof Error ? error.message : String(error)).replace(
      /-?\d+(\.\d+)?/g,
      '…',
    )
    return { unsound: [`undrawable: ${said}`], unwearable: [] }
  }
}

export function tally(verdicts: readonly Verdict[]): Tally {
  const reasons: Record<string, number> = {}
  for (const { unsound, unwearable } of verdicts)
    for (const reason of new Set([...unsound, ...unwearable]))
      reasons[reason] = (reasons[reason] ?? 0) + 1
  const sound = verdicts.filter((v) => v.unsound.length === 0)
  const wearable = sound.filter((v) => v.unwearable.length === 0)
  const share = (part: number): number => Math.round((10_000 * part) / verdicts.length) / 100
  const ranked = Object.entries(reasons).sort(([, a], [, b]) => b - a)
  return {
    n: verdicts.length,
    sound: share(sound.length),
    wearable: share(wearable.length),
    reasons: Object.fromEntries(ranked),
  }
}

export const told = (name: string, { n, sound, wearable, reasons }: Tally): string =>
  [
    `${name}: ${n} bodies, sound ${sound} %, wearable ${wearable} %`,
    ...Object.entries(reasons).map(
      ([reason, count]) => `  ${String(count).padStart(5)}  ${reason}`,
    ),
  ].join('\n')
