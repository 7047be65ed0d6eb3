/**
 * The nape on the back line of a side photo: below the deepest place of the neck's hollow, a little
 * more than a fifth of the way to where the hollow turns into the round of the back. px, y down.
 */
import type { BodyFrame } from './frame.ts'
import type { OutlineRow } from './reading.ts'

/**
 * Straight line through 48 side photos of 16 rendered bodies (true nape in each): height below the
 * hollow = 0.093 torsos + 0.224 of the way to the steepest place below it. It leaves 5.2 mm; leaving a
 * body out 5.6; a figure of another make is 2 mm off. No joint of the model enters but the torso.
 */
const BELOW_HOLLOW = { torsos: 0.093, ofWay: 0.224 } as const
/** Spread of the nape so placed, in torsos (leaving a body out). */
export const NAPE_SD = 0.0115
/** The back line is smoothed over this much to each side, in torsos: finer is the mask's raggedness. */
const SMOOTH = 0.03
/** The round of the back begins within this below the hollow, in torsos (same bench: 0.08 to 0.23). */
const ROUND_WITHIN = 0.3

/** @param out how far a row's back edge lies behind her, px */
export function napeByContour(
  outline: readonly OutlineRow[],
  frame: BodyFrame,
  out: (row: OutlineRow) => number,
): number | undefined {
  const { torso, ear } = frame
  const reach = Math.max(3, Math.floor(SMOOTH * torso))
  const rows = outline.filter(({ y }) => y > ear.y - 0.1 * torso && y < frame.level(0.45))
  if (rows.length < 4 * reach) return undefined
  const back = smoothed(rows.map(out), reach)
  const slope = back.map(
    (_, k) => ((back[Math.min(k + 1, back.length - 1)] ?? 0) - (back[Math.max(0, k - 1)] ?? 0)) / 2,
  )
  const at = (k: number): number => (rows[k]?.y ?? 0) + 0.5
  const hollow = leastIn(back, (k) => at(k) > ear.y && at(k) < frame.level(0.1))
  if (hollow === undefined) return undefined
  const within = (k: number): boolean => k > hollow && at(k) < at(hollow) + ROUND_WITHIN * torso
  const turn = leastIn(
    slope.map((s) => -s),
    within,
  )
  if (turn === undefined) return undefined
  return at(hollow) + BELOW_HOLLOW.torsos * torso + BELOW_HOLLOW.ofWay * (at(turn) - at(hollow))
}

/** Weighted by a raised cosine; the ends are carried on flat. */
function smoothed(values: readonly number[], reach: number): number[] {
  const weights = Array.from(
    { length: 2 * reach + 1 },
    (_, k) => 1 - Math.cos((Math.PI * k) / reach),
  )
  const sum = weights.reduce((total, w) => total + w, 0)
  const last = values.length - 1
  return values.map((_, k) =>
    weights.reduce(
      (total, w, j) =>
        total + (w / sum) * (values[Math.max(0, Math.min(last, k + j - reach))] ?? 0),
      0,
    ),
  )
}

function leastIn(values: readonly number[], among: (k: number) => boolean): number | undefined {
  let best: number | undefined
  for (const [k, value] of values.entries())
    if (among(k) && (best === undefined || value < (values[best] ?? Infinity))) best = k
  return best
}
