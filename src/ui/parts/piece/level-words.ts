/** Where the name of a level stands: over the end of its line, or under it where a length stands. */
import { LEVEL_WORDS } from '../../../draft/piece.words.ts'
import type { Level, LevelName } from '../../../draft/piece.ts'
import { distance, type Point } from '../../../geometry/point.ts'
import { wordsOver, type LineLength } from './line-lengths.ts'

export interface LevelWords {
  readonly name: LevelName
  /** Foot of the words at their right end. */
  readonly at: Point
  /** They stand under the line, not over it. */
  readonly under: boolean
  /** Points the words lie over. */
  readonly over: readonly Point[]
}

/** Pixels: how wide a letter is, how far words stand over or under their line, how near is too near. */
const [LETTER, OVER, UNDER, NEAR] = [6.5, 5, 19, 16]
/** Half a letter's height above its foot, pixels. */
const MIDDLE = 4
const ROOM = 66

/** @param stood the words whose side of the line is kept, while a choice is in hand */
export function levelWords(
  levels: readonly Level[],
  standing: readonly LineLength[],
  px: number,
  stood: readonly LevelWords[] = [],
): readonly LevelWords[] {
  const taken = standing.flatMap((l) => wordsOver(l, ROOM * px))
  const placed: LevelWords[] = []
  for (const { name, to } of levels) {
    const standingAt = (y: number): LevelWords => ({
      name,
      under: y > 0,
      at: { x: to.x, y: to.y + y * px },
      over: [0, 0.25, 0.5, 0.75, 1].map((k) => ({
        x: to.x - k * LEVEL_WORDS[name].length * LETTER * px,
        y: to.y + (y - MIDDLE) * px,
      })),
    })
    const met = ({ over }: LevelWords): boolean =>
      [...taken, ...placed.flatMap((l) => l.over)].some((t) =>
        over.some((p) => distance(p, t) < NEAR * px),
      )
    const [above, under] = [standingAt(-OVER), standingAt(UNDER)]
    const before = stood.find((l) => l.name === name)
    const below = before ? before.under : met(above) && !met(under)
    placed.push(below ? under : above)
  }
  return placed
}
