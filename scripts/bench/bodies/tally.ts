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
    return { unsound: [`undrawable: ${said}`], unwearable: [], beside: [] }
  }
}

export function tally(verdicts: readonly Verdict[]): Tally {
  const sound = verdicts.filter((v) => v.unsound.length === 0)
  const wearable = sound.filter((v) => v.unwearable.length === 0)
  const share = (part: number): number => Math.round((10_000 * part) / verdicts.length) / 100
  return {
    n: verdicts.length,
    sound: share(sound.length),
    wearable: share(wearable.length),
    reasons: counted(verdicts.map((v) => [...v.unsound, ...v.unwearable])),
  }
}

/** How many bodies each word holds for, the commonest first. */
export function counted(words: readonly (readonly string[])[]): Record<string, number> {
  const counts: Record<string, number> = {}
  for (const own of words) for (const word of new Set(own)) counts[word] = (counts[word] ?? 0) + 1
  return Object.fromEntries(Object.entries(counts).sort(([, a], [, b]) => b - a))
}

export const told = (name: string, verdicts: readonly Verdict[]): string => {
  const { n, sound, wearable, reasons } = tally(verdicts)
  return [
    `${name}: ${n} bodies, sound ${sound} %, wearable ${wearable} %`,
    ...listed(reasons),
    '  beside, not judged',
    ...listed(counted(verdicts.map(({ beside }) => beside))),
  ].join('\n')
}
const listed = (counts: Readonly<Record<string, number>>): string[] =>
  Object.entries(counts).map(([word, count]) => `  ${String(count).padStart(5)}  ${word}`)
