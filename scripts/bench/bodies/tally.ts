/** A set of bodies drafted and judged one by one, and the count of it. */
import { CannotDraw } from '../../../src/draft/cannot-draw.ts'
import type { Choices } from '../../../src/draft/choices.ts'
import type { GarmentId } from '../../../src/draft/draft.ts'
import { GARMENTS, standardFor } from '../../../src/draft/garments.ts'
import { draft } from '../../../src/draft/make.ts'
import { judge, type Verdict } from './judge.ts'
import { taped, type Numbers } from './numbers.ts'

export interface Tally {
  readonly n: number
  /** Shares in percent, two decimals. */
  readonly sound: number
  /** Refused by a sentence that names the number; `sound` is the share of the others. */
  readonly refused: number
  readonly wearable?: number
  /** How many bodies each reason holds for; a body may have several. */
  readonly reasons: Readonly<Record<string, number>>
}

/** One garment from one body; a refusal that names its number is told apart from a fault. */
export function verdictOn(
  garment: GarmentId,
  body: Numbers,
  choices: Choices = standardFor(garment),
): Verdict {
  const { needs, uses } = GARMENTS[garment]
  const confirmed = taped(body, needs, uses)
  try {
    return judge(draft(garment, confirmed, choices), body)
  } catch (error) {
    if (error instanceof CannotDraw)
      return { unsound: [], unwearable: [], beside: [], refused: error.why.id }
    // The sentence without its numbers, so that like cases are counted together.
    const said = (error instanceof Error ? error.message : String(error)).replace(
      /-?\d+(\.\d+)?/g,
      '…',
    )
    return { unsound: [`undrawable: ${said}`], unwearable: [], beside: [] }
  }
}

/** @param worn false where choices were drawn: then only what is sound is judged */
export function tally(verdicts: readonly Verdict[], worn = true): Tally {
  const drawn = verdicts.filter((v) => v.refused === undefined)
  const sound = drawn.filter((v) => v.unsound.length === 0)
  const wearable = sound.filter((v) => v.unwearable.length === 0)
  const share = (part: number, of: number): number => Math.round((10_000 * part) / of) / 100
  return {
    n: verdicts.length,
    sound: share(sound.length, drawn.length),
    refused: share(verdicts.length - drawn.length, verdicts.length),
    ...(worn ? { wearable: share(wearable.length, verdicts.length) } : {}),
    reasons: counted(
      verdicts.map((v) => [
        ...(v.refused ? [`refused: ${v.refused}`] : []),
        ...v.unsound,
        ...(worn ? v.unwearable : []),
      ]),
    ),
  }
}

/** How many bodies each word holds for, the commonest first. */
export function counted(words: readonly (readonly string[])[]): Record<string, number> {
  const counts: Record<string, number> = {}
  for (const own of words) for (const word of new Set(own)) counts[word] = (counts[word] ?? 0) + 1
  return Object.fromEntries(Object.entries(counts).sort(([, a], [, b]) => b - a))
}

export const told = (name: string, verdicts: readonly Verdict[], worn = true): string => {
  const { n, sound, refused, wearable, reasons } = tally(verdicts, worn)
  const besides = counted(verdicts.map(({ beside }) => beside))
  return [
    `${name}: ${n} bodies, sound ${sound} %, refused ${refused} %${worn ? `, wearable ${wearable} %` : ''}`,
    ...listed(reasons),
    ...(worn ? ['  beside, not judged', ...listed(besides)] : []),
  ].join('\n')
}
const listed = (counts: Readonly<Record<string, number>>): string[] =>
  Object.entries(counts).map(([word, count]) => `  ${String(count).padStart(5)}  ${word}`)
