/**
 * Where the name of a level stands: over the end of its line, or under it where a length stands,
 * or farther in where it would lie over the outline.
 */
import { LEVEL_WORDS } from '../../../draft/piece.words.ts'
import type { Level, LevelName } from '../../../draft/piece.ts'
import type { Path } from '../../../geometry/path.ts'
import { distance, type Point } from '../../../geometry/point.ts'
import { sampled } from './drawn-lines.ts'
import { wordsOver, type LineLength } from './line-lengths.ts'

export interface LevelWords {
  readonly name: LevelName
  /** Foot of the words at their right end. */
  readonly at: Point
  /** They stand under the line, not over it. */
  readonly under: boolean
  /** How far before the end of their line they end, mm. */
  readonly before: number
  /** Points the words lie over. */
  readonly over: readonly Point[]
}

/** Pixels: how wide a letter is, how far words stand over or under their line, how near is too near. */
const [LETTER, OVER, UNDER, NEAR] = [6.5, 5, 19, 16]
/** Half a letter's height above its foot, pixels. */
const MIDDLE = 4
const ROOM = 66
/** Pixels between words and a line beside them, and from one place tried to the next. House drawing. */
const [BESIDE, STEP] = [8, 24]
/** Worst is to lie on other words, then on a line; farther in is only a little worse, by the pixel. */
const COST = { words: 3, line: 1, farIn: 0.01 } as const

/**
 * @param lines what the words are not to lie on
 * @param stood the words whose place by the line is kept, while a choice is in hand
 */
export function levelWords(
  levels: readonly Level[],
  standing: readonly LineLength[],
  lines: readonly Path[],
  px: number,
  stood: readonly LevelWords[] = [],
): readonly LevelWords[] {
  const taken = standing.flatMap((l) => wordsOver(l, ROOM * px))
  const dots = lines.flatMap((path) => sampled(path, BESIDE * px))
  const placed: LevelWords[] = []
  for (const { name, from, to } of levels) {
    const wide = LEVEL_WORDS[name].length * LETTER * px
    const placedAt = (under: boolean, before: number): LevelWords => {
      const at = { x: to.x - before, y: to.y + (under ? UNDER : -OVER) * px }
      const over = [0, 0.25, 0.5, 0.75, 1].map((k) => ({
        x: at.x - k * wide,
        y: at.y - MIDDLE * px,
      }))
      return { name, at, under, before, over }
    }
    const crossed = ({ at }: LevelWords): readonly Point[] =>
      dots.filter(
        (p) =>
          Math.abs(p.y - at.y + MIDDLE * px) < BESIDE * px &&
          p.x < at.x + (BESIDE / 2) * px &&
          p.x > at.x - wide,
      )
    const cost = (words: LevelWords): number =>
      COST.farIn * (words.before / px) +
      COST.line * crossed(words).length +
      COST.words *
        [...taken, ...placed.flatMap((l) => l.over)].filter((t) =>
          words.over.some((p) => distance(p, t) < NEAR * px),
        ).length
    const kept = stood.find((l) => l.name === name)
    if (kept) {
      placed.push(placedAt(kept.under, kept.before))
      continue
    }
    const atEnd = [placedAt(false, 0), placedAt(true, 0)]
    const fartherIn = atEnd.flatMap((words) => {
      const outermost = Math.min(to.x, ...crossed(words).map(({ x }) => x))
      const first = to.x - outermost + BESIDE * px
      const rows = Math.floor((outermost - wide - from.x) / (STEP * px))
      return Array.from({ length: Math.max(1, rows) }, (_, i) =>
        placedAt(words.under, first + i * STEP * px),
      )
    })
    const [best] = [...atEnd, ...fartherIn].toSorted((a, b) => cost(a) - cost(b))
    if (best) placed.push(best)
  }
  return placed
}
